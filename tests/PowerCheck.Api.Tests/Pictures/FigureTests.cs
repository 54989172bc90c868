using System.Text.Json;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>The figures in the pictures are those of the answer, digit by digit.</summary>
public sealed class FigureTests
{
    private static readonly PictureContent Content = Pictured.Of(
        Rigs.Example().ToJsonString(),
        SpreadMethod.Linear,
        all: true
    );

    private static readonly JsonElement Json = Pictured.Json(Content);

    private static string[] Texts(string svg) => [.. Pictured.Texts(svg).Select(text => text.Text)];

    [Theory]
    [InlineData("loadCases.climb.motorCurrentA", "A")]
    [InlineData("loadCases.climb.batteryCurrentA", "A")]
    [InlineData("endurance.minutes", "min")]
    [InlineData("temperatures.motorWinding.courseEndC", "°C")]
    [InlineData("temperatures.motorWinding.limitC", "°C")]
    [InlineData("temperatures.controller.courseEndC", "°C")]
    [InlineData("temperatures.battery.courseEndC", "°C")]
    [InlineData("drivetrain.torqueReserve", "times")]
    public void The_sheet_has_the_key_figures(string path, string unit)
    {
        var figure = $"{Pictured.Figure(Json, path)} {unit}";

        Assert.Contains(figure, Texts(Picture.SheetSvg(Content)));
        Assert.Contains(
            figure,
            Pictured.Words(Picture.SheetSvg(Content)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_slope_has_the_climb_the_tires_and_the_ratings()
    {
        var texts = Texts(Picture.SlopeSvg(Content));

        Assert.Contains($"motor {Pictured.Figure(Json, "loadCases.climb.motorCurrentA")} A", texts);
        Assert.Contains(
            $"battery {Pictured.Figure(Json, "loadCases.climb.batteryCurrentA")} A",
            texts
        );
        Assert.Contains(
            $"tires let go: {Pictured.Figure(Json, "drivetrain.slipSlopeDegrees")}°",
            texts
        );
        Assert.Contains("climb asked for: 40°", texts);
        Assert.Contains(
            texts,
            text =>
                text.Contains("controller continuous 60 A", StringComparison.Ordinal)
                && text.Contains("controller burst 300 A", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("winding", "motorWinding")]
    [InlineData("magnet", "motorMagnet")]
    [InlineData("motor case", "motorCase")]
    [InlineData("controller", "controller")]
    [InlineData("battery", "battery")]
    public void The_course_has_every_end_and_its_limit(string name, string part)
    {
        var texts = Texts(Picture.CourseSvg(Content));

        Assert.Contains(
            $"{name} {Pictured.Figure(Json, $"temperatures.{part}.courseEndC")} °C",
            texts
        );
        Assert.Contains(
            texts,
            text =>
                text.Contains("limit", StringComparison.Ordinal)
                && text.EndsWith(
                    $" {Pictured.Figure(Json, $"temperatures.{part}.limitC")} °C",
                    StringComparison.Ordinal
                )
        );
    }

    [Fact]
    public void The_limits_have_a_row_for_every_finding_with_a_figure()
    {
        var texts = Texts(Picture.LimitsSvg(Content));
        var rows = Json.GetProperty("findings")
            .EnumerateArray()
            .Where(finding => Has(finding, "estimate") && Has(finding, "limit"))
            .ToArray();

        Assert.True(rows.Length > 15);
        Assert.All(
            rows,
            finding =>
            {
                var unit = Has(finding, "unit") ? finding.GetProperty("unit").GetString()! : "";
                var gap = unit is "" or "°" ? "" : " ";
                Assert.Contains(
                    texts,
                    text =>
                        text.StartsWith(
                            $"{Pictured.Figure(finding, "estimate")}{gap}{unit}; ",
                            StringComparison.Ordinal
                        )
                        && text.EndsWith(
                            $" {Pictured.Figure(finding, "limit")}{gap}{unit}",
                            StringComparison.Ordinal
                        )
                );
            }
        );
        Assert.True(texts.Count(text => text is "holds") >= rows.Length - 5);
    }

    private static bool Has(JsonElement finding, string name) =>
        finding.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null;

    [Fact]
    public void The_words_of_each_picture_have_its_figures()
    {
        var winding = Pictured.Figure(Json, "temperatures.motorWinding.courseEndC");

        Assert.Contains(
            $"winding {winding} °C",
            Pictured.Words(Picture.CourseSvg(Content)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            Pictured.Figure(Json, "loadCases.climb.motorCurrentA"),
            Pictured.Words(Picture.SlopeSvg(Content)),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            Content.Answer.Summary,
            Pictured.Words(Picture.SheetSvg(Content)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            Content.Answer.BatterySafety.Leading,
            Pictured.Words(Picture.SheetSvg(Content)),
            StringComparison.Ordinal
        );
        var limits = LimitShare.Of(Content).Count;
        Assert.StartsWith(
            $"{limits} limits ",
            Pictured.Words(Picture.LimitsSvg(Content)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_sheet_has_verdict_summary_caution_and_address()
    {
        var texts = Texts(Picture.SheetSvg(Content));
        var running = string.Join(' ', texts);

        Assert.Contains(Content.Answer.Verdict.ToUpperInvariant(), texts);
        Assert.Contains(Content.Answer.Summary, running, StringComparison.Ordinal);
        Assert.Contains(Content.Answer.BatterySafety.Leading, running, StringComparison.Ordinal);
        Assert.Contains($"All cautions: {Pictured.Address}", texts);
    }

    [Theory]
    [InlineData("vehicle.massKg", 9, "unsuitable")]
    [InlineData("vehicle.massKg", 3.2, "suitable")]
    public void The_verdict_is_told_by_its_word(string path, double value, string verdict)
    {
        var content = Pictured.Of(Rigs.Example().With(path, value).ToJsonString());

        Assert.Equal(verdict, content.Answer.Verdict);
        Assert.Contains(verdict.ToUpperInvariant(), Texts(Picture.SheetSvg(content)));
    }
}
