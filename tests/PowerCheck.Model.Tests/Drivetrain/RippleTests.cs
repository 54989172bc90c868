using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Ripple of slow switching (M3), against stepping the loop through time.</summary>
public sealed class RippleTests
{
    [Theory]
    [InlineData(7.4, 0.3, 0.1, 70e-6, 1500)]
    [InlineData(7.4, 0.7, 0.1, 70e-6, 1000)]
    [InlineData(11.1, 0.1, 0.05, 20e-6, 2000)]
    [InlineData(11.1, 0.5, 0.2, 300e-6, 4000)]
    [InlineData(7.4, 0.05, 0.1, 10e-6, 500)]
    public void It_is_what_stepping_an_R_L_loop_through_time_gives(
        double busV,
        double duty,
        double ohm,
        double henry,
        double hertz
    )
    {
        const int Steps = 4000;
        var step = 1 / hertz / Steps;
        var current = duty * busV / ohm;
        double sum = 0,
            squares = 0;
        var periods = (int)Math.Ceiling(20 * henry / ohm * hertz) + 2;
        for (var n = 0; n < periods * Steps; n++)
        {
            var volt = (n % Steps) + 0.5 < duty * Steps ? busV : 0;
            // Trapezoidal rule, which neither grows nor damps the mean.
            var a = step * ohm / henry / 2;
            var next = (((1 - a) * current) + (step * volt / henry)) / (1 + a);
            var middle = (current + next) / 2;
            if (n >= (periods - 1) * Steps)
            {
                sum += middle / Steps;
                squares += middle * middle / Steps;
            }

            current = next;
        }

        var stepped = squares - (sum * sum);
        Assert.Equal(1, Ripple.MeanSquare(busV, duty, ohm, henry, hertz) / stepped, 2e-3);
    }

    [Fact]
    public void Fully_on_or_off_nothing_ripples()
    {
        Assert.Equal(0, Ripple.MeanSquare(11.1, 0, 0.1, 70e-6, 1000), 1e-9);
        Assert.Equal(0, Ripple.MeanSquare(11.1, 1, 0.1, 70e-6, 1000), 1e-9);
    }

    [Fact]
    public void Fast_switching_ripples_as_the_square_of_the_triangle()
    {
        // ΔI = V·D·(1 − D)/(f·L); the mean square of a triangle is ΔI²/12.
        var swing = 11.1 * 0.3 * 0.7 / (200_000 * 70e-6);
        Assert.Equal(
            1,
            Ripple.MeanSquare(11.1, 0.3, 0.1, 70e-6, 200_000) / (swing * swing / 12),
            1e-3
        );
    }

    [Fact]
    public void Without_inductance_the_current_is_on_or_off() =>
        // Mean square of a square wave of height V/R: D·(1 − D)·(V/R)².
        Assert.Equal(0.21 * 111 * 111, Ripple.MeanSquare(11.1, 0.3, 0.1, 0, 1000), 1e-6);

    [Fact]
    public void Faster_switching_ripples_less()
    {
        var ripple = new[] { 500.0, 1000, 2000, 4000, 7999 }
            .Select(hertz => Ripple.MeanSquare(7.4, 0.3, 0.1, 70e-6, hertz))
            .ToArray();
        Assert.Equal(ripple.OrderDescending(), ripple);
    }
}
