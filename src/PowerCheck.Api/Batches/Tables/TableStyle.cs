namespace PowerCheck.Api.Batches.Tables;

/// <summary>How a table is written; the answer is written as the request was.</summary>
/// <param name="Delimiter">What stands between cells.</param>
/// <param name="HasMark">Whether it begins with a byte order mark, by which spreadsheets know UTF-8.</param>
internal sealed record TableStyle(char Delimiter, bool HasMark)
{
    /// <summary>As RFC 4180 has it.</summary>
    public static readonly TableStyle Plain = new(',', HasMark: false);

    /// <summary>Whether figures have a decimal comma: where spreadsheets put semicolons between cells, they do so because of it.</summary>
    public bool IsDecimalComma => Delimiter == ';';

    /// <summary>What a header puts between its cells.</summary>
    public static char DelimiterOf(ReadOnlySpan<char> header)
    {
        var best = ',';
        foreach (var candidate in ";\t")
        {
            best = header.Count(candidate) > header.Count(best) ? candidate : best;
        }

        return best;
    }
}
