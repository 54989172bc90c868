using PowerCheck.Model.Units;

namespace PowerCheck.Model.Assumptions;

/// <summary>A figure that can be given: where it stands in a label, and how far a given one may be off.</summary>
/// <typeparam name="TLabel">The label that it stands in.</typeparam>
/// <param name="Path">The member, such as "motor.resistanceMilliohm".</param>
/// <param name="Unit">The unit that the path's name ends in.</param>
/// <param name="Read">The figure in a label, SI; null when left out.</param>
/// <param name="Write">The label with that figure, SI.</param>
/// <param name="Given">Spread of a given one whose caller states none; none for what is asked for, counted or declared.</param>
/// <param name="Lowest">Smallest figure that makes sense, SI.</param>
/// <param name="Highest">Largest figure that makes sense, SI.</param>
public sealed record LabelFigure<TLabel>(
    string Path,
    Unit Unit,
    Func<TLabel, double?> Read,
    Func<TLabel, double, TLabel> Write,
    Spread Given,
    double Lowest = double.NegativeInfinity,
    double Highest = double.PositiveInfinity
)
{
    /// <summary>The same figure in what the label is part of.</summary>
    /// <typeparam name="TWhole">What the label is part of.</typeparam>
    /// <param name="part">The label in it.</param>
    /// <param name="with">The whole with another label.</param>
    public LabelFigure<TWhole> In<TWhole>(
        Func<TWhole, TLabel> part,
        Func<TWhole, TLabel, TWhole> with
    ) =>
        new(
            Path,
            Unit,
            whole => Read(part(whole)),
            (whole, value) => with(whole, Write(part(whole), value)),
            Given,
            Lowest,
            Highest
        );
}
