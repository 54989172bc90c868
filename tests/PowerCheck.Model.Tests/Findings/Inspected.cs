using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>An inspected rig with single figures changed, so that a limit can be looked at from both sides.</summary>
internal static class Inspected
{
    private static readonly RigLabel Bare = SampleRig.Brushless with
    {
        Accessories = [],
        Course = new() { AmbientC = 25 },
    };

    public static Inspection Brushless { get; } = SampleRig.Inspect(Bare);

    public static Inspection Brushed { get; } =
        SampleRig.Inspect(
            SampleRig.Brushed with
            {
                Accessories = [],
                Course = new() { AmbientC = 25 },
            }
        );

    public static Inspection Of(Func<RigLabel, RigLabel> change) => SampleRig.Inspect(change(Bare));

    public static Inspection With(
        this Inspection it,
        LoadCaseName name,
        Func<LoadCase, LoadCase> change
    ) =>
        it with
        {
            Cases = it.Cases with
            {
                All = [.. it.Cases.All.Select(load => load.Name == name ? change(load) : load)],
            },
        };

    public static Inspection WithRig(this Inspection it, Func<Rig, Rig> change) =>
        it with
        {
            Rig = change(it.Rig),
        };

    public static Inspection WithWarmth(
        this Inspection it,
        Func<TemperatureReport, TemperatureReport> change
    ) => it with { Result = it.Result with { Temperatures = change(it.Result.Temperatures) } };

    public static Finding[] All(this Inspection it, FindingKind kind, string? loadCase = null) =>
        [
            .. Judgement
                .Inspect(it)
                .Where(f =>
                    f.Kind == kind
                    && (
                        loadCase is null
                        || string.Equals(f.LoadCase, loadCase, StringComparison.Ordinal)
                    )
                ),
        ];

    public static Finding Only(this Inspection it, FindingKind kind, string? loadCase = null) =>
        Assert.Single(it.All(kind, loadCase));

    /// <summary>Estimate, limit and outcome, to a billionth.</summary>
    public static (double Estimate, double Limit, Outcome Outcome) Figures(this Finding found) =>
        (Math.Round(found.Estimate, 9), Math.Round(found.Limit, 9), found.Outcome);
}
