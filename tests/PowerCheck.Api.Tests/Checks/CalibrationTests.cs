using System.Globalization;
using PowerCheck.Api.Tests.Host;
using Xunit.Abstractions;

namespace PowerCheck.Api.Tests.Checks;

/// <summary>
/// Whether what is said to be passed with a probability is passed that often: over all limits of a hundred random rigs, in
/// rigs drawn from the spreads that the answers print.
/// </summary>
public class CalibrationTests(ITestOutputHelper output)
{
    private const int Bands = 10;

    [Fact]
    [Trait("speed", "slow")]
    public async Task In_every_band_of_probabilities_as_many_rigs_are_past_a_limit_as_is_said()
    {
        var bands = await Measured();

        foreach (var band in bands)
        {
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {band.From:0.0} to {band.From + 0.1:0.0} | {band.Limits} | {band.Said:0.000} | {band.Drawn:0.000} |"
                )
            );
        }

        Assert.All(bands, band => Assert.True(band.Limits > 15, $"{band.From} has {band.Limits}"));
        Assert.All(bands, band => Assert.InRange(band.Drawn, band.Said - 0.01, band.Said + 0.01));
    }

    [Fact]
    [Trait("speed", "slow")]
    public async Task The_table_of_the_referees_says_so()
    {
        var table = Table().ToArray();
        var measured = await Measured();

        Assert.Equal(Bands, table.Length);
        Assert.All(
            table.Zip(measured),
            pair =>
            {
                Assert.Equal(pair.Second.Limits, pair.First.Limits, 12.0);
                Assert.Equal(pair.Second.Said, pair.First.Said, 0.01);
                Assert.Equal(pair.Second.Drawn, pair.First.Drawn, 0.01);
            }
        );
    }

    private static async Task<IReadOnlyList<Band>> Measured()
    {
        var rigs = new List<(string Limit, double Said, double Drawn)>();
        foreach (var number in Enumerable.Range(1, 100))
        {
            rigs.AddRange(await SpreadDraws.Of(number));
        }

        return
        [
            .. rigs.GroupBy(limit => Math.Min(Bands - 1, (int)(limit.Said * Bands)))
                .OrderBy(band => band.Key)
                .Select(band => new Band(
                    (double)band.Key / Bands,
                    band.Count(),
                    band.Average(limit => limit.Said),
                    band.Average(limit => limit.Drawn)
                )),
        ];
    }

    // "| 0.1 to 0.2 | 56 | 0.148 | 0.150 |"
    private static IEnumerable<Band> Table()
    {
        double Of(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
        return File.ReadLines(Path.Combine(Repository.Root, "specs", "referees.md"))
            .SkipWhile(line => !line.StartsWith("| said |", StringComparison.Ordinal))
            .Skip(2)
            .TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Select(cells => new Band(
                Of(cells[1].Split(' ')[0]),
                int.Parse(cells[2], CultureInfo.InvariantCulture),
                Of(cells[3]),
                Of(cells[4])
            ));
    }

    private sealed record Band(double From, int Limits, double Said, double Drawn);
}
