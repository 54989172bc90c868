using System.Text.Json;
using PowerCheck.Api.Safety;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Sources;

namespace PowerCheck.Api.Tests.Safety;

/// <summary>The cautions about batteries stand in every object that the service composes.</summary>
public class SafetyTests
{
    [Theory]
    [InlineData("/v1/battery-safety")]
    [InlineData("/v1/sources")]
    [InlineData("/v1/findings")]
    [InlineData("/v1/problems")]
    [InlineData("/problems/invalid")]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/v1/nothing")]
    public async Task Every_object_carries_the_cautions(string address) =>
        Complete((await Service.Get(address)).Json.GetProperty("batterySafety"));

    [Fact]
    public async Task The_document_carries_the_cautions() =>
        Complete(
            (await Service.Get("/openapi/v1.json"))
                .Json.GetProperty("info")
                .GetProperty("x-batterySafety")
        );

    [Fact]
    public void Every_caution_cites_sources_that_are_listed()
    {
        var known = SourceList.All.Select(source => source.Key).ToHashSet(StringComparer.Ordinal);

        Assert.All(
            Cautions.All,
            caution =>
            {
                Assert.NotEmpty(caution.Sources);
                Assert.All(caution.Sources, source => Assert.Contains(source, known));
            }
        );
    }

    [Theory]
    [InlineData("battery.temperature", Cautions.Heat)]
    [InlineData("battery.cutoff", Cautions.Discharge)]
    [InlineData("battery.burst-rate", Cautions.Discharge)]
    [InlineData("controller.cell-count", Cautions.Charger)]
    [InlineData("wiring.fuse-protects", Cautions.ShortCircuit)]
    public void A_finding_about_the_battery_puts_what_matters_first(string code, string key)
    {
        var block = SafetyBlock.For([Finding("drivetrain.hold"), Finding(code)]);

        Assert.Equal(key, block.Cautions[0].Key);
        Assert.Equal(block.Cautions[0].Text, block.Leading);
        Assert.Equal(Cautions.All.Count, block.Cautions.Count);
        Assert.Equal(Cautions.All.Count, block.Cautions.Distinct().Count());
    }

    [Fact]
    public void The_first_finding_decides_which_caution_leads()
    {
        var block = SafetyBlock.For([
            Finding("controller.voltage"),
            Finding("battery.temperature"),
        ]);

        Assert.Equal(
            [Cautions.Charger, Cautions.Heat],
            block.Cautions.Take(2).Select(caution => caution.Key)
        );
    }

    [Fact]
    public void A_finding_that_holds_changes_nothing() =>
        Assert.Same(
            SafetyBlock.Plain,
            SafetyBlock.For([Finding("controller.voltage") with { Outcome = Outcome.Holds }])
        );

    private static void Complete(JsonElement block)
    {
        Assert.Equal(
            Cautions.All.Select(caution => caution.Text),
            block
                .GetProperty("cautions")
                .EnumerateArray()
                .Select(c => c.GetProperty("text").GetString())
        );
        Assert.Equal(3, block.GetProperty("defersTo").GetArrayLength());
        Assert.Matches("^20[0-9]{2}-[01][0-9]$", block.GetProperty("travelRulesAsOf").GetString());
        Assert.Equal(SafetyBlock.Address, block.GetProperty("address").GetString());
    }

    private static Finding Finding(string code) =>
        new()
        {
            Kind = FindingCatalogue.All.Single(kind => kind.Code == code),
            Outcome = Outcome.Fails,
            Sentence = _ => "invented for this test",
        };
}
