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
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>
/// A Monte Carlo of its own: draws rigs from the spreads that an answer prints, checks each without spread and counts how often
/// a figure is past its limit. Every input is drawn once from each of as many slices as there are draws, which tells a share
/// better than free draws do.
/// </summary>
internal static class SpreadDraws
{
    /// <summary>Draws of one round.</summary>
    private const int Round = 500;

    /// <summary>Most rounds.</summary>
    private const int MostRounds = 20;

    /// <summary>By how much a share may be off what is said; where none is, no more rounds are needed.</summary>
    public const double Near = 0.02;

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
        var past = said.Keys.ToDictionary(key => key, _ => 0);
        var draws = 0;
        double Off(string key) => Math.Abs(((double)past[key] / draws) - said[key]);
        do
        {
            Draw(number, answer.Json, past, (number * 100) + draws);
            draws += Round;
        } while (draws < MostRounds * Round && said.Keys.Any(key => Off(key) > Near));

        return [.. said.Select(pair => (pair.Key, pair.Value, (double)past[pair.Key] / draws))];
    }

    private static void Draw(int number, JsonElement answer, Dictionary<string, int> past, int seed)
    {
        var dice = new Random(seed);
        var slices = PrintedSpreads
            .Entries(answer)
            .Select(_ => Combinatorics.GeneratePermutation(Round, dice))
            .ToArray();
        for (var n = 0; n < Round; n++)
        {
            var body = PrintedSpreads.Drawn(
                AnyBody.Of(number),
                answer,
                entry =>
                    Normal.InvCDF(
                        0,
                        1,
                        (slices[entry][n] + Math.Max(1e-9, dice.NextDouble())) / Round
                    )
            );
            foreach (var finding in Findings(body.ToJsonString()).Where(IsPast))
            {
                var key = $"{finding.Kind.Code} {finding.LoadCase}";
                past[key] = past.GetValueOrDefault(key) + 1;
            }
        }
    }

    // As the service does it, but for the rules that two figures drawn apart may break.
    private static IReadOnlyList<Finding> Findings(string body)
    {
        var faults = new Faults();
        var (request, _) = RequestReader.Read<CheckRequest>(Encoding.UTF8.GetBytes(body), faults);
        Assert.True(faults.None, string.Join('\n', faults.All.Select(fault => fault.Message)));
        return Check.Run(RigMapper.Map(request!)).Findings;
    }

    private static bool IsPast(Finding finding) =>
        double.IsNaN(finding.Limit) ? false
        : !double.IsFinite(finding.Estimate) ? finding.Outcome is Outcome.Fails or Outcome.Doubtful
        : PrintedSpreads.IsAtLeast(finding.Kind.Code) ? finding.Estimate < finding.Limit
        : finding.Estimate > finding.Limit;

    private static string Key(JsonElement finding) =>
        $"{finding.GetProperty("code")} {(finding.TryGetProperty("loadCase", out var one) ? one.GetString() : "")}";
}
