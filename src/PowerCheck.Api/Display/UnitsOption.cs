using PowerCheck.Api.Door;

namespace PowerCheck.Api.Display;

/// <summary>In which units the page shows its figures, as a query parameter. Links hold the same figures in either.</summary>
internal static class UnitsOption
{
    /// <summary>Its name.</summary>
    public const string Name = "units";

    private const string Imperial = "imperial";
    private static readonly string[] Words = ["metric", Imperial];

    /// <summary>The units; metric when it is left out, or wrong, which is then noted.</summary>
    /// <param name="query">The query.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public static DisplayUnits Of(IQueryCollection query, Faults faults) =>
        QueryDoor.Word(query, Name, Words, faults) is Imperial
            ? DisplayUnits.Imperial
            : DisplayUnits.Metric;

    /// <summary>What it says, as a parameter behind others; nothing where it says what is meant without it.</summary>
    public static string Said(DisplayUnits units) => units.IsImperial ? $"{Name}={Imperial}" : "";

    /// <summary>The word for units.</summary>
    public static string Word(DisplayUnits units) => units.IsImperial ? Imperial : Words[0];
}
