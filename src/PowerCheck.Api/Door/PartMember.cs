using System.Reflection;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>An object within an object.</summary>
internal sealed class PartMember(PropertyInfo property) : Member(property)
{
    private readonly Action<object, object?> set = Box(property);
    private readonly Lazy<Shape> shape = new(() => MemberTable.Of(property.PropertyType));

    public override string Wanted => "an object";

    public override Shape Inner => shape.Value;

    public override void Read(ref Walk walk, object owner)
    {
        if (walk.Token == JsonTokenType.StartObject)
        {
            set(owner, shape.Value.Read(ref walk));
        }
        else
        {
            walk.WrongType(Wanted);
        }
    }

    // One setter a type, made once: an object needs no boxing, so the reflected type is hidden behind object.
    private static Action<object, object?> Box(PropertyInfo property) =>
        (Action<object, object?>)
            typeof(PartMember)
                .GetMethod(nameof(Close), BindingFlags.NonPublic | BindingFlags.Static)!
                .MakeGenericMethod(property.PropertyType)
                .Invoke(null, [property])!;

    private static Action<object, object?> Close<T>(PropertyInfo property)
        where T : class
    {
        var typed = Setter.Of<T?>(property);
        return (owner, value) => typed(owner, (T?)value);
    }
}
