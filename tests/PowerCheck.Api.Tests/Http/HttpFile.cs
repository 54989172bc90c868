namespace PowerCheck.Api.Tests.Http;

/// <summary>Reads files of requests to be tried by hand: parts between lines of ###, variables, an expectation above each request.</summary>
internal static class HttpFile
{
    private const string Expectation = "# expect:";

    public static IEnumerable<HttpEntry> Read(string name, string text)
    {
        var variables = new Dictionary<string, string>(StringComparer.Ordinal);
        var title = name;
        var lines = new List<string>();
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n').Append("###"))
        {
            if (!line.StartsWith("###", StringComparison.Ordinal))
            {
                lines.Add(line);
                continue;
            }

            if (Entry(name, title, lines, variables) is { } entry)
            {
                yield return entry;
            }

            title = line[3..].Trim();
            lines.Clear();
        }
    }

    private static HttpEntry? Entry(
        string name,
        string title,
        List<string> lines,
        Dictionary<string, string> variables
    )
    {
        string? expectation = null;
        var at = 0;
        for (; at < lines.Count && IsHead(lines[at]); at++)
        {
            var line = lines[at].Trim();
            if (line.StartsWith(Expectation, StringComparison.Ordinal))
            {
                expectation = line[Expectation.Length..].Trim();
            }
            else if (line.StartsWith('@'))
            {
                var (key, value) = Split(line[1..], '=');
                variables[key] = Filled(value, variables);
            }
        }

        return at == lines.Count
            ? null
            : Request($"{name}: {title}", expectation, lines[at..], variables);
    }

    private static HttpEntry Request(
        string title,
        string? expectation,
        List<string> lines,
        Dictionary<string, string> variables
    )
    {
        var (method, address) = Split(Filled(lines[0], variables), ' ');
        var blank = lines.FindIndex(line => line.Trim().Length == 0);
        var headers = lines[1..(blank < 0 ? lines.Count : blank)]
            .Where(line => !line.TrimStart().StartsWith('#'))
            .Select(line => Split(Filled(line, variables), ':'))
            .ToArray();
        var body = blank < 0 ? "" : string.Join('\n', lines[(blank + 1)..]).Trim();
        return new(
            title,
            method,
            new(address.Split(' ')[0]),
            headers,
            Filled(body, variables),
            expectation
        );
    }

    private static bool IsHead(string line) =>
        line.Trim() is "" or ['#', ..] or ['@', ..] or ['/', '/', ..];

    private static (string, string) Split(string text, char at)
    {
        var parts = text.Split(at, 2);
        return (parts[0].Trim(), parts.Length > 1 ? parts[1].Trim() : "");
    }

    private static string Filled(string text, Dictionary<string, string> variables) =>
        variables.Aggregate(
            text,
            (filled, variable) => filled.Replace($"{{{{{variable.Key}}}}}", variable.Value)
        );
}

/// <summary>One request with what it should be answered.</summary>
internal sealed record HttpEntry(
    string Title,
    string Method,
    Uri Address,
    (string Name, string Value)[] Headers,
    string Body,
    string? Expectation
);
