using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>One pass over a body: where the reader stands and what was found wrong so far.</summary>
internal ref struct Walk
{
    private const int MostGiven = 60;

    /// <summary>The reader, at the token in hand.</summary>
    public Utf8JsonReader Reader;

    public Walk(ReadOnlySpan<byte> body, Shape root, Faults faults)
    {
        Root = root;
        Faults = faults;
        Reader = new(body, new JsonReaderOptions { MaxDepth = RequestReader.MostDepth });
    }

    /// <summary>The whole request, of which the object in hand is a part.</summary>
    public Shape Root { get; }

    /// <summary>What was found wrong so far.</summary>
    public Faults Faults { get; }

    /// <summary>Where the reader stands.</summary>
    public MemberPath Path { get; } = new();

    /// <summary>The token in hand.</summary>
    public readonly JsonTokenType Token => Reader.TokenType;

    /// <summary>The text of the string or name in hand.</summary>
    /// <exception cref="UnreadableException">It holds half of a surrogate pair.</exception>
    public readonly string Text()
    {
        try
        {
            return Reader.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            throw new UnreadableException(Reader.TokenStartIndex);
        }
    }

    /// <summary>The position of the string in hand among known ones; below 0 when it is none of them.</summary>
    /// <exception cref="UnreadableException">It holds half of a surrogate pair.</exception>
    public readonly int Text(byte[][] known)
    {
        if (Reader.ValueIsEscaped)
        {
            var text = System.Text.Encoding.UTF8.GetBytes(Text());
            return Array.FindIndex(known, word => word.AsSpan().SequenceEqual(text));
        }

        for (var at = 0; at < known.Length; at++)
        {
            if (Reader.ValueSpan.SequenceEqual(known[at]))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>Passes over the value in hand with everything in it, which must be readable all the same.</summary>
    public void Skip()
    {
        var depth = Reader.CurrentDepth;
        CheckText();
        if (Token is not (JsonTokenType.StartObject or JsonTokenType.StartArray))
        {
            return;
        }

        while (Reader.Read() && Reader.CurrentDepth > depth)
        {
            CheckText();
        }
    }

    /// <summary>Notes that the value in hand is of the wrong kind, and passes over it.</summary>
    /// <param name="wanted">What it should be, such as "a number from 1 to 14".</param>
    public void WrongType(string wanted)
    {
        var path = Path.ToString();
        var given = Given();
        var quoted = Token == JsonTokenType.String && double.TryParse(given, out _);
        var cure = quoted ? " Write it without quotes." : "";
        var message = $"{Name(path)} is {Kind()} and must be {wanted}.{cure}";
        Skip();
        Faults.Add(new(path, FaultCode.WrongType, message) { Given = given });
    }

    /// <summary>The value in hand as it was sent, cut to a readable length; containers are not repeated.</summary>
    public readonly string? Given() =>
        Token switch
        {
            JsonTokenType.StartObject or JsonTokenType.StartArray => null,
            JsonTokenType.String => Cut(Text()),
            _ => Cut(System.Text.Encoding.UTF8.GetString(Reader.ValueSpan)),
        };

    /// <summary>How a message names a member; the whole body has no path.</summary>
    public static string Name(string path) => path.Length == 0 ? "The body" : path;

    /// <summary>A text cut to a readable length, without cutting a character in two.</summary>
    public static string Cut(string text)
    {
        if (text.Length <= MostGiven)
        {
            return text;
        }

        var end = char.IsHighSurrogate(text[MostGiven - 1]) ? MostGiven - 1 : MostGiven;
        return text[..end] + "…";
    }

    private readonly string Kind() =>
        Token switch
        {
            JsonTokenType.StartObject => "an object",
            JsonTokenType.StartArray => "a list",
            JsonTokenType.String => "text",
            JsonTokenType.Number => "a number",
            JsonTokenType.Null => "null",
            _ => "true or false",
        };

    private readonly void CheckText()
    {
        if (Token is JsonTokenType.String or JsonTokenType.PropertyName && Reader.ValueIsEscaped)
        {
            Text();
        }
    }
}

/// <summary>The body cannot be read as JSON text at a byte that the reader itself did not object to.</summary>
/// <param name="at">The byte, counted from 0.</param>
internal sealed class UnreadableException(long at) : Exception
{
    /// <summary>The byte, counted from 0.</summary>
    public long At { get; } = at;
}
