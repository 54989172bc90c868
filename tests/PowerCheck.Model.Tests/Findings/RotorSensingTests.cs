using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Whether a controller knows where the rotor stands at a crawl (M5, M11).</summary>
public sealed class RotorSensingTests
{
    private static Finding Of(
        bool? motor,
        bool? controller,
        bool lowSpeedStart = false,
        double speedRadPerS = 200
    ) =>
        Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Sensored = motor },
                    Controller = label.Controller with
                    {
                        SensorInput = controller,
                        LowSpeedStart = lowSpeedStart,
                        LowSpeedBackEmfV = 0.3,
                    },
                }
            )
            .With(LoadCaseName.Level, level => level with { MotorSpeedRadPerS = speedRadPerS })
            .Only(ControllerRotorSensing);

    [Theory]
    [InlineData(true, true, Outcome.Holds, "")]
    [InlineData(false, true, Outcome.Fails, "")]
    [InlineData(true, false, Outcome.Fails, "")]
    [InlineData(null, true, Outcome.Unknown, "motor.sensored")]
    [InlineData(true, null, Outcome.Unknown, "controller.sensorInput")]
    [InlineData(null, null, Outcome.Unknown, "motor.sensored controller.sensorInput")]
    public void A_sensor_is_one_that_both_have(
        bool? motor,
        bool? controller,
        Outcome outcome,
        string needs
    )
    {
        var found = Of(motor, controller);

        Assert.Equal((outcome, "level"), (found.Outcome, found.LoadCase));
        Assert.Equal(needs, string.Join(' ', found.Needs.Select(need => need.Path)));
    }

    // kt = 60/(2π·3300) = 0.00289373 V·s/rad.
    [Theory]
    [InlineData(200, Outcome.Holds)]
    [InlineData(110, Outcome.Doubtful)]
    [InlineData(100, Outcome.Fails)]
    public void Without_a_sensor_a_low_speed_start_needs_back_EMF(
        double speedRadPerS,
        Outcome outcome
    )
    {
        var found = Of(false, true, lowSpeedStart: true, speedRadPerS);

        Assert.Equal(0.00289373 * speedRadPerS, found.Estimate, 1e-6);
        Assert.Equal((0.3, outcome), (found.Limit, found.Outcome));
        Assert.Equal(0.3 / found.Estimate, found.Severeness, 1e-9);
        Assert.Contains("at least 0.3 V needed", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(200, Outcome.Holds, 0)]
    [InlineData(105, Outcome.Holds, 0)]
    [InlineData(100, Outcome.Unknown, double.NaN)]
    public void Where_a_sensor_is_not_known_of_enough_back_EMF_makes_it_hold(
        double speedRadPerS,
        Outcome outcome,
        double severeness
    )
    {
        var found = Of(null, true, lowSpeedStart: true, speedRadPerS);

        Assert.Equal((outcome, severeness), (found.Outcome, found.Severeness));
    }

    [Fact]
    public void A_sensor_that_both_have_holds_however_slow() =>
        Assert.Equal(Outcome.Holds, Of(true, true, lowSpeedStart: true, 1).Outcome);

    [Fact]
    public void Brushes_need_no_sensor() =>
        Assert.Empty(Inspected.Brushed.All(ControllerRotorSensing));
}
