using System.Collections.Concurrent;
using System.Net;
using System.Text;
using System.Text.Json;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>
/// A Monte Carlo of its own: draws rigs from the spreads that an answer prints, checks each without spread and counts how often
/// a figure is past its limit. Every input is drawn once from each of as many slices as there are draws, which tells a share
/// better than free draws do.
/// </summary>
internal static class SpreadDraws
{
    /// <summary>Draws of a rig.</summary>
    private const int Draws = 1000;

    /// <summary>Draws of a rig of which a share is not near what is said: others, which then count alone.</summary>
    private const int ManyDraws = 6000;

    /// <summary>By how much a share of few draws may be off before more are looked at.</summary>
    private const double Near = 0.02;

    /// <summary>What an answer says of each limit, and the share of the drawn rigs that is past it.</summary>
    /// <param name="number">Which random rig.</param>
    public static Task<IReadOnlyList<(string Limit, double Said, double Drawn)>> Of(int number) =>
        Drawn.GetOrAdd(number, n => new(() => Draw(n))).Value;

    // Once for all tests.
    private static readonly ConcurrentDictionary<
        int,
        Lazy<Task<IReadOnlyList<(string Limit, double Said, double Drawn)>>>
    > Drawn = new();

    private static async Task<IReadOnlyList<(string Limit, double Said, double Drawn)>> Draw(
        int number
    )
    {
        var answer = await Service.Check(
            AnyBody.Of(number).ToJsonString(),
            "?findings=all&spread=linear&remedies=none"
        );
        Assert.True(answer.Status == HttpStatusCode.OK, answer.Text);
        var said = answer
            .Json.GetProperty("findings")
            .EnumerateArray()
            .Where(f =>
                f.TryGetProperty("limit", out _)
                && f.TryGetProperty("exceedanceProbability", out _)
                // What no figure decides is a matter of words and counts.
                && f.TryGetProperty("decidedBy", out _)
            )
            .ToDictionary(Key, f => f.GetProperty("exceedanceProbability").GetDouble());
        var shares = Shares(number, answer.Json, said.Keys, Draws);
        if (said.Any(pair => Math.Abs(shares[pair.Key] - pair.Value) > Near))
        {
            shares = Shares(number, answer.Json, said.Keys, ManyDraws);
        }

        return [.. said.Select(pair => (pair.Key, pair.Value, shares[pair.Key]))];
    }

    private static Dictionary<string, double> Shares(
        int number,
        JsonElement answer,
        IEnumerable<string> limits,
        int draws
    )
    {
        var past = limits.ToDictionary(key => key, _ => 0);
        var dice = new Random(Seed(number, draws));
        var slices = PrintedSpreads
            .Entries(answer)
            .Select(_ => Combinatorics.GeneratePermutation(draws, dice))
            .ToArray();
        // Every draw sets the same members anew.
        var rig = AnyBody.Of(number);
        for (var n = 0; n < draws; n++)
        {
            var body = PrintedSpreads.Drawn(
                rig,
                answer,
                entry =>
                    Normal.InvCDF(
                        0,
                        1,
                        (slices[entry][n] + Math.Max(1e-9, dice.NextDouble())) / draws
                    )
            );
            foreach (var finding in Findings(body.ToJsonString()).Where(IsPast))
            {
                var key = $"{finding.Kind.Code} {finding.LoadCase}";
                past[key] = past.GetValueOrDefault(key) + 1;
            }
        }

        return past.ToDictionary(pair => pair.Key, pair => (double)pair.Value / draws);
    }

    private static int Seed(int number, int draws) => (number * 1_000_003) + draws;

    // As a check without spread does it, but for the rules that two figures drawn apart may break, and without asking what an
    // unknown limit needs.
    private static IReadOnlyList<Finding> Findings(string body)
    {
        var faults = new Faults();
        var (request, _) = RequestReader.Read<CheckRequest>(Encoding.UTF8.GetBytes(body), faults);
        Assert.True(faults.None, string.Join('\n', faults.All.Select(fault => fault.Message)));
        return Judgement.Limits(RigCompletion.Of(RigMapper.Map(request!)).Inspect());
    }

    private static bool IsPast(Finding finding) =>
        double.IsNaN(finding.Limit) ? false
        : !double.IsFinite(finding.Estimate) ? finding.Outcome is Outcome.Fails or Outcome.Doubtful
        : PrintedSpreads.IsAtLeast(finding.Kind.Code) ? finding.Estimate < finding.Limit
        : finding.Estimate > finding.Limit;

    private static string Key(JsonElement finding) =>
        $"{finding.GetProperty("code")} {(finding.TryGetProperty("loadCase", out var one) ? one.GetString() : "")}";
}
