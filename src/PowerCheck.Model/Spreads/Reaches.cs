using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Spreads;

/// <summary>
/// How far every limit of a rig is reached, as quantities over the deviates of its inputs: of each tracked finding the
/// distance past its limit, 0 at it, and its estimate.
/// </summary>
public sealed class Reaches
{
    // Far beyond a limit, or far under it, nothing changes any more: a runaway counts like five times the limit
    // (assumed).
    private const double Most = 5;
    private const double Least = 0.02;

    /// <summary>By how much copper's resistance grows over a rise to a usual limit, assumed.</summary>
    private const double Growth = 0.4;

    private readonly RigLabel filled;
    private readonly IReadOnlyList<Input> inputs;
    private readonly Finding[] tracked;

    /// <summary>The limits of a rig.</summary>
    /// <param name="filled">The rig with what was assumed in its place.</param>
    /// <param name="inputs">The figures that may be off.</param>
    /// <param name="findings">What was found of it.</param>
    public Reaches(RigLabel filled, IReadOnlyList<Input> inputs, IReadOnlyList<Finding> findings)
    {
        this.filled = filled;
        this.inputs = inputs;
        tracked = [.. findings.Where(IsTracked)];
    }

    /// <summary>Whether a probability can be told of a finding.</summary>
    /// <param name="finding">The finding.</param>
    public static bool IsTracked(Finding finding) =>
        finding.Kind.Judged && !double.IsNaN(finding.Reach) && finding.Outcome != Outcome.Unknown;

    /// <summary>The findings of which a probability can be told.</summary>
    public IReadOnlyList<Finding> Tracked => tracked;

    /// <summary>Distance past the limit and scaled estimate of each tracked finding, one after the other.</summary>
    /// <param name="deviates">A standard normal deviate an input.</param>
    public double[] At(double[] deviates)
    {
        var label = Input.Moved(filled, inputs, deviates);
        var findings = Judgement.Limits(RigCompletion.Of(label).Inspect());
        var at = new double[2 * tracked.Length];
        for (var n = 0; n < tracked.Length; n++)
        {
            var found = Same(tracked[n], findings);
            at[2 * n] = Onward(Distance(found), found, findings);
            at[(2 * n) + 1] = found is null ? double.NaN : Scaled(tracked[n], found.Estimate);
        }

        return at;
    }

    // Who passes a limit on the course stops there, so that a load case from there ends little past it, however far the course
    // would have gone: it counts as that much further past, so that the distance goes on as it came.
    private static double Onward(
        double distance,
        Finding? found,
        IReadOnlyList<Finding> findings
    ) =>
        distance > 0
        && found?.LoadCase is not (null or OnCourse)
        && findings.FirstOrDefault(other => other.Kind == found.Kind && other.LoadCase is OnCourse)
            is { } course
            ? distance + Math.Max(0, Distance(course))
            : distance;

    private const string OnCourse = "course";

    /// <summary>An estimate on the scale on which it is spread: its logarithm, but for temperatures.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="estimate">The estimate, SI.</param>
    public static double Scaled(Finding finding, double estimate) =>
        IsRatio(finding) ? Math.Log(Math.Max(Zero, estimate)) : estimate;

    /// <summary>An estimate from the scale on which it is spread, SI.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="scaled">The scaled estimate.</param>
    public static double Unscaled(Finding finding, double scaled) =>
        !IsRatio(finding) ? scaled
        : scaled <= Math.Log(Zero) ? 0
        : Math.Exp(scaled);

    // On a logarithmic scale nothing is this.
    private const double Zero = 1e-12;

    private static bool IsRatio(Finding finding) =>
        finding.Unit != Unit.Celsius && finding.Estimate > 0;

    /// <summary>
    /// The distance past the limit on a scale on which causes add up: ln(reach) of what is a product of its causes; of a
    /// temperature rise, what the heat behind it is past that of the limit, for resistance grows along:
    /// (1 + g)·reach/(1 + g·reach) − 1.
    /// </summary>
    /// <remarks>
    /// What cannot be computed any more counts as past the limit; a limit that is not even looked at, as kept.
    /// </remarks>
    /// <param name="found">The finding; null when it is not there.</param>
    public static double Distance(Finding? found)
    {
        var reach =
            found is null ? 0
            : double.IsNaN(found.Reach) ? Most
            : Math.Min(found.Reach, Most);
        if (found?.Unit != Unit.Celsius)
        {
            return Math.Log(Math.Max(reach, Least));
        }

        var rise = Math.Max(reach, -1);
        return ((1 + Growth) * rise / (1 + (Growth * rise))) - 1;
    }

    /// <summary>The same limit among the findings of another rig; null when it is not there.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="findings">The findings of the other rig.</param>
    public static Finding? Same(Finding finding, IReadOnlyList<Finding> findings)
    {
        Finding? ofKind = null;
        var alone = true;
        foreach (var other in findings)
        {
            if (other.Kind != finding.Kind)
            {
                continue;
            }

            if (string.Equals(other.LoadCase, finding.LoadCase, StringComparison.Ordinal))
            {
                return other;
            }

            alone = ofKind is null;
            ofKind = other;
        }

        // The one limit of its kind, met in another load case.
        return alone ? ofKind : null;
    }
}
