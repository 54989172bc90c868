using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>At which value of a missing figure a limit turns (M13), where plain arithmetic tells it.</summary>
public sealed class NeedsFinderTests
{
    private static readonly RigLabel CellsMissing = SampleRig.Brushless with
    {
        Battery = SampleRig.Brushless.Battery with { SeriesCells = null },
        Accessories = [],
    };

    private static readonly RigLabel SpeedMissing = SampleRig.Brushless with
    {
        Motor = SampleRig.Brushless.Motor with { SpeedConstantRadPerSPerV = null },
        Accessories = [],
    };

    private static RigLabel Supplied(int? min, int? max) =>
        CellsMissing with
        {
            Controller = CellsMissing.Controller with { MinCells = min, MaxCells = max },
        };

    private static Finding Of(RigLabel label, FindingKind kind) =>
        Check.Run(label).Findings.Single(f => f.Kind == kind && !f.Caution);

    [Fact]
    public void A_count_holds_up_to_the_most_that_the_box_allows()
    {
        var found = Of(Supplied(null, 3), FindingCatalogue.ControllerCellCount);

        Assert.Equal(
            new Need("battery.seriesCells", Unit.Cells, 3, true),
            Assert.Single(found.Needs)
        );
        Assert.False(found.NeedsAll);
        Assert.EndsWith(
            "; it holds with battery.seriesCells of at most 3 cells.",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_count_holds_from_the_fewest_that_the_box_allows_on()
    {
        var found = Of(Supplied(4, 6), FindingCatalogue.ControllerCellCount);

        Assert.Equal(
            new Need("battery.seriesCells", Unit.Cells, 4, false),
            Assert.Single(found.Needs)
        );
        Assert.EndsWith(
            "; it holds with battery.seriesCells of at least 4 cells.",
            found.Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(2, 3)]
    [InlineData(1, 6)]
    public void A_limit_that_turns_twice_or_never_gets_no_figure(int min, int max)
    {
        var found = Of(Supplied(min, max), FindingCatalogue.ControllerCellCount);

        var need = Assert.Single(found.Needs);
        Assert.Equal(("battery.seriesCells", false), (need.Path, need.HoldsBelow));
        Assert.True(double.IsNaN(need.Threshold));
        Assert.False(found.NeedsAll);
        Assert.DoesNotContain("it holds with", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_motor_speed_holds_up_to_the_KV_that_a_full_pack_drives_to_its_limit()
    {
        var found = Of(SpeedMissing, FindingCatalogue.MotorSpeed);

        // 50 000 rpm on 3·4.2 V are 3968.25 rpm/V; three digits towards the side that holds are 3960.
        var need = Assert.Single(found.Needs);
        Assert.Equal("motor.kvRpmPerVolt", need.Path);
        Assert.Equal(3960, Unit.RpmPerVolt.FromSi(need.Threshold), 1e-6);
        Assert.True(need.HoldsBelow);
    }

    [Fact]
    public void Where_two_figures_tell_only_together_both_are_asked_for_without_a_value()
    {
        var found = Of(
            SpeedMissing with
            {
                Battery = CellsMissing.Battery,
            },
            FindingCatalogue.MotorSpeed
        );

        Assert.True(found.NeedsAll);
        Assert.Equal(
            ["battery.seriesCells", "motor.kvRpmPerVolt"],
            found.Needs.Select(need => need.Path).Order(StringComparer.Ordinal)
        );
        Assert.All(
            found.Needs,
            need => Assert.True(double.IsNaN(need.Threshold) && !need.HoldsBelow)
        );
        Assert.Equal(
            "No-load speed on a full pack: not to be told from what was given.",
            found.Message
        );
    }

    [Fact]
    public void What_is_known_needs_nothing_and_keeps_its_sentence()
    {
        var known = Check.Run(CellsMissing).Findings.Where(f => f.Outcome != Outcome.Unknown);
        var inspected = Judgement
            .Inspect(SampleRig.Inspect(CellsMissing))
            .Select(f => f.Message)
            .ToArray();

        Assert.NotEmpty(known);
        Assert.All(
            known,
            found =>
            {
                Assert.Empty(found.Needs);
                Assert.Contains(found.Message, inspected, StringComparer.Ordinal);
            }
        );
    }

    [Fact]
    public void A_mismatch_that_is_open_keeps_the_members_that_it_asks_for()
    {
        var found = Of(
            CellsMissing with
            {
                Controller = CellsMissing.Controller with { MotorKinds = [] },
            },
            FindingCatalogue.ControllerMotorKind
        );

        Assert.Equal(["controller.motorKinds"], found.Needs.Select(need => need.Path));
    }

    [Fact]
    public void A_slow_pack_is_told_from_which_capacity_on_it_lasts()
    {
        var label = SampleRig.Brushless with
        {
            Battery = SampleRig.Brushless.Battery with
            {
                CapacityCoulomb = null,
                PeukertExponent = 1,
                ConnectorOhm = 0,
            },
            Course = new()
            {
                WantedS = 3600,
                Segments = [new() { DurationS = 10, Kind = Model.Courses.SegmentKind.Rest }],
            },
            Accessories = [],
        };
        var found = Of(label, FindingCatalogue.CourseRunTime);

        // 0.05 A of the controller for an hour, with a fifth kept back, are 62.5 mAh: less than any pack searched.
        Assert.True(double.IsNaN(Assert.Single(found.Needs).Threshold));

        found = Of(
            label with
            {
                Controller = label.Controller with { QuiescentCurrentA = 0.8 },
            },
            FindingCatalogue.CourseRunTime
        );
        // 0.8 A for an hour over 0.8 of the charge are 1000 mAh; three digits up.
        var need = Assert.Single(found.Needs);
        Assert.Equal("battery.capacityMah", need.Path);
        Assert.False(need.HoldsBelow);
        Assert.InRange(Unit.MilliampereHour.FromSi(need.Threshold), 1000 - 1e-6, 1010 + 1e-6);
        Assert.Contains(
            "it holds with battery.capacityMah of at least 10",
            found.Message,
            StringComparison.Ordinal
        );
    }
}
