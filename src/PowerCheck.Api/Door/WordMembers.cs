using System.Reflection;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>One of a list of words.</summary>
internal sealed class WordMember(PropertyInfo property, WordAttribute words) : Member(property)
{
    private readonly Action<object, string?> set = Setter.Of<string?>(property);
    private readonly WordReader reader = new(words.Allowed);

    public override string Wanted => reader.Wanted;

    public override TextForm Text => TextForm.Plain;

    public override void Read(ref Walk walk, object owner)
    {
        if (reader.Read(ref walk) is { } word)
        {
            set(owner, word);
        }
    }
}

/// <summary>Yes or no.</summary>
internal sealed class FlagMember(PropertyInfo property) : Member(property)
{
    private readonly Action<object, bool?> set = Setter.Of<bool?>(property);

    public override string Wanted => "true or false";

    public override TextForm Text => TextForm.Flag;

    public override void Read(ref Walk walk, object owner)
    {
        if (walk.Token is JsonTokenType.True or JsonTokenType.False)
        {
            set(owner, walk.Token == JsonTokenType.True);
        }
        else
        {
            walk.WrongType(Wanted);
        }
    }
}

/// <summary>Free text up to a length.</summary>
internal sealed class TextMember(PropertyInfo property, TextAttribute text) : Member(property)
{
    private readonly Action<object, string?> set = Setter.Of<string?>(property);

    public override string Wanted => $"text of at most {text.Maximum} characters";

    public override TextForm Text => TextForm.Plain;

    public override void Read(ref Walk walk, object owner)
    {
        if (walk.Token != JsonTokenType.String)
        {
            walk.WrongType(Wanted);
            return;
        }

        var given = walk.Text();
        if (given.Length <= text.Maximum)
        {
            // Text of blanks alone says nothing.
            set(owner, string.IsNullOrWhiteSpace(given) ? null : given);
        }
        else
        {
            walk.Faults.Add(TooLong(walk.Path.ToString(), given));
        }
    }

    private Fault TooLong(string path, string given) =>
        new(
            path,
            FaultCode.OutOfRange,
            $"{path} has {given.Length} characters and must be {Wanted}."
        )
        {
            Given = Walk.Cut(given),
            Maximum = text.Maximum,
        };
}
