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
    /// <param name="isLast">Whether nothing more comes, so that the end of the text ends the row too.</param>
    public static (RowState State, long Length) Find(
        in ReadOnlySequence<byte> text,
        byte delimiter,
        bool isLast
    )
    {
        var at = At.Start;
        var length = 0L;
        foreach (var piece in text)
        {
            foreach (var one in piece.Span)
            {
                length++;
                if (one == (byte)'\n' && at != At.Quoted)
                {
                    return (RowState.Whole, length);
                }

                at = Next(at, one, delimiter);
                if (at is At.Closed && IsStray(one))
                {
                    return (RowState.Broken, length);
                }
            }
        }

        return at == At.Quoted && isLast ? (RowState.Broken, length)
            : isLast ? (RowState.Whole, length)
            : (RowState.Open, length);
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
