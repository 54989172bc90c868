using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>How far ahead a time to a limit is looked for: an hour, of a locked winding 15 minutes (M6).</summary>
public sealed class HorizonTests
{
    // So heavy a case that the motor warms for hours.
    private static MotorWarmth Heavy(double limitC = 1000, double magnetLimitC = 1000) =>
        new(
            Parts.Motor(
                heat: Parts.Heat(caseJPerK: 6000, limitC: limitC, magnetLimitC: magnetLimitC)
            ),
            25
        );

    // 15 A of held torque.
    private static readonly Drive Torque = Drive.Torque(0.07, 0);

    [Theory]
    [InlineData(3590.5, true)]
    [InlineData(3600.5, false)]
    public void A_limit_reached_after_the_hour_is_not_looked_for(double seconds, bool found)
    {
        var at = Heavy().After(Torque, Heavy().Cold, seconds);
        var warmth = Heavy(at.WindingC, at.CaseC);
        var (winding, magnet) = warmth.TimesToLimits(Torque, warmth.Cold, warmth.Settled(Torque));

        Assert.Equal(found ? seconds : double.PositiveInfinity, winding, 0.1);
        Assert.Equal(found ? seconds : double.PositiveInfinity, magnet, 0.1);
    }

    [Theory]
    [InlineData(898.5, true)]
    [InlineData(901.5, false)]
    public void A_locked_winding_is_looked_at_for_fifteen_minutes(double seconds, bool found)
    {
        // 20 A settle at 25 + 400·0.05·6 W·K/W and more.
        var drive = Drive.Current(20, 0);
        var afterTwo = new LockedWinding(Heavy(), drive).AloneAfterC(25, 2);
        var at = drive.Network(Heavy(), Heavy().Cold).Over(seconds - 2).Apply(new(afterTwo, 25));

        Assert.Equal(
            found ? seconds : double.PositiveInfinity,
            new LockedWinding(Heavy(at.WindingC), drive).TimeToLimit(MotorTemperature.At(25)),
            1e-3
        );
    }

    [Fact]
    public void A_winding_as_warm_as_runaway_is_not_in_runaway_yet()
    {
        var warmth = new MotorWarmth(Parts.Motor(), 25);
        var bound = MotorTemperature.At(400);

        Assert.Equal(bound, warmth.After(Drive.Rest, bound, 0));
        Assert.Equal(25, warmth.After(Drive.Rest, bound, 1e5).WindingC, 1e-6);
    }

    [Fact]
    public void A_drive_from_the_very_limit_leaves_no_time()
    {
        var warmth = new MotorWarmth(Parts.Motor(), 25);
        var start = MotorTemperature.At(120);

        Assert.Equal((0, 0), warmth.TimesToLimits(Drive.Rest, start, warmth.Settled(Drive.Rest)));
        Assert.Equal(0, new LockedWinding(warmth, Drive.Rest).TimeToLimit(start));
    }

    [Fact]
    public void Past_all_measure_a_magnet_follows_within_a_piece_and_a_time_that_is_known_stays()
    {
        // 100 A of torque and 1 A without load; a two-thousandth of the hour is 1.8 s.
        var drive = Drive.Torque(0.5, 100);
        (double WindingS, double MagnetS) Times(double magnetLimitC)
        {
            var warmth = new MotorWarmth(
                Parts.Motor(heat: Parts.Heat(limitC: 1e9, magnetLimitC: magnetLimitC)),
                25
            );
            return warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive));
        }

        double Walked(Func<MotorTemperature, bool> until)
        {
            var warmth = new MotorWarmth(Parts.Motor(), 25);
            var step = drive.Network(warmth, warmth.Cold).Over(0.01);
            var x = warmth.Cold;
            var seconds = 0.0;
            for (; !until(x); seconds += 0.01)
            {
                x = step.Apply(x);
            }

            return seconds;
        }

        var beyond = Walked(x => x.WindingC > 1e6);
        Assert.InRange(Times(1e9).MagnetS, beyond - 0.01, beyond + 1.81);
        var known = Walked(x => x.CaseC >= 40);
        Assert.True(known < beyond - 10);
        Assert.Equal(double.PositiveInfinity, Times(40).WindingS);
        Assert.Equal(known, Times(40).MagnetS, 0.02);
    }

    [Fact]
    public void A_rippling_current_past_all_measure_leaves_the_copper_at_its_highest()
    {
        var winding = new LockedWinding(
            new(Parts.Motor(), 25),
            Drive.Current(3000, 0, static (_, _) => 1)
        );

        // 9·10⁶·0.05/20 J/K are 22 500 K/s, and more as it warms.
        Assert.Equal(5000, winding.AloneAfterC(25, 2));
    }
}
