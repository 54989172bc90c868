using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>How warm each part gets, put together from the parts' own functions (M6, M7, M8).</summary>
public sealed class NodeTests
{
    private static readonly LoadCaseName[] Turning =
    [
        LoadCaseName.Level,
        LoadCaseName.Climb,
        LoadCaseName.Hold,
        LoadCaseName.Slip,
        LoadCaseName.Punch,
        LoadCaseName.Top,
    ];

    private static Inspection Inspect(
        double? wantedS = null,
        double continuousA = 40,
        double packC = 25,
        double? capacityAh = 3
    ) =>
        SampleRig.Inspect(
            SampleRig.Brushless with
            {
                Controller = SampleRig.Brushless.Controller with
                {
                    ContinuousCurrentA = continuousA,
                },
                Battery = SampleRig.Brushless.Battery with
                {
                    TemperatureC = packC,
                    CapacityCoulomb = capacityAh * 3600,
                },
                Course = new() { WantedS = wantedS },
            }
        );

    [Fact]
    public void Magnet_and_case_are_told_for_turning_cases_and_the_rest_for_all()
    {
        var warm = Inspect().Result.Temperatures;

        Assert.Equal(Enum.GetValues<LoadCaseName>(), warm.MotorWinding.Cases.Select(c => c.Case));
        Assert.Equal(Turning, warm.MotorMagnet.Cases.Select(c => c.Case));
        Assert.Equal(Turning, warm.MotorCase.Cases.Select(c => c.Case));
        Assert.Equal(Enum.GetValues<LoadCaseName>(), warm.Controller.Cases.Select(c => c.Case));
        Assert.Equal(Enum.GetValues<LoadCaseName>(), warm.Battery.Cases.Select(c => c.Case));
        Assert.Equal(60, warm.MotorCase.LimitC);
    }

