using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>Where a figure is not known, the most that it can be may hold but proves no failure (M13).</summary>
public sealed class BoundTests
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

    [Fact]
    public void A_punch_that_holds_with_the_winding_known_does_not_fail_without_it()
    {
        var label = RandomRig.Of(231371);
        label = label with
        {
            Motor = label.Motor with
            {
                ResistanceOhm = label.Motor.ResistanceOhm ?? 0.05,
                NoLoadPoints = [new(7.4, 1.5)],
            },
        };
        var less = label with
        {
            Motor = label.Motor with
            {
                ResistanceOhm = null,
                MassKg = null,
                CanDiameterM = null,
                CanLengthM = null,
            },
        };
        static Outcome Punch(RigLabel rig) =>
            Judgement
                .Inspect(SampleRig.Inspect(rig))
                .Single(f => f.Kind.Equals(FindingCatalogue.BatteryBurstRate))
                .Outcome;
        Assert.Equal(Outcome.Holds, Punch(label));
        Assert.NotEqual(Outcome.Fails, Punch(less));
    }
}
