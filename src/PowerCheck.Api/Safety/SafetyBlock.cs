using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Safety;

/// <summary>Puts the cautions in the order that suits an answer.</summary>
internal static class SafetyBlock
{
    /// <summary>Where the cautions can be read by themselves.</summary>
    public const string Address = "/v1/battery-safety";

    /// <summary>When the travel rules were last compared with their sources.</summary>
    private const string TravelRulesAsOf = "2026-11";

    /// <summary>The cautions that matter for a finding of each code; the other codes have none of their own.</summary>
    private static readonly Dictionary<string, string[]> ByCode = new(StringComparer.Ordinal)
    {
        [FindingCatalogue.BatteryTemperature.Code] = [Cautions.Heat],
        [FindingCatalogue.BatteryContinuousRate.Code] = [Cautions.Discharge, Cautions.Heat],
        [FindingCatalogue.BatteryBurstRate.Code] = [Cautions.Discharge, Cautions.Heat],
        [FindingCatalogue.BatteryCutoff.Code] = [Cautions.Discharge],
        [FindingCatalogue.ControllerCellCount.Code] = [Cautions.Charger],
        [FindingCatalogue.ControllerVoltage.Code] = [Cautions.Charger],
        [FindingCatalogue.MotorVoltage.Code] = [Cautions.Charger],
        [FindingCatalogue.WiringBatteryLead.Code] = [Cautions.ShortCircuit],
        [FindingCatalogue.WiringConnector.Code] = [Cautions.ShortCircuit],
        [FindingCatalogue.WiringFuseCarries.Code] = [Cautions.ShortCircuit],
        [FindingCatalogue.WiringFuseProtects.Code] = [Cautions.ShortCircuit],
    };

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
        ByCode.GetValueOrDefault(finding.Kind.Code, []);

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
