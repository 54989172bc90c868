using System.Globalization;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;
using Xunit.Abstractions;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>What the check says of three hundred rigs as builders combine them.</summary>
public sealed class VerdictMixTests(ITestOutputHelper output)
{
    private const int Rigs = 300;

    [Fact]
    [Trait("speed", "slow")]
    public void Each_verdict_is_given_to_at_least_a_tenth()
    {
        var results = Enumerable
            .Range(1, Rigs)
            .AsParallel()
            .Select(n => Check.Run(RandomRig.Of(n)))
            .ToArray();
        output.WriteLine(Table(results));
        Assert.All(
            new[] { Verdict.Suitable, Verdict.Limited, Verdict.Unsuitable },
            verdict =>
                Assert.True(results.Count(r => r.Verdict == verdict) >= Rigs / 10, $"{verdict}")
        );
    }

    private static string Table(CheckResult[] results) =>
        string.Join(
            Environment.NewLine,
            results
                .GroupBy(r => r.Verdict)
                .OrderBy(group => group.Key)
                .SelectMany(group =>
                    new[] { Line($"{group.Key}", group.Count()) }.Concat(
                        group
                            .GroupBy(r => Deciding(r), StringComparer.Ordinal)
                            .OrderByDescending(reason => reason.Count())
                            .Select(reason => Line($"   {reason.Key}", reason.Count()))
                    )
                )
        );

    private static string Deciding(CheckResult result) =>
        result.Findings.FirstOrDefault(f => f.Decides) is { } finding
            ? $"{finding.Kind.Code} ({finding.LoadCase ?? "rig"})"
            : "none";

    private static string Line(string what, int count) =>
        string.Create(CultureInfo.InvariantCulture, $"{what, -60}{count, 5}");
}
