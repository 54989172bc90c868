using System.Text.Json;
using System.Text.Unicode;

namespace PowerCheck.Api.Door;

/// <summary>
/// Reads a body strictly, in one pass: the request as far as it is right, and everything that is wrong with it.
/// </summary>
internal static class RequestReader
{
    /// <summary>Deepest nesting that is read; a check needs five.</summary>
    public const int MostDepth = 16;

    /// <summary>Reads a body.</summary>
    /// <typeparam name="T">The request type.</typeparam>
    /// <param name="body">The body as it was sent.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public static Reading<T> Read<T>(ReadOnlySpan<byte> body, Faults faults)
        where T : class
    {
        var text = body.StartsWith("\uFEFF"u8) ? body[3..] : body;
        if (!Utf8.IsValid(text))
        {
            return new(null, Malformed.At(text, Malformed.FirstInvalid(text)));
        }

        var walk = new Walk(text, MemberTable.Of(typeof(T)), faults);
        try
        {
            return new(ReadRoot<T>(ref walk), null);
        }
        catch (JsonException broken)
        {
            return new(null, Malformed.At(text, broken, walk.Reader.CurrentDepth));
        }
        catch (UnreadableException unreadable)
        {
            return new(null, Malformed.At(text, unreadable.At));
        }
    }

    private static T? ReadRoot<T>(ref Walk walk)
        where T : class
    {
        walk.Reader.Read();
        T? request = null;
        if (walk.Token == JsonTokenType.StartObject)
        {
            request = (T)walk.Root.Read(ref walk);
        }
        else
        {
            walk.WrongType("an object");
        }

        // One more step makes the reader object to anything that follows.
        walk.Reader.Read();
        return request;
    }
}

/// <summary>What came of reading a body.</summary>
/// <typeparam name="T">The request type.</typeparam>
/// <param name="Request">The request as far as it was right; null when the body was no object.</param>
/// <param name="Malformed">Where the body stopped being JSON; null when all of it was.</param>
internal readonly record struct Reading<T>(T? Request, Malformed? Malformed)
    where T : class;
