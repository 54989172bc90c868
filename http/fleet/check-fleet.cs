#!/usr/bin/env dotnet
#:package CsvHelper@33.1.0
#:package Polly@8.9.1
#:property ManagePackageVersionsCentrally=false
#:property PublishAot=false

// Sends a table of rigs to one or several PowerCheck services and writes their verdicts into one table; see README.md.
// When a service is busy or away, or the answer breaks off, it goes on with the rigs that are not answered yet.

using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using CsvHelper;
using CsvHelper.Configuration;
using Polly;
using Polly.Retry;

if (args.Length < 2)
{
    Console.Error.WriteLine(
        "usage: dotnet run check-fleet.cs -- fleet.csv verdicts.csv [--query spread=none] [--url http://localhost:5080]..."
    );
    return 2;
}

var query = Values("--query").LastOrDefault() is { } given ? $"?{given}" : "";
string[] urls = Values("--url") is { Length: > 0 } named ? named : ["http://localhost:5080"];
string[] lines;
StreamWriter verdicts;
try
{
    lines = File.ReadAllLines(args[0], new UTF8Encoding(false, throwOnInvalidBytes: true));
    verdicts = new(args[1]);
}
catch (Exception wrong)
    when (wrong is IOException or UnauthorizedAccessException or DecoderFallbackException)
{
    Console.Error.WriteLine(
        wrong is DecoderFallbackException
            ? $"{args[0]} is not UTF-8. Save it as CSV in UTF-8."
            : wrong.Message
    );
    return 2;
}

var header = Array.FindIndex(
    lines,
    line => line.Trim(",;\t ").Length > 0 && !line.StartsWith("sep=")
);
var parts = Part.Cut(lines, header, urls.Length);
using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) => (pressed.Cancel, _) = (true, stop.CancelAsync());
try
{
    var asking = Task.WhenAll(
        parts.Zip(urls, (part, url) => part.Ask(new($"{url}/v1/checks/batch{query}"), stop.Token))
    );
    await Progress.Show(
        asking,
        parts,
        lines.Skip(header + 1).Count(line => line.Trim(",;\t ").Length > 0)
    );
    await asking;
}
catch (Exception broken)
    when (broken
            is RefusedException
                or BusyException
                or HttpRequestException
                or IOException
                or OperationCanceledException
    )
{
    Console.Error.WriteLine(broken.Message);
    if (broken is RefusedException && parts.All(part => part.Rows.Count == 0))
    {
        return 2;
    }
}

var missing = string.Join(" ", parts.Where(part => !part.IsDone).Select(part => part.Missing));
Table.Write(verdicts, parts, missing);
return missing.Length == 0 ? 0 : 1;

string[] Values(string option) =>
    [
        .. args.Index()
            .Where(pair => pair.Item == option && pair.Index + 1 < args.Length)
            .Select(pair => args[pair.Index + 1]),
    ];

/// <summary>Some lines of the file that one service answers.</summary>
sealed class Part(string[] lines, int header, int first, int end)
{
    private static readonly HttpClient Client = new() { Timeout = Timeout.InfiniteTimeSpan };

    /// <summary>Waits longer from time to time, or as long as a busy service says.</summary>
    private static readonly ResiliencePipeline Patient = new ResiliencePipelineBuilder()
        .AddRetry(
            new RetryStrategyOptions
            {
                ShouldHandle = new PredicateBuilder()
                    .Handle<HttpRequestException>()
                    .Handle<IOException>()
                    .Handle<BusyException>(),
                MaxRetryAttempts = 8,

                DelayGenerator = retry =>
                    new(
                        Longer(
                            (retry.Outcome.Exception as BusyException)?.After,
                            retry.AttemptNumber
                        )
                    ),
            }
        )
        .Build();

    // Two seconds, four, eight and so on up to a minute, a little more or less; or what the service asks for, if that is longer.
    private static TimeSpan? Longer(TimeSpan? asked, int attempt)
    {
        var own = TimeSpan.FromSeconds(
            Math.Min(60, Math.Pow(2, attempt + 1)) * (0.8 + (0.4 * Random.Shared.NextDouble()))
        );
        return asked > own ? asked : own;
    }

    /// <summary>Rows of the answer, under their lines in the file.</summary>
    public List<string[]> Rows { get; } = [];

    /// <summary>The answer's headings.</summary>
    public string[] Headings { get; private set; } = [];

