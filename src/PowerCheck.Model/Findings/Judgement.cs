using System.Collections.Frozen;
using PowerCheck.Model.Assumptions;
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

    // What a rig is driven up and with: the condition in a builder's words.
    private static readonly string[] Conditions = ["course.climbSlopeDegrees", "vehicle.massKg"];

    // Orders findings that are otherwise alike as the catalogue does.
    private static readonly FrozenDictionary<FindingKind, int> Place = FindingCatalogue
        .All.Select((kind, n) => KeyValuePair.Create(kind, n))
        .ToFrozenDictionary();

    /// <summary>Every finding of a rig.</summary>
    /// <param name="it">What was computed.</param>
    public static IReadOnlyList<Finding> Inspect(Inspection it) =>
        [.. Limits(it), .. StallFindings.Of(it)];

    /// <summary>The findings that hold a figure against a limit, and what goes with them.</summary>
    /// <param name="it">What was computed.</param>
    public static IReadOnlyList<Finding> Limits(Inspection it)
    {
        Finding[] findings =
        [
            .. MatchFindings.Of(it),
            .. DrivetrainFindings.Of(it),
            .. HeatFindings.Of(it),
            .. MotorFindings.Of(it),
            .. ControllerFindings.Of(it),
            .. BatteryFindings.Of(it),
            .. SupplyFindings.Of(it),
        ];
        var bounds = it
            .Cases.All.Where(load => load.UpperBound)
            .Select(load => Say.Word(load.Name))
            .ToArray();
        return [.. findings.Select(finding => Settle(finding, bounds))];
    }

    // A figure that is the most that it can be makes a limit hold; past the limit nothing is known.
    private static Finding Settle(Finding finding, string[] bounds)
    {
        var bound = finding.Bound || bounds.Contains(finding.LoadCase, StringComparer.Ordinal);
        return !bound ? finding
            : finding.Outcome is Outcome.Fails or Outcome.Doubtful ? Make.Unknown(finding)
            : finding with { Bound = true };
    }

    /// <summary>The findings once it is known how sure each is (M13).</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="chances">How sure each is; null where nothing can be said.</param>
    public static IReadOnlyList<Finding> Weigh(
        IReadOnlyList<Finding> findings,
        IReadOnlyList<Chance?> chances
    ) => [.. findings.Select((finding, n) => Weigh(finding, chances[n]))];

    private static Finding Weigh(Finding finding, Chance? chance)
    {
        if (chance is null || finding.Outcome == Outcome.Unknown)
        {
            return finding;
        }

        var (outcome, caution) = Thresholds.Outcome(
            chance.Exceedance,
            finding.Reach > 1,
            finding.Worst,
            finding.InDoubt,
            finding.Caution
        );
        var weighed = finding with
        {
            Outcome = outcome,
            Caution = caution,
            Chance = chance,
            Measure = Thresholds.IsOpen(chance.Exceedance) ? Measure.Of(chance.DecidedBy) : null,
        };
        return finding.Bound && outcome != Outcome.Holds ? Make.Unknown(weighed) : weighed;
    }

    /// <summary>
    /// The verdict: a hard mismatch or a fail is unsuitable; a judged limit that is unknown, undetermined; a doubt, limited;
    /// else suitable.
    /// </summary>
    /// <param name="findings">The findings.</param>
    public static Judgement Of(IReadOnlyList<Finding> findings)
    {
        var verdict = Verdict.Suitable;
        foreach (var finding in findings)
        {
            if (Counts(finding) && Of(finding.Outcome) > verdict)
            {
                verdict = Of(finding.Outcome);
            }
        }

        Finding? decisive = null;
        foreach (var finding in findings)
        {
            if (
                Counts(finding)
                && Of(finding.Outcome) == verdict
                && (decisive is null || Decisive(finding, decisive) < 0)
            )
            {
                decisive = finding;
            }
        }

        var ordered = findings
            .Select(f => ReferenceEquals(f, decisive) ? f with { Decides = true } : f)
            .ToArray();
        Array.Sort(ordered, InOrder);
        return new(verdict, ordered);
    }

    // What an outcome makes of the verdict; the verdicts stand in rising order of weight.
    private static Verdict Of(Outcome outcome) =>
        outcome switch
        {
            Outcome.Fails => Verdict.Unsuitable,
            Outcome.Unknown => Verdict.Undetermined,
            Outcome.Doubtful => Verdict.Limited,
            _ => Verdict.Suitable,
        };

    // Of what fails, parts that do not match at all come first.
    private static int Decisive(Finding a, Finding b)
    {
        var hardness = a.Outcome == Outcome.Fails ? Hardness(a).CompareTo(Hardness(b)) : 0;
        return hardness != 0 ? hardness : InOrder(a, b);
    }

    private static int InOrder(Finding a, Finding b)
    {
        var order = b.Decides.CompareTo(a.Decides);
        order = order != 0 ? order : Rank(a.Outcome).CompareTo(Rank(b.Outcome));
        order = order != 0 ? order : b.Caution.CompareTo(a.Caution);
        order = order != 0 ? order : Likely(b).CompareTo(Likely(a));
        order = order != 0 ? order : Closeness(b).CompareTo(Closeness(a));
        order = order != 0 ? order : Place[a.Kind].CompareTo(Place[b.Kind]);
        return order != 0 ? order : string.CompareOrdinal(a.LoadCase, b.LoadCase);
    }

    /// <summary>How sure the verdict is, by the limit that decides it; low where nothing can be said of that.</summary>
    public Confidence Confidence =>
        Deciding?.Chance is { } chance ? Thresholds.Confidence(chance) : Confidence.Low;

    private Finding? Deciding => Findings.FirstOrDefault(f => f.Decides);

    /// <summary>The deciding figure and the condition in plain words.</summary>
    /// <param name="it">What was computed.</param>
    public string Summary(Inspection it)
    {
        var decisive = Deciding;
        return Verdict switch
        {
            Verdict.Suitable =>
                $"Suitable: up to {Say.Figure(it.Rig.ClimbSlopeRad, Unit.Degree)} at "
                    + $"{Say.Figure(it.Rig.Vehicle.MassKg, Unit.Kilogram)} every limit holds; the climb takes "
                    + $"{Say.Figure(it.Cases[LoadCaseName.Climb].MotorCurrentA, Unit.Ampere)} of motor current and "
                    + $"{Say.Figure(it.Cases[LoadCaseName.Climb].BatteryCurrentA, Unit.Ampere)} of battery current, and the pack "
                    + $"{Lasting(it.Result.Endurance.RunTimeS)} on this course. Nearest to its limit: "
                    + $"{Lower(decisive?.Message)}",
            Verdict.Limited => $"Limited: {Lower(decisive?.Message)}{Cure(decisive)}",
            Verdict.Unsuitable => $"Unsuitable: {Lower(decisive?.Message)}{Cure(decisive)}",
            _ => $"Undetermined: {Lower(decisive?.Message)} To decide, give {Needed()}.",
        };
    }

    // Up to where the limit holds, and the smallest single change of those with the best verdict.
    private static string Cure(Finding? finding)
    {
        var cures = (finding?.Remedies ?? []).Where(remedy => remedy.Verdict is not null).ToArray();
        var least = cures.Where(cure =>
            cure.To < cure.From && Conditions.Contains(cure.Path, StringComparer.Ordinal)
        );
        var upTo = string.Join(" or ", least.Select(cure => Say.Figure(cure.To, cure.Unit)));
        var holds = upTo.Length == 0 ? "" : $" This limit holds up to {upTo}.";
        return cures.MinBy(cure => cure.Verdict) is { } best
            ? $"{holds} The smallest single change that {Leaving(best.Verdict!.Value)} is the {best.Noun} at "
                + $"{Say.Figure(best.To, best.Unit)} instead of {Say.Figure(best.From, best.Unit)}."
            : holds;
    }

    private static string Leaving(Verdict verdict) =>
        verdict == Verdict.Unsuitable
            ? "makes this limit hold, and leaves others that fail,"
            : $"makes the rig {Words.Of(verdict)}";

    private static string Lasting(double seconds) =>
        double.IsInfinity(seconds)
            ? "does not run down"
            : $"lasts about {Say.Figure(seconds, Unit.Minute)}";

    // Everything that the unknown findings need, each once; where one of several would do, the first.
    private string Needed()
    {
        var paths = Findings
            .Where(f => f.Outcome == Outcome.Unknown && f.Kind.Judged)
            .SelectMany(f => f.NeedsAll ? f.Needs : f.Needs.Take(1))
            .Select(need => need.Path)
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        return paths.Length < 2
            ? string.Concat(paths)
            : $"{string.Join(", ", paths[..^1])} and {paths[^1]}";
    }

    private static string Lower(string? message) =>
        message is not { Length: > 1 } ? ""
        : char.IsUpper(message[1]) ? message
        : char.ToLowerInvariant(message[0]) + message[1..];

    // A word of caution without a margin never counts.
    private static bool Counts(Finding finding) =>
        finding.Kind.Judged && !(finding.Caution && double.IsNaN(finding.Severeness));

    private static int Hardness(Finding finding)
    {
        var place = Array.IndexOf(HardMismatches, finding.Kind);
        return place < 0 ? HardMismatches.Length : place;
    }

    private static double Closeness(Finding finding) =>
        double.IsNaN(finding.Severeness) ? -1 : finding.Severeness;

    private static double Likely(Finding finding) => finding.Chance?.Exceedance ?? -1;

    private static int Rank(Outcome outcome) =>
        outcome switch
        {
            Outcome.Fails => 0,
            Outcome.Unknown => 1,
            Outcome.Doubtful => 2,
            _ => 3,
        };
}
