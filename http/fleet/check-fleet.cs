#!/usr/bin/env dotnet
#:package CsvHelper@33.1.0
#:package Polly@8.9.1
#:property ManagePackageVersionsCentrally=false
#:property PublishAot=false

// Sends a table of rigs to one or several PowerCheck services and writes their verdicts into one table; see README.md.
// The file goes up in pieces of whole rows, each as a request of its own, so that answers are read from the first second
// on, memory stays small, and a break costs one rig: a piece is sent again from the last row that was answered.

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

if (Options.Of(args) is not { } options)
{
    Console.Error.WriteLine(
        "usage: dotnet run check-fleet.cs -- fleet.csv verdicts.csv [--url http://localhost:5080]... [--query spread=none] [--parts N]"
    );
    return 2;
}

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, key) =>
{
    key.Cancel = true;
    stop.Cancel();
};
try
{
    return await Fleet.Check(options, stop.Token);
}
catch (Exception noFile) when (noFile is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(noFile.Message);
    return 2;
}

/// <summary>What the caller wants.</summary>
/// <param name="Fleet">The table of rigs.</param>
/// <param name="Verdicts">Where the table of verdicts goes.</param>
/// <param name="Urls">The services.</param>
/// <param name="Query">Query parameters of the check.</param>
/// <param name="Parts">Into how many parts the file is cut, to be sent side by side.</param>
sealed record Options(
    string Fleet,
    string Verdicts,
    IReadOnlyList<string> Urls,
    string Query,
    int Parts
)
{
    /// <summary>Reads the command line; null when it is wrong.</summary>
    public static Options? Of(string[] args)
    {
        var (files, urls, query, parts) = (new List<string>(), new List<string>(), "", 0);
        for (var at = 0; at < args.Length; at++)
        {
            if (!args[at].StartsWith("--", StringComparison.Ordinal))
            {
                files.Add(args[at]);
                continue;
            }

            var name = args[at];
            if (++at == args.Length)
            {
                return null;
            }

            switch (name)
            {
                case "--url" when Uri.IsWellFormedUriString(args[at], UriKind.Absolute):
                    urls.Add(args[at].TrimEnd('/'));
                    break;
                case "--query":
                    query = args[at].TrimStart('?');
                    break;
                case "--parts" when int.TryParse(args[at], out parts) && parts is > 0 and <= 64:
                    break;
                default:
                    return null;
            }
        }

        if (urls.Count == 0)
        {
            urls.Add("http://localhost:5080");
        }

        return files is [var fleet, var verdicts]
            ? new(fleet, verdicts, urls, query, parts == 0 ? urls.Count : parts)
            : null;
    }
}

/// <summary>The whole job.</summary>
static class Fleet
{
    /// <summary>Cuts, sends, joins.</summary>
    /// <returns>0 when every rig is answered, 1 when not all are, 2 when none is.</returns>
    public static async Task<int> Check(Options options, CancellationToken stop)
    {
        var table = RigTable.Open(options.Fleet);
        var parts = table.Cut(options.Parts);
        var arriving = options.Verdicts + ".part";
        using var progress = new Progress(parts.Sum(part => part.Rigs));
        using var http = new HttpClient { Timeout = Timeout.InfiniteTimeSpan };
        var files = parts
            .Select((_, at) => Create(at == 0 ? arriving : $"{arriving}-{at + 1}", at > 0))
            .ToArray();
        try
        {
            var sent = parts.Select(
                (part, at) =>
                    new Sender(
                        http,
                        new(
                            $"{options.Urls[at % options.Urls.Count]}/v1/checks/batch?{options.Query}"
                        ),
                        table,
                        new(files[at], table.Delimiter, isFirst: at == 0),
                        progress
                    ).Send(part, stop)
            );
            var results = await Task.WhenAll(sent);
            progress.Dispose();
            return Finish(options, table, files, results);
        }
        finally
        {
            foreach (var file in files)
            {
                file.Dispose();
            }
        }
    }

