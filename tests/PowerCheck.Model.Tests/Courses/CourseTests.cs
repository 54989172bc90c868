using MathNet.Numerics.OdeSolvers;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>Lap, run time, thermal memory and pack warmth (M2, M7, M8), against stepping through time.</summary>
public sealed class CourseTests
{
    private static (Rig Rig, Course Course, SegmentLoad[] Segments, LapLoad Lap) Driven(
        RigLabel label
    )
    {
        var (rig, course, _) = RigCompletion.Of(label);
        var segments = course.Segments.Select(s => SegmentLoad.Of(rig, s)).ToArray();
        var warmth = new MotorWarmth(rig.Motor, rig.Road.AmbientC);
        var periodic = LapWarmth.Periodic(
            warmth,
            [.. segments.Select(s => (s.Drive, s.Segment.DurationS))]
        );
        return (rig, course, segments, new LapLoad(rig, segments, warmth, periodic));
    }

    private static RigLabel Labelled(
        double? peukert = null,
        double? reserve = null,
        double? cutoff = null
    ) =>
        SampleRig.Brushless with
        {
            Battery = SampleRig.Brushless.Battery with
            {
                PeukertExponent = peukert,
                ReserveShare = reserve,
            },
            Controller = SampleRig.Brushless.Controller with { CutoffVPerCell = cutoff },
        };

    [Fact]
    [Trait("speed", "slow")]
    public void Run_time_is_what_a_step_by_step_discharge_gives()
    {
        var (rig, _, segments, lap) = Driven(Labelled(peukert: 1));
        var run = EnduranceRunner.Run(rig, lap, lap.At(0.5));
        // Segment by segment, second by second, until a fifth is left.
        var charge = 1.0;
        double seconds = 0,
            joule = 0;
        for (var n = 0; charge > 0.2; n = (n + 1) % segments.Length)
        {
            for (var s = 0; s < segments[n].Segment.DurationS && charge > 0.2; s++, seconds++)
            {
                var taken = lap.At(charge).Segments[n];
                charge -= taken.BatteryA / rig.Battery.CapacityCoulomb;
                joule += taken.BatteryA * taken.BusV;
            }
        }

        Assert.Equal(RunEnd.Reserve, run.EndsBy);
        Assert.Equal(seconds, run.RunTimeS, 30.0);
        Assert.Equal(1, run.EnergyJ / joule, 0.01);
    }

