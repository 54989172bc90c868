using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>The lap that repeats itself (M6, M8), against driving many laps by Runge-Kutta.</summary>
public sealed class LapWarmthTests
{
    private static readonly (Drive Drive, double Seconds)[] Lap =
    [
        (Drive.Torque(0.02, 200), 24),
        (Drive.Torque(0.05, 200), 20),
        (Drive.Torque(0.09, 200), 6),
        (Drive.Rest, 10),
    ];

    private static MotorWarmth Warmth(double beta) =>
        new(
            Parts.Motor(0.004, 0.06, 1, 0.001, heat: Parts.Heat(beta: beta, spinInWinding: true)),
            25
        );

    [Theory]
    [Trait("speed", "slow")]
    [InlineData(0, 1e-3)]
    [InlineData(-0.0011, 0.1)]
    [InlineData(-0.002, 0.2)]
    public void It_is_where_many_stepped_laps_lead(double beta, double kelvin)
    {
        var warmth = Warmth(beta);
        var x = Vector<double>.Build.Dense([25, 25]);
        double highest = 0;
        for (var lap = 0; lap < 400; lap++)
        {
            highest = 0;
            foreach (var (drive, seconds) in Lap)
            {
                var path = RungeKutta.FourthOrder(
                    x,
                    0,
                    seconds,
                    40,
                    (_, t) => Rate(warmth, beta, drive, t)
                );
                highest = Math.Max(highest, path.Max(t => t[0]));
                x = path[^1];
            }
        }

        var periodic = LapWarmth.Periodic(warmth, Lap);
        Assert.Equal(x[0], periodic.Start.WindingC, kelvin);
        Assert.Equal(x[1], periodic.Start.CaseC, kelvin);
        Assert.Equal(highest, periodic.PeakWindingC, kelvin);
    }

    // The current follows the magnet at every moment, the brushed machine's magnet the case.
    private static Vector<double> Rate(
        MotorWarmth warmth,
        double beta,
        Drive drive,
        Vector<double> x
    )
    {
        var heat = warmth.Motor.Heat;
        var rest = drive.Follows == DriveKind.Current;
        var i0 = 1 + (0.001 * drive.SpeedRadPerS);
        var current = rest ? 0 : (drive.ShaftNm / (0.004 * (1 + (beta * (x[1] - 20))))) + i0;
        var copper = current * current * 0.06 * (1 + (0.00393 * (x[0] - 20)));
        var spin = 0.004 * i0 * drive.SpeedRadPerS;
        var between = (x[0] - x[1]) / heat.WindingToCaseKPerW;
        return Vector<double>.Build.Dense([
            (copper + spin - between) / heat.WindingJPerK,
            (between - ((x[1] - 25) / heat.CaseToAmbientKPerW)) / heat.CaseJPerK,
        ]);
    }

    [Fact]
    public void A_lap_ends_where_it_starts()
    {
        var periodic = LapWarmth.Periodic(Warmth(-0.0011), Lap);
        Assert.Equal(periodic.Start.WindingC, periodic.SegmentStarts[^1].WindingC, 1e-5);
        Assert.Equal(periodic.Start.CaseC, periodic.SegmentStarts[^1].CaseC, 1e-5);
    }

    [Fact]
    public void A_lap_of_one_drive_is_that_drive_settled()
    {
        var warmth = Warmth(-0.0011);
        var periodic = LapWarmth.Periodic(warmth, [(Drive.Torque(0.04, 200), 60)]);
        var settled = warmth.Settled(Drive.Torque(0.04, 200));
        Assert.Equal(settled.WindingC, periodic.PeakWindingC, 1e-3);
        Assert.Equal(settled.CaseC, periodic.PeakCaseC, 1e-3);
    }

    [Fact]
    public void A_lap_of_rest_stays_at_the_airs_temperature() =>
        Assert.Equal(25, LapWarmth.Periodic(Warmth(0), [(Drive.Rest, 60)]).PeakWindingC, 1e-9);

    [Fact]
    public void A_split_segment_changes_nothing()
    {
        (Drive, double)[] split =
        [
            (Drive.Torque(0.02, 200), 20),
            (Drive.Torque(0.02, 200), 20),
            (Drive.Rest, 10),
        ];
        (Drive, double)[] whole = [(Drive.Torque(0.02, 200), 40), (Drive.Rest, 10)];
        Assert.Equal(
            LapWarmth.Periodic(Warmth(-0.0011), whole).PeakWindingC,
            LapWarmth.Periodic(Warmth(-0.0011), split).PeakWindingC,
            1e-3
        );
    }

    [Fact]
    public void Too_much_current_for_too_long_runs_away()
    {
        var warmth = Warmth(0);
        var lap = LapWarmth.Periodic(
            warmth,
            [(Drive.Current(warmth.RunawayA * 1.3, 0), 50), (Drive.Rest, 5)]
        );
        Assert.True(lap.Runaway);
        Assert.True(double.IsPositiveInfinity(lap.PeakWindingC));
    }

    [Fact]
    public void The_magnets_peak_lies_between_case_and_winding()
    {
        var inner = new MotorWarmth(Parts.Motor(0.004, 0.06, 1, 0.001, magnetAtCase: false), 25);
        var lap = LapWarmth.Periodic(inner, Lap);
        Assert.InRange(lap.PeakMagnetC, lap.PeakCaseC, lap.PeakWindingC);
        var outer = LapWarmth.Periodic(Warmth(0), Lap);
        Assert.Equal(outer.PeakCaseC, outer.PeakMagnetC, 1e-12);
    }
}
