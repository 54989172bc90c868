using PowerCheck.Api.Door;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Checks;

/// <summary>How a rig is checked and what of it is told, as query parameters.</summary>
/// <param name="AllFindings">Whether those that hold without a caution are wanted too.</param>
/// <param name="Spread">How the spread of the figures is carried to the limits.</param>
/// <param name="Remedies">Whether it is sought what would make the limits hold that do not.</param>
internal sealed record CheckOptions(bool AllFindings, SpreadMethod Spread, bool Remedies)
{
    private const string Findings = "findings";
    private const string RemediesName = "remedies";
    private static readonly string[] FindingsWords = ["all"];
    private static readonly string[] RemediesWords = ["none"];

    /// <summary>Names of the parameters.</summary>
    public static readonly string[] Names = [Findings, SpreadOption.Name, RemediesName];

    /// <summary>What they say; as when left out where they are wrong, which is then noted.</summary>
    public static CheckOptions Of(IQueryCollection query, Faults faults) =>
        new(
            QueryDoor.Word(query, Findings, FindingsWords, faults) is not null,
            SpreadOption.Of(query, faults),
            QueryDoor.Word(query, RemediesName, RemediesWords, faults) is null
        );

    /// <summary>What they say, as parameters; those left out that say what is meant without them.</summary>
    public static IEnumerable<(string Path, string Text)> Said(CheckOptions options)
    {
        if (options.AllFindings)
        {
            yield return (Findings, FindingsWords[0]);
        }

        if (options.Spread != SpreadOption.Usual)
        {
            yield return (SpreadOption.Name, Words.Of(options.Spread));
        }

        if (!options.Remedies)
        {
            yield return (RemediesName, RemediesWords[0]);
        }
    }
}
