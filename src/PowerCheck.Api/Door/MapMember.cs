using System.Reflection;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>An object whose members are paths of the request: each holds a figure, or an object that says more.</summary>
/// <typeparam name="T">Type of the objects.</typeparam>
internal sealed class MapMember<T>(PropertyInfo property, MapAttribute map) : Member(property)
    where T : class
{
    private readonly Action<object, IReadOnlyDictionary<string, T>?> set =
        Setter.Of<IReadOnlyDictionary<string, T>?>(property);
    private readonly Lazy<Shape> shape = new(() => MemberTable.Of(typeof(T)));
    private readonly PropertyInfo plain = PlainAttribute.Of(typeof(T))!;

    public override string Wanted => $"an object of at most {map.Maximum} members";

    public override Shape Entries => shape.Value;

    public override TextForm ItemText { get; } =
        TextForm.Figure(PlainAttribute.Of(typeof(T))!.GetCustomAttribute<FigureAttribute>()!);

    public override void Read(ref Walk walk, object owner)
    {
        if (walk.Token != JsonTokenType.StartObject)
        {
            walk.WrongType(Wanted);
            return;
        }

        var items = new Dictionary<string, T>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walk.Reader.Read() && walk.Token != JsonTokenType.EndObject)
        {
            var name = walk.Text();
            walk.Reader.Read();
            if (seen.Count >= map.Maximum)
            {
                seen.Add(name);
                walk.Skip();
                continue;
            }

            walk.Path.Enter(Walk.Cut(name));
            ReadItem(ref walk, items, name, seen.Add(name));
            walk.Path.Leave();
        }

        if (seen.Count > map.Maximum)
        {
            var path = walk.Path.ToString();
            walk.Faults.Add(
                new(
                    path,
                    FaultCode.OutOfRange,
                    $"{path} has too many members and must be {Wanted}."
                )
                {
                    Maximum = map.Maximum,
                }
            );
        }

        set(owner, items);
    }

    private void ReadItem(ref Walk walk, Dictionary<string, T> items, string name, bool isNew)
    {
        if (!isNew)
        {
            Shape.NoteDoubled(ref walk);
        }
        else if (walk.Token == JsonTokenType.StartObject)
        {
            items[name] = (T)shape.Value.Read(ref walk);
        }
        else if (walk.Token == JsonTokenType.Number)
        {
            var figure = plain.GetCustomAttribute<FigureAttribute>()!;
            if (Figures.TryRead(ref walk, figure, out var value))
            {
                var item = Activator.CreateInstance<T>();
                plain.SetValue(item, value);
                items[name] = item;
            }
        }
        else if (walk.Token != JsonTokenType.Null)
        {
            walk.WrongType("a number or an object");
        }
    }
}
