using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Electrical;

/// <summary>A rig, what the check says of it and what the circuits say.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Check">The check.</param>
/// <param name="Circuits">The circuits.</param>
internal sealed record RefereedCases(
    PlainRig Rig,
    CheckResult Check,
    IReadOnlyDictionary<PlainCase, CasePoint> Circuits
)
{
    private static readonly Lazy<IReadOnlyList<RefereedCases>> Cases = new(() =>
        [.. Refereed.Numbers.AsParallel().AsOrdered().Select(n => Of(RandomPlainRig.Of(n)))]
    );

    /// <summary>All rigs, run once for all tests.</summary>
    public static IReadOnlyList<RefereedCases> All => Cases.Value;

    /// <summary>The check's figures of a case.</summary>
    public LoadCase Of(PlainCase name) =>
        name == PlainCase.PunchAtReserve
            ? Check.LoadCases.PunchAtReserve
            : Check.LoadCases[Enum.Parse<LoadCaseName>(name.ToString())];

    /// <summary>A rig by the check and by circuits.</summary>
    public static RefereedCases Of(PlainRig rig) =>
        new(rig, Refereed.Check(rig), ElectricalReferee.Run(rig));
}
