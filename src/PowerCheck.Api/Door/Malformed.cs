using System.Text;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>Where a body stops being JSON text, and what stands there.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Character within the line, counted from 1.</param>
/// <param name="Reason">What is wrong there, as the end of a sentence.</param>
internal sealed record Malformed(int Line, int Column, string Reason)
{
    private const string Unexpected = "what stands there does not belong in JSON text";

    /// <summary>A body without anything in it.</summary>
    public static readonly Malformed Empty = new(1, 1, "the body is empty");

    /// <summary>The place to which the reader objected.</summary>
    public static Malformed At(ReadOnlySpan<byte> text, JsonException broken, int depth)
    {
        var start = LineStart(text, broken.LineNumber ?? 0);
        var at = (int)Math.Min(start + (broken.BytePositionInLine ?? 0), text.Length);
        return new(
            (int)(broken.LineNumber ?? 0) + 1,
            Encoding.UTF8.GetCharCount(text[start..at]) + 1,
            Reasoned(text, at, depth)
        );
    }

    /// <summary>A byte that is not the text it should be.</summary>
    public static Malformed At(ReadOnlySpan<byte> text, long at)
    {
        var before = text[..(int)at];
        return new(
            before.Count((byte)'\n') + 1,
            Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1,
            "what stands there is not valid UTF-8 text"
        );
    }

    /// <summary>The first byte that is no UTF-8, in a text that holds one.</summary>
    public static int FirstInvalid(ReadOnlySpan<byte> text)
    {
        var at = 0;
        while (
            Rune.DecodeFromUtf8(text[at..], out _, out var length)
            == System.Buffers.OperationStatus.Done
        )
        {
            at += length;
        }

        return at;
    }

    private static int LineStart(ReadOnlySpan<byte> text, long line)
    {
        var start = 0;
        for (; line > 0; line--)
        {
            start += text[start..].IndexOf((byte)'\n') + 1;
        }

        return start;
    }

    private static string Reasoned(ReadOnlySpan<byte> text, int at, int depth)
    {
        if (text.Trim(" \t\r\n"u8).IsEmpty)
        {
            return Empty.Reason;
        }

        if (at >= text.TrimEnd(" \t\r\n"u8).Length)
        {
            return "the body ends too early";
        }

        return text[at] switch
        {
            (byte)'/' => "comments are not allowed",
            (byte)'}' or (byte)']' when text[..at].TrimEnd(" \t\r\n"u8) is [.., (byte)','] =>
                "the comma before it is one too many",
            (byte)'{' or (byte)'[' when depth >= RequestReader.MostDepth - 1 =>
                $"objects and lists are nested deeper than {RequestReader.MostDepth}",
            _ when depth == 0 && text[..at].Contains((byte)'}') =>
                "text follows the end of the body",
            _ => Unexpected,
        };
    }
}
