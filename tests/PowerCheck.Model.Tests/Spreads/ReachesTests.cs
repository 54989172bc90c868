using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>How far limits are reached by a rig whose figures are moved (M12), against checks of rigs that are so.</summary>
public sealed class ReachesTests
{
    private static readonly RigLabel Label = SampleRig.Brushless with
    {
        Tolerances = new Dictionary<string, Spread>(StringComparer.Ordinal)
        {
            ["vehicle.massKg"] = Spread.Relative(0.2),
            ["motor.resistanceMilliohm"] = Spread.Factor(1.5),
        },
    };

    private static readonly RigCompletion Complete = RigCompletion.Of(Label);
    private static readonly RigLabel Filled = RigFill.Of(Label, Complete);

    private static readonly Input[] Inputs =
    [
        .. Input
            .Of(Filled, Complete.Ledger.Assumptions)
            .Where(input => input.Basis == SpreadBasis.Caller),
    ];

    private static readonly Reaches Reaches = new(Filled, Inputs, Check.Run(Label).Findings);

    private static int Place(string path) =>
        Array.FindIndex(
            Inputs,
            input => string.Equals(input.Figure.Path, path, StringComparison.Ordinal)
        );

    // The scales on which causes add up, as the model's text has them.
    private static double Distance(Finding finding) =>
        finding.Unit == Unit.Celsius
            ? (1.4 * Math.Max(finding.Reach, -1) / (1 + (0.4 * Math.Max(finding.Reach, -1)))) - 1
            : Math.Log(Math.Clamp(finding.Reach, 0.02, 5));

    private static double Estimate(Finding first, Finding finding) =>
        first.Unit == Unit.Celsius || first.Estimate <= 0
            ? finding.Estimate
            : Math.Log(Math.Max(1e-12, finding.Estimate));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1.2, 0)]
    [InlineData(0, -0.7)]
    [InlineData(-1.5, 0.9)]
    public void Each_limit_is_reached_as_far_as_by_a_rig_that_is_so(double mass, double resistance)
    {
        var deviates = new double[Inputs.Length];
        deviates[Place("vehicle.massKg")] = mass;
        deviates[Place("motor.resistanceMilliohm")] = resistance;
        var moved = RigFigures.With(
            RigFigures.With(
                Filled,
                "vehicle.massKg",
                Filled.Vehicle.MassKg * (1 + (0.2 * mass / 1.959963984540054))
            ),
            "motor.resistanceMilliohm",
            Filled.Motor.ResistanceOhm!.Value * Math.Pow(1.5, resistance / 1.959963984540054)
        );
        var at = Reaches.At(deviates);
        var found = Check.Run(moved).Findings;

        Assert.Equal(2 * Reaches.Tracked.Count, at.Length);
        for (var n = 0; n < Reaches.Tracked.Count; n++)
        {
            var tracked = Reaches.Tracked[n];
            var same = found.Single(f =>
                f.Kind == tracked.Kind
                && string.Equals(f.LoadCase, tracked.LoadCase, StringComparison.Ordinal)
            );
            if (!(same.Reach < 5))
            {
                continue;
            }

            Assert.Equal(Distance(same), at[2 * n], 1e-9);
            Assert.Equal(Estimate(tracked, same), at[(2 * n) + 1], 1e-9);
        }
    }

    [Fact]
    public void Judged_limits_that_are_known_are_tracked()
    {
        var unknown = Check.Run(Label with { Motor = new() }).Findings;

        Assert.All(Reaches.Tracked, f => Assert.True(f.Kind.Judged && !double.IsNaN(f.Reach)));
        Assert.Contains(unknown, f => f.Kind.Judged && !Reaches.IsTracked(f));
        Assert.All(
            unknown.Where(f => f.Outcome == Outcome.Unknown || !f.Kind.Judged),
            f => Assert.False(Reaches.IsTracked(f))
        );
        Assert.True(Reaches.Tracked.Count > 15);
    }

    [Fact]
    public void A_figure_is_scaled_and_unscaled_by_its_logarithm_but_for_temperatures()
    {
        var current = Reaches.Tracked.First(f => f.Unit == Unit.Ampere && f.Estimate > 0);
        var warmth = Reaches.Tracked.First(f => f.Unit == Unit.Celsius);

        Assert.Equal((Math.Log(7), 7), (Reaches.Scaled(current, 7), Reaches.Scaled(warmth, 7)));
        Assert.Equal(7, Reaches.Unscaled(current, Math.Log(7)), 1e-12);
        Assert.Equal(7, Reaches.Unscaled(warmth, 7));
        Assert.Equal(Math.Log(1e-12), Reaches.Scaled(current, 0));
        Assert.Equal(0, Reaches.Unscaled(current, Math.Log(1e-12)));
    }

    [Fact]
    public void Past_what_the_course_passes_already_a_load_case_is_further_past_by_that_much()
    {
        var (heavy, findings) = Enumerable
            .Range(0, 100)
            .Select(n => Label with { Vehicle = Label.Vehicle with { MassKg = 3 + (0.1 * n) } })
            .Select(label => (label, Check.Run(label).Findings))
            .First(pair =>
                pair.Findings.Single(f =>
                    f is { Kind.Code: "motor.winding-temperature", LoadCase: "course" }
                )
                    is { Reach: > 1.05 }
            );
        var filled = RigFill.Of(heavy, RigCompletion.Of(heavy));
        var reaches = new Reaches(filled, [], findings);
        var at = reaches.At([]);
        var windings = Enumerable
            .Range(0, reaches.Tracked.Count)
            .Where(n => reaches.Tracked[n].Kind == FindingCatalogue.MotorWindingTemperature)
            .ToDictionary(n => reaches.Tracked[n].LoadCase!, n => (reaches.Tracked[n], at[2 * n]));

        var (course, past) = windings["course"];
        Assert.True(past > 0, "the course is not past the limit");
        Assert.Equal(Distance(course), past, 1e-9);
        var (climb, climbing) = windings["climb"];
        Assert.True(Distance(climb) > 0, "the climb is not past the limit");
        Assert.Equal(Distance(climb) + past, climbing, 1e-9);
        // A load case that is not past the limit stays where it is.
        var (level, creeping) = windings["level"];
        Assert.True(creeping < 0);
        Assert.Equal(Distance(level), creeping, 1e-9);
    }

    [Fact]
    public void Shares_are_of_all_the_variance_and_the_largest_comes_first()
    {
        // Two inputs alone: all else is held to be exact.
        var exact = Label with
        {
            Tolerances = Input
                .Of(Filled, Complete.Ledger.Assumptions)
                .Select(input => input.Figure.Path)
                .ToDictionary(
                    path => path,
                    path => Label.Tolerances.GetValueOrDefault(path, Spread.None),
                    StringComparer.Ordinal
                ),
        };
        var climb = Check
            .Run(exact, SpreadMethod.Linear)
            .Findings.Single(f =>
                f.Kind == FindingCatalogue.MotorWindingTemperature
                && string.Equals(f.LoadCase, "climb", StringComparison.Ordinal)
            );

        var shares = climb.Chance!.DecidedBy;
        Assert.Equal(2, shares.Count);
        Assert.Equal(1, shares.Sum(share => share.Part), 1e-9);
        Assert.True(shares[0].Part > shares[1].Part && shares[1].Part > 0.01);
        Assert.All(shares, share => Assert.False(share.Assumed));
    }
}
