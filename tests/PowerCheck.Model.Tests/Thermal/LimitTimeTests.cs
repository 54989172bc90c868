using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>When a motor reaches its limits, and what is lost on the way (M6, M7), against walking and by hand.</summary>
public sealed class LimitTimeTests
{
    private static MotorWarmth Warmth(
        MotorHeat? heat = null,
        double brushV = 0,
        double resistanceOhm = 0.05,
        double slope = 0,
        bool magnetAtCase = true
    ) =>
        new(
            Parts.Motor(
                resistanceOhm: resistanceOhm,
                brushV: brushV,
                slope: slope,
                heat: heat ?? Parts.Heat(),
                magnetAtCase: magnetAtCase
            ),
            25
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Winding_and_magnet_each_reach_their_own_limit_first_on_the_way(bool windingFirst)
    {
        // 20 A for a torque of 0.095 N·m; pieces of ten seconds, and each limit in another of them.
        var drive = Drive.Torque(0.095, 100);
        var warmth = Warmth(
            Parts.Heat(limitC: windingFirst ? 60 : 100, magnetLimitC: windingFirst ? 70 : 40)
        );
        double Walked(double limitC, Func<MotorTemperature, double> node)
        {
            var x = warmth.Cold;
            var t = 0.0;
            for (; node(x) < limitC; t += 0.01)
            {
                x = drive.Network(warmth, x).Over(0.01).Apply(x);
            }

            return t;
        }

        var (winding, magnet) = warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive));

