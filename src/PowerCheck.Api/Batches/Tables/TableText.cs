using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace PowerCheck.Api.Batches.Tables;

/// <summary>Cells out of the text of one row (RFC 4180).</summary>
internal static class TableText
{
    private static readonly Dictionary<char, CsvConfiguration> Configurations = new()
    {
        [','] = Configuration(','),
        [';'] = Configuration(';'),
        ['\t'] = Configuration('\t'),
    };

    /// <summary>The cells of a row; null when it is more than one, as a carriage return alone would make it.</summary>
    public static string[]? Cells(ReadOnlySpan<byte> row, char delimiter)
    {
        using var parser = new CsvParser(
            new StringReader(Encoding.UTF8.GetString(row)),
            Form(delimiter)
        );
        var cells = parser.Read() ? parser.Record! : [];
        return parser.Read() ? null : cells;
    }

    /// <summary>How the library reads and writes rows.</summary>
    public static CsvConfiguration Form(char delimiter) => Configurations[delimiter];

    private static CsvConfiguration Configuration(char delimiter) =>
        new(CultureInfo.InvariantCulture)
        {
            Delimiter = delimiter.ToString(),
            HasHeaderRecord = false,
            // A quote within a cell that does not begin with one is a letter like any other: 12" is a size.
            BadDataFound = null,
            BufferSize = 1024,
        };
}
