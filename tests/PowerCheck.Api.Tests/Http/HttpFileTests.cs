using System.Globalization;
using System.Text;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Http;

/// <summary>Sends every request that is kept to be tried by hand, and holds the answer against what stands above it.</summary>
public class HttpFileTests
{
    private static readonly Lazy<IReadOnlyList<HttpEntry>> Kept = new(() => [.. ReadAll()]);

    public static TheoryData<int, string> Requests
    {
        get
        {
            var requests = new TheoryData<int, string>();
            foreach (var (i, entry) in Kept.Value.Index())
            {
                requests.Add(i, entry.Title);
            }

            return requests;
        }
    }

    [Theory]
    [MemberData(nameof(Requests))]
    public async Task A_kept_request_is_answered_as_it_says(int position, string title)
    {
        var entry = Kept.Value[position];
        Assert.False(string.IsNullOrEmpty(entry.Expectation), $"{title} expects nothing");

        var answer = await Service.Send(Request(entry));

        var failures = Failures(answer, entry.Expectation).ToArray();
        Assert.True(
            failures.Length == 0,
            $"{title}\n  {string.Join("\n  ", failures)}\n{Shortened(answer.Text)}"
        );
    }

    [Fact]
    public void An_expectation_that_is_not_met_is_told()
    {
        var answer = new Answer(
            System.Net.HttpStatusCode.OK,
            null,
            """{"a":[{"code":"x.y","n":1.5}],"yes":true}""",
            new Dictionary<string, string>()
        );

        Assert.Empty(Failures(answer, "200 a[code=x.y].n=1.5 a.0.code=x.y yes=true a=*"));
        Assert.Equal(5, Failures(answer, "404 a[code=x.y].n=1 a.1.code=x.y yes=false b=*").Count());
    }

    [Theory]
    [InlineData("1..2", true)]
    [InlineData("1.5..1.5", true)]
    [InlineData("-1..1.5", true)]
    [InlineData("1.6..2", false)]
    [InlineData("1..1.4", false)]
    [InlineData("2..1", false)]
    [InlineData("..2", false)]
    [InlineData("1..2..3", false)]
    public void A_range_is_met_by_the_numbers_between_its_ends(string range, bool met)
    {
        var answer = new Answer(
            System.Net.HttpStatusCode.OK,
            null,
            """{"n":1.5,"word":"x"}""",
            new Dictionary<string, string>()
        );

        Assert.Equal(met, !Failures(answer, $"200 n={range}").Any());
        Assert.NotEmpty(Failures(answer, $"200 word={range}"));
        Assert.NotEmpty(Failures(answer, $"200 absent={range}"));
    }

    [Fact]
    public void A_request_without_an_expectation_is_read_without_one()
    {
        var entry = HttpFile
            .Read("x", "@h = http://a\n### t\nGET {{h}}/b HTTP/1.1\nA: b:c\n")
            .Single();

        Assert.Null(entry.Expectation);
        Assert.Equal(("GET", "http://a/b"), (entry.Method, entry.Address.ToString()));
        Assert.Equal(("A", "b:c"), entry.Headers.Single());
    }

    private static IEnumerable<HttpEntry> ReadAll()
    {
        var folder = Path.Combine(Repository.Root, "http");
        var files = Directory.GetFiles(folder, "*.http", SearchOption.AllDirectories);
        return files
            .Order(StringComparer.Ordinal)
            .SelectMany(file =>
                HttpFile.Read(Path.GetRelativePath(folder, file), File.ReadAllText(file))
            );
    }

    private static HttpRequestMessage Request(HttpEntry entry)
    {
        var request = new HttpRequestMessage(new(entry.Method), entry.Address.PathAndQuery);
        if (entry.Method is "POST" or "PUT")
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(entry.Body));
        }

        foreach (var (name, value) in entry.Headers)
        {
            if (!request.Headers.TryAddWithoutValidation(name, value))
            {
                request.Content?.Headers.TryAddWithoutValidation(name, value);
            }
        }

        return request;
    }

    private static IEnumerable<string> Failures(Answer answer, string expectation)
    {
        var parts = expectation.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var status = ((int)answer.Status).ToString(CultureInfo.InvariantCulture);
        if (status != parts[0])
        {
            yield return $"status is {status}, not {parts[0]}";
        }

        foreach (var part in parts[1..])
        {
            var at = Equals(part);
            var (path, wanted) = (part[..at], part[(at + 1)..]);
            var given = JsonPath.Text(answer.Json, path);
            if (given is null || !Meets(given, wanted))
            {
                yield return $"{path} is {given ?? "absent"}, not {wanted}";
            }
        }
    }

    private static bool Meets(string given, string wanted) =>
        wanted == "*"
        || given == wanted
        || (
            wanted.Split("..") is [var least, var most]
            && Number(least) is { } from
            && Number(most) is { } to
            && Number(given) is { } figure
            && from <= figure
            && figure <= to
        );

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    /// <summary>The first equals sign outside of brackets.</summary>
    private static int Equals(string part)
    {
        var depth = 0;
        for (var i = 0; i < part.Length; i++)
        {
            depth +=
                part[i] == '[' ? 1
                : part[i] == ']' ? -1
                : 0;
            if (part[i] == '=' && depth == 0)
            {
                return i;
            }
        }

        throw new FormatException($"'{part}' in an expectation has no '='");
    }

    private static string Shortened(string text) => text.Length > 3000 ? text[..3000] + "…" : text;
}
