using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>Where a limit of one rig is met among those of another (M12), as draws are.</summary>
public sealed class ReachedTests
{
    private static readonly Finding[] Found = Of(SampleRig.Brushless);

    private static RigLabel Filled(RigLabel label) => RigFill.Of(label, RigCompletion.Of(label));

    private static Finding[] Of(RigLabel label) =>
        [.. Judgement.Limits(SampleRig.Inspect(label)).Where(Reaches.IsTracked)];

    private static double[] At(RigLabel label, params Finding[] findings) =>
        new Reaches(Filled(label), [], findings).At([]);

    private static Finding Alone =>
        Found.First(f =>
            f.Unit != Unit.Celsius
            && f is { Estimate: > 0, Reach: > 0.1 and < 5 }
            && Found.Count(g => g.Kind == f.Kind) == 1
        );

    private static Finding Winding(Finding[] findings) =>
        findings.First(f => f.Kind == FindingCatalogue.MotorWindingTemperature);

    [Fact]
    public void A_limit_that_is_alone_of_its_kind_is_met_in_another_load_case()
    {
        var elsewhere = Alone with { LoadCase = "elsewhere" };

        Assert.Equal(
            [Math.Log(Alone.Reach), Math.Log(Alone.Estimate)],
            At(SampleRig.Brushless, elsewhere),
            (a, b) => Math.Abs(a - b) < 1e-9
        );
    }

    [Fact]
    public void Of_several_of_a_kind_only_the_one_in_its_own_load_case_is_meant()
    {
        var winding = Winding(Found);
        Assert.True(Found.Count(f => f.Kind == winding.Kind) > 1);

        var at = At(SampleRig.Brushless, winding with { LoadCase = "elsewhere" }, winding);

        // A limit that is not looked at counts as kept, and its figure is not known.
        Assert.Equal(Math.Log(0.02), at[0], 1e-12);
        Assert.True(double.IsNaN(at[1]));
        Assert.Equal(winding.Estimate, at[3], 1e-9);
    }

    [Fact]
    public void A_limit_that_another_rig_does_not_have_counts_as_kept()
    {
        var other = SampleRig.Brushless with { Accessories = [] };
        var left = Of(other).Select(f => f.Kind).ToArray();
        var gone = Of(WithFuse).First(f => !left.Contains(f.Kind));

        var at = At(other, gone);

        Assert.Equal(Math.Log(0.02), at[0], 1e-12);
        Assert.True(double.IsNaN(at[1]));
    }

    private static RigLabel WithFuse =>
        SampleRig.Brushless with
        {
            Wiring = SampleRig.Brushless.Wiring with { FuseA = 60 },
        };

    [Fact]
    public void A_limit_that_another_rig_cannot_tell_counts_as_far_past_it()
    {
        var light = SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                MassKg = null,
                CanDiameterM = null,
                CanLengthM = null,
            },
        };

        var at = At(light, Winding(Found));

        // Five times the rise to the limit: 1.4·5/(1 + 0.4·5) − 1.
        Assert.Equal((1.4 * 5 / 3) - 1, at[0], 1e-12);
    }

    [Fact]
    public void A_finding_without_a_reach_or_that_is_not_judged_has_no_probability()
    {
        Assert.True(Reaches.IsTracked(Alone));
        Assert.False(Reaches.IsTracked(Alone with { Reach = double.NaN }));
        Assert.False(Reaches.IsTracked(Alone with { Outcome = Outcome.Unknown }));
        Assert.False(Reaches.IsTracked(Alone with { Kind = Alone.Kind with { Judged = false } }));
    }

    [Fact]
    public void A_figure_of_nought_has_no_logarithm_and_is_taken_as_it_is() =>
        Assert.Equal(
            (7, 7),
            (
                Reaches.Scaled(Alone with { Estimate = 0 }, 7),
                Reaches.Unscaled(Alone with { Estimate = 0 }, 7)
            )
        );
}
