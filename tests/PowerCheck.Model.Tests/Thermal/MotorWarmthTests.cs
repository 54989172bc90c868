using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>Lasting drives (M6): feedback of resistance and magnet, time to a limit.</summary>
public sealed class MotorWarmthTests
{
    private static MotorWarmth Warmth(
        double beta = 0,
        bool magnetAtCase = true,
        double ambientC = 25
    ) =>
        new(
            Parts.Motor(
                0.004,
                0.05,
                1,
                0.001,
                heat: Parts.Heat(beta: beta),
                magnetAtCase: magnetAtCase
            ),
            ambientC
        );

    [Fact]
    public void The_lasting_current_settles_just_at_the_limit()
    {
        var warmth = Warmth();
        Assert.Equal(120, warmth.Settled(Drive.Current(warmth.ContinuousA, 0)).WindingC, 1e-6);
    }

    [Fact]
    public void Air_as_hot_as_the_limit_leaves_no_lasting_current() =>
        Assert.Equal(0, Warmth(ambientC: 130).ContinuousA);

    [Fact]
    public void Just_above_the_runaway_current_nothing_settles()
    {
        var warmth = Warmth();
        Assert.Equal(Math.Sqrt(1 / (0.00393 * 0.05 * 6)), warmth.RunawayA, 1e-9);
        Assert.True(
            double.IsInfinity(warmth.Settled(Drive.Current(warmth.RunawayA * 1.001, 0)).WindingC)
        );
    }