    private static FileStream Create(string path, bool isTemporary) =>
        new(
            path,
            FileMode.Create,
            FileAccess.ReadWrite,
            FileShare.Read,
            64 * 1024,
            isTemporary ? FileOptions.DeleteOnClose : FileOptions.None
        );

    private static int Finish(
        Options options,
        RigTable table,
        FileStream[] files,
        PartResult[] results
    )
    {
        var gaps = results.Select(result => result.Gap).OfType<string>().ToArray();
        if (
            results.Select(result => result.Header).FirstOrDefault(header => header is not null)
            is not { } header
        )
        {
            File.Delete(files[0].Name);
            Console.Error.WriteLine($"No rig is answered. {gaps.FirstOrDefault()}");
            return 2;
        }

        var count = Count.Sum(results.Select(result => result.Count));
        Join(files, table, header);
        Tally.Write(files[0], table.Delimiter, header, count, gaps);
        files[0].Dispose();
        File.Move(files[0].Name, options.Verdicts, overwrite: true);
        Console.WriteLine($"{count.Rigs} rigs: {count.Text}");
        foreach (var gap in gaps)
        {
            Console.Error.WriteLine($"Not all rigs are answered. {gap}");
        }

        return gaps.Length == 0 ? 0 : 1;
    }

    private static void Join(FileStream[] files, RigTable table, string[] header)
    {
        if (files[0].Length == 0)
        {
            VerdictTable.WriteRow(files[0], table.Delimiter, header);
        }

        foreach (var file in files.Skip(1))
        {
            file.Position = 0;
            file.CopyTo(files[0]);
        }
    }
}

/// <summary>Whole rows of a file one after the other, and how many rigs are among them.</summary>
/// <param name="Offset">Where the first begins, in bytes from 0.</param>
/// <param name="End">Where the last ends.</param>
/// <param name="Line">The line of the file in which the first begins, from 1.</param>
/// <param name="LastLine">The line of the file in which the last begins.</param>
/// <param name="Rigs">How many of them are not blank.</param>
sealed record Part(long Offset, long End, long Line, long LastLine, long Rigs);

/// <summary>A row of the file.</summary>
/// <param name="Text">Its bytes, a letter each, with the line end.</param>
/// <param name="Offset">Where it begins, in bytes from 0.</param>
/// <param name="Line">The line in which it begins, from 1.</param>
/// <param name="IsBlank">Whether it says nothing; such a row is not answered.</param>
sealed record RigRow(string Text, long Offset, long Line, bool IsBlank);

/// <summary>Rows that are sent in one request.</summary>
/// <param name="Bytes">The rows.</param>
/// <param name="Line">The line of the file in which the first begins, from 1.</param>
sealed record Piece(byte[] Bytes, long Line)
{
    /// <summary>What is left of it from a line of the file on.</summary>
    public ReadOnlyMemory<byte> From(long line)
    {
        var at = 0;
        for (var here = Line; here < line; here++)
        {
            at += Bytes.AsSpan(at).IndexOf((byte)'\n') + 1;
        }

        return Bytes.AsMemory(at);
    }
}

/// <summary>A table of rigs on disk. Bytes are read as a letter each, so that positions are those of the file.</summary>
sealed class RigTable
{
    private const int PieceBytes = 96 * 1024;
    private const int MostRowBytes = 256 * 1024;

    private readonly string path;

    private RigTable(string path, byte[] preamble)
    {
        this.path = path;
        Preamble = preamble;
        var header = Encoding.Latin1.GetString(preamble).TrimEnd('\r', '\n');
        header = header[(header.LastIndexOf('\n') + 1)..];
        Delimiter = ";\t".Aggregate(
            ',',
            (best, one) => header.Count(c => c == one) > header.Count(c => c == best) ? one : best
        );
    }

    /// <summary>All up to the end of the header, which goes before each piece.</summary>
    public byte[] Preamble { get; }

    /// <summary>How many lines that is.</summary>
    public int PreambleLines => Preamble.Count(one => one == (byte)'\n');

    /// <summary>What stands between cells.</summary>
    public char Delimiter { get; }

