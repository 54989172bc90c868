using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Switching;

/// <summary>Writes a chopper as a deck, runs it until it repeats itself and reads means and mean squares.</summary>
public static class ChopperDeck
{
    // Steps within a period; the simulator adds those at the edges.
    private const int StepsAPeriod = 100;
    private const int PeriodsRead = 4;

    // The smoothing capacitor against the source resistance, in switching periods: the bus then moves by less than a
    // fortieth of its sag within a period.
    private const double SmoothingPeriods = 40;
    private const double SettlingTimes = 8;

    private const double Steepness = 0.05;
    private const double SaturationA = 1e-4;
    private const double ThermalV = 0.025865;

    private const string Motor = "i(vm)";
    private const string Battery = "i(vb)";

    /// <summary>The chopper in the state that repeats itself.</summary>
    /// <param name="chopper">The chopper.</param>
    public static ChopperFigures Run(Chopper chopper)
    {
        var period = chopper.PeriodS;
        var slowest = Math.Max(chopper.LoopS, chopper.Smoothed ? SmoothingPeriods * period : 0);
        var settled = Math.Ceiling(SettlingTimes * slowest / period) + 1;
        var span = new TransientSpan((settled + PeriodsRead) * period, period / StepsAPeriod)
        {
            RecordFromS = settled * period,
        };
        var run = CircuitSimulator.Transient(Of(chopper), span, Motor, Battery);
        var (motor, battery) = (run.Columns[Motor], run.Columns[Battery]);
        var mean = Mean(run.TimeS, motor);
        return new(
            mean,
            MeanSquare(run.TimeS, motor, mean),
            Mean(run.TimeS, battery),
            Math.Sqrt(MeanSquare(run.TimeS, battery, 0)),
            motor.Min()
        );
    }

    private static Deck Of(Chopper chopper)
    {
        var deck = new Deck("chopper")
            .Add($"VE e 0 {chopper.SourceV}")
            .Add($"VB e e1 0")
            .Add($"RS e1 bus {chopper.SourceOhm}")
            .Add($".model closing sw vt=0.5 vh=0 ron={chopper.SwitchOhm} roff=1e8")
            .Add($"S1 bus mid gate 0 closing")
            .Add($"LM mid a {chopper.InductanceH} ic={Guess(chopper)}")
            .Add($"RM a b {chopper.LoopOhm - chopper.SwitchOhm}")
            .Add($"VM b c 0")
            .Add($"VC c 0 {chopper.CounterV}");
        Gate(deck, chopper);
        Freewheel(deck, chopper);
        if (chopper.Smoothed)
        {
            var farad = SmoothingPeriods * chopper.PeriodS / chopper.SourceOhm;
            deck.Add(
                $"CB bus 0 {farad} ic={chopper.SourceV - chopper.SourceOhm * chopper.Duty * Guess(chopper)}"
            );
        }
        return deck;
    }

    // Closed from the start of each period on; the edges are short against a step, and the middle of each counts.
    private static void Gate(Deck deck, Chopper chopper)
    {
        var (period, edge) = (chopper.PeriodS, chopper.PeriodS * 1e-5);
        deck.Add(
            $"VG gate 0 pulse(1 0 {chopper.Duty * period - edge / 2} {edge} {edge} {(1 - chopper.Duty) * period - edge} {period})"
        );
    }

    private static void Freewheel(Deck deck, Chopper chopper)
    {
        if (chopper.DiodeV is not { } drop)
        {
            deck.Add($".model opening sw vt=-0.5 vh=0 ron={chopper.SwitchOhm} roff=1e8");
            deck.Add($"S2 mid 0 0 gate opening");
            return;
        }

        // The other leg is a switch that stays closed. Of the drop nearly all is a source; the steep diode beside it adds
        // some ten millivolts, which are taken off, and keeps the current from turning round.
        var steep = Steepness * ThermalV * Math.Log(Math.Max(Guess(chopper), 1) / SaturationA);
        deck.Add($"VD 0 d0 {drop - steep}");
        deck.Add($"RD d0 d1 {chopper.SwitchOhm}");
        deck.Add($"D1 d1 mid steep");
        deck.Add($".model steep d is={SaturationA} n={Steepness}");
    }

    // Where the means would be without ripple: only the start of the search for the state that repeats itself.
    private static double Guess(Chopper chopper)
    {
        var (duty, source) = (chopper.Duty, chopper.SourceOhm);
        var push = duty * chopper.SourceV - (1 - duty) * (chopper.DiodeV ?? 0) - chopper.CounterV;
        return Math.Max(
            0,
            push / (chopper.LoopOhm + duty * (chopper.Smoothed ? duty : 1) * source)
        );
    }

    private static double Mean(IReadOnlyList<double> times, double[] values) =>
        MeanProduct(times, values, 1, 0);

    // Mean of (x − from)², exact for a line that is straight between its moments, as the current nearly is.
    private static double MeanSquare(IReadOnlyList<double> times, double[] values, double from) =>
        MeanProduct(times, values, 2, from);

    private static double MeanProduct(
        IReadOnlyList<double> times,
        double[] values,
        int power,
        double from
    )
    {
        var sum = 0.0;
        for (var index = 1; index < values.Length; index++)
        {
            var (a, b) = (values[index - 1] - from, values[index] - from);
            var mean = power == 1 ? (a + b) / 2 : ((a * a) + (a * b) + (b * b)) / 3;
            sum += mean * (times[index] - times[index - 1]);
        }
        return sum / (times[^1] - times[0]);
    }
}
