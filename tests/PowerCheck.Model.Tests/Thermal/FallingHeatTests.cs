using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>A heat that falls steeply as the motor warms, as by its ripple, settles where heat and flow agree (M6).</summary>
public sealed class FallingHeatTests
{
    // 0.05 Ω, 1 K/W to the case and 5 K/W to the air.
    private static readonly MotorWarmth Warmth = new(Parts.Motor(), 25);

    private static double HeatW(double square, double windingC) =>
        square * 0.05 * (1 + (0.00393 * (windingC - 20)));

    // So much cold that it would settle past 400 °C, and nothing from 166 °C on.
    private static double Ripple(double windingC, double _) =>
        Math.Max(0, 209 - (3.7 * (windingC - 110)));

    private static void Balances(MotorTemperature x, double kelvin)
    {
        var heat = HeatW(Ripple(x.WindingC, 0), x.WindingC);
        Assert.InRange(x.WindingC, 50, 150);
        Assert.Equal(25 + (6 * heat), x.WindingC, kelvin);
        Assert.Equal(25 + (5 * heat), x.CaseC, kelvin);
    }

    [Fact]
    public void A_lasting_drive_that_asks_for_runaway_cold_settles_warm()
    {
        var cold = HeatW(Ripple(25, 0), 400);
        Assert.True(25 + (6 * cold) > 400);

        Balances(Warmth.Settled(Drive.Current(0, 0, Ripple)), 1e-5);
    }

    [Fact]
    public void A_lap_that_asks_for_runaway_cold_settles_warm()
    {
        var lap = LapWarmth.Periodic(Warmth, [(Drive.Current(0, 0, Ripple), 5)]);

        Assert.False(lap.Runaway);
        Balances(lap.Start, 1e-3);
        Assert.Equal(lap.Start.WindingC, lap.PeakWindingC, 1e-3);
    }

    [Fact]
    public void A_heat_that_stops_at_a_temperature_ends_on_either_side_of_it()
    {
        // 209 A² under 110 °C alone would settle at about that; 250 A² at more.
        var drive = Drive.Current(0, 0, static (windingC, _) => windingC < 110 ? 250 : 0);
        var above = 25 + (6 * HeatW(250, 150));

        Assert.True(above > 110);
        Assert.InRange(Warmth.Settled(drive).WindingC, 25, 150);
        Assert.InRange(LapWarmth.Periodic(Warmth, [(drive, 5)]).Start.WindingC, 25, 150);
    }
}
