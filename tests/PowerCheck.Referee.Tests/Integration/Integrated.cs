using System.Collections.Concurrent;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Checks;
using PowerCheck.Referee.Tests.Deviations;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>One rig with what the check says of it and what integration says.</summary>
internal sealed class Integrated
{
    public const string Referee = "integration";

    private static readonly ConcurrentDictionary<int, Lazy<Integrated>> Rigs = new();

    private readonly Lazy<Discharge> emptied;

    private Integrated(PlainRig rig)
    {
        emptied = new(() => new Discharge(this));
        Plain = new(rig);
        Laps = new(Plain);
        Check = Refereed.Check(rig);
    }

    /// <summary>Numbers of rigs whose bus is smoothed: what a bare one does is for the circuit to say.</summary>
    public static IReadOnlyList<int> Numbers { get; } =
    [.. Enumerable.Range(0, 160).Where(n => RandomPlainRig.Of(n).Controller.PwmFrequencyKhz >= 4)];

    private static readonly Lazy<IReadOnlyList<Integrated>> Every = new(() =>
        [.. Numbers.AsParallel().AsOrdered().Select(Of)]
    );

    /// <summary>All rigs.</summary>
    public static IReadOnlyList<Integrated> All => Every.Value;

    public Plain Plain { get; }

    public Laps Laps { get; }

    public CheckResult Check { get; }

    /// <summary>The pack emptied; only for laps that repeat themselves.</summary>
    public Discharge Emptied => emptied.Value;

    public static Integrated Of(int number) =>
        Rigs.GetOrAdd(number, n => new(() => new Integrated(RandomPlainRig.Of(n)))).Value;

    /// <summary>Says what is too far apart, in kelvin; empty when nothing is.</summary>
    public string Kelvin(string what, double own, double check, double tolerance = 0.2) =>
        Say(what, own, check, Math.Abs(own - check), tolerance, "K");

    /// <summary>Says what is too far apart, in per cent of the integrated figure; empty when nothing is.</summary>
    public string Percent(string what, double own, double check, double tolerance = 0.1) =>
        Say(what, own, check, 100 * Math.Abs(check - own) / Math.Abs(own), tolerance, "%");

    /// <summary>Says what is more than a lap too far apart; empty when nothing is.</summary>
    public string WithinALap(string what, double ownS, double checkS) =>
        Say(what, ownS, checkS, Math.Abs(ownS - checkS) / Laps.LapS, 1, "laps");

    private string Say(
        string what,
        double own,
        double check,
        double apart,
        double tolerance,
        string unit
    )
    {
        apart = own.Equals(check) ? 0 : apart;
        var where = $"rig {Plain.Rig.Number}";
        return DeviationLedger.Record(what, Referee, apart, tolerance, unit, where)
            ? ""
            : $"{where}, {what}: integrated {own:R}, check {check:R}\n";
    }
}
