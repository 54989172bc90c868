namespace PowerCheck.Api.Checks.Rules;

/// <summary>The rule of every part that is given as continuous and burst.</summary>
internal static class BurstRule
{
    public static void Apply(
        Place place,
        (string Name, double? Value) continuous,
        (string Name, double? Value) burst,
        double? seconds
    )
    {
        place.Ordered(continuous.Name, continuous.Value, burst.Name, burst.Value);
        place.Needs("burstSeconds", seconds is not null, burst.Name, burst.Value is not null);
    }
}
