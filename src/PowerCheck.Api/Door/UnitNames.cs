using System.Reflection;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Door;

/// <summary>Finds the units of the catalogue by their names in code, which is all that an attribute can carry.</summary>
internal static class UnitNames
{
    public static Unit Find(string name) =>
        typeof(Unit).GetField(name, BindingFlags.Public | BindingFlags.Static)?.GetValue(null)
            as Unit
        ?? throw new ArgumentException($"no unit is named {name}", nameof(name));
}
