using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>What a finding asks for, its unit, how it writes degrees, and where it stands among its like (M13).</summary>
public sealed class FindingFormTests
{
    [Fact]
    public void Of_a_motor_of_unsaid_kind_only_the_kind_is_asked_where_the_controller_says_its_own()
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Kind = null },
                    Controller = label.Controller with
                    {
                        MotorKinds = [MotorKind.Brushed, MotorKind.Brushless],
                    },
                }
            )
            .Only(ControllerMotorKind);

        Assert.Equal(["motor.kind"], found.Needs.Select(need => need.Path));
    }

    [Fact]
    public void A_mismatch_that_is_told_asks_for_nothing_that_was_left_out_beside_it()
    {
        // A controller without the input needs no word about the motor's sensor.
        var found = Inspected
            .Of(label =>
                label with
                {
                    Motor = label.Motor with { Sensored = null },
                    Controller = label.Controller with { SensorInput = false },
                }
            )
            .Only(ControllerRotorSensing);

        Assert.Equal(Outcome.Fails, found.Outcome);
        Assert.Empty(found.Needs);
    }

    [Fact]
    public void A_word_of_caution_has_the_unit_of_its_figures()
    {
        var found = Inspected
            .Of(label =>
                label with
                {
                    Controller = label.Controller with { MinVoltageV = 11, MaxCells = 3 },
                }
            )
            .Only(ControllerVoltage);

        Assert.True(found.Caution);
        Assert.Equal((Model.Units.Unit.Volt, 11), (found.Unit, found.Limit));
    }

    [Fact]
    public void A_temperature_is_told_in_whole_degrees()
    {
        var found = Inspected
            .Brushless.WithWarmth(warm =>
                warm with
                {
                    MotorWinding = warm.MotorWinding with { PeakC = 83.4 },
                }
            )
            .Only(MotorWindingTemperature, "course");

        Assert.Contains(": 83 °C, at most 120 °C", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("climb", "slip")]
    [InlineData("slip", "climb")]
    public void Two_of_a_kind_alike_in_all_else_stand_in_the_order_of_their_cases(
        string one,
        string other
    )
    {
        Finding Of(string loadCase) =>
            new()
            {
                Kind = MotorWindingTemperature,
                Outcome = Outcome.Doubtful,
                LoadCase = loadCase,
                Severeness = 0.95,
                Sentence = _ => "A sentence.",
            };
        var ordered = Judgement.Of([Of(one), Of(other)]).Findings;

        Assert.Equal(["climb", "slip"], ordered.Select(f => f.LoadCase));
        Assert.True(ordered[0].Decides);
    }
}