    /// <summary>Opens a file and reads its header.</summary>
    public static RigTable Open(string path)
    {
        using var file = File.OpenRead(path);
        var preamble = new List<byte>();
        while (preamble.Count < MostRowBytes)
        {
            var line = FirstLine(file);
            preamble.AddRange(line);
            var text = Encoding.UTF8.GetString(line).TrimStart('\uFEFF');
            if (
                line.Length == 0
                || (
                    text.Trim(",;\t\r\n ").Length > 0
                    && !text.StartsWith("sep=", StringComparison.Ordinal)
                )
            )
            {
                break;
            }
        }

        return new(path, [.. preamble]);
    }

    /// <summary>Cuts it into parts of about the same size, of whole rows; fewer where it is too small.</summary>
    public IReadOnlyList<Part> Cut(int most)
    {
        long begin = Preamble.Length;
        var size = Math.Max(1, new FileInfo(path).Length - begin);
        var parts = new List<Part> { new(begin, begin, PreambleLines + 1, 0, 0) };
        foreach (var row in Rows(new(begin, long.MaxValue, PreambleLines + 1, 0, 0)))
        {
            if (row.Offset - begin >= size * parts.Count / most && parts[^1].Rigs > 0)
            {
                parts.Add(new(row.Offset, row.Offset, row.Line, row.Line, 0));
            }

            parts[^1] = parts[^1] with
            {
                End = row.Offset + row.Text.Length,
                LastLine = row.Line,
                Rigs = parts[^1].Rigs + (row.IsBlank ? 0 : 1),
            };
        }

        return parts;
    }

    /// <summary>Which lines of a part are not answered.</summary>
    public string Gap(Part part, long next) =>
        part.End >= new FileInfo(path).Length
            ? $"From line {next} on"
            : $"From line {next} on, up to line {part.LastLine}";

    /// <summary>The pieces of a part; at least one, so that the header is looked at.</summary>
    public IEnumerable<Piece> Pieces(Part part)
    {
        var (text, line) = (new StringBuilder(), part.Line);
        foreach (var row in Rows(part))
        {
            if (text.Length + row.Text.Length > PieceBytes && text.Length > 0)
            {
                yield return new(Encoding.Latin1.GetBytes(text.ToString()), line);
                text.Clear();
                line = row.Line;
            }

            text.Append(row.Text);
        }

        if (text.Length > 0 || part.Rigs == 0)
        {
            yield return new(Encoding.Latin1.GetBytes(text.ToString()), line);
        }
    }

    // A quote that is not closed where its cell ends spoils its own line and none after it, as it does at the service.
    private IEnumerable<RigRow> Rows(Part part)
    {
        var (offset, line) = (part.Offset, part.Line);
        while (offset < part.End)
        {
            var isSpoilt = false;
            foreach (var row in RowsFrom(offset))
            {
                isSpoilt = row.IsSpoilt;
                var text =
                    isSpoilt && row.Text.IndexOf('\n') is var end and >= 0
                        ? row.Text[..(end + 1)]
                        : row.Text;
                yield return new(
                    text,
                    offset,
                    line,
                    text.AsSpan().Trim($"{Delimiter} \t\r\n").IsEmpty
                );
                offset += text.Length;
                line += text.Count(one => one == '\n');
                if (isSpoilt || offset >= part.End)
                {
                    break;
                }
            }

            if (!isSpoilt)
            {
                yield break;
            }
        }
    }

    private IEnumerable<(string Text, bool IsSpoilt)> RowsFrom(long offset)
    {
        using var file = File.OpenRead(path);
        file.Position = offset;
        var isBad = false;
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = Delimiter.ToString(),
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            MaxFieldSize = MostRowBytes,
            BadDataFound = bad => isBad |= bad.Field.StartsWith('"'),
        };
        using var parser = new CsvParser(
            new StreamReader(file, Encoding.Latin1, false),
            configuration
        );
        var text = "";
        while (true)
        {
            var isRead = TryRead(parser, out var isTooLong);
            if (isTooLong)
            {
                file.Position = offset;
                yield return (Encoding.Latin1.GetString(FirstLine(file)), true);
                yield break;
            }

            if (!isRead)
            {
                break;
            }

            // A carriage return by itself ends no row at the service.
            text += parser.RawRecord;
            if (text.EndsWith('\n'))
            {
                yield return (text, IsSpoilt(text, isBad));
                offset += text.Length;
                (text, isBad) = ("", false);
            }
        }

