using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Pictures;

/// <summary>How much of its limit a finding's figure takes up: 1 at the limit, more past it.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="At">Share of the best estimate; infinite where the figure rises without end.</param>
/// <param name="From">Lower end of the share's 95 % interval; NaN where there is none.</param>
/// <param name="To">Upper end of the share's 95 % interval; NaN where there is none.</param>
internal sealed record LimitShare(FindingAnswer Finding, double At, double From, double To)
{
    private const string Celsius = "°C";

    /// <summary>What must stay above its limit.</summary>
    private static readonly string[] AtLeast =
    [
        FindingCatalogue.BatteryCutoff.Code,
        FindingCatalogue.DrivetrainTorqueReserve.Code,
        FindingCatalogue.DrivetrainCreepControl.Code,
        FindingCatalogue.DrivetrainGear.Code,
        FindingCatalogue.ReceiverSupplyOutputVoltage.Code,
        FindingCatalogue.CourseRunTime.Code,
        FindingCatalogue.ControllerRotorSensing.Code,
        FindingCatalogue.ControllerMinimumTurns.Code,
    ];

    /// <summary>What has a limit on either side.</summary>
    private static readonly string[] Within =
    [
        FindingCatalogue.DrivetrainRatio.Code,
        FindingCatalogue.DrivetrainMeshCenter.Code,
        FindingCatalogue.ControllerVoltage.Code,
        FindingCatalogue.ControllerCellCount.Code,
    ];

    /// <summary>What the limit is: the most that is allowed or the least that is needed.</summary>
    public string Bound { get; private init; } = "at most";

    /// <summary>Of every finding that has a limit and a figure, or one that rises without end.</summary>
    /// <param name="content">What is drawn.</param>
    public static IReadOnlyList<LimitShare> Of(PictureContent content) =>
        [
            .. content
                .Answer.Findings.Select(finding => Of(finding, content.Ratings.AmbientC?.Value))
                .OfType<LimitShare>(),
        ];

    private static LimitShare? Of(FindingAnswer finding, double? ambientC)
    {
        if (finding.Limit is not { } limit)
        {
            return null;
        }

        if (finding.Estimate is not { } estimate)
        {
            return Endless(finding)
                ? new(finding, double.PositiveInfinity, double.NaN, double.NaN)
                : null;
        }

        if (
            string.Equals(
                finding.Code,
                FindingCatalogue.DrivetrainPitch.Code,
                StringComparison.Ordinal
            )
        )
        {
            // It fits or it does not.
            var fits = finding.Outcome is "holds";
            return new(finding, fits ? 0 : double.PositiveInfinity, double.NaN, double.NaN)
            {
                Bound = "needed",
            };
        }

        var least = IsFloor(finding, estimate, limit);
        double Share(double? figure) =>
            figure is not { } value ? double.NaN
            : string.Equals(finding.Unit, Celsius, StringComparison.Ordinal)
                ? Rise(value, limit, ambientC ?? 0)
            : least ? Over(limit, value)
            : Over(value, limit);
        var (low, high) = (Share(finding.Low), Share(finding.High));
        return new(finding, Share(estimate), least ? high : low, least ? low : high)
        {
            Bound = least ? "at least" : "at most",
        };
    }

    // A figure that fails and is not there rises without end; so does one that is in doubt.
    private static bool Endless(FindingAnswer finding) =>
        string.Equals(finding.Unit, Celsius, StringComparison.Ordinal)
        && finding.Outcome is "fails" or "doubtful";

    private static bool IsFloor(FindingAnswer finding, double estimate, double limit) =>
        AtLeast.Contains(finding.Code, StringComparer.Ordinal)
        || (
            estimate < limit
            && Within.Contains(finding.Code, StringComparer.Ordinal)
            && (finding.Outcome is "fails" || finding.Unit is null)
        );

    // Of a temperature, the share of the rise over the air.
    private static double Rise(double value, double limit, double ambientC) =>
        limit <= ambientC ? double.PositiveInfinity : (value - ambientC) / (limit - ambientC);

    private static double Over(double part, double whole) =>
        whole > 0 ? part / whole : double.PositiveInfinity;
}
