using System.Globalization;
using CsCheck;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>How the model's figures are shown.</summary>
public class ShownTests
{
    [Fact]
    public void A_figure_is_rounded_to_six_significant_digits() =>
        Gen.Select(Gen.Double[1, 10], Gen.Int[-30, 11], Gen.Bool)
            .Sample(
                (mantissa, exponent, negative) =>
                {
                    var figure = mantissa * Math.Pow(10, exponent) * (negative ? -1 : 1);
                    var shown = Shown.Figure(figure)!.Value;
                    var expected = double.Parse(
                        figure.ToString("E5", CultureInfo.InvariantCulture),
                        CultureInfo.InvariantCulture
                    );
                    // Halfway cases may go either way in the last digit.
                    Assert.Equal(expected, shown, Math.Abs(expected) * 1.01e-5);
                    Assert.True(Digits(shown) <= 6, $"{shown:R} has too many digits");
                },
                iter: 2000
            );

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e13)]
    public void What_is_not_finite_or_means_nothing_is_not_shown(double figure)
    {
        Assert.Null(Shown.Figure(figure));
        Assert.Null(Shown.Figure(figure, Unit.Milliohm));
    }

    [Fact]
    public void A_figure_is_shown_in_its_unit()
    {
        Assert.Equal(22.5, Shown.Figure(0.0225, Unit.Milliohm));
        Assert.Equal(3300, Shown.Figure(Unit.RpmPerVolt.ToSi(3300), Unit.RpmPerVolt));
        Assert.Equal(0, Shown.Figure(-0.0));
        Assert.Null(Shown.Symbol(Unit.One));
        Assert.Equal("mΩ", Shown.Symbol(Unit.Milliohm));
    }

    [Fact]
    public void A_part_that_never_settles_is_a_runaway_without_a_peak()
    {
        var answer = TemperatureWriter.Write(
            Report(
                new(LoadCaseName.Climb, double.PositiveInfinity, new(60), new(double.NaN), 60, 90)
            )
        );

        Assert.True(answer.MotorWinding.Runaway);
        Assert.Null(answer.MotorWinding.PeakC);
        Assert.Null(answer.MotorWinding.SettledC.Climb);
        Assert.Equal(60, answer.MotorWinding.SecondsToLimit.Climb!.Cold);
        Assert.True(answer.MotorWinding.SecondsToLimit.Climb.Reached);
        Assert.Null(answer.MotorWinding.SecondsToLimit.Jam);
    }

    [Fact]
    public void A_limit_that_is_never_reached_is_said_not_to_be()
    {
        var answer = TemperatureWriter.Write(
            Report(
                new(
                    LoadCaseName.Climb,
                    70,
                    new(double.PositiveInfinity),
                    new(double.PositiveInfinity),
                    60,
                    65
                )
            )
        );

        Assert.Equal(70, answer.MotorWinding.SettledC.Climb);
        Assert.False(answer.MotorWinding.SecondsToLimit.Climb!.Reached);
        Assert.Null(answer.MotorWinding.SecondsToLimit.Climb.Cold);
    }

    [Fact]
    public void Every_obstacle_has_its_word() =>
        Assert.Equal(
            [
                "battery-power",
                "cutoff",
                "voltage",
                "current-limit",
                "traction",
                "speed-limit",
                "no-sensor",
            ],
            Enum.GetValues<Obstacle>().Select(obstacle => LoadCaseWriter.Word(obstacle))
        );

    private static TemperatureReport Report(CaseTemperature one)
    {
        var node = new NodeReport
        {
            CourseEndC = 60,
            PeakC = double.PositiveInfinity,
            LimitC = 120,
            Cases = [one],
        };
        return new()
        {
            MotorWinding = node,
            MotorMagnet = node,
            MotorCase = node,
            Controller = node,
            Battery = node,
            RunawayCurrentA = double.NaN,
        };
    }

    private static int Digits(double figure) =>
        figure
            .ToString("R", CultureInfo.InvariantCulture)
            .Split('E')[0]
            .Replace("-", "")
            .Replace(".", "")
            .Trim('0')
            .Length;
}
