using System.Text;
using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>A fleet of thousands with ten kinds of bad line among them.</summary>
public class FleetTests
{
    private const int Count = 3000;

    private static readonly (byte[] Line, string Problem)[] Bad =
    [
        (Text("{\"id\":\"cut\",\"motor\":{"), "ends too early"),
        (Text("rig,brushed,1500"), "does not belong in JSON text"),
        (Text("[]"), "The body is a list and must be an object"),
        (Text(Fleet.Rig("a") + Fleet.Rig("b")), "text follows the end"),
        ([.. Text("{\"id\":\"M"), 0xFC, .. Text("ller\"}")], "not valid UTF-8"),
        (Text("{\"id\":\"" + new string('x', 300_000) + "\"}"), "may have 262144 bytes"),
        (Text("{\"id\":\"bare\"}"), "motor is missing"),
        (Text(With("vehicle.massKg", "500")), "must be from 0.05 to 50 kg"),
        (Text(With("motor.kind", "\"brushles\"")), "must be one of the words"),
        (Text(With("motor.kv", "3300")), "motor.kv is not known"),
    ];

    [Fact]
    public async Task Bad_lines_cost_nobody_else_an_answer()
    {
        using var body = new MemoryStream();
        for (var line = 1; line <= Count; line++)
        {
            body.Write(IsBad(line) ? Bad[At(line)].Line : Text(Fleet.Rig($"rig-{line}")));
            body.WriteByte((byte)'\n');
        }

        var outcomes = (
            await Fleet.Send(body.ToArray(), query: Fleet.Quick + "&fields=verdict")
        ).Outcomes();

        Assert.Equal(Enumerable.Range(1, Count), outcomes[..^1].Select(Line));
        foreach (var outcome in outcomes[..^1])
        {
            if (IsBad(Line(outcome)))
            {
                Assert.Contains(Bad[At(Line(outcome))].Problem, outcome.GetRawText());
            }
            else
            {
                Assert.Equal("suitable", outcome.GetProperty("fields").Text("verdict"));
                Assert.Equal($"rig-{Line(outcome)}", outcome.Text("id"));
            }
        }

        var tally = outcomes[^1];
        var problems = Enumerable.Range(1, Count).Count(IsBad);
        Assert.Equal(problems, tally.GetProperty("problems").GetInt32());
        Assert.Equal(
            Count - problems,
            tally.GetProperty("verdicts").GetProperty("suitable").GetInt32()
        );
        Assert.True(tally.GetProperty("complete").GetBoolean());
    }

    // Now and then, and in the end every kind several times.
    private static bool IsBad(int line) => line % 97 is 0 or 1;

    private static int At(int line) => line / 97 * 2 % Bad.Length + (line % 97);

    private static int Line(JsonElement outcome) => outcome.GetProperty("line").GetInt32();

    private static byte[] Text(string line) => Encoding.UTF8.GetBytes(line);

    private static string With(string path, string value) =>
        Rigs.Example().With(path, System.Text.Json.Nodes.JsonNode.Parse(value)).ToJsonString();
}
