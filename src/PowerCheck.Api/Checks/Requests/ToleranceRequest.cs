using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>
/// How far off a figure may be, 95 %: relative, factor, absolute, or low and high. A bare number is relative.
/// </summary>
[Plain(nameof(Relative))]
public sealed class ToleranceRequest
{
    /// <summary>Share of the value either side; 0 where it is exact.</summary>
    [Figure(nameof(Unit.One), 0, 0.95, 0.1)]
    public double? Relative { get; set; }

    /// <summary>Factor either side, log-normal.</summary>
    [Figure(nameof(Unit.One), 1, 10, 1.5)]
    public double? Factor { get; set; }

    /// <summary>Distance either side, in the unit of the path.</summary>
    [Figure(nameof(Unit.One), 0, 1e6, 5)]
    public double? Absolute { get; set; }

    /// <summary>Lower end, in the unit of the path; with high.</summary>
    [Figure(nameof(Unit.One), -1e6, 1e6, 0.3)]
    public double? Low { get; set; }

    /// <summary>Upper end, in the unit of the path; with low.</summary>
    [Figure(nameof(Unit.One), -1e6, 1e6, 0.8)]
    public double? High { get; set; }
}
