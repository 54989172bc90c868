using System.Net;
using System.Text;
using CsCheck;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Documents;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Whatever is sent, the service answers; it never fails.</summary>
public class FuzzTests
{
    private static readonly byte[] Good = Encoding.UTF8.GetBytes(Rigs.Example().ToJsonString());

    private static readonly Gen<string> Odd = Gen.OneOf(
        "null",
        "true",
        "0",
        "-1",
        "1e999",
        "-1e-999",
        "3.0",
        "2.5",
        "\"\"",
        "\"x\"",
        "{}",
        "[]",
        "[[]]",
        "{\"a\":{}}",
        "\"\\uD800\"",
        "\"°\"",
        "99999999999999999999"
    );

    [Fact]
    public void The_door_reads_or_refuses_any_bytes() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Assert.True(Refused(bytes)), iter: 5000);

    [Fact]
    public void The_door_reads_or_refuses_a_good_body_with_some_bytes_changed() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Byte, Gen.Int[0, 3])
            .Array[1, 4]
            .Sample(
                changes =>
                {
                    // A change may leave the body good; what counts is that it is read or refused at all.
                    _ = Refused(Changed(changes));
                },
                iter: 5000
            );

    [Fact]
    public async Task A_good_body_with_odd_values_gets_an_answer_or_a_problem() =>
        await Gen.Select(Gen.OneOf(Paths()), Odd)
            .Array[1, 3]
            .SampleAsync(
                async changes =>
                {
                    var answer = await Service.Check(Odded(changes));
                    Assert.True(
                        answer.Status
                            is HttpStatusCode.OK
                                or HttpStatusCode.BadRequest
                                or HttpStatusCode.UnprocessableEntity,
                        answer.Text
                    );
                },
                iter: 300,
                threads: 1
            );

    [Fact]
    public async Task A_rig_within_the_ranges_gets_an_answer_as_the_document_says()
    {
        var document = (await Service.Get("/openapi/v1.json")).Json;
        await DrawnBody.Members.SampleAsync(
            async members =>
            {
                // Ten hours in one piece take the spread of figures longer than the service goes on.
                var isLong = members.Any(member => member.Path is "course.segments.0.seconds");
                var answer = await Service.Check(
                    DrawnBody.Of(members).ToJsonString(),
                    isLong ? "?findings=all&spread=none" : "?findings=all"
                );
                if (answer.Status != HttpStatusCode.UnprocessableEntity)
                {
                    Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
                    Assert.Empty(SchemaCheck.Faults(document, "CheckAnswer", answer.Json));
                }
            },
            iter: 150,
            threads: 1
        );
    }

    private static string[] Paths() => [.. RequestMembers.All.Select(member => member.Path)];

    /// <summary>Reads and applies the rules; whether something was wrong.</summary>
    private static bool Refused(ReadOnlySpan<byte> body)
    {
        var faults = new Faults();
        var (request, malformed) = RequestReader.Read<CheckRequest>(body, faults);
        if (request is not null)
        {
            CheckRules.Apply(request, faults);
        }

        Assert.True(faults.All.Count <= Faults.Most);
        Assert.True(malformed is null or { Line: > 0, Column: > 0 });
        return malformed is not null || !faults.None;
    }

    private static byte[] Changed((int At, byte Value, int Kind)[] changes)
    {
        List<byte> body = [.. Good];
        foreach (var (at, value, kind) in changes.Where(change => change.At < body.Count))
        {
            switch (kind)
            {
                case 0:
                    body[at] = value;
                    break;
                case 1:
                    body.RemoveAt(at);
                    break;
                case 2:
                    body.Insert(at, value);
                    break;
                default:
                    body.RemoveRange(at, Math.Min(10, body.Count - at));
                    break;
            }
        }

        return [.. body];
    }

    private static string Odded((string Path, string Odd)[] changes)
    {
        var body = Rigs.Example();
        foreach (var (i, change) in changes.Index())
        {
            body.With(change.Path, $"odd {i}");
        }

        return changes
            .Index()
            .Aggregate(
                body.ToJsonString(),
                (text, change) => text.Replace($"\"odd {change.Index}\"", change.Item.Odd)
            );
    }
}
