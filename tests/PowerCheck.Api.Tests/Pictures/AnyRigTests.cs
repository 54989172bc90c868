using System.Text.Json.Nodes;
using System.Xml.Linq;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>Whatever a rig is like and however little is known of it, it can be drawn.</summary>
public sealed class AnyRigTests
{
    private static readonly (string Path, double Low, double High)[] Ranges =
    [
        ("vehicle.massKg", 0.3, 14),
        ("vehicle.tireDiameterMm", 60, 220),
        ("motor.kvRpmPerVolt", 300, 6000),
        ("motor.resistanceMilliohm", 4, 400),
        ("motor.massG", 30, 400),
        ("motor.continuousCurrentA", 5, 80),
        ("controller.continuousCurrentA", 5, 150),
        ("controller.currentLimitA", 5, 300),
        ("battery.capacityMah", 300, 8000),
        ("battery.seriesCells", 1, 6),
        ("battery.continuousC", 5, 80),
        ("course.climbSlopeDegrees", 1, 85),
        ("course.frictionCoefficient", 0.2, 2.5),
        ("course.ambientC", -20, 45),
        ("course.wantedMinutes", 0.5, 400),
        ("course.creepSpeedMPerS", 0.05, 2),
    ];

    // Some figures left out, some anywhere in their range.
    private static string Body(int number)
    {
        var dice = new Random(number);
        var name = SampleRigs.All.ElementAt(number % SampleRigs.All.Count());
        var body = SampleRigs.Of(name);
        foreach (var (path, low, high) in Ranges)
        {
            var roll = dice.NextDouble();
            var value = low * Math.Pow(high / low, dice.NextDouble());
            if (path is "course.ambientC")
            {
                value = low + ((high - low) * dice.NextDouble());
            }

            if (roll < 0.35)
            {
                body.With(path, path is "battery.seriesCells" ? Math.Round(value) : value);
            }
            else if (roll < 0.5 && path is not "vehicle.massKg")
            {
                Without(body, path);
            }
        }

        return body.ToJsonString();
    }

    private static void Without(JsonObject body, string path)
    {
        var steps = path.Split('.');
        if (body[steps[0]] is JsonObject part)
        {
            part.Remove(steps[1]);
        }
    }

    [Fact]
    public void Sixty_rigs_are_drawn_with_every_text_on_the_paper()
    {
        var verdicts = new HashSet<string>(StringComparer.Ordinal);
        var overlaps = new List<string>();
        for (var n = 0; n < 60; n++)
        {
            var spread = n % 20 == 0 ? SpreadMethod.Linear : SpreadMethod.None;
            var content = Pictured.Of(Body(n), spread, all: n % 2 == 0);
            verdicts.Add(content.Answer.Verdict);
            Assert.Equal(0x89, Picture.SheetPng(content)[0]);
            foreach (var (picture, svg) in Pictured.All(content))
            {
                Assert.NotNull(XDocument.Parse(svg).Root);
                Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
                var (width, height) = Pictured.Size(svg);
                var texts = Pictured.Texts(svg);
                Assert.All(
                    texts,
                    text =>
                        Assert.True(
                            text.Left >= 0
                                && text.Right <= width
                                && text.Top >= 0
                                && text.Bottom <= height,
                            $"rig {n}, {picture}: {text}"
                        )
                );
                overlaps.AddRange(
                    from one in texts.Select((text, at) => (text, at))
                    from other in texts.Skip(one.at + 1)
                    where one.text.Overlaps(other)
                    select $"rig {n}, {picture}: {one.text} on {other}"
                );
            }
        }

        Assert.Empty(overlaps);
        Assert.True(verdicts.Count >= 3);
    }
}
