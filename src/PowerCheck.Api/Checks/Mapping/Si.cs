using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns figures that may be left out into SI.</summary>
internal static class Si
{
    /// <summary>A figure of this unit in SI; null stays null.</summary>
    public static double? Of(this Unit unit, double? figure) =>
        figure is { } given ? unit.ToSi(given) : null;
}