        if (text.Length > 0)
        {
            yield return (text, IsSpoilt(text, isBad));
        }
    }

    private static bool TryRead(CsvParser parser, out bool isTooLong)
    {
        isTooLong = false;
        try
        {
            // The quotes of a record are looked at when its cells are.
            return parser.Read() && parser.Record is not null;
        }
        catch (MaxFieldSizeException)
        {
            isTooLong = true;
            return false;
        }
    }

    private static bool IsSpoilt(string row, bool isBad) =>
        row.AsSpan().TrimEnd("\r\n").Contains('\n')
        && (isBad || row.Count(one => one == '"') % 2 == 1);

    private static byte[] FirstLine(Stream file)
    {
        var line = new List<byte>();
        for (var one = file.ReadByte(); one >= 0; one = file.ReadByte())
        {
            line.Add((byte)one);
            if (one == '\n')
            {
                break;
            }
        }

        return [.. line];
    }
}

/// <summary>How many rigs got which verdict.</summary>
/// <param name="Verdicts">By verdict; empty when the answers do not have it.</param>
/// <param name="Checks">How many were checked.</param>
/// <param name="Problems">How many could not be.</param>
/// <param name="Caution">The caution about batteries that the service gives with its tally.</param>
sealed record Count(
    IReadOnlyDictionary<string, long> Verdicts,
    long Checks,
    long Problems,
    string Caution
)
{
    private static readonly string[] Words = ["suitable", "limited", "unsuitable", "undetermined"];

    /// <summary>How many rigs are answered.</summary>
    public long Rigs => Checks + Problems;

    /// <summary>In words.</summary>
    public string Text =>
        Verdicts.Count > 0
            ? $"{string.Join(", ", Words.Select(word => $"{Verdicts.GetValueOrDefault(word)} {word}"))}, {Problems} not checked."
            : $"{Checks} checked, {Problems} not checked.";

    /// <summary>All together.</summary>
    public static Count Sum(IEnumerable<Count> counts)
    {
        var all = counts.ToArray();
        var verdicts = all.SelectMany(count => count.Verdicts)
            .GroupBy(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Sum(), StringComparer.Ordinal);
        return new(
            verdicts,
            all.Sum(count => count.Checks),
            all.Sum(count => count.Problems),
            all.Select(count => count.Caution).FirstOrDefault(caution => caution.Length > 0) ?? ""
        );
    }
}

/// <summary>What became of a part.</summary>
/// <param name="Header">The header of the answers; null when nothing was answered.</param>
/// <param name="Count">What was answered.</param>
/// <param name="Gap">What is not answered, and why; null when all is.</param>
sealed record PartResult(string[]? Header, Count Count, string? Gap);

/// <summary>Verdicts of a part as they arrive, into a file, under the line numbers of the table of rigs.</summary>
/// <param name="file">Where they go.</param>
/// <param name="delimiter">What stands between cells.</param>
/// <param name="isFirst">Whether the header goes before them.</param>
sealed class VerdictTable(Stream file, char delimiter, bool isFirst)
{
    private readonly Dictionary<string, long> verdicts = new(StringComparer.Ordinal);
    private long checks;
    private long problems;
    private string caution = "";

    /// <summary>The header; null before it is known.</summary>
    public string[]? Header { get; private set; }

    /// <summary>The line of the last rig that is answered; 0 before the first.</summary>
    public long LastLine { get; private set; }

    /// <summary>What is answered.</summary>
    public Count Count => new(verdicts, checks, problems, caution);

