using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>Finds what holds of a rig and what does not.</summary>
/// <param name="rig">The rig.</param>
internal delegate IReadOnlyList<Finding> Inspect(RigLabel rig);

/// <summary>A rig with one figure of its open part at different values, in the unit of the figure's path.</summary>
/// <param name="rig">The rig.</param>
/// <param name="sought">The figure.</param>
internal sealed class Tried(RigLabel rig, SoughtFigure sought)
{
    /// <summary>Step beyond a bound at which a limit gives way, as a share, assumed.</summary>
    private const double Step = 0.05;

    private readonly LabelFigure<RigLabel> figure = sought.In(rig);

    /// <summary>The figure.</summary>
    public SoughtFigure Sought => sought;

    /// <summary>The values that are tried.</summary>
    public IReadOnlyList<double> Values { get; } = sought.ValuesIn(rig);

    /// <summary>The rig as it is.</summary>
    public RigLabel Rig => rig;

    /// <summary>The rig with the figure at a value.</summary>
    /// <param name="value">The value.</param>
    public RigLabel With(double value) => figure.Write(rig, figure.Unit.ToSi(value));

    /// <summary>Between a value that breaks a limit and one that does not: the last that does not.</summary>
    /// <param name="breaks">The one.</param>
    /// <param name="holds">The other.</param>
    /// <param name="isHeld">Whether the limits hold at a value.</param>
    public double Last(double breaks, double holds, Func<double, bool> isHeld)
    {
        for (
            var middle = Between(breaks, holds);
            !double.IsNaN(middle);
            middle = Between(breaks, holds)
        )
        {
            (breaks, holds) = isHeld(middle) ? (breaks, middle) : (middle, holds);
        }

        return holds;
    }

    /// <summary>The value between two, towards the second; NaN where there is none.</summary>
    /// <param name="one">The first.</param>
    /// <param name="other">The second.</param>
    public double Between(double one, double other) => Rounding.Between(one, other, sought.Whole);

    /// <summary>The middle of a window by factors, or its one end.</summary>
    /// <param name="least">Its lower end; NaN when it has none.</param>
    /// <param name="most">Its upper end; NaN when it has none.</param>
    public double Middle(double least, double most) =>
        double.IsNaN(most) ? least
        : double.IsNaN(least) ? most
        : Rounded(Math.Sqrt(least * most), up: false);

    /// <summary>A tooth, a cell or 5 % beyond a value.</summary>
    /// <param name="value">The value.</param>
    /// <param name="up">Whether upwards.</param>
    public double Beyond(double value, bool up) =>
        sought.Whole ? value + (up ? 1 : -1) : value * (up ? 1 + Step : 1 - Step);

    /// <summary>What is required: no less than a value, or no more.</summary>
    /// <param name="edge">The value.</param>
    /// <param name="up">Whether no more.</param>
    /// <param name="setBy">The limit that sets it.</param>
    public Requirement Required(double edge, bool up, Finding setBy)
    {
        var si = figure.Unit.ToSi(edge);
        return new(
            sought.Path,
            figure.Unit,
            up ? double.NaN : si,
            up ? si : double.NaN,
            [],
            setBy.Kind.Code,
            setBy.LoadCase
        );
    }

    /// <summary>A value in whole numbers or three digits.</summary>
    /// <param name="value">The value.</param>
    /// <param name="up">Whether towards more.</param>
    public double Rounded(double value, bool up) => Rounding.Short(value, sought.Whole, up);
}