        Assert.Equal(windingFirst, winding < magnet);
        Assert.Equal(Walked(windingFirst ? 60 : 100, x => x.WindingC), winding, 0.02);
        Assert.Equal(Walked(windingFirst ? 70 : 40, x => x.CaseC), magnet, 0.02);
        Assert.True(Math.Abs(winding - magnet) > 20);
    }

    [Fact]
    public void A_magnet_whose_limit_lies_past_all_measure_is_lost_with_the_winding()
    {
        var drive = Drive.Torque(0.5, 100);
        var warmth = Warmth(Parts.Heat(magnetLimitC: 1e7));

        var (winding, magnet) = warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive));

        Assert.InRange(winding, 0.1, 30);
        Assert.InRange(magnet, winding + 1, 600);
    }

    [Fact]
    public void A_known_magnet_time_is_kept_when_the_winding_runs_away()
    {
        var drive = Drive.Torque(0.5, 100);
        var warmth = Warmth(Parts.Heat(magnetLimitC: 40));

        var (_, magnet) = warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive));

        var walked = warmth.Cold;
        var seconds = 0.0;
        for (; walked.CaseC < 40; seconds += 0.01)
        {
            walked = drive.Network(warmth, walked).Over(0.01).Apply(walked);
        }

        Assert.Equal(seconds, magnet, 0.1);
    }

    [Fact]
    public void A_winding_past_400_degrees_never_comes_back()
    {
        var warmth = Warmth();

        Assert.Equal(
            double.PositiveInfinity,
            warmth.After(Drive.Rest, MotorTemperature.At(401), 1e5).WindingC
        );
        Assert.Equal(25, warmth.After(Drive.Rest, MotorTemperature.At(399), 1e5).WindingC, 1e-6);
        Assert.Equal(
            double.PositiveInfinity,
            warmth.After(Drive.Current(60, 0), warmth.Cold, 300).WindingC
        );
        Assert.InRange(warmth.After(Drive.Current(60, 0), warmth.Cold, 10).WindingC, 100, 400);
    }

    [Fact]
    public void Friction_and_brushes_both_heat_the_node_that_they_sit_in()
    {
        // No copper heat: kt·i0·ω = 0.005·(1 + 0.01·100)·100 = 1 W, brushes 0.5 V·10 A = 5 W; 5 K/W outward, 1 K/W across.
        var drive = Drive.Current(10, 100);
        var inCase = Warmth(brushV: 0.5, resistanceOhm: 0, slope: 0.01).Settled(drive);
        var inRotor = Warmth(
                Parts.Heat(spinInWinding: true),
                brushV: 0.5,
                resistanceOhm: 0,
                slope: 0.01
            )
            .Settled(drive);

        Assert.Equal((55, 55), (Math.Round(inCase.WindingC, 9), Math.Round(inCase.CaseC, 9)));
        Assert.Equal((61, 55), (Math.Round(inRotor.WindingC, 9), Math.Round(inRotor.CaseC, 9)));
    }

    [Theory]
    [InlineData(0.5, 0.3, 1.0, 2.0, double.PositiveInfinity)]
    [InlineData(1.0, 0.3, 1.0, 2.0, double.PositiveInfinity)]
    [InlineData(2.0, 1.0, 1.0, 2.0, 0.0)]
    [InlineData(2.0, 1.5, 1.0, 2.0, 0.0)]
    [InlineData(0.5, 1.5, 1.0, 2.0, 0.0)]
    [InlineData(0.5, 1.0, 1.0, 2.0, 0.0)]
    [InlineData(double.NaN, 0.3, 1.0, 2.0, double.NaN)]
    [InlineData(double.NaN, 1.5, 1.0, 2.0, double.NaN)]
    [InlineData(2.0, double.NaN, 1.0, 2.0, double.NaN)]
    [InlineData(0.5, double.NaN, 1.0, 2.0, double.NaN)]
    // 2·ln((2 − 0)/(2 − 1)) = 2·ln 2.
    [InlineData(2.0, 0.0, 1.0, 2.0, 1.3862943611)]
    public void A_thermal_memory_reaches_its_limit_when_the_load_is_above_it(
        double load,
        double level,
        double limit,
        double tau,
        double seconds
    ) => Assert.Equal(seconds, new ThermalMemory(tau, limit).TimeToLimit(level, load), 1e-9);

    [Fact]
    public void A_locked_winding_heats_by_the_square_of_its_current_and_ripple_unevenly()
    {
        var locked = new LockedWinding(Warmth(), Drive.Current(10, 0, (_, _) => 44, 1.5));

        // 1.5·(100 + 44)·0.05·(1 + 0.00393·100) W.
        Assert.Equal(1.5 * 144 * 0.05 * 1.393, locked.HeatW(120), 1e-9);
    }

    [Theory]
    // At 120 °C, 95 K over the air, 6 K/W carry 15.8 W away.
    [InlineData(23, true)]
    [InlineData(15.6, false)]
    public void A_locked_winding_that_would_settle_under_its_limit_never_reaches_it(
        double watts,
        bool reaches
    )
    {
        var current = Math.Sqrt(watts / (0.05 * 1.393));
        var locked = new LockedWinding(Warmth(), Drive.Current(current, 0));
        var seconds = locked.TimeToLimit(MotorTemperature.At(25));

        Assert.Equal(reaches, seconds is > 2 and < 900);
        Assert.Equal(!reaches, double.IsInfinity(seconds));
    }

    [Fact]
    public void Brushes_help_a_locked_winding_to_its_limit()
    {
        // 15 W of copper alone would settle under it; 0.6 V of brushes add 8.8 W to the case.
        var current = Math.Sqrt(15 / (0.05 * 1.393));
        double Time(double brushV) =>
            new LockedWinding(Warmth(brushV: brushV), Drive.Current(current, 0)).TimeToLimit(
                MotorTemperature.At(25)
            );

        Assert.Equal(double.PositiveInfinity, Time(0));
        Assert.InRange(Time(0.6), 2, 900);
    }

    [Fact]
    public void A_locked_winding_at_its_limit_has_no_time_left_and_one_without_current_all()
    {
        var fed = new LockedWinding(Warmth(), Drive.Current(20, 0));
        var idle = new LockedWinding(Warmth(), Drive.Current(0, 0));

        Assert.Equal(0, fed.TimeToLimit(MotorTemperature.At(120)));
        Assert.Equal(0, fed.TimeToLimit(MotorTemperature.At(150)));
        Assert.Equal(double.PositiveInfinity, idle.TimeToLimit(MotorTemperature.At(30)));
        // Copper alone for 2 s; then 50 K to the case close with 1/(20 s) + 1/(60 s), three quarters of it in the winding.
        Assert.Equal(30, idle.AfterC(new(30, 80), 2));
        Assert.Equal(
            30 + (50 * 0.75 * (1 - Math.Exp(-3 / 15.0))),
            idle.AfterC(new(30, 80), 5),
            0.1
        );
    }

    [Theory]
    [InlineData(double.NaN, 60, 1, 5, 20)]
    [InlineData(20, double.NaN, 1, 5, 20)]
    [InlineData(20, 60, double.NaN, 5, 20)]
    [InlineData(20, 60, 1, double.NaN, 20)]
    [InlineData(20, 60, 1, 5, double.NaN)]
    public void A_locked_winding_needs_every_figure_of_its_network(
        double windingJPerK,
        double caseJPerK,
        double toCase,
        double toAir,
        double copperJPerK
    ) =>
        Assert.True(
            double.IsNaN(
                new LockedWinding(
                    Warmth(
                        Parts.Heat(windingJPerK, caseJPerK, toCase, toAir, copperJPerK: copperJPerK)
                    ),
                    Drive.Current(20, 0)
                ).TimeToLimit(MotorTemperature.At(25))
            )
        );
}
