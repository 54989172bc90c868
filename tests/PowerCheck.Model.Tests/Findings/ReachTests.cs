using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>How far figures have come towards their limits, which their probabilities are found from (M12).</summary>
public sealed class ReachTests
{
    private static readonly FindingKind[] LeastWanted =
    [
        FindingCatalogue.DrivetrainTorqueReserve,
        FindingCatalogue.DrivetrainCreepControl,
        FindingCatalogue.ReceiverSupplyOutputVoltage,
        FindingCatalogue.CourseRunTime,
    ];

    private static readonly FindingKind[] MostAllowed =
    [
        FindingCatalogue.DrivetrainMotorClearance,
        FindingCatalogue.ControllerVoltage,
        FindingCatalogue.MotorVoltage,
        FindingCatalogue.WiringFuseCarries,
    ];

    private static readonly Finding[] All = [.. Enumerable.Range(1, 60).SelectMany(Of)];

    // A random rig with the figures that few boxes have.
    private static IEnumerable<Finding> Of(int number)
    {
        var dice = new Random(number);
        double Between(double low, double high) => low + ((high - low) * dice.NextDouble());
        var rig = RandomRig.Of(number);
        return Check
            .Run(
                rig with
                {
                    Motor = rig.Motor with { CanDiameterM = 0.036, MaxVoltageV = Between(7, 14) },
                    Controller = rig.Controller with { MaxVoltageV = Between(7, 14) },
                    Vehicle = rig.Vehicle with
                    {
                        Drivetrain = rig.Vehicle.Drivetrain with
                        {
                            MotorClearanceM = Between(0.015, 0.021),
                        },
                    },
                    Course = rig.Course with { WantedS = Between(300, 7200) },
                    Wiring = rig.Wiring with { FuseA = Between(3, 40) },
                }
            )
            .Findings;
    }

    private static Finding[] Known(FindingKind[] kinds)
    {
        // A word of caution beside a figure has no margin of its own.
        var known = All.Where(f =>
                kinds.Contains(f.Kind)
                && f.Outcome != Outcome.Unknown
                && !double.IsNaN(f.Severeness)
            )
            .ToArray();
        Assert.Equal(kinds.Length, known.Select(f => f.Kind).Distinct().Count());
        Assert.Contains(known, f => f.Reach > 1);
        Assert.Contains(known, f => f.Reach < 1);
        return known;
    }

    [Fact]
    public void What_must_be_at_least_so_much_is_reached_by_limit_over_figure() =>
        Assert.All(
            Known(LeastWanted),
            f =>
                Assert.Equal(
                    f.Estimate > 0 ? f.Limit / f.Estimate : double.PositiveInfinity,
                    f.Reach,
                    1e-9
                )
        );

    [Fact]
    public void What_must_be_at_most_so_much_is_reached_by_figure_over_limit() =>
        Assert.All(Known(MostAllowed), f => Assert.Equal(f.Estimate / f.Limit, f.Reach, 2e-9));

    [Fact]
    public void A_torque_reserve_under_one_and_a_half_is_in_doubt_whatever_its_probability() =>
        Assert.All(
            All.Where(f => f.Kind == FindingCatalogue.DrivetrainTorqueReserve),
            f => Assert.Equal(f.Estimate < 1.5, f.InDoubt)
        );

    [Fact]
    public void A_fuse_between_what_it_carries_and_what_may_open_it_is_in_doubt_whatever_its_probability()
    {
        // It carries 1.10 of its rating for ever and may open from 1.35 on (ISO 8820).
        var fuses = All.Where(f =>
                f is { LoadCase: "punch" } && f.Kind == FindingCatalogue.WiringFuseCarries
            )
            .ToArray();

        Assert.NotEmpty(fuses);
        Assert.All(fuses, f => Assert.Equal(f.Estimate > f.Limit * 1.10 / 1.35, f.InDoubt));
    }

    [Fact]
    public void A_match_of_words_is_not_reached_at_all_or_without_end()
    {
        var brushless = SampleRig.Brushless;
        var matches = new[]
        {
            brushless,
            brushless with
            {
                Controller = brushless.Controller with { MotorKinds = [MotorKind.Brushed] },
            },
            brushless with
            {
                Controller = new(),
            },
        }
            .Select(rig =>
                Check.Run(rig).Findings.Single(f => f.Kind == FindingCatalogue.ControllerMotorKind)
            )
            .ToArray();

        Assert.Equal(
            [Outcome.Holds, Outcome.Fails, Outcome.Unknown],
            matches.Select(f => f.Outcome)
        );
        Assert.All(
            matches,
            f =>
                Assert.Equal(
                    f.Outcome switch
                    {
                        Outcome.Holds => 0,
                        Outcome.Fails => double.PositiveInfinity,
                        _ => double.NaN,
                    },
                    f.Reach
                )
        );
    }

    [Fact]
    public void A_receiver_without_any_voltage_left_is_reached_without_end()
    {
        var it = Inspected.Brushless;
        var empty = it with { ReceiverSupply = it.ReceiverSupply with { LowestOutputV = 0 } };
        var found = empty.All(FindingCatalogue.ReceiverSupplyOutputVoltage).Single();

        Assert.Equal(double.PositiveInfinity, found.Reach);
    }
}
