using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>A pack that is not known leaves open how long the rig is driven, and so how warm it gets.</summary>
public sealed class UnknownPackTests
{
    [Fact]
    public void A_climb_that_holds_with_the_pack_known_does_not_fail_without_it()
    {
        var label = RandomRig.Of(827348);
        label = label with
        {
            Motor = label.Motor with
            {
                ResistanceOhm = label.Motor.ResistanceOhm ?? 0.05,
                NoLoadPoints = [new(7.4, 1.5)],
            },
            Controller = label.Controller with { OnResistanceOhm = 0.002 },
        };
        Outcome Climb(int? cells) =>
            Judgement
                .Inspect(
                    SampleRig.Inspect(
                        label with
                        {
                            Battery = label.Battery with { SeriesCells = cells },
                        }
                    )
                )
                .Single(f =>
                    f.Kind.Equals(FindingCatalogue.MotorWindingTemperature)
                    && string.Equals(
                        f.LoadCase,
                        Words.Of(LoadCaseName.Climb),
                        StringComparison.Ordinal
                    )
                )
                .Outcome;
        Assert.Equal(Outcome.Holds, Climb(label.Battery.SeriesCells));
        Assert.NotEqual(Outcome.Fails, Climb(null));
    }
}
