using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>What a lap takes from the pack, and with how warm a motor (M8).</summary>
public sealed class LapLoadTests
{
    private static readonly RigLabel Label = SampleRig.Brushless with
    {
        Battery = SampleRig.Brushless.Battery with { PeukertExponent = 1 },
    };

    private static void Same(Lapped it, int n, double windingC, double magnetC) =>
        Assert.Equal(
            it.Segments[n].At(it.Rig, 0.5, windingC, magnetC).BatteryA,
            it.Lap.At(0.5).Segments[n].BatteryA,
            1e-9
        );

    [Fact]
    public void A_segment_is_driven_with_the_mean_of_the_temperatures_at_both_its_ends()
    {
        var it = Lapped.Of(Label);
        for (var n = 0; n < 4; n++)
        {
            var (from, to) = (it.Periodic.SegmentStarts[n], it.Periodic.SegmentStarts[n + 1]);
            // Inner rotor: the magnet lies midway between winding and case.
            Same(
                it,
                n,
                (from.WindingC + to.WindingC) / 2,
                (from.WindingC + from.CaseC + to.WindingC + to.CaseC) / 4
            );
        }

        Assert.NotEqual(
            it.Segments[1].At(it.Rig, 0.5, 20, 20).BatteryA,
            it.Lap.At(0.5).Segments[1].BatteryA,
            1e-6
        );
    }

    [Fact]
    public void In_runaway_a_segment_is_driven_at_the_limits()
    {
        var it = Lapped.Of(
            Label with
            {
                Motor = Label.Motor with { CaseToAmbientKPerW = 500, MagnetMaxC = 80 },
            }
        );

        Assert.True(it.Periodic.Runaway);
        Same(it, 1, 120, 80);
        var cool = Lapped.Of(
            Label with
            {
                Motor = Label.Motor with { CaseToAmbientKPerW = 500, MagnetMaxC = 200 },
            }
        );
        // A magnet is no warmer than the winding that heats it.
        Same(cool, 1, 120, 120);
    }

    [Fact]
    public void A_motor_of_unknown_mass_is_driven_at_twenty_degrees()
    {
        var it = Lapped.Of(
            Label with
            {
                Motor = Label.Motor with { MassKg = null, CanDiameterM = null, CanLengthM = null },
            }
        );

        Same(it, 1, 20, 20);
    }

    [Fact]
    public void Mean_power_weighs_current_times_bus_voltage_by_time()
    {
        var it = Lapped.Of(Label);
        var half = it.Lap.At(0.5);

        Assert.Equal(
            half.Segments.Zip(it.Course.Segments, (p, s) => p.BatteryA * p.BusV * s.DurationS).Sum()
                / 60,
            half.PowerW,
            1e-9
        );
    }

    [Fact]
    public void On_a_bare_bus_that_ripples_the_source_keeps_what_the_mean_square_of_its_current_heats()
    {
        var it = Lapped.Of(
            SampleRig.Brushed with
            {
                Controller = SampleRig.Brushed.Controller with { PwmFrequencyHz = 1000 },
                Motor = SampleRig.Brushed.Motor with { InductanceH = 40e-6 },
            }
        );
        var half = it.Lap.At(0.5);
        var source = it.Rig.SourceAt(0.5, true);
        double given = 0,
            lost = 0,
            onTime = 0;
        foreach (var (power, segment) in half.Segments.Zip(it.Segments))
        {
            given += power.BatteryA * source.OpenCircuitV * segment.Segment.DurationS;
            lost +=
                Math.Pow(power.BatteryRmsA, 2) * source.ResistanceOhm * segment.Segment.DurationS;
            onTime += power.BatteryA * power.BusV * segment.Segment.DurationS;
        }

        // What the cells give is what arrives and what the way to the controllers takes.
        Assert.Equal(given, (half.PowerW * it.Lap.LapS) + lost, 1e-9 * given);
        // The mean current times the voltage while on would be too much: the current is highest where the voltage is lowest.
        Assert.True(half.PowerW * it.Lap.LapS < 0.999 * onTime);
    }

    [Fact]
    public void Energy_is_power_summed_over_the_run()
    {
        var it = Lapped.Of(Label);
        var run = EnduranceRunner.Run(it.Rig, it.Lap, it.Lap.At(0.5));
        // With an exponent of 1 a share of the charge lasts that share of capacity over current.
        double seconds = 0,
            joule = 0;
        for (var n = 0; n < 200; n++)
        {
            var power = it.Lap.At(0.2 + (0.8 * (n + 0.5) / 200));
            var step = 0.8 / 200 * it.Rig.Battery.CapacityCoulomb / power.BatteryA;
            seconds += step;
            joule += step * power.PowerW;
        }

        Assert.Equal(1, run.RunTimeS / seconds, 1e-3);
        Assert.Equal(1, run.EnergyJ / joule, 1e-3);
    }

    [Fact]
    public void A_run_ends_at_the_cut_off_where_the_lowest_bus_voltage_just_meets_it()
    {
        var it = Lapped.Of(
            Label with
            {
                Controller = Label.Controller with { CutoffVPerCell = 3.7 },
            }
        );
        var run = EnduranceRunner.Run(it.Rig, it.Lap, it.Lap.At(0.5));
        var seconds = 0.0;
        const double Step = 0.002;
        for (var charge = 1 - (Step / 2); it.Lap.At(charge).LowestBusV > 11.1; charge -= Step)
        {
            seconds += Step * it.Rig.Battery.CapacityCoulomb / it.Lap.At(charge).BatteryA;
        }

        Assert.Equal(RunEnd.Cutoff, run.EndsBy);
        Assert.Equal(1, run.RunTimeS / seconds, 0.01);
    }

    [Fact]
    public void A_rig_that_draws_nothing_runs_without_end_and_nothing_ends_it()
    {
        var it = Lapped.Of(
            Label with
            {
                Accessories = [],
                Controller = Label.Controller with { QuiescentCurrentA = 0 },
                Course = new() { Segments = [new() { DurationS = 60, Kind = SegmentKind.Rest }] },
            }
        );
        var run = EnduranceRunner.Run(it.Rig, it.Lap, it.Lap.At(0.5));

        Assert.Equal((double.PositiveInfinity, null), (run.RunTimeS, run.EndsBy));
    }

    [Fact]
    public void Without_a_capacity_neither_run_time_nor_energy_are_known()
    {
        var it = Lapped.Of(Label with { Battery = Label.Battery with { SeriesCells = null } });
        var run = EnduranceRunner.Run(it.Rig, it.Lap, it.Lap.At(0.5));

        Assert.True(double.IsNaN(run.RunTimeS) && double.IsNaN(run.EnergyJ));
    }
}
