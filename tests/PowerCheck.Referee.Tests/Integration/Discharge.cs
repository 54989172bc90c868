using MathNet.Numerics.OdeSolvers;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>A pack that lap after lap empties, its open-circuit voltage falling with the charge.</summary>
internal sealed class Discharge
{
    private const int Pieces = 120;

    private readonly Plain plain;
    private readonly Laps laps;
    private readonly (double WindingC, double MagnetC)[] warm;
    private readonly double[] shares;

    public Discharge(Integrated rig)
    {
        (plain, laps) = (rig.Plain, rig.Laps);
        warm = [.. laps.Stretches.Select((_, n) => Mean(n))];
        shares = [.. laps.Stretches.Select(s => s.Seconds / laps.LapS)];
        Half = [.. laps.Stretches.Select((s, n) => s.At(0.5, warm[n].WindingC, warm[n].MagnetC))];
        Run();
    }

    /// <summary>Each segment with half the charge left.</summary>
    public Flow[] Half { get; }

    public double Seconds { get; private set; }

    public double Joule { get; private set; }

    /// <summary>Run time with each segment in turn instead of the lap's mean [s].</summary>
    public double SecondsInTurn { get; private set; }

    public double MeanA => Over(Half, f => f.BatteryA);

    public double RmsBatteryA => Math.Sqrt(Over(Half, f => f.BatteryA * f.BatteryA));

    public double RmsMotorA => Math.Sqrt(Over(Half, f => (f.MotorA * f.MotorA) + f.Ripple));

    // A part is so short that the mean of both its ends will do.
    private (double WindingC, double MagnetC) Mean(int n)
    {
        var (a, b) = (laps.Ends[n], laps.Ends[n + 1]);
        return ((a[0] + b[0]) / 2, (plain.MagnetC(a[0], a[1]) + plain.MagnetC(b[0], b[1])) / 2);
    }

    private Flow[] At(double charge) =>
        [.. laps.Stretches.Select((s, n) => s.At(charge, warm[n].WindingC, warm[n].MagnetC))];

    private double Over(Flow[] lap, Func<Flow, double> figure) =>
        lap.Select((flow, n) => shares[n] * figure(flow)).Sum();

    // Charge a second at the mean current of a lap, by Peukert's law.
    private double Rate(double charge)
    {
        var battery = plain.Rig.Battery;
        var rated = battery.RatedHours * 3600;
        var current = Over(At(charge), f => f.BatteryA);
        var coulomb = battery.CapacityMah * 3.6;
        return 1 / (rated * Math.Pow(coulomb / (current * rated), battery.PeukertExponent));
    }

    private bool Ended(double charge) =>
        charge <= plain.Rig.Battery.ReserveShare || At(charge).Min(f => f.BusV) < CutoffV;

    private double CutoffV => plain.Rig.Controller.CutoffVPerCell * plain.Rig.Battery.SeriesCells;

    private void Run()
    {
        var charge = 1.0;
        if (Ended(charge))
        {
            return;
        }

        for (var piece = 0.8 / Rate(0.9) / Pieces; ; )
        {
            var next = RungeKutta.FourthOrder(charge, 0, piece, 3, (_, s) => -Rate(s))[^1];
            var share = Ended(next) ? (charge - End(charge, next)) / (charge - next) : 1;
            var middle = charge + (share * (next - charge) / 2);
            Seconds += share * piece;
            Joule += share * piece * Over(At(middle), f => f.BatteryA * f.BusV);
            if (share < 1 || Ended(next))
            {
                break;
            }

            charge = next;
        }

        SecondsInTurn = InTurn();
    }

    // The charge between two at which the run is over, by halving.
    private double End(double more, double less)
    {
        for (var n = 0; n < 40; n++)
        {
            var middle = (more + less) / 2;
            (more, less) = Ended(middle) ? (more, middle) : (middle, less);
        }

        return less;
    }

    private double InTurn()
    {
        var (charge, seconds) = (1.0, 0.0);
        for (var n = 0; !Ended(charge); n = (n + 1) % shares.Length)
        {
            var flows = At(charge);
            var part = flows[n].BatteryA / Over(flows, f => f.BatteryA);
            charge -= part * Rate(charge) * laps.Stretches[n].Seconds;
            seconds += laps.Stretches[n].Seconds;
        }

        return seconds;
    }
}
