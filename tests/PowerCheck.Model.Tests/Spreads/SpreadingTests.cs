using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>What the spread of a rig's figures makes of its limits (M12, M13).</summary>
[Trait("speed", "slow")]
public sealed class SpreadingTests
{
    private static readonly CheckResult Sample = Check.Run(
        SampleRig.Brushless,
        SpreadMethod.Linear
    );

    private static Finding Winding(CheckResult result, string loadCase) =>
        result.Findings.Single(f =>
            f.Kind == FindingCatalogue.MotorWindingTemperature
            && string.Equals(f.LoadCase, loadCase, StringComparison.Ordinal)
        );

    [Fact]
    public void Every_judged_limit_that_is_known_has_a_probability_and_an_interval_around_its_figure() =>
        Assert.All(
            Sample.Findings.Where(f => f.Kind.Judged && !double.IsNaN(f.Reach)),
            f =>
            {
                Assert.NotNull(f.Chance);
                Assert.InRange(f.Chance.Exceedance, 0, 1);
                Assert.False(f.Chance.Low > f.Estimate + 1e-9, f.Message);
                Assert.False(f.Chance.High < f.Estimate - 1e-9, f.Message);
            }
        );

    [Fact]
    public void Nothing_is_said_of_how_sure_it_is_where_that_is_not_asked_for()
    {
        var plain = Check.Run(SampleRig.Brushless);

        Assert.All(plain.Findings, f => Assert.Null(f.Chance));
        Assert.Equal(new(SpreadMethod.None, SpreadMethod.None, 0), plain.Spread);
    }

    [Fact]
    public void The_same_rig_gets_the_same_probabilities()
    {
        var again = Check.Run(SampleRig.Brushless, SpreadMethod.Linear);

        Assert.Equal(
            Sample.Findings.Select(f => f.Chance?.Exceedance),
            again.Findings.Select(f => f.Chance?.Exceedance)
        );
    }

    [Fact]
    public void Shares_of_variance_fall_and_sum_up_to_no_more_than_all()
    {
        Assert.All(
            Sample.Findings.Select(f => f.Chance).OfType<Chance>(),
            chance =>
            {
                Assert.Equal(
                    chance.DecidedBy.OrderByDescending(share => share.Part),
                    chance.DecidedBy
                );
                Assert.InRange(chance.DecidedBy.Sum(share => share.Part), 0, 1 + 1e-9);
            }
        );
        Assert.NotEmpty(Winding(Sample, "jam").Chance!.DecidedBy);
    }

    [Fact]
    public void A_figure_that_its_caller_holds_to_be_exact_decides_nothing()
    {
        var first = Winding(Sample, "jam").Chance!.DecidedBy[0].Path;
        var exact = SampleRig.Brushless with
        {
            Tolerances = new Dictionary<string, Spread>(StringComparer.Ordinal)
            {
                [first] = Spread.None,
            },
        };

        var chance = Winding(Check.Run(exact, SpreadMethod.Linear), "jam").Chance!;

        Assert.DoesNotContain(first, chance.DecidedBy.Select(share => share.Path));
        var before = Winding(Sample, "jam").Chance!;
        Assert.True(chance.High - chance.Low < before.High - before.Low);
    }

    // The mass is all that is uncertain, and limit and mass are both known: a normal distribution decides.
    [Theory]
    [InlineData(0.10, 0.5)]
    [InlineData(0.20, 0.5)]
    public void A_figure_at_its_limit_is_past_it_half_the_time(double tolerance, double expected)
    {
        var rig = OnlyMass(tolerance);
        var torque = Check
            .Run(rig)
            .Findings.Single(f => f.Kind == FindingCatalogue.DrivetrainWheelTorque)
            .Estimate;
        var limited = rig with
        {
            Vehicle = rig.Vehicle with
            {
                Drivetrain = rig.Vehicle.Drivetrain with { MaxWheelTorqueNm = torque },
            },
        };

        var found = Check
            .Run(limited, SpreadMethod.Linear)
            .Findings.Single(f => f.Kind == FindingCatalogue.DrivetrainWheelTorque);

        Assert.Equal(expected, found.Chance!.Exceedance, 0.01);
        Assert.Equal(["vehicle.massKg"], found.Chance.DecidedBy.Select(share => share.Path));
        Assert.Equal(Outcome.Doubtful, found.Outcome);
    }

    private static RigLabel OnlyMass(double tolerance)
    {
        var rig = SampleRig.Brushless with
        {
            Vehicle = SampleRig.Brushless.Vehicle with
            {
                Drivetrain = SampleRig.Brushless.Vehicle.Drivetrain with { MaxWheelTorqueNm = 100 },
            },
        };
        var complete = RigCompletion.Of(rig);
        var paths = Input
            .Of(RigFill.Of(rig, complete), complete.Ledger.Assumptions)
            .Select(input => input.Figure.Path);
        return rig with
        {
            Tolerances = paths.ToDictionary(
                path => path,
                path =>
                    string.Equals(path, "vehicle.massKg", StringComparison.Ordinal)
                        ? Spread.Relative(tolerance)
                        : Spread.None,
                StringComparer.Ordinal
            ),
        };
    }
}
