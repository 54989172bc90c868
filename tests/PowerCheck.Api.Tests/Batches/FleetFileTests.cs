using PowerCheck.Api.Tests.Documents;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>The fleet that is kept to be tried by hand.</summary>
public class FleetFileTests
{
    [Fact]
    public async Task The_kept_fleet_has_verdicts_of_every_kind_and_one_mistake()
    {
        var table = await File.ReadAllBytesAsync(
            Path.Combine(Repository.Root, "http", "fleet", "fleet.csv")
        );

        var rows = (await Fleet.Send(table, Fleet.Table)).Rows();

        Assert.Equal(12, rows.Count(row => row["kind"] != "tally"));
        Assert.Equal(
            ["limited", "suitable", "undetermined", "unsuitable"],
            rows.Select(row => row["verdict"])
                .Where(verdict => verdict.Length > 0)
                .Distinct()
                .Order()
        );
        var mistake = Assert.Single(rows, row => row["kind"] == "problem");
        Assert.Contains("must be one of the words", mistake["problem"]);
        Assert.Equal("", rows[^1]["problem"]);
    }

    [Fact]
    public async Task Every_outcome_is_as_the_document_says()
    {
        var document = (await Service.Get("/openapi/v1.json")).Json;
        var rigs = SampleRigs.All.Select(name => SampleRigs.Of(name).ToJsonString());

        var outcomes = (
            await Fleet.Send(string.Join('\n', rigs.Append("nonsense").Append("{}")))
        ).Outcomes();

        foreach (var outcome in outcomes[..^1])
        {
            Assert.Empty(SchemaCheck.Faults(document, "OutcomeAnswer", outcome));
        }

        Assert.Empty(SchemaCheck.Faults(document, "TallyAnswer", outcomes[^1]));
    }
}
