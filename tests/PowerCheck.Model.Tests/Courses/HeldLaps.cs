using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>
/// A motor whose laps are a held current and a rest, so that each is exact in two steps, and a rig that creeps and jams in
/// them.
/// </summary>
internal static class HeldLaps
{
    public static readonly Rig Rig = SampleRig.Of(SampleRig.Brushless);

    public static readonly SegmentLoad[] Segments =
    [
        SegmentLoad.Of(Rig, new(30, SegmentKind.Creep, 0.3, 0.3, 0)),
        SegmentLoad.Of(Rig, new(20, SegmentKind.Jammed, 0, 0, 0.1)),
    ];

    /// <summary>The motor's laps, in air of 25 °C, its magnet as warm as its case.</summary>
    public static LapWalk Of(MotorHeat heat, double currentA, double heldS, double restS)
    {
        var warmth = new MotorWarmth(Parts.Motor(heat: heat), 25);
        (Drive, double)[] lap = [(Drive.Current(currentA, 0), heldS), (Drive.Rest, restS)];
        return new(warmth, LapWarmth.Periodic(warmth, lap), lap, 0);
    }

    /// <summary>Temperatures at the start of both segments and at the end.</summary>
    public static MotorTemperature[] Driven(LapWalk laps, MotorTemperature start)
    {
        MotorTemperature After(int n, MotorTemperature x) =>
            laps.Segments[n].Drive.Network(laps.Warmth, x).Over(laps.Segments[n].Seconds).Apply(x);
        var middle = After(0, start);
        return [start, middle, After(1, middle)];
    }

    /// <summary>The rig's loads, each segment with the means of the temperatures at both its ends.</summary>
    public static double[] Loads(LapWalk laps, MotorTemperature start)
    {
        var x = Driven(laps, start);
        var loads = new double[Segments.Length];
        for (var n = 0; n < loads.Length; n++)
        {
            var windingC = (x[n].WindingC + x[n + 1].WindingC) / 2;
            var magnetC = (x[n].CaseC + x[n + 1].CaseC) / 2;
            loads[n] =
                Segments[n].At(Rig, 0.5, windingC, magnetC).MemoryW / Rig.Controller.RatedHeatW;
        }

        return loads;
    }

    /// <summary>The laps that stand for all others, where the one that repeats itself takes as much in both segments.</summary>
    public static ControllerLoads Standing(LapWalk laps, double settledW)
    {
        var each = default(SegmentPower) with { MemoryW = settledW };
        return ControllerLoads.Of(Rig, Segments, laps, new([each, each], 0, 0, 0));
    }
}
