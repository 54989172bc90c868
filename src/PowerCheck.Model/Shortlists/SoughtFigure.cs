using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>A figure of the sought part that is to be found.</summary>
/// <param name="Path">The member.</param>
/// <param name="Lowest">The lowest value that parts have, in the unit of the path, assumed.</param>
/// <param name="Highest">The highest value that parts have, in the unit of the path, assumed.</param>
/// <param name="Wanted">What is good.</param>
/// <param name="Whole">Whether it is counted.</param>
/// <param name="LeftOut">Whether it goes with the figures before it until it is sought, as of a part on whose box it is not.</param>
/// <param name="Again">Whether it is settled already and only less of it is looked for.</param>
internal sealed record SoughtFigure(
    string Path,
    double Lowest,
    double Highest,
    Wanted Wanted,
    bool Whole = false,
    bool LeftOut = false,
    bool Again = false
)
{
    /// <summary>Values between the ends, assumed enough to meet every window that matters.</summary>
    private const int Steps = 36;

    /// <summary>Values from the lowest to the highest, evenly spaced by factors; of what is counted every one.</summary>
    public IReadOnlyList<double> Values =>
        Whole
            ? [.. Enumerable.Range((int)Lowest, (int)(Highest - Lowest) + 1).Select(n => (double)n)]
            :
            [
                .. Enumerable
                    .Range(0, Steps)
                    .Select(n =>
                        Rounding.Digits(
                            Lowest * Math.Pow(Highest / Lowest, (double)n / (Steps - 1)),
                            3,
                            up: false
                        )
                    ),
            ];

    /// <summary>Those that are worth trying in a rig.</summary>
    /// <param name="rig">The rig.</param>
    public IReadOnlyList<double> ValuesIn(RigLabel rig)
    {
        var figure = In(rig);
        return Again && figure.Read(rig) is { } si
            ? [.. Values.Where(value => value < figure.Unit.FromSi(si)), figure.Unit.FromSi(si)]
            : Values;
    }

    /// <summary>Where the figure stands.</summary>
    /// <param name="rig">The rig.</param>
    public LabelFigure<RigLabel> In(RigLabel rig) =>
        RigFigures
            .Of(rig)
            .Single(figure => string.Equals(figure.Path, Path, StringComparison.Ordinal));

    /// <summary>The rig with the figure beyond any part's, or as it is where it is left out.</summary>
    /// <param name="rig">The rig.</param>
    public RigLabel Open(RigLabel rig)
    {
        var best = Wanted switch
        {
            Wanted.AtLeast => Highest,
            Wanted.AtMost => Lowest,
            _ => Math.Sqrt(Lowest * Highest),
        };
        var figure = In(rig);
        return LeftOut ? rig : figure.Write(rig, figure.Unit.ToSi(best));
    }
}

/// <summary>Which values of a figure are good.</summary>
internal enum Wanted
{
    /// <summary>The more the better.</summary>
    AtLeast,

    /// <summary>The less the better.</summary>
    AtMost,

    /// <summary>Neither too little nor too much.</summary>
    Between,
}
