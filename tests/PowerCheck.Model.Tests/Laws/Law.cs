using CsCheck;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>
/// Asks the same of many random rigs. With the library's own environment variable CsCheck_Iter it asks so many others, fresh
/// ones each time. A failure prints the rig's number.
/// </summary>
internal static class Law
{
    /// <summary>When it is set, the library draws so many rigs that no run has seen before.</summary>
    private const string FreshVariable = "CsCheck_Iter";

    public static readonly Gen<int> Numbers = Gen.Int[1, int.MaxValue - 1];

    /// <summary>Holds where the law says true, and says how many rigs it was asked of.</summary>
    /// <param name="rigs">How many rigs are tried where the environment does not say.</param>
    /// <param name="atLeast">Least share of the rigs that the law must have something to say about.</param>
    /// <param name="law">Null where the law does not apply to the rig; else what contradicts it, empty when nothing does.</param>
    public static void Holds(int rigs, double atLeast, Func<RigLabel, string?> law)
    {
        int asked = 0,
            told = 0;
        void Ask(int number)
        {
            var said = law(AnyRig.Of(number));
            Interlocked.Increment(ref asked);
            if (said is not null)
            {
                Interlocked.Increment(ref told);
                Assert.True(said.Length == 0, $"rig {number}: {said}");
            }
        }

        if (Environment.GetEnvironmentVariable(FreshVariable) is null)
        {
            // The same rigs in each run, so that a change is what turns a law red.
            Array.ForEach([.. Enumerable.Range(1, rigs)], Ask);
        }
        else
        {
            Numbers.Sample(Ask, iter: -1);
        }

        Assert.True(told >= atLeast * asked, $"applies to {told} of {asked} rigs only");
    }

    /// <summary>Empty when the second figure is no less than the first, to rounding, or when neither is known.</summary>
    public static string NoLess(string what, double before, double after, double rounding = 1e-9) =>
        after >= before - (rounding * (1 + Math.Abs(before))) || before.Equals(after)
            ? ""
            : $"{what}: {before:R}, then {after:R}; ";

    /// <summary>Empty when the second figure is no more than the first, to rounding.</summary>
    public static string NoMore(string what, double before, double after, double rounding = 1e-9) =>
        NoLess(what, after, before, rounding).Length == 0
            ? ""
            : $"{what}: {before:R}, then {after:R}; ";

    /// <summary>Empty when both figures are the same, to a share of them.</summary>
    public static string Same(string what, double one, double other, double share = 1e-9) =>
        one.Equals(other) || Math.Abs(one - other) <= share * (1 + Math.Abs(one))
            ? ""
            : $"{what}: {one:R} and {other:R}; ";
}
