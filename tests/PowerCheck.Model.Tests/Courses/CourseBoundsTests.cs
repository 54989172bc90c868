using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Courses;

/// <summary>A course that ends just at a bound (M8).</summary>
public sealed class CourseBoundsTests
{
    [Fact]
    public void A_bus_that_just_meets_the_cut_off_with_the_reserve_left_ends_by_the_reserve()
    {
        // Two cells: half of a voltage, twice, is that voltage to the last bit.
        RigLabel Label(double? cutoffVPerCell) =>
            SampleRig.Brushed with
            {
                Controller = SampleRig.Brushed.Controller with { CutoffVPerCell = cutoffVPerCell },
            };
        EnduranceReport Run(double? cutoffVPerCell)
        {
            var it = Lapped.Of(Label(cutoffVPerCell));
            return EnduranceRunner.Run(it.Rig, it.Lap, it.Lap.At(0.5));
        }

        var free = Lapped.Of(Label(0.1));
        var lowest = free.Lap.At(free.Rig.Battery.ReserveShare).LowestBusV;

        Assert.Equal(Run(0.1), Run(lowest / 2));
        Assert.Equal(RunEnd.Reserve, Run(lowest / 2).EndsBy);
        Assert.Equal(RunEnd.Cutoff, Run((lowest / 2) + 1e-6).EndsBy);
    }

    [Fact]
    public void A_motor_that_rests_in_air_as_warm_as_its_limit_is_at_it_at_once()
    {
        var warmth = new MotorWarmth(Parts.Motor(heat: Parts.Heat(limitC: 25)), 25);
        (Drive, double)[] lap = [(Drive.Rest, 50)];
        var periodic = LapWarmth.Periodic(warmth, lap) with { PeakWindingC = 25 };
        var course = new MotorCourse(new(warmth, periodic, lap, 100), 100);

        Assert.Equal((0, warmth.Cold), course.WindingLimit);
    }
}
