using System.Reflection;

namespace PowerCheck.Api.Door;

/// <summary>Makes property setters that neither reflect nor box when they are called.</summary>
internal static class Setter
{
    private static readonly MethodInfo Open = typeof(Setter).GetMethod(
        nameof(Close),
        BindingFlags.NonPublic | BindingFlags.Static
    )!;

    /// <summary>The setter of a property of the given type.</summary>
    public static Action<object, T> Of<T>(PropertyInfo property) =>
        (Action<object, T>)
            Open.MakeGenericMethod(property.DeclaringType!, typeof(T)).Invoke(null, [property])!;

    private static Action<object, T> Close<TOwner, T>(PropertyInfo property)
        where TOwner : class
    {
        var set = property.SetMethod!.CreateDelegate<Action<TOwner, T>>();
        return (owner, value) => set((TOwner)owner, value);
    }
}
