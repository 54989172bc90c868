using PowerCheck.Model.Checks;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>How far a missing figure is tried, and how its deciding value is rounded (M13).</summary>
public sealed class NeedRangeTests
{
    private static Need Only(RigLabel label, FindingKind kind) =>
        Assert.Single(Check.Run(label).Findings.Single(f => f.Kind == kind && !f.Caution).Needs);

    private static Need Kv(double maxRpm) =>
        Only(
            SampleRig.Brushless with
            {
                Motor = SampleRig.Brushless.Motor with
                {
                    SpeedConstantRadPerSPerV = null,
                    MaxSpeedRadPerS = Unit.Rpm.ToSi(maxRpm),
                },
                Accessories = [],
            },
            FindingCatalogue.MotorSpeed
        );

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Up_to_six_cells_are_tried(int max) =>
        Assert.Equal(
            new("battery.seriesCells", Unit.Cells, max, true),
            Only(
                SampleRig.Brushless with
                {
                    Battery = SampleRig.Brushless.Battery with { SeriesCells = null },
                    Controller = SampleRig.Brushless.Controller with
                    {
                        MinCells = null,
                        MaxCells = max,
                    },
                },
                FindingCatalogue.ControllerCellCount
            )
        );

    [Fact]
    public void A_KV_is_found_close_to_the_highest_that_is_plausible()
    {
        // 12 000 rpm/V at most; 138 700 rpm on 12.6 V are 11 008 rpm/V.
        var need = Kv(138_700);

        Assert.Equal(11_000, Unit.RpmPerVolt.FromSi(need.Threshold), 1e-6);
        Assert.True(need.HoldsBelow);
    }

    [Fact]
    public void A_KV_past_the_highest_that_is_plausible_is_not_asked_for()
    {
        // 252 000 rpm on 12.6 V are 20 000 rpm/V.
        var need = Kv(252_000);

        Assert.Equal("motor.kvRpmPerVolt", need.Path);
        Assert.True(double.IsNaN(need.Threshold));
    }

    [Fact]
    public void What_is_needed_at_least_is_rounded_up()
    {
        var need = Only(
            SampleRig.Brushless with
            {
                Battery = SampleRig.Brushless.Battery with
                {
                    CapacityCoulomb = null,
                    PeukertExponent = 1,
                    ConnectorOhm = 0,
                },
                Controller = SampleRig.Brushless.Controller with { QuiescentCurrentA = 0.79 },
                Course = new()
                {
                    WantedS = 3600,
                    Segments = [new() { DurationS = 10, Kind = SegmentKind.Rest }],
                },
                Accessories = [],
            },
            FindingCatalogue.CourseRunTime
        );

        // 0.79 A for an hour, with a fifth kept back, are 987.5 mAh.
        Assert.Equal("battery.capacityMah", need.Path);
        Assert.Equal(988, Unit.MilliampereHour.FromSi(need.Threshold), 1e-6);
        Assert.False(need.HoldsBelow);
    }

    [Fact]
    public void A_figure_that_tells_on_one_side_only_is_asked_for_all_the_same()
    {
        // Without the winding the bus is not known: a pack large enough holds whatever it is, of a smaller one nothing is sure.
        var label = SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                ResistanceOhm = null,
                MassKg = null,
                CanDiameterM = null,
                CanLengthM = null,
            },
            Battery = SampleRig.Brushless.Battery with
            {
                CapacityCoulomb = null,
                CellResistanceOhm = null,
            },
            Accessories = [],
        };
        Finding Climb(IEnumerable<Finding> findings) =>
            findings.Single(f => f is { Kind.Code: "battery.cutoff", LoadCase: "climb" });
        Outcome With(double coulomb) =>
            Climb(
                Judgement.Inspect(
                    SampleRig.Inspect(RigFigures.With(label, "battery.capacityMah", coulomb))
                )
            ).Outcome;

        var found = Climb(Check.Run(label).Findings);
        var need = Assert.Single(found.Needs);

        Assert.False(found.NeedsAll);
        Assert.Equal(("battery.capacityMah", false), (need.Path, need.HoldsBelow));
        Assert.Equal(Outcome.Holds, With(need.Threshold));
        Assert.Equal(Outcome.Unknown, With(0.98 * need.Threshold));
    }
}
