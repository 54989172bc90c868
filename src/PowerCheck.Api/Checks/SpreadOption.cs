using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Door;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Checks;

/// <summary>How the spread of the figures is carried to the limits, as a query parameter.</summary>
internal static class SpreadOption
{
    /// <summary>Its name.</summary>
    public const string Name = "spread";

    /// <summary>What is meant where it is left out.</summary>
    public const SpreadMethod Usual = SpreadMethod.Linear;

    private static readonly string[] Allowed = [.. Enum.GetValues<SpreadMethod>().Select(Words.Of)];

    /// <summary>What it says; linear when it is left out, or wrong, which is then noted.</summary>
    public static SpreadMethod Of(IQueryCollection query, Faults faults) =>
        Word<SpreadMethod>.Of(QueryDoor.Word(query, Name, Allowed, faults)) ?? Usual;
}
