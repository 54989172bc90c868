using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Curves;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Curves;

/// <summary>How wide temperatures lie along the course.</summary>
public sealed class CourseBandTests
{
    private static RigLabel Driving { get; } =
        SampleRig.Brushless with
        {
            Course = new() { WantedS = 1200 },
        };

    private static CurveReport Report(RigLabel label) => CurveReport.Of(label, SpreadMethod.Linear);

    [Fact]
    public void Without_spread_there_is_no_band() =>
        Assert.Null(CurveReport.Of(Driving, SpreadMethod.None).Bands);

    [Fact]
    public void The_same_rig_has_the_same_bands()
    {
        var (first, second) = (Report(Driving).Bands!, Report(Driving).Bands!);

        Assert.Equal(first.Winding, second.Winding);
        Assert.Equal(first.Controller, second.Controller);
        Assert.Equal(first.Battery, second.Battery);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void They_contain_the_best_estimate()
    {
        var seen = 0;
        foreach (
            var label in new[] { Driving, SampleRig.Brushed }.Concat(
                Enumerable.Range(1, 8).Select(RandomRig.Of)
            )
        )
        {
            var report = Report(label);
            if (report.Bands is not { } bands || report.Course.Runaway)
            {
                continue;
            }

            seen++;
            var at = report.Course.Points.ToDictionary(point => point.Seconds);
            Assert.All(bands.Winding, b => AssertWithin(b, at[b.Seconds].WindingC));
            Assert.All(bands.Controller, b => AssertWithin(b, at[b.Seconds].ControllerC));
            Assert.All(bands.Battery, b => AssertWithin(b, at[b.Seconds].BatteryC));
        }

        Assert.InRange(seen, 4, 10);
    }

    private static void AssertWithin(BandPoint band, double estimateC) =>
        Assert.InRange(estimateC, band.LowC - 1e-6, band.HighC + 1e-6);

    [Fact]
    public void A_figure_that_is_further_off_makes_the_band_wider()
    {
        Assert.True(Width(Said(0.5)) > 1.1 * Width(Said(0.02)));

        static double Width(RigLabel label)
        {
            var end = Report(label).Bands!.Winding[^1];
            return end.HighC - end.LowC;
        }

        static RigLabel Said(double relative) =>
            Driving with
            {
                Tolerances = new Dictionary<string, Spread>(StringComparer.Ordinal)
                {
                    ["vehicle.massKg"] = Spread.Relative(relative),
                },
            };
    }

    // The finding's interval comes from many more draws than the band's 200, of which the fifth from either end bounds it: the
    // ends may differ by a sixth of the width. It is about the warmer of start and end, so that its lower end is another's.
    [Fact]
    [Trait("speed", "slow")]
    public void The_band_of_the_cells_ends_as_high_as_the_finding_says()
    {
        var end = Report(Driving).Bands!.Battery[^1];
        var chance = Check
            .Run(Driving, SpreadMethod.Montecarlo)
            .Findings.Single(f => f.Kind == FindingCatalogue.BatteryTemperature)
            .Chance!;

        Assert.InRange(end.HighC, chance.High - Sixth(chance), chance.High + Sixth(chance));
        Assert.True(end.LowC < chance.Low + Sixth(chance));
    }

    // One steady creep for hours: the highest temperature is the last.
    [Fact]
    [Trait("speed", "slow")]
    public void The_bands_of_what_has_settled_end_as_wide_as_the_findings_say()
    {
        var label = Driving with
        {
            Course = new()
            {
                WantedS = 4 * 3600,
                Segments =
                [
                    new()
                    {
                        DurationS = 60,
                        Kind = SegmentKind.Creep,
                        SlopeRad = 0.2,
                    },
                ],
            },
        };
        var bands = Report(label).Bands!;
        var findings = Check.Run(label, SpreadMethod.Linear).Findings;

        Near(Course(FindingCatalogue.MotorWindingTemperature), bands.Winding[^1]);
        Near(Course(FindingCatalogue.ControllerHeat), bands.Controller[^1]);

        Chance Course(FindingKind kind) =>
            findings.Single(f => f.Kind == kind && f.LoadCase is "course").Chance!;
    }

    private static double Sixth(Chance chance) => (chance.High - chance.Low) / 6;

    private static void Near(Chance chance, BandPoint end)
    {
        Assert.True(Sixth(chance) > 1);
        Assert.InRange(end.LowC, chance.Low - Sixth(chance), chance.Low + Sixth(chance));
        Assert.InRange(end.HighC, chance.High - Sixth(chance), chance.High + Sixth(chance));
    }

    // Of twenty laps that of each is looked at as a whole: it holds every point of the curve of that lap.
    [Fact]
    public void Of_many_laps_the_band_is_that_of_whole_laps()
    {
        var report = Report(Driving);
        var lap = report.Bands!.Winding[2];
        var points = report
            .Course.Points.Where(p => p.Seconds > lap.Seconds - 60 && p.Seconds <= lap.Seconds)
            .ToArray();

        Assert.Equal(0, lap.Seconds % 60);
        Assert.True(points.Length > 3);
        Assert.All(points, point => AssertWithin(lap, point.WindingC));
        Assert.Equal(1200, report.Bands!.Winding[^1].Seconds);
    }

    [Fact]
    public void They_are_given_up_when_nobody_waits() =>
        Assert.ThrowsAny<OperationCanceledException>(() =>
            CurveReport.Of(Driving, SpreadMethod.Linear, new CancellationToken(true))
        );
}
