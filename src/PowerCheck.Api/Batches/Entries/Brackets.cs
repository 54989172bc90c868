using System.Buffers;

namespace PowerCheck.Api.Batches.Entries;

/// <summary>Finds where an item of a JSON list ends: at a comma or bracket that belongs to the list itself.</summary>
internal sealed class Brackets
{
    private int depth;
    private bool isText;
    private bool isEscaped;

    /// <summary>Reads on to behind the end of the item.</summary>
    /// <param name="reader">At what was not looked at yet.</param>
    /// <param name="isEnd">Whether the list ends with it.</param>
    /// <returns>False when the item does not end in what there is.</returns>
    public bool TryClose(ref SequenceReader<byte> reader, out bool isEnd)
    {
        isEnd = false;
        while (TryNext(ref reader, out var mark))
        {
            switch (mark)
            {
                case (byte)'"':
                    isText = !isText;
                    break;
                case (byte)'\n':
                    // No text of JSON goes on over a line end: it was never closed, and the next item is not to be lost with it.
                    isText = false;
                    break;
                case (byte)'{':
                case (byte)'[':
                    depth++;
                    break;
                case (byte)',' when depth == 0:
                    return true;
                case (byte)']' when depth == 0:
                    isEnd = true;
                    return true;
                case (byte)'}':
                case (byte)']':
                    depth = Math.Max(0, depth - 1);
                    break;
                default:
                    break;
            }
        }

        return false;
    }

    // The next mark that may open or close something; what a text says never does.
    private bool TryNext(ref SequenceReader<byte> reader, out byte mark)
    {
        mark = 0;
        while (true)
        {
            if (isEscaped)
            {
                if (!reader.TryRead(out _))
                {
                    return false;
                }

                isEscaped = false;
            }

            var marks = isText ? "\"\\\n"u8 : "\"{}[],"u8;
            if (!reader.TryAdvanceToAny(marks, advancePastDelimiter: false))
            {
                reader.AdvanceToEnd();
                return false;
            }

            reader.TryRead(out mark);
            if (mark != (byte)'\\')
            {
                return true;
            }

            isEscaped = true;
        }
    }
}