    /// <summary>Takes the header of an answer; the first counts.</summary>
    public void Begin(string[] header, byte[] preamble)
    {
        if (Header is not null)
        {
            return;
        }

        Header = header;
        if (isFirst)
        {
            var mark = Encoding.UTF8.Preamble;
            file.Write(preamble.AsSpan().StartsWith(mark) ? mark : []);
            WriteRow(file, delimiter, header);
        }
    }

    /// <summary>Takes a row of an answer.</summary>
    /// <param name="cells">Its cells.</param>
    /// <param name="text">Its text.</param>
    /// <param name="shift">By how many lines the request was short of the file.</param>
    /// <returns>Whether it is new; false for a row that was answered before.</returns>
    public bool Take(string[] cells, string text, long shift)
    {
        var own = long.Parse(cells[1], CultureInfo.InvariantCulture);
        var line = own + shift;
        if (line <= LastLine)
        {
            return false;
        }

        // The problem of a row that cannot be read at all names its line too.
        if (cells[^1].StartsWith($"Line {own}", StringComparison.Ordinal))
        {
            var at = text.LastIndexOf($"Line {own}", StringComparison.Ordinal);
            text = $"{text[..at]}Line {line}{text[(at + $"Line {own}".Length)..]}";
        }

        var rest = text[(cells[0].Length + 1 + cells[1].Length)..];
        file.Write(Encoding.UTF8.GetBytes($"{cells[0]}{delimiter}{line}{rest}"));
        LastLine = line;
        Note(cells);
        return true;
    }

    /// <summary>Keeps the caution of a tally.</summary>
    public void Keep(string[] tally)
    {
        const string Before = " not checked. ";
        var text =
            tally.FirstOrDefault(cell => cell.Contains(Before, StringComparison.Ordinal)) ?? "";
        caution =
            text.Length > 0
                ? text[(text.IndexOf(Before, StringComparison.Ordinal) + Before.Length)..]
                : caution;
    }

    /// <summary>Writes what has been taken so far to disk.</summary>
    public void Flush() => file.Flush();

    /// <summary>Writes a row.</summary>
    public static void WriteRow(Stream to, char delimiter, IEnumerable<string> cells)
    {
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = delimiter.ToString(),
        };
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, configuration))
        {
            foreach (var cell in cells)
            {
                csv.WriteField(cell);
            }

            csv.NextRecord();
        }

        to.Write(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private void Note(string[] cells)
    {
        if (cells[0] is "problem")
        {
            problems++;
            return;
        }

        checks++;
        if (Array.IndexOf(Header!, "verdict") is var at and >= 0)
        {
            verdicts[cells[at]] = verdicts.GetValueOrDefault(cells[at]) + 1;
        }
    }
}

/// <summary>The last row of the verdicts.</summary>
static class Tally
{
    /// <summary>Writes it.</summary>
    public static void Write(
        Stream to,
        char delimiter,
        string[] header,
        Count count,
        string[] gaps
    ) =>
        VerdictTable.WriteRow(
            to,
            delimiter,
            header.Select(name =>
                name switch
                {
                    "kind" => "tally",
                    "line" => count.Rigs.ToString(CultureInfo.InvariantCulture),
                    "summary" => $"{count.Text} {count.Caution}".TrimEnd(),
                    "problem" when gaps.Length > 0 => $"unanswered: {string.Join(' ', gaps)}",
                    _ => "",
                }
            )
        );
}

/// <summary>An answer did not come, or not to its end; trying again may help.</summary>
/// <param name="why">In plain words.</param>
/// <param name="after">When the service wants to be asked again.</param>
sealed class Interrupted(string why, TimeSpan? after = null) : Exception(why)
{
    /// <summary>When the service wants to be asked again; null when it does not say.</summary>
    public TimeSpan? After => after;
}

/// <summary>The service does not take what it was sent; trying again would not help.</summary>
/// <param name="why">The words of the service.</param>
sealed class Refused(string why) : Exception(why);