    [Fact]
    public void Past_four_hundred_degrees_it_is_called_runaway()
    {
        // (T − 25)/6 = i²·0.05·(1 + 0.00393·(T − 20)): T = 399 and 401.
        double Current(double t) => Math.Sqrt((t - 25) / (6 * 0.05 * (1 + (0.00393 * (t - 20)))));
        Assert.Equal(399, Warmth().Settled(Drive.Current(Current(399), 0)).WindingC, 1e-6);
        Assert.True(double.IsInfinity(Warmth().Settled(Drive.Current(Current(401), 0)).WindingC));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_torque_settles_where_heat_and_current_agree(bool magnetAtCase)
    {
        var warmth = Warmth(-0.0011, magnetAtCase);
        var settled = warmth.Settled(Drive.Torque(0.05, 300));
        // Put back: current of the magnet's temperature, heat of the winding's, flow to the air.
        var magnetC = magnetAtCase ? settled.CaseC : (settled.WindingC + settled.CaseC) / 2;
        var current = (0.05 / (0.004 * (1 - (0.0011 * (magnetC - 20))))) + 1.3;
        var copper = current * current * 0.05 * (1 + (0.00393 * (settled.WindingC - 20)));
        var spin = 0.004 * 1.3 * 300;
        Assert.Equal(25 + (5 * (copper + spin)), settled.CaseC, 1e-4);
        Assert.Equal(settled.CaseC + copper, settled.WindingC, 1e-4);
    }

    [Fact]
    public void A_weakening_magnet_makes_it_hotter() =>
        Assert.True(
            Warmth(-0.002).Settled(Drive.Torque(0.05, 300)).WindingC
                > Warmth().Settled(Drive.Torque(0.05, 300)).WindingC + 1
        );

    [Fact]
    public void At_rest_everything_cools_to_the_air()
    {
        Assert.Equal(25, Warmth().Settled(Drive.Rest).WindingC, 1e-9);
        Assert.Equal(25, Warmth().After(Drive.Rest, new(140, 90), 1e6).WindingC, 1e-6);
    }

    [Fact]
    public void After_no_time_a_drive_has_changed_nothing() =>
        Assert.Equal(
            new MotorTemperature(80, 60),
            Warmth().After(Drive.Torque(0.05, 300), new(80, 60), 0)
        );

    [Fact]
    public void A_long_drive_is_a_settled_one()
    {
        var warmth = Warmth(-0.0011);
        var drive = Drive.Torque(0.05, 300);
        Assert.Equal(
            warmth.Settled(drive).WindingC,
            warmth.After(drive, warmth.Cold, 20_000).WindingC,
            1e-4
        );
    }

    [Fact]
    public void Two_halves_of_a_held_current_are_the_whole()
    {
        var warmth = Warmth();
        var drive = Drive.Current(20, 200);
        var half = warmth.After(drive, warmth.Cold, 33);
        Assert.Equal(
            warmth.After(drive, warmth.Cold, 66).WindingC,
            warmth.After(drive, half, 33).WindingC,
            1e-9
        );
    }

    [Fact]
    public void Two_halves_of_a_torque_are_the_whole_wherever_pieces_fall()
    {
        var warmth = Warmth(-0.002);
        var drive = Drive.Torque(0.06, 200);
        var half = warmth.After(drive, warmth.Cold, 30);
        Assert.Equal(
            warmth.After(drive, warmth.Cold, 60).WindingC,
            warmth.After(drive, half, 30).WindingC,
            5e-3
        );
    }

    [Fact]
    public void A_time_to_a_limit_leads_to_the_limit()
    {
        var warmth = Warmth();
        var drive = Drive.Current(32, 0);
        var (winding, magnet) = warmth.TimesToLimits(drive, warmth.Cold, warmth.Settled(drive));
        Assert.Equal(120, warmth.After(drive, warmth.Cold, winding).WindingC, 1e-6);
        Assert.Equal(120, warmth.After(drive, warmth.Cold, magnet).CaseC, 1e-6);
        Assert.True(magnet > winding);
    }

    [Fact]
    public void A_limit_that_is_passed_already_takes_no_time_and_one_never_reached_for_ever()
    {
        var warmth = Warmth();
        var drive = Drive.Current(5, 0);
        var settled = warmth.Settled(drive);
        Assert.Equal(0, warmth.TimesToLimits(drive, new(130, 60), settled).WindingS);
        Assert.True(double.IsInfinity(warmth.TimesToLimits(drive, warmth.Cold, settled).WindingS));
    }

    [Fact]
    public void Ripple_and_unevenness_heat_as_current_does()
    {
        var warmth = Warmth();
        Assert.Equal(
            warmth.Settled(Drive.Current(5, 0)).WindingC,
            warmth.Settled(Drive.Current(4, 0, static (_, _) => 9)).WindingC,
            1e-9
        );
        Assert.Equal(
            warmth.Settled(Drive.Current(4 * Math.Sqrt(1.5), 0)).WindingC,
            warmth.Settled(Drive.Current(4, 0, null, 1.5)).WindingC,
            1e-9
        );
    }

    [Fact]
    public void A_brushed_rotor_takes_spin_heat_itself_and_a_brushless_winding_does_not()
    {
        MotorTemperature Settled(bool inWinding) =>
            new MotorWarmth(
                Parts.Motor(0.004, 0.05, 1, heat: Parts.Heat(spinInWinding: inWinding)),
                25
            ).Settled(Drive.Current(0, 500));
        // 2 W of friction through R_wc = 1 K/W.
        Assert.Equal(2, Settled(true).WindingC - Settled(true).CaseC, 1e-9);
        Assert.Equal(0, Settled(false).WindingC - Settled(false).CaseC, 1e-9);
    }

    [Fact]
    public void What_is_not_known_stays_not_known()
    {
        var warmth = new MotorWarmth(Parts.Motor(resistanceOhm: double.NaN), 25);
        var settled = warmth.Settled(Drive.Current(10, 0));
        Assert.True(double.IsNaN(settled.WindingC));
        Assert.True(
            double.IsNaN(warmth.TimesToLimits(Drive.Current(10, 0), warmth.Cold, settled).WindingS)
        );
        Assert.True(double.IsNaN(warmth.ContinuousA) && double.IsNaN(warmth.RunawayA));
    }
}
