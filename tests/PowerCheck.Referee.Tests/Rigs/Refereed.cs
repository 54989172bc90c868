using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Checks;

namespace PowerCheck.Referee.Tests.Rigs;

/// <summary>The rigs on which the referees and the check are held against each other.</summary>
internal static class Refereed
{
    public const int Count = 240;

    public static IEnumerable<int> Numbers => Enumerable.Range(0, Count);

    /// <summary>What the check says of a rig.</summary>
    public static CheckResult Check(PlainRig rig) => Model.Checks.Check.Run(PlainLabel.Of(rig));
}
