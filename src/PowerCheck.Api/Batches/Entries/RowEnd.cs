using System.Buffers;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>What became of looking for the end of a row.</summary>
internal enum RowState
{
    /// <summary>It ends.</summary>
    Whole,

    /// <summary>It does not end in what there is.</summary>
    Open,

    /// <summary>Something follows a closing quote that is not the next cell.</summary>
    Broken,
}

/// <summary>Finds where a row of a table ends: at a line end that stands outside quotes.</summary>
internal static class RowEnd
{
    /// <summary>Most lines of one row, assumed. A quote that is open for longer was never meant to be one.</summary>
    private const int MostLines = 100;

    private enum At
    {
        Start,
        Plain,
        Quoted,
        Closed,
    }

    /// <summary>Looks for the end of the first row.</summary>
    /// <param name="text">What there is.</param>
    /// <param name="delimiter">What stands between cells.</param>
    /// <param name="cells">How many cells a row has that goes on over line ends; another one is broken.</param>
    /// <param name="isLast">Whether nothing more comes, so that the end of the text ends the row too.</param>
    public static (RowState State, long Length) Find(
        in ReadOnlySequence<byte> text,
        byte delimiter,
        int cells,
        bool isLast
    )
    {
        var (at, lines, found, length) = (At.Start, 1, 1, 0L);
        foreach (var piece in text)
        {
            foreach (var one in piece.Span)
            {
                length++;
                if (one == (byte)'\n' && at != At.Quoted)
                {
                    return (
                        lines == 1 || found == cells ? RowState.Whole : RowState.Broken,
                        length
                    );
                }

                at = Next(at, one, delimiter);
                found += at == At.Start ? 1 : 0;
                lines += one == (byte)'\n' ? 1 : 0;
                if (lines > MostLines || (at is At.Closed && IsStray(one)))
                {
                    return (RowState.Broken, length);
                }
            }
        }

        return !isLast ? (RowState.Open, length)
            : at == At.Quoted || (lines > 1 && found != cells) ? (RowState.Broken, length)
            : (RowState.Whole, length);
    }

    private static At Next(At at, byte one, byte delimiter) =>
        at switch
        {
            At.Quoted => one == (byte)'"' ? At.Closed : At.Quoted,
            At.Closed when one == (byte)'"' => At.Quoted,
            _ when one == delimiter => At.Start,
            At.Start when one == (byte)'"' => At.Quoted,
            At.Closed => At.Closed,
            _ => At.Plain,
        };

    private static bool IsStray(byte one) => one is not ((byte)'"' or (byte)'\r' or (byte)' ');
}