    /// <summary>What stands between the cells of the answer.</summary>
    public char Delimiter { get; private set; } = ',';

    /// <summary>Whether every rig is answered.</summary>
    public bool IsDone { get; private set; }

    /// <summary>The cautions about batteries, as the service's tally has them.</summary>
    public string Caution { get; private set; } = "";

    /// <summary>Which rigs are not answered.</summary>
    public string Missing =>
        Rows.Count == 0
            ? $"Lines {start + 1} to {end} are not answered."
            : $"The rigs after line {next + 1} up to line {end} are not answered.";

    /// <summary>The line to go on with, from 0: the last that was answered, so that the service tells where its row ends.</summary>
    private int next = first;

    private readonly int start = first;

    /// <summary>Cuts a file where no cell in quotes goes on over the line end.</summary>
    public static Part[] Cut(string[] lines, int header, int count)
    {
        var parts = new List<Part>();
        var (first, quotes) = (header + 1, 0);
        for (var at = first; at < lines.Length && parts.Count < count - 1; at++)
        {
            quotes += lines[at].Count(letter => letter == '"');
            if (
                quotes % 2 == 0
                && at + 1 - header > (lines.Length - header) * (parts.Count + 1) / count
            )
            {
                parts.Add(new(lines, header, first, at + 1));
                first = at + 1;
            }
        }

        return [.. parts, new(lines, header, first, lines.Length)];
    }

    /// <summary>Asks until all is answered, or patience is at its end.</summary>
    public async Task Ask(Uri address, CancellationToken stop)
    {
        while (!IsDone)
        {
            var answered = Rows.Count;
            try
            {
                await Patient.ExecuteAsync(async now => await AskOnce(address, now), stop);
                IsDone = true;
            }
            catch (Exception) when (stop.IsCancellationRequested)
            {
                throw new OperationCanceledException("Stopped.");
            }
            catch (Exception broken) when (broken is not RefusedException && Rows.Count > answered)
            {
                // It went on in between: patience begins anew.
            }
        }
    }

    private async Task AskOnce(Uri address, CancellationToken stop)
    {
        var from = next;
        var text = string.Join('\n', lines.Skip(header).Take(1).Concat(lines.Take(end).Skip(from)));
        using var request = new HttpRequestMessage(HttpMethod.Post, address)
        {
            Content = new StringContent(text, Encoding.UTF8, "text/csv"),
            Headers = { Accept = { new MediaTypeWithQualityHeaderValue("text/csv") } },
        };
        using var answer = await Client.SendAsync(
            request,
            HttpCompletionOption.ResponseHeadersRead,
            stop
        );
        await Refused(answer, stop);
        await using var hangUp = stop.Register(answer.Dispose);
        using var reader = new StreamReader(await answer.Content.ReadAsStreamAsync(stop));
        Headings = (
            await reader.ReadLineAsync(stop) ?? throw new IOException("The answer is empty.")
        ).Split(Delimiter);
        if (Headings.Length == 1)
        {
            Delimiter = Headings[0]["kind".Length];
            Headings = Headings[0].Split(Delimiter);
        }

        using var csv = new CsvParser(reader, Table.Form(Delimiter));
        var isAgain = Rows.Count > 0;
        while (await csv.ReadAsync())
        {
            stop.ThrowIfCancellationRequested();
            if (csv.Count == Headings.Length && Take(csv.Record!, from, ref isAgain))
            {
                return;
            }
        }

        throw new IOException("The answer broke off.");
    }

    /// <summary>Takes a row of the answer; whether it is the last.</summary>
    private bool Take(string[] row, int from, ref bool isAgain)
    {
        if (row[0] == "tally")
        {
            var said = row[Table.Told(Headings)];
            Caution = said[(said.IndexOf(". ", StringComparison.Ordinal) + 1)..];
            return row[^1].Length == 0 ? true : throw new BusyException(row[^1], null);
        }

        // The header was line 1 of what was sent.
        next = from + int.Parse(row[1], CultureInfo.InvariantCulture) - 2;
        row[1] = (next + 1).ToString(CultureInfo.InvariantCulture);
        if (!isAgain)
        {
            Rows.Add(row);
        }

        isAgain = false;
        return false;
    }

