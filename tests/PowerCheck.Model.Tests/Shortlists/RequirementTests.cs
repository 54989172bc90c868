using System.Collections.Concurrent;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Shortlists;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Shortlists;

/// <summary>What a part must be able to do that is left open (M14), against checks of rigs with a part that is just so.</summary>
/// <param name="numbers">Numbers of random rigs, each of which is asked for each part.</param>
/// <param name="many">How many figures are asked for at least, all together.</param>
/// <param name="spread">How the spread of the figures is carried to the limits.</param>
public abstract class RequirementTests(int[] numbers, int many, SpreadMethod spread)
{
    private IEnumerable<(RequiredPart Found, Requirement Requirement)> All =>
        from number in numbers
        from part in Enum.GetValues<SoughtPart>()
        let found = Found(part, number, spread)
        from requirement in found.Requirements
        select (found, requirement);

    // A rig as it is but for the figures of one part.
    internal static RigLabel Without(SoughtPart part, RigLabel label) =>
        part switch
        {
            SoughtPart.Motor => label with { Motor = new() { Kind = label.Motor.Kind } },
            SoughtPart.Controller => label with { Controller = new() },
            SoughtPart.Battery => label with
            {
                Battery = new() { Chemistry = label.Battery.Chemistry },
            },
            _ => label with
            {
                Vehicle = label.Vehicle with
                {
                    Drivetrain = label.Vehicle.Drivetrain with { PinionTeeth = null },
                },
            },
        };

    // The sample rig is number 0.
    private static RigLabel Rig(int number) =>
        number == 0 ? SampleRig.Brushless : RandomRig.Of(number);

    private static readonly ConcurrentDictionary<
        (SoughtPart, int, SpreadMethod),
        RequiredPart
    > Searched = new();

    private static RequiredPart Found(SoughtPart part, int number, SpreadMethod spread) =>
        Searched.GetOrAdd(
            (part, number, spread),
            _ => RequiredPart.Of(Without(part, Rig(number)), part, spread)
        );

    internal static bool IsHeld(Finding finding) =>
        finding is { Outcome: Outcome.Holds, Caution: false };

    internal static Finding Setter(Requirement requirement, RigLabel label, SpreadMethod spread) =>
        Check
            .Run(label, spread)
            .Findings.First(f =>
                f.Kind.Code == requirement.SetBy
                && string.Equals(f.LoadCase, requirement.LoadCase, StringComparison.Ordinal)
            );

    // KV is sought with the resistance that goes with it in a motor of that mass.
    private static RigLabel AsSought(Requirement requirement, RigLabel settled) =>
        requirement.Path == "motor.kvRpmPerVolt"
            ? settled with
            {
                Motor = settled.Motor with { ResistanceOhm = null },
            }
            : settled;

    internal static double Bound(Requirement requirement) =>
        double.IsNaN(requirement.Minimum) ? requirement.Maximum : requirement.Minimum;

    private static RigLabel At(Requirement requirement, RigLabel settled, double value) =>
        RigFigures.With(AsSought(requirement, settled), requirement.Path, value);

    [Fact]
    public void A_part_that_is_just_so_holds_the_limits_that_set_it() =>
        Assert.All(
            All,
            it =>
            {
                var (found, requirement) = it;
                var just = At(requirement, found.Settled, Bound(requirement));
                Assert.True(IsHeld(Setter(requirement, just, spread)));
            }
        );

    [Fact]
    public void A_part_one_step_short_of_it_does_not_hold_without_a_caution() =>
        Assert.All(
            All,
            it =>
            {
                var (found, requirement) = it;
                var counted = requirement.Unit == Unit.Teeth || requirement.Unit == Unit.Cells;
                var (step, sign) = (
                    counted ? 1 : 0.05 * Bound(requirement),
                    double.IsNaN(requirement.Minimum) ? 1 : -1
                );
                var shortOf = At(requirement, found.Settled, Bound(requirement) + (sign * step));
                Assert.False(IsHeld(Setter(requirement, shortOf, spread)));
            }
        );

    [Fact]
    public void Most_parts_that_are_sought_have_something_to_be_able_to_do() =>
        Assert.True(All.Count() > many);

    [Fact]
    public void Of_what_is_the_better_the_more_the_least_is_told_and_the_other_way_about() =>
        Assert.All(
            All.Select(it => it.Requirement),
            requirement =>
            {
                var resistance = requirement.Unit == Unit.Milliohm;
                var window =
                    requirement.Unit == Unit.RpmPerVolt
                    || requirement.Unit == Unit.Cells
                    || requirement.Unit == Unit.Teeth;
                Assert.True(window || double.IsNaN(requirement.Minimum) == resistance);
            }
        );

    [Fact]
    public void A_pack_is_asked_for_a_resistance_that_cells_have()
    {
        // Cells of 800 to 6000 mAh have 1 to 20 mΩ: common practice, no source.
        var most = All.Select(it => it.Requirement)
            .Where(r => r.Path == "battery.cellResistanceMilliohm")
            .Select(r => Unit.Milliohm.FromSi(r.Maximum))
            .ToArray();

        Assert.True(most.Length >= many / 20);
        Assert.All(most, milliohm => Assert.True(milliohm > 1, $"{milliohm}"));
    }
}

/// <summary>Of two rigs.</summary>
public sealed class FewRequirementTests() : RequirementTests([1, 2], 20, SpreadMethod.None);

/// <summary>Of eight more.</summary>
[Trait("speed", "slow")]
public sealed class ManyRequirementTests()
    : RequirementTests([3, 4, 5, 6, 7, 8, 9, 10], 80, SpreadMethod.None);

/// <summary>Of three with the spread of their figures.</summary>
[Trait("speed", "slow")]
public sealed class SpreadRequirementTests() : RequirementTests([0, 3, 6], 30, SpreadMethod.Linear);