    [Fact]
    public void A_turning_case_is_judged_after_its_seconds_from_where_the_course_left_the_motor()
    {
        var it = Inspect(wantedS: 600);
        var warmth = new MotorWarmth(it.Rig.Motor, 25);
        var end = new MotorTemperature(
            it.Result.Temperatures.MotorWinding.CourseEndC,
            it.Result.Temperatures.MotorCase.CourseEndC
        );
        var drive = CaseHeat.Turning(it.Rig, it.Cases[LoadCaseName.Climb])!;
        var after = warmth.After(drive, end, 60);
        CaseTemperature Climb(NodeReport node) =>
            node.Cases.Single(c => c.Case == LoadCaseName.Climb);
        var winding = Climb(it.Result.Temperatures.MotorWinding);
        var magnet = Climb(it.Result.Temperatures.MotorMagnet);

        Assert.Equal((60, after.WindingC), (winding.JudgedS, winding.JudgedC));
        Assert.Equal((after.WindingC + after.CaseC) / 2, magnet.JudgedC, 1e-9);
        Assert.Equal(after.CaseC, Climb(it.Result.Temperatures.MotorCase).JudgedC, 1e-9);
        Assert.Equal(warmth.Settled(drive).WindingC, winding.SettledC);
        Assert.Equal(
            warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive)),
            (winding.FromColdS, magnet.FromColdS)
        );
        Assert.Equal(
            warmth.TimesToLimits(drive, end, warmth.Settled(drive)),
            (winding.FromWarmS, magnet.FromWarmS)
        );
    }

    [Fact]
    public void Level_is_judged_settled_and_top_and_stall_not_at_all()
    {
        var winding = Inspect().Result.Temperatures.MotorWinding.Cases;
        var level = winding.Single(c => c.Case == LoadCaseName.Level);

        Assert.Equal(double.PositiveInfinity, level.JudgedS);
        Assert.Equal(level.SettledC, level.JudgedC);
        Assert.All(
            winding.Where(c => c.Case is LoadCaseName.Top or LoadCaseName.Stall),
            c => Assert.True(double.IsNaN(c.JudgedS) && double.IsNaN(c.JudgedC))
        );
    }

    [Fact]
    public void A_jam_is_judged_after_two_seconds_of_a_locked_winding()
    {
        var it = Inspect(wantedS: 600);
        var locked = CaseHeat.Locked(
            it.Rig,
            it.Cases[LoadCaseName.Jam],
            new MotorWarmth(it.Rig.Motor, 25)
        );
        var end = new MotorTemperature(
            it.Result.Temperatures.MotorWinding.CourseEndC,
            it.Result.Temperatures.MotorCase.CourseEndC
        );
        var jam = it.Result.Temperatures.MotorWinding.Cases.Single(c => c.Case == LoadCaseName.Jam);

        Assert.Equal((2, locked.AfterC(end, 2)), (jam.JudgedS, jam.JudgedC));
        Assert.Equal(locked.TimeToLimit(end), jam.FromWarmS);
        Assert.Equal(locked.TimeToLimit(MotorTemperature.At(25)), jam.FromColdS);
        Assert.True(jam.FromWarmS < jam.FromColdS);
    }

    [Theory]
    [InlineData(60.0)]
    [InlineData(300.0)]
    [InlineData(1e7)]
    public void A_pack_warms_over_the_wanted_time_or_until_it_is_empty(double wantedS)
    {
        var it = Inspect(wantedS);
        var battery = it.Result.Temperatures.Battery;
        var pack = new PackWarmth(it.Rig.Battery, 25);
        var rms = it.Result.Endurance.RmsBatteryCurrentA;
        var heat = rms * rms * it.Rig.Battery.LastingResistanceOhm;
        var end = pack.AfterC(25, heat, Math.Min(wantedS, it.Result.Endurance.RunTimeS));

        Assert.Equal((end, end), (battery.CourseEndC, battery.PeakC));
        Assert.Equal(pack.TimeToLimit(25, heat), battery.CourseTimeToLimitS);
        var climb = battery.Cases.Single(c => c.Case == LoadCaseName.Climb);
        Assert.Equal(
            (
                LoadCaseName.Climb,
                pack.SettledC(it.Cases[LoadCaseName.Climb].BatteryHeatW),
                pack.TimeToLimit(25, it.Cases[LoadCaseName.Climb].BatteryHeatW),
                pack.TimeToLimit(end, it.Cases[LoadCaseName.Climb].BatteryHeatW),
                60,
                pack.AfterC(end, it.Cases[LoadCaseName.Climb].BatteryHeatW, 60)
            ),
            Figures(climb)
        );
    }

    [Fact]
    public void A_pack_that_starts_warm_is_warmest_at_the_start()
    {
        var battery = Inspect(packC: 55).Result.Temperatures.Battery;

        Assert.Equal(55, battery.PeakC);
        Assert.True(battery.CourseEndC < 55);
    }

    [Fact]
    public void A_pack_of_unknown_capacity_has_no_end_and_no_peak()
    {
        var battery = Inspect(capacityAh: null).Result.Temperatures.Battery;

        Assert.True(double.IsNaN(battery.CourseEndC) && double.IsNaN(battery.PeakC));
    }

    [Fact]
    public void A_pack_of_unknown_end_has_no_time_from_there_even_where_its_heat_would_settle_low()
    {
        var pack = new PackWarmth(Inspect().Rig.Battery, 25);

        Assert.True(pack.SettledC(0.1) < pack.Battery.LimitC);
        Assert.True(double.IsNaN(pack.TimeToLimit(double.NaN, 0.1)));
    }

    [Theory]
    [InlineData(5.0)]
    [InlineData(6.0)]
    [InlineData(7.0)]
    [InlineData(40.0)]
    public void A_controller_passes_its_limit_and_ends_the_run_as_walking_tells(double continuousA)
    {
        var it = Inspect(wantedS: 150, continuousA);
        var node = it.Result.Temperatures.Controller;
        var (end, passed) = Walked(
            Lapped.InParts(
                SampleRig.Brushless with
                {
                    Controller = SampleRig.Brushless.Controller with
                    {
                        ContinuousCurrentA = continuousA,
                    },
                }
            ),
            150
        );

        Assert.Equal(25 + (75 * end), node.CourseEndC, 0.1);
        Assert.Equal(double.IsInfinity(passed), double.IsInfinity(node.CourseTimeToLimitS));
        if (double.IsFinite(passed))
        {
            Assert.InRange(node.CourseTimeToLimitS, passed - 2, passed + 2);
        }
    }

    // Second by second, with the motor as warm as it then is: level at the end of the run, and when it is past 1.
    private static (double End, double PassedS) Walked(Lapped lapped, int runS)
    {
        var x = lapped.Warmth.Cold;
        double level = 0,
            end = 0,
            passed = double.PositiveInfinity;
        for (var t = 0; t < 3600; )
        {
            foreach (var segment in lapped.Segments)
            {
                for (var s = 0; s < segment.Segment.DurationS; s++, t++)
                {
                    end = t == runS ? level : end;
                    var load =
                        segment.At(lapped.Rig, 0.5, x.WindingC, lapped.Warmth.MagnetC(x)).MemoryW
                        / lapped.Rig.Controller.RatedHeatW;
                    x = lapped.Warmth.After(segment.Drive, x, 1);
                    level =
                        load
                        + (
                            (level - load)
                            * Math.Exp(-1 / lapped.Rig.Controller.ThermalTimeConstantS)
                        );
                    passed = level > 1 && double.IsInfinity(passed) ? t + 1 : passed;
                }
            }
        }

        return (end, passed);
    }

    [Fact]
    public void A_controller_ends_the_course_at_its_level_after_so_many_laps()
    {
        var it = Inspect(wantedS: 120);
        var lapped = Lapped.InParts(SampleRig.Brushless);
        var warmth = lapped.Controller();
        var (end, peak) = warmth.Over(120);
        var node = it.Result.Temperatures.Controller;

        Assert.Equal(warmth.TemperatureC(end), node.CourseEndC, 1e-9);
        Assert.Equal(warmth.TemperatureC(peak), node.PeakC, 1e-9);
        var k = CaseHeat.ControllerLoad(it.Rig, it.Cases[LoadCaseName.Climb]);
        Assert.Equal(
            (
                LoadCaseName.Climb,
                25 + (75 * k),
                warmth.Memory.TimeToLimit(0, k),
                warmth.Memory.TimeToLimit(end, k),
                60,
                25 + (75 * warmth.Memory.After(end, k, 60))
            ),
            Figures(node.Cases.Single(c => c.Case == LoadCaseName.Climb))
        );
        Assert.Equal((warmth.StartLevel, warmth.PeakLevel), warmth.Over(double.NaN));
    }

    [Fact]
    public void The_run_is_as_long_as_wanted_or_as_the_pack_lasts()
    {
        Assert.Equal(120, Inspect(wantedS: 120).Result.RunS);
        Assert.Equal(Inspect().Result.Endurance.RunTimeS, Inspect().Result.RunS);
    }

    private static (LoadCaseName, double, double, double, double, double) Figures(
        CaseTemperature at
    ) => (at.Case, at.SettledC, at.FromColdS, at.FromWarmS, at.JudgedS, at.JudgedC);
}
