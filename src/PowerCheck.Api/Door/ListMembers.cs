using System.Reflection;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>A list whose items are all read in the same way.</summary>
/// <typeparam name="T">Type of the items.</typeparam>
internal abstract class ListMember<T>(PropertyInfo property, int most) : Member(property)
{
    private readonly Action<object, IReadOnlyList<T>?> set = Setter.Of<IReadOnlyList<T>?>(property);

    public override string Wanted => $"a list of at most {most} items";

    public override int? MostItems => most;

    public override void Read(ref Walk walk, object owner)
    {
        if (walk.Token != JsonTokenType.StartArray)
        {
            walk.WrongType(Wanted);
            return;
        }

        var items = new List<T>();
        var count = 0;
        for (; walk.Reader.Read() && walk.Token != JsonTokenType.EndArray; count++)
        {
            ReadItem(ref walk, items, count);
        }

        if (count > most)
        {
            walk.Faults.Add(TooLong(walk.Path.ToString(), count));
        }
        else
        {
            set(owner, items);
        }
    }

    /// <summary>Reads the item in hand into the list, or notes what is wrong with it.</summary>
    protected abstract void ReadItem(ref Walk walk, List<T> items);

    private void ReadItem(ref Walk walk, List<T> items, int position)
    {
        if (position >= most)
        {
            walk.Skip();
            return;
        }

        walk.Path.Enter(position);
        ReadItem(ref walk, items);
        walk.Path.Leave();
    }

    private Fault TooLong(string path, int count) =>
        new(path, FaultCode.OutOfRange, $"{path} has {count} items and must be {Wanted}.")
        {
            Maximum = most,
        };
}

/// <summary>A list of objects.</summary>
/// <typeparam name="T">Type of the objects.</typeparam>
internal sealed class PartsMember<T>(PropertyInfo property, int most)
    : ListMember<T>(property, most)
    where T : class
{
    private readonly Lazy<Shape> shape = new(() => MemberTable.Of(typeof(T)));

    public override Shape Inner => shape.Value;

    public override string Step => ".0";

    protected override void ReadItem(ref Walk walk, List<T> items)
    {
        if (walk.Token == JsonTokenType.StartObject)
        {
            items.Add((T)shape.Value.Read(ref walk));
        }
        else
        {
            walk.WrongType("an object");
        }
    }
}

/// <summary>A list of figures.</summary>
internal sealed class FiguresMember(PropertyInfo property, int most, FigureAttribute figure)
    : ListMember<double>(property, most)
{
    public override TextForm ItemText { get; } = TextForm.Figure(figure);

    protected override void ReadItem(ref Walk walk, List<double> items)
    {
        if (Figures.TryRead(ref walk, figure, out var value))
        {
            items.Add(value);
        }
    }
}

/// <summary>A list of words.</summary>
internal sealed class WordsMember(PropertyInfo property, int most, WordAttribute words)
    : ListMember<string>(property, most)
{
    private readonly WordReader reader = new(words.Allowed);

    public override TextForm Text => TextForm.Words;

    public override TextForm ItemText => TextForm.Plain;

    protected override void ReadItem(ref Walk walk, List<string> items)
    {
        if (reader.Read(ref walk) is { } word)
        {
            items.Add(word);
        }
    }
}