/// <summary>Sends a part to a service, piece by piece, until all of it is answered or trying again is in vain.</summary>
sealed class Sender(
    HttpClient http,
    Uri address,
    RigTable table,
    VerdictTable verdicts,
    Progress progress
)
{
    private const int Attempts = 12;

    // A rig takes a minute at most.
    private static readonly TimeSpan Silence = TimeSpan.FromMinutes(3);

    private readonly ResiliencePipeline patience = new ResiliencePipelineBuilder()
        .AddRetry(
            new()
            {
                ShouldHandle = new PredicateBuilder().Handle<Interrupted>(),
                MaxRetryAttempts = Attempts,
                BackoffType = DelayBackoffType.Exponential,
                UseJitter = true,
                Delay = TimeSpan.FromSeconds(1),
                MaxDelay = TimeSpan.FromSeconds(30),
                DelayGenerator = retry => new((retry.Outcome.Exception as Interrupted)?.After),
                OnRetry = retry =>
                {
                    progress.Say(
                        $"{address.GetLeftPart(UriPartial.Authority)}: {retry.Outcome.Exception!.Message} Trying again in {retry.RetryDelay.TotalSeconds:0} s."
                    );
                    return default;
                },
            }
        )
        .Build();

    /// <summary>Sends it.</summary>
    public async Task<PartResult> Send(Part part, CancellationToken stop)
    {
        var next = part.Line;
        try
        {
            foreach (var piece in table.Pieces(part))
            {
                next = piece.Line;
                while (
                    !await patience.ExecuteAsync(async token => await Attempt(piece, token), stop)
                ) { }
            }

            return new(verdicts.Header, verdicts.Count, null);
        }
        catch (Exception end) when (end is Interrupted or Refused or OperationCanceledException)
        {
            var why = end is OperationCanceledException ? "Stopped." : end.Message;
            next = Math.Max(next, verdicts.LastLine + 1);
            return new(verdicts.Header, verdicts.Count, $"{table.Gap(part, next)}: {why}");
        }
        finally
        {
            verdicts.Flush();
        }
    }

    /// <summary>Sends what is not answered of a piece.</summary>
    /// <returns>Whether all of it is answered now; false when only some more is.</returns>
    private async Task<bool> Attempt(Piece piece, CancellationToken stop)
    {
        var before = verdicts.LastLine;
        try
        {
            await Ask(piece, stop);
            return true;
        }
        catch (Exception broken)
            when (broken is HttpRequestException or IOException or Interrupted
                || (broken is OperationCanceledException && !stop.IsCancellationRequested)
            )
        {
            if (verdicts.LastLine > before)
            {
                return false;
            }

            throw broken as Interrupted ?? new Interrupted($"{broken.Message.TrimEnd('.')}.");
        }
        finally
        {
            verdicts.Flush();
        }
    }

    // The last answered row goes up again, and its second answer is dropped: where a row ends is for the service to say.
    private async Task Ask(Piece piece, CancellationToken stop)
    {
        using var silence = CancellationTokenSource.CreateLinkedTokenSource(stop);
        silence.CancelAfter(Silence);
        var first = Math.Max(piece.Line, verdicts.LastLine);
        using var request = new HttpRequestMessage(HttpMethod.Post, address)
        {
            Content = Content(piece.From(first)),
        };
        request.Headers.Accept.Add(new("text/csv"));
        using var response = await http.SendAsync(
            request,
            HttpCompletionOption.ResponseHeadersRead,
            silence.Token
        );
        await RefuseOthers(response, silence.Token);
        using var text = new StreamReader(
            await response.Content.ReadAsStreamAsync(silence.Token),
            Encoding.UTF8
        );
        await Read(text, first - table.PreambleLines - 1, silence);
    }

    private async Task Read(StreamReader text, long shift, CancellationTokenSource silence)
    {
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = table.Delimiter.ToString(),
            BadDataFound = null,
        };
        using var answer = new CsvParser(text, configuration);
        while (await answer.ReadAsync().WaitAsync(silence.Token) && answer.RawRecord.EndsWith('\n'))
        {
            silence.CancelAfter(Silence);
            var cells = answer.Record!;
            switch (cells[0])
            {
                case "kind":
                    verdicts.Begin(cells, table.Preamble);
                    break;
                case "tally":
                    verdicts.Keep(cells);
                    if (cells[^1].Length > 0)
                    {
                        throw new Interrupted(cells[^1]);
                    }

                    return;
                default:
                    if (verdicts.Take(cells, answer.RawRecord, shift))
                    {
                        progress.Add();
                    }

                    break;
            }
        }

        throw new Interrupted("The answer broke off.");
    }

    private ByteArrayContent Content(ReadOnlyMemory<byte> rows) =>
        new([.. table.Preamble, .. rows.Span]) { Headers = { ContentType = new("text/csv") } };

    private static async Task RefuseOthers(HttpResponseMessage response, CancellationToken stop)
    {
        if (response.StatusCode == HttpStatusCode.OK)
        {
            if (response.Content.Headers.ContentType?.MediaType is not "text/csv")
            {
                throw new Refused(
                    "The service does not answer with a table; leave form out of the query."
                );
            }

            return;
        }

        var why =
            $"HTTP status {(int)response.StatusCode}: {Words(await response.Content.ReadAsStringAsync(stop))}";
        throw (int)response.StatusCode is 408 or 429 or >= 500
            ? new Interrupted(why, After(response.Headers.RetryAfter))
            : new Refused(why);
    }

    private static TimeSpan? After(RetryConditionHeaderValue? header) =>
        header?.Delta
        ?? (
            header?.Date is { } date && date > DateTimeOffset.UtcNow
                ? date - DateTimeOffset.UtcNow
                : null
        );

    /// <summary>What a problem (RFC 9457) says: each fault, or else what is the matter.</summary>
    private static string Words(string body)
    {
        try
        {
            using var problem = JsonDocument.Parse(body);
            var root = problem.RootElement;
            return root.TryGetProperty("errors", out var errors) && errors.GetArrayLength() > 0
                ? string.Join(
                    ' ',
                    errors
                        .EnumerateArray()
                        .Select(error => error.GetProperty("message").GetString())
                )
                : root.GetProperty("detail").GetString() ?? body;
        }
        catch (Exception other)
            when (other is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return body;
        }
    }
}