    private static async Task Refused(HttpResponseMessage answer, CancellationToken stop)
    {
        if (answer.IsSuccessStatusCode)
        {
            return;
        }

        var problem = await answer.Content.ReadAsStringAsync(stop);
        if ((int)answer.StatusCode is 429 or 502 or 503 or 504)
        {
            throw new BusyException(
                "The service is busy or away.",
                answer.Headers.RetryAfter?.Delta
            );
        }

        throw new RefusedException(
            Said(problem) ?? $"The service answered with status {(int)answer.StatusCode}."
        );
    }

    private static string? Said(string problem)
    {
        try
        {
            var json = JsonDocument.Parse(problem).RootElement;
            return json.TryGetProperty("errors", out var errors)
                ? string.Join(
                    '\n',
                    errors
                        .EnumerateArray()
                        .Select(error => error.GetProperty("message").GetString())
                )
                : json.GetProperty("detail").GetString();
        }
        catch (Exception notOurs) when (notOurs is JsonException or KeyNotFoundException)
        {
            return null;
        }
    }
}

/// <summary>The table of verdicts.</summary>
static class Table
{
    /// <summary>How tables are read and written.</summary>
    public static CsvConfiguration Form(char delimiter) =>
        new(CultureInfo.InvariantCulture)
        {
            Delimiter = delimiter.ToString(),
            HasHeaderRecord = false,
        };

    /// <summary>The column in which a tally speaks: the summary's, or the first after the id.</summary>
    public static int Told(string[] headings) =>
        Array.IndexOf(headings, "summary") is var summary and >= 0
            ? summary
            : Math.Min(3, headings.Length - 1);

    /// <summary>Writes the rows of all parts in order, and one tally.</summary>
    public static void Write(StreamWriter verdicts, Part[] parts, string problem)
    {
        var answered = parts.FirstOrDefault(part => part.Headings.Length > 0) ?? parts[0];
        var headings = answered.Headings;
        using var csv = new CsvWriter(verdicts, Form(answered.Delimiter));
        var rows = parts.SelectMany(part => part.Rows).ToArray();
        var verdict = Array.IndexOf(headings, "verdict");
        var counts = string.Join(
            ", ",
            rows.CountBy(row =>
                    row[0] == "problem" ? "not checked"
                    : verdict < 0 ? "checked"
                    : row[verdict]
                )
                .Select(pair => $"{pair.Value} {pair.Key}")
        );
        string[] tally =
        [
            .. headings.Select(
                (_, at) => at == Told(headings) ? $"{counts}.{answered.Caution}" : ""
            ),
        ];
        if (tally.Length > 2)
        {
            (tally[0], tally[1], tally[^1]) = ("tally", $"{rows.Length}", problem);
        }

        foreach (
            var cell in (
                (string[][])(headings.Length == 0 ? [] : [headings, .. rows, tally])
            ).SelectMany(row => row.Append(null))
        )
        {
            if (cell is null)
            {
                csv.NextRecord();
            }
            else
            {
                csv.WriteField(cell);
            }
        }

        Console.Error.WriteLine(counts.Length == 0 ? problem : $"{counts}. {problem}");
    }
}

/// <summary>A bar on the terminal.</summary>
static class Progress
{
    /// <summary>Shows how many rigs are answered until all are.</summary>
    public static async Task Show(Task asking, Part[] parts, int count)
    {
        var since = Stopwatch.StartNew();
        while (!Console.IsErrorRedirected && await Task.WhenAny(asking, Task.Delay(250)) != asking)
        {
            var done = parts.Sum(part => part.Rows.Count);
            var left = done == 0 ? "" : $"{since.Elapsed / done * (count - done):h\\:mm\\:ss} left";
            var bar = new string('#', 40 * done / Math.Max(1, count)).PadRight(40, '.');
            Console.Error.Write(
                $"\r{bar} {done} of {count} rigs, {done / since.Elapsed.TotalSeconds:F0} a second, {left}   "
            );
        }

        if (!Console.IsErrorRedirected)
        {
            Console.Error.WriteLine();
        }
    }
}

/// <summary>The service cannot go on now; it may later.</summary>
sealed class BusyException(string message, TimeSpan? after) : Exception(message)
{
    /// <summary>How long to wait, as the service says.</summary>
    public TimeSpan? After { get; } = after;
}

/// <summary>The service does not take the file.</summary>
sealed class RefusedException(string message) : Exception(message);
