using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Safety;

/// <summary>Puts the cautions in the order that suits an answer.</summary>
internal static class SafetyBlock
{
    /// <summary>Where the cautions can be read by themselves.</summary>
    public const string Address = "/v1/battery-safety";

    /// <summary>When the travel rules were last compared with their sources.</summary>
    private const string TravelRulesAsOf = "2026-11";

    /// <summary>The cautions where no finding is at hand.</summary>
    public static BatterySafety Plain { get; } = Leading([]);

    /// <summary>The cautions with those first that matter for what was found.</summary>
    /// <param name="findings">The findings of a check, the most important first.</param>
    public static BatterySafety For(IReadOnlyList<Finding> findings)
    {
        var keys = findings.Where(Alarming).SelectMany(Keys).Distinct(StringComparer.Ordinal);
        var leading = keys.ToArray();
        return leading.Length == 0 ? Plain : Leading(leading);
    }

    private static bool Alarming(Finding finding) =>
        finding.Outcome is Outcome.Fails or Outcome.Doubtful;

    private static IReadOnlyList<string> Keys(Finding finding) =>
        finding.Kind.Code switch
        {
            "battery.temperature" => [Cautions.Heat],
            "battery.continuous-rate" or "battery.burst-rate" =>
            [
                Cautions.Discharge,
                Cautions.Heat,
            ],
            "battery.cutoff" => [Cautions.Discharge],
            "controller.cell-count" or "controller.voltage" or "motor.voltage" =>
            [
                Cautions.Charger,
            ],
            "wiring.battery-lead"
            or "wiring.connector"
            or "wiring.fuse-carries"
            or "wiring.fuse-protects" => [Cautions.ShortCircuit],
            _ => [],
        };

    private static BatterySafety Leading(string[] keys)
    {
        var first = keys.Select(Cautions.Of).ToArray();
        SafetyCaution[] ordered = [.. first, .. Cautions.All.Except(first)];
        return new()
        {
            Leading = ordered[0].Text,
            Cautions = ordered,
            DefersTo = Cautions.DefersTo,
            TravelRulesAsOf = TravelRulesAsOf,
            Address = Address,
        };
    }
}
