using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Findings;

/// <summary>The findings of a rig in order, and the verdict that follows from them (M13).</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Findings">Deciding first, then by outcome, then the closest to its limit first.</param>
public sealed record Judgement(Verdict Verdict, IReadOnlyList<Finding> Findings)
{
    private static readonly FindingKind[] HardMismatches =
    [
        FindingCatalogue.ControllerMotorKind,
        FindingCatalogue.ControllerCellCount,
        FindingCatalogue.ControllerVoltage,
        FindingCatalogue.MotorVoltage,
        FindingCatalogue.ControllerElectricalSpeed,
        FindingCatalogue.DrivetrainPitch,
    ];

    private static readonly Dictionary<string, int> Place = FindingCatalogue
        .All.Select((kind, n) => (kind.Code, n))
        .ToDictionary(x => x.Code, x => x.n, StringComparer.Ordinal);

    /// <summary>Every finding of a rig.</summary>
    /// <param name="it">What was computed.</param>
    public static IReadOnlyList<Finding> Inspect(Inspection it) =>
        [
            .. MatchFindings.Of(it),
            .. DrivetrainFindings.Of(it),
            .. HeatFindings.Of(it),
            .. MotorFindings.Of(it),
            .. ControllerFindings.Of(it),
            .. BatteryFindings.Of(it),
            .. SupplyFindings.Of(it),
        ];

    /// <summary>
    /// The verdict: a hard mismatch or a fail is unsuitable; a judged limit that is unknown, undetermined; a doubt, limited;
    /// else suitable.
    /// </summary>
    /// <param name="findings">The findings.</param>
    public static Judgement Of(IReadOnlyList<Finding> findings)
    {
        var judged = findings.Where(f => f.Kind.Judged && !IsCaution(f)).ToArray();
        var verdict =
            judged.Any(f => f.Outcome == Outcome.Fails) ? Verdict.Unsuitable
            : judged.Any(f => f.Outcome == Outcome.Unknown) ? Verdict.Undetermined
            : judged.Any(f => f.Outcome == Outcome.Doubtful) ? Verdict.Limited
            : Verdict.Suitable;
        var decisive = Ordered(judged.Where(f => f.Outcome == Decisive(verdict)), hardFirst: true)
            .FirstOrDefault();
        return new(
            verdict,
            Ordered(
                findings.Select(f => ReferenceEquals(f, decisive) ? f with { Decides = true } : f),
                hardFirst: false
            )
        );
    }

    private static Finding[] Ordered(IEnumerable<Finding> findings, bool hardFirst)
    {
        var items = findings.ToArray();
        var keys = items
            .Select(f =>
                (
                    f.Decides ? 0 : 1,
                    hardFirst ? Hardness(f) : Rank(f.Outcome),
                    f.Caution ? 0 : 1,
                    -Closeness(f),
                    Place[f.Kind.Code],
                    f.LoadCase is null ? 0 : f.LoadCase.Length
                )
            )
            .ToArray();
        Array.Sort(keys, items);
        return items;
    }

    /// <summary>The deciding figure and the condition in one plain sentence.</summary>
    /// <param name="it">What was computed.</param>
    public string Summary(Inspection it)
    {
        var decisive = Findings.FirstOrDefault(f => f.Decides);
        return Verdict switch
        {
            Verdict.Suitable =>
                $"Suitable: up to {Say.Figure(it.Rig.ClimbSlopeRad, Unit.Degree)} at "
                    + $"{Say.Figure(it.Rig.Vehicle.MassKg, Unit.Kilogram)} every limit holds; the climb takes "
                    + $"{Say.Figure(it.Cases[LoadCaseName.Climb].MotorCurrentA, Unit.Ampere)} of motor current and "
                    + $"{Say.Figure(it.Cases[LoadCaseName.Climb].BatteryCurrentA, Unit.Ampere)} of battery current, and the pack "
                    + $"lasts about {Say.Figure(it.Result.Endurance.RunTimeS, Unit.Minute)}.",
            Verdict.Limited => $"Limited: {Lower(decisive?.Message)}",
            Verdict.Unsuitable => $"Unsuitable: {Lower(decisive?.Message)}",
            _ => $"Undetermined: {Lower(decisive?.Message)}{Needed(decisive)}",
        };
    }

    private static string Needed(Finding? finding) =>
        finding is { Needs.Count: > 0 }
            ? $" Give {string.Join(" or ", finding.Needs.Select(need => need.Path))} to decide it."
            : "";

    private static string Lower(string? message) =>
        message is not { Length: > 1 } ? ""
        : char.IsUpper(message[1]) ? message
        : char.ToLowerInvariant(message[0]) + message[1..];

    private static bool IsCaution(Finding finding) =>
        finding is { Caution: true, Outcome: Outcome.Holds } && double.IsNaN(finding.Severeness);

    private static Outcome Decisive(Verdict verdict) =>
        verdict switch
        {
            Verdict.Unsuitable => Outcome.Fails,
            Verdict.Undetermined => Outcome.Unknown,
            Verdict.Limited => Outcome.Doubtful,
            _ => Outcome.Holds,
        };

    private static int Hardness(Finding finding)
    {
        var place = Array.IndexOf(HardMismatches, finding.Kind);
        return place < 0 ? HardMismatches.Length : place;
    }

    private static double Closeness(Finding finding) =>
        double.IsNaN(finding.Severeness) ? -1 : finding.Severeness;

    private static int Rank(Outcome outcome) =>
        outcome switch
        {
            Outcome.Fails => 0,
            Outcome.Unknown => 1,
            Outcome.Doubtful => 2,
            _ => 3,
        };
}
