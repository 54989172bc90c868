using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>A locked winding (M6), against integrating its equation, and in closed form.</summary>
public sealed class LockedWindingTests
{
    private const double Ohm = 0.03;
    private const double Copper = 12;

    private static MotorWarmth Warmth(double ohm = Ohm) =>
        new(
            Parts.Motor(0.004, ohm, 1, heat: Parts.Heat(windingJPerK: 30, copperJPerK: Copper)),
            25
        );

    private static LockedWinding Held(double currentA, double ohm = Ohm) =>
        new(Warmth(ohm), Drive.Current(currentA, 0, null, 1.5));

    // 10 V behind 20 mΩ of switches, leads and pack.
    private static LockedWinding Throttled() =>
        new(
            Warmth(),
            Drive.Throttle(t => new(10 / (0.02 + (Ohm * (1 + (0.00393 * (t - 20))))), 0), 1.5)
        );

    private static double SteppedAlone(LockedWinding winding, double startC, double seconds) =>
        RungeKutta.FourthOrder(startC, 0, seconds, 4000, (_, t) => winding.HeatW(t) / Copper)[^1];

    [Fact]
    public void Heat_is_uneven_current_squared_times_warm_resistance() =>
        Assert.Equal(1.5 * 900 * Ohm * (1 + (0.00393 * 60)), Held(30).HeatW(80), 1e-9);

    [Fact]
    public void At_a_held_current_the_copper_warms_exponentially()
    {
        var winding = Held(60);
        // dT/dt = a·(1 + α·(T − 20)), a = 1.5·3600·0.03/12: 1 + α(T − 20) grows as e^(α·a·t).
        var a = 1.5 * 3600 * Ohm / Copper;
        var start = 1 + (0.00393 * 5);
        var closed = 20 + (((start * Math.Exp(0.00393 * a * 1.7)) - 1) / 0.00393);
        Assert.Equal(closed, winding.AloneAfterC(25, 1.7), 1e-5);
        Assert.Equal(1.7, winding.AloneTimeS(25, closed), 1e-7);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.0)]
    [InlineData(2.0)]
    public void At_a_held_throttle_it_is_where_Runge_Kutta_gets_it(double seconds)
    {
        var winding = Throttled();
        Assert.Equal(
            SteppedAlone(winding, 25, seconds),
            winding.AfterC(MotorTemperature.At(25), seconds),
            1e-4
        );
    }

    [Fact]
    public void A_held_throttle_warms_less_than_the_current_it_starts_with()
    {
        var held = Held(10 / (0.02 + (Ohm * (1 + (0.00393 * 5)))));
        Assert.True(
            Throttled().AfterC(MotorTemperature.At(25), 2) < held.AfterC(MotorTemperature.At(25), 2)
        );
    }

    [Theory]
    [InlineData(20, 10)]
    [InlineData(20, 60)]
    [InlineData(14, 120)]
    public void After_two_seconds_the_whole_network_takes_part(double currentA, double seconds)
    {
        var winding = Held(currentA);
        var heat = winding.Warmth.Motor.Heat;
        var start = Vector<double>.Build.Dense([SteppedAlone(winding, 25, 2), 25]);
        var end = RungeKutta.FourthOrder(
            start,
            2,
            seconds,
            4000,
            (_, x) =>
                Vector<double>.Build.Dense([
                    (winding.HeatW(x[0]) - ((x[0] - x[1]) / heat.WindingToCaseKPerW))
                        / heat.WindingJPerK,
                    (
                        ((x[0] - x[1]) / heat.WindingToCaseKPerW)
                        - ((x[1] - 25) / heat.CaseToAmbientKPerW)
                    ) / heat.CaseJPerK,
                ])
        )[^1];
        Assert.Equal(end[0], winding.AfterC(MotorTemperature.At(25), seconds), 1e-3);
    }

    [Fact]
    public void A_throttle_through_the_network_is_within_a_piece_of_Runge_Kutta()
    {
        var weak = new LockedWinding(
            Warmth(),
            Drive.Throttle(t => new(0.9 / (0.02 + (Ohm * (1 + (0.00393 * (t - 20))))), 0), 1.5)
        );
        var heat = weak.Warmth.Motor.Heat;
        var start = Vector<double>.Build.Dense([SteppedAlone(weak, 25, 2), 25]);
        var end = RungeKutta.FourthOrder(
            start,
            2,
            120,
            4000,
            (_, x) =>
                Vector<double>.Build.Dense([
                    (weak.HeatW(x[0]) - ((x[0] - x[1]) / heat.WindingToCaseKPerW))
                        / heat.WindingJPerK,
                    (
                        ((x[0] - x[1]) / heat.WindingToCaseKPerW)
                        - ((x[1] - 25) / heat.CaseToAmbientKPerW)
                    ) / heat.CaseJPerK,
                ])
        )[^1];
        Assert.Equal(end[0], weak.AfterC(MotorTemperature.At(25), 120), 0.1);
    }

    [Theory]
    [InlineData(120)]
    [InlineData(60)]
    [InlineData(30)]
    [InlineData(22)]
    public void A_time_to_the_limit_leads_to_the_limit(double currentA)
    {
        var winding = Held(currentA);
        var cold = MotorTemperature.At(25);
        var time = winding.TimeToLimit(cold);
        Assert.True(time > 0 && double.IsFinite(time));
        Assert.Equal(120, winding.AfterC(cold, time), 0.05);
    }

    [Fact]
    public void More_current_is_less_time()
    {
        var times = new[] { 25.0, 30, 50, 80, 150, 300 }
            .Select(a => Held(a).TimeToLimit(MotorTemperature.At(25)))
            .ToArray();
        Assert.Equal(times.OrderDescending(), times);
    }

    [Fact]
    public void A_little_current_never_gets_there() =>
        Assert.True(double.IsInfinity(Held(3).TimeToLimit(MotorTemperature.At(25))));

    [Fact]
    public void No_current_leaves_the_winding_as_it_is_for_now()
    {
        Assert.Equal(60, Held(0).AfterC(MotorTemperature.At(60), 2));
        Assert.True(double.IsInfinity(Held(0).TimeToLimit(MotorTemperature.At(60))));
    }

    [Fact]
    public void A_winding_past_its_limit_has_no_time_left() =>
        Assert.Equal(0, Held(30).TimeToLimit(MotorTemperature.At(121)));

    [Fact]
    public void What_is_not_known_stays_not_known()
    {
        Assert.True(double.IsNaN(Held(30, double.NaN).TimeToLimit(MotorTemperature.At(25))));
        Assert.True(double.IsNaN(Held(30, double.NaN).AfterC(MotorTemperature.At(25), 2)));
        Assert.True(double.IsNaN(Held(double.NaN).TimeToLimit(MotorTemperature.At(25))));
    }
}
