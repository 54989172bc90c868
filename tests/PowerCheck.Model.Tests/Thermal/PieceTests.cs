using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>How long a piece of time is in which the current stays (M6).</summary>
public sealed class PieceTests
{
    private static double Seconds(Drive drive, double leftS, double resistanceOhm = 0.05) =>
        Piece
            .Next(
                new(Parts.Motor(resistanceOhm: resistanceOhm), 25),
                drive,
                MotorTemperature.At(20),
                leftS
            )
            .Seconds;

    // At 20 °C in 20 J/K: i²·0.05 W/20 J/K; a torque of 5 mN·m takes 1 A, 1 A more without load.
    [Theory]
    // 20 A are 1 K/s: 4 K in 4 s.
    [InlineData(20, 100, 4)]
    [InlineData(20, 3, 3)]
    // 2 A are 0.01 K/s: no longer than 30 s.
    [InlineData(2, 100, 30)]
    // 400 A are 400 K/s: no shorter than 0.05 s, nor than a two-thousandth of what is left.
    [InlineData(400, 10, 0.05)]
    [InlineData(400, 1000, 0.5)]
    [InlineData(2, 1e5, 50)]
    public void A_piece_warms_the_winding_by_four_kelvin_within_its_bounds(
        double currentA,
        double leftS,
        double seconds
    ) => Assert.Equal(seconds, Seconds(Drive.Torque((currentA - 1) * 0.005, 0), leftS), 1e-9);

    [Theory]
    // From 200 K over the air on more than 4 K.
    [InlineData(125, 4)]
    [InlineData(225, 4)]
    [InlineData(275, 5)]
    [InlineData(325, 6)]
    public void A_hot_winding_may_warm_by_a_fiftieth_of_its_rise_over_the_air(
        double windingC,
        double kelvin
    )
    {
        var warmth = new MotorWarmth(Parts.Motor(), 25);
        var drive = Drive.Torque(0.2, 0);
        var hot = MotorTemperature.At(windingC);

        var seconds = Piece.Next(warmth, drive, hot, 100).Seconds;

        Assert.Equal(kelvin, seconds * drive.Network(warmth, hot).WindingRate(hot), 1e-9);
    }

    [Fact]
    public void A_held_current_is_one_piece_and_so_is_what_is_not_known()
    {
        Assert.Equal(1000, Seconds(Drive.Current(20, 0), 1000));
        Assert.Equal(7, Seconds(Drive.Torque(0.05, 0), 7, double.NaN));
    }
}