/// <summary>A bar on the terminal; nothing where there is none.</summary>
sealed class Progress : IDisposable
{
    private const int Width = 30;

    private readonly long all;
    private readonly long begin = Stopwatch.GetTimestamp();
    private readonly Timer? timer;
    private readonly Lock drawing = new();
    private long done;
    private bool isOver;

    /// <summary>Begins.</summary>
    /// <param name="all">How many rigs there are.</param>
    public Progress(long all)
    {
        this.all = all;
        timer = Console.IsErrorRedirected ? null : new(_ => Draw(), null, 200, 200);
    }

    /// <summary>One more is answered.</summary>
    public void Add() => Interlocked.Increment(ref done);

    /// <summary>Says something above the bar.</summary>
    public void Say(string text)
    {
        lock (drawing)
        {
            Console.Error.WriteLine(timer is null ? text : $"\r\u001b[K{text}");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (drawing)
        {
            if (timer is not null && !isOver)
            {
                Console.Error.WriteLine($"\r\u001b[K{Text()}");
            }

            isOver = true;
        }

        timer?.Dispose();
    }

    private void Draw()
    {
        lock (drawing)
        {
            if (!isOver)
            {
                Console.Error.Write($"\r\u001b[K{Text()}");
            }
        }
    }

    private string Text()
    {
        var count = Interlocked.Read(ref done);
        var share = all == 0 ? 1 : Math.Min(1, (double)count / all);
        var rate = count / Math.Max(0.001, Stopwatch.GetElapsedTime(begin).TotalSeconds);
        var left =
            rate > 0
                ? TimeSpan.FromSeconds(Math.Ceiling((all - count) / rate)).ToString("c")
                : "unknown time";
        var bar = new string('#', (int)(share * Width)).PadRight(Width, '.');
        return $"[{bar}] {count} of {all} rigs, {rate:0.0} a second, {left} left";
    }
}
