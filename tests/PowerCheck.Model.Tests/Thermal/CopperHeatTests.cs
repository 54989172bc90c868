using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>Heat along its tangent, and the networks that come of it (M6), by derivatives in closed form.</summary>
public sealed class CopperHeatTests
{
    [Theory]
    [InlineData(80)]
    [InlineData(-10)]
    public void A_tangent_touches_a_bent_heat_and_has_its_slope(double windingC)
    {
        // P = 2 + 3·T + T²/2, dP/dT = 3 + T.
        var tangent = CopperHeat.Along(t => 2 + (3 * t) + (t * t / 2), windingC);

        Assert.Equal(3 + windingC, tangent.PerKelvinW, 1e-9);
        Assert.Equal(2 - (windingC * windingC / 2), tangent.AtZeroW, 1e-9);
    }

    [Fact]
    public void Only_a_current_without_ripple_is_held()
    {
        Assert.True(Drive.Current(5, 0).Held);
        Assert.False(Drive.Current(5, 0, static (_, _) => 1).Held);
        Assert.False(Drive.Torque(0.05, 100).Held);
        Assert.False(Drive.Throttle(static _ => new(5, 0), 1).Held);
    }

    // Winding 20 J/K, 0.05 Ω, 1 K/W to the case; the rate is (P − (T_w − T_c))/20.
    private static double RateAt(Drive drive, MotorTemperature touch, MotorTemperature x) =>
        drive.Network(new(Parts.Motor(), 25), touch).WindingRate(x);

    [Fact]
    public void A_held_throttle_heats_along_the_tangent_and_a_torque_at_its_current()
    {
        var touch = new MotorTemperature(80, 60);
        var near = new MotorTemperature(90, 60);
        // i = 1000/T: P = 10⁶/T²·0.05·(1 + 0.00393·(T − 20)).
        var throttle = Drive.Throttle(static t => new(1000 / t, 0), 1);
        const double Square = 1e6 / (80 * 80);
        const double Growth = 1 + (0.00393 * 60);
        const double Slope = Square * 0.05 * (0.00393 - (2 * Growth / 80));

        Assert.Equal(((Square * 0.05 * Growth) - 20) / 20, RateAt(throttle, touch, touch), 1e-6);
        Assert.Equal(
            ((Square * 0.05 * Growth) + (10 * Slope) - 30) / 20,
            RateAt(throttle, touch, near),
            1e-3
        );
        // 0.045 N·m over 0.005 N·m/A and 1 A without load: 10 A.
        Assert.Equal(
            ((100 * 0.05 * (1 + (0.00393 * 70))) - 30) / 20,
            RateAt(Drive.Torque(0.045, 0, static (w, _) => w > 85 ? 1000 : 0), touch, near),
            1e-9
        );
    }
}