    [Fact]
    public void With_an_exponent_run_time_is_the_integral_of_the_rate_over_charge()
    {
        var (rig, _, _, lap) = Driven(Labelled(peukert: 1.15));
        var charge = 1.0;
        var seconds = 0.0;
        for (; charge > 0.2; seconds += 2)
        {
            charge -= 2 / rig.Battery.DischargeS(lap.At(charge).BatteryA);
        }

        Assert.Equal(1, EnduranceRunner.Run(rig, lap, lap.At(0.5)).RunTimeS / seconds, 1e-3);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void A_high_cut_off_ends_the_run_where_the_bus_just_falls_under_it()
    {
        var (rig, _, _, lap) = Driven(Labelled(peukert: 1, cutoff: 3.7));
        var run = EnduranceRunner.Run(rig, lap, lap.At(0.5));
        Assert.Equal(RunEnd.Cutoff, run.EndsBy);
        var charge = 1.0;
        var seconds = 0.0;
        for (; lap.At(charge).LowestBusV > 3 * 3.7; seconds++)
        {
            charge -= lap.At(charge).BatteryA / rig.Battery.CapacityCoulomb;
        }

        Assert.Equal(seconds, run.RunTimeS, 5.0);
    }

    [Fact]
    public void A_pack_that_starts_under_the_cut_off_runs_no_time()
    {
        var (rig, _, _, lap) = Driven(Labelled(cutoff: 4.2));
        var run = EnduranceRunner.Run(rig, lap, lap.At(0.5));
        Assert.Equal((0, RunEnd.Cutoff), (run.RunTimeS, run.EndsBy));
    }

    [Fact]
    public void An_endless_pack_runs_for_ever()
    {
        var label = Labelled() with
        {
            Battery = Labelled().Battery with { CapacityCoulomb = 1e12 },
        };
        var (rig, _, _, lap) = Driven(label);
        Assert.True(EnduranceRunner.Run(rig, lap, lap.At(0.5)).RunTimeS > 1e10);
    }

    [Fact]
    public void Keeping_everything_back_leaves_no_run()
    {
        var (rig, _, _, lap) = Driven(Labelled(reserve: 1));
        Assert.Equal(0, EnduranceRunner.Run(rig, lap, lap.At(0.5)).RunTimeS);
    }

    [Fact]
    public void The_mean_over_a_lap_weighs_each_segment_by_its_time()
    {
        var (_, course, segments, lap) = Driven(Labelled());
        var half = lap.At(0.5);
        Assert.Equal(
            half.Segments.Zip(course.Segments, (p, s) => p.BatteryA * s.DurationS).Sum() / 60,
            half.BatteryA,
            1e-12
        );
        Assert.Equal(
            Math.Sqrt(
                half.Segments.Zip(
                        course.Segments,
                        (p, s) => p.MotorRmsA * p.MotorRmsA * s.DurationS
                    )
                    .Sum() / 60
            ),
            lap.Rms(half, p => p.MotorRmsA),
            1e-12
        );
        Assert.Equal(half.Segments.Min(p => p.BusV), half.LowestBusV);
        Assert.Equal(4, segments.Length);
    }

    [Fact]
    public void The_default_lap_is_a_minute_of_level_half_slope_slope_and_rest()
    {
        var course = RigCompletion.Of(Labelled()).Course;
        Assert.Equal(
            [(24, 0), (20, 22.5), (6, 45), (10, 0)],
            course.Segments.Select(s => (s.DurationS, Math.Round(s.SlopeRad * 180 / Math.PI, 9)))
        );
    }

    [Fact]
    public void A_segment_steeper_than_the_tires_hold_is_driven_where_they_let_go()
    {
        var rig = SampleRig.Of(Labelled() with { Course = new() { FrictionCoefficient = 0.4 } });
        Assert.Equal(
            SegmentLoad.Of(rig, new(6, SegmentKind.Creep, Math.Atan(0.4), 0.3, 0)).Drive,
            SegmentLoad.Of(rig, new(6, SegmentKind.Creep, 1.2, 0.3, 0)).Drive
        );
    }

    [Fact]
    public void A_drag_brake_takes_nothing_from_the_pack_and_a_rest_neither()
    {
        var (rig, _, _, _) = Driven(Labelled());
        var hold = SegmentLoad.Of(rig, new(10, SegmentKind.Hold, 0.7, 0, 0)).At(rig, 0.5, 20, 20);
        var rest = SegmentLoad.Of(rig, new(10, SegmentKind.Rest, 0, 0, 0)).At(rig, 0.5, 20, 20);
        Assert.Equal(rest.BatteryA, hold.BatteryA, 1e-12);
        Assert.True(hold.MotorRmsA > 1 && rest.MotorRmsA == 0);
    }

    [Fact]
    public void A_jam_at_full_throttle_is_the_stall_and_a_warm_winding_takes_less()
    {
        var rig = SampleRig.Of(
            Labelled() with
            {
                Controller = SampleRig.Brushless.Controller with { BurstCurrentA = null },
            }
        );
        var jam = SegmentLoad.Of(rig, new(2, SegmentKind.Jammed, 0, 0, 1));
        var cold = jam.At(rig, 1, 20, 20).MotorRmsA;
        var full = OperatingPoint.AtDuty(rig, rig.SourceAt(1, true), 1, 0).MotorA;
        Assert.Equal(full, cold, 1e-9);
        Assert.True(jam.At(rig, 1, 120, 20).MotorRmsA < cold);
    }

    [Fact]
    public void The_controllers_level_is_where_many_stepped_laps_lead()
    {
        var lapped = Lapped.Of(Labelled());
        var rig = lapped.Rig;
        var warmth = lapped.Controller();
        double level = 0,
            highest = 0;
        for (var n = 0; n < 50; n++)
        {
            highest = level;
            foreach (var (power, segment) in lapped.Lap.At(0.5).Segments.Zip(lapped.Segments))
            {
                var load = power.MemoryW / rig.Controller.RatedHeatW;
                level = RungeKutta.FourthOrder(
                    level,
                    0,
                    segment.Segment.DurationS,
                    200,
                    (_, x) => (load - x) / rig.Controller.ThermalTimeConstantS
                )[^1];
                highest = Math.Max(highest, level);
            }
        }

        Assert.Equal(level, warmth.StartLevel, 1e-6);
        Assert.Equal(highest, warmth.PeakLevel, 1e-6);
        Assert.Equal(level, warmth.Over(1e5 * lapped.Lap.LapS).End, 1e-6);
        Assert.Equal(0, warmth.Over(0).End);
    }

    [Fact]
    public void At_its_continuous_current_a_controller_settles_at_its_limit()
    {
        var rig = SampleRig.Of(Labelled());
        var rated = rig.Controller.ContinuousCurrentA;
        var load = SteadyCases.Level(rig) with
        {
            MotorCurrentA = rated,
            MotorRmsCurrentA = rated,
            ControllerHeatW =
                (rated * rated * rig.Controller.OnResistanceOhm)
                + rig.ReceiverSupply.HeatW(11, rig.ReceiverSupply.MeanOutputA),
            BusVoltageV = 11,
        };
        Assert.Equal(1, CaseHeat.ControllerLoad(rig, load), 1e-12);
        // One phase pair carries all: 1/0.7² as much.
        Assert.Equal(
            1 / 0.49,
            CaseHeat.ControllerLoad(rig, load with { Name = LoadCaseName.Jam }),
            1e-12
        );
    }

    [Fact]
    public void Warmer_air_takes_from_the_controllers_limit()
    {
        static ControllerWarmth At(double ambient) =>
            Lapped.Of(Labelled() with { Course = new() { AmbientC = ambient } }).Controller();

        Assert.Equal(1, At(25).Memory.Limit, 1e-12);
        // Rating times √((100 − 40)/(100 − 25)): loss times 0.8.
        Assert.Equal(0.8, At(40).Memory.Limit, 1e-12);
        Assert.Equal(100, At(40).TemperatureC(0.8), 1e-12);
        Assert.Equal(0, At(100).Memory.Limit, 1e-12);
    }

    [Theory]
    [InlineData(25, 12, 600)]
    [InlineData(40, 0, 1800)]
    public void A_pack_warms_as_integration_says(double startC, double heatW, double seconds)
    {
        var battery = SampleRig.Of(Labelled()).Battery;
        var pack = new PackWarmth(battery, 25);
        var end = RungeKutta.FourthOrder(
            startC,
            0,
            seconds,
            2000,
            (_, t) => (heatW - ((t - 25) / battery.PackToAmbientKPerW)) / battery.HeatJPerK
        )[^1];
        Assert.Equal(end, pack.AfterC(startC, heatW, seconds), 1e-6);
        Assert.Equal(startC, pack.AfterC(startC, heatW, 0), 1e-12);
        Assert.Equal(pack.SettledC(heatW), pack.AfterC(startC, heatW, double.PositiveInfinity));
    }

    [Fact]
    public void The_time_to_a_packs_limit_leads_to_the_limit()
    {
        var pack = new PackWarmth(SampleRig.Of(Labelled()).Battery, 25);
        Assert.Equal(60, pack.AfterC(30, 25, pack.TimeToLimit(30, 25)), 1e-9);
        Assert.Equal(0, pack.TimeToLimit(61, 25));
        Assert.True(double.IsInfinity(pack.TimeToLimit(30, 0)));
        Assert.True(double.IsNaN(pack.TimeToLimit(30, double.NaN)));
    }

    [Fact]
    public void A_course_without_load_leaves_every_part_at_the_airs_temperature()
    {
        var label = Labelled() with
        {
            Accessories = [],
            Controller = SampleRig.Brushless.Controller with { QuiescentCurrentA = 0 },
            Course = new() { Segments = [new() { DurationS = 60, Kind = SegmentKind.Rest }] },
        };
        var it = SampleRig.Inspect(label).Result.Temperatures;
        Assert.Equal(
            (25, 25, 25),
            (
                Math.Round(it.MotorWinding.PeakC, 9),
                Math.Round(it.MotorCase.PeakC, 9),
                Math.Round(it.Controller.PeakC, 9)
            )
        );
    }

    [Fact]
    public void Equal_temperatures_stay_equal_at_both_ends_of_a_rest()
    {
        var nickel = SampleRig.Of(
            Labelled() with
            {
                Battery = SampleRig.Brushless.Battery with { Chemistry = Chemistry.Nimh },
            }
        );
        Assert.Equal(25, new PackWarmth(nickel.Battery, 25).AfterC(25, 0, 1e4), 1e-12);
    }
}
