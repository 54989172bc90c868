using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Motors;

/// <summary>What a motor's box says is what the motor has, and what is said of each default (M1, M6).</summary>
public sealed class MotorLabelTests
{
    private static readonly MotorLabel Kv = new()
    {
        SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(2000),
    };

    private static (Motor Motor, Dictionary<string, Assumption> Listed) Complete(
        MotorLabel label,
        double nominalV = 11.1
    )
    {
        var ledger = new Ledger();
        var motor = MotorDefaults.Complete(label, nominalV, false, ledger);
        return (motor, ledger.Assumptions.ToDictionary(a => a.Path, StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_printed_is_taken_as_it_is_and_what_is_not_is_not_known()
    {
        var printed = Complete(
            Kv with
            {
                PolePairs = 2,
                Turns = 13,
                MaxVoltageV = 12,
                MaxSpeedRadPerS = 5000,
                ContinuousCurrentA = 20,
                BurstCurrentA = 60,
                BurstS = 8,
                CanDiameterM = 0.036,
            }
        ).Motor;
        var blank = Complete(Kv).Motor;

        Assert.Equal(new MotorRatings(12, 5000, 20, 60, 8), printed.Ratings);
        Assert.Equal((2, 13, 0.036), (printed.PolePairs, printed.Turns, printed.CanDiameterM));
        Assert.Equal(
            new MotorRatings(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN),
            blank.Ratings
        );
        Assert.True(double.IsNaN(blank.PolePairs) && double.IsNaN(blank.Turns));
    }

    [Theory]
    [InlineData(MotorKind.Brushed, null, true)]
    [InlineData(MotorKind.Brushless, RotorLayout.Inner, false)]
    [InlineData(MotorKind.Brushless, RotorLayout.Outer, true)]
    public void The_magnet_sits_at_the_case_of_brushed_and_outer_rotor_motors(
        MotorKind kind,
        RotorLayout? rotor,
        bool atCase
    ) => Assert.Equal(atCase, Complete(Kv with { Kind = kind, Rotor = rotor }).Motor.MagnetAtCase);

    [Fact]
    public void The_layout_of_a_rotor_is_asked_of_brushless_motors_alone()
    {
        Assert.DoesNotContain("motor.rotor", Complete(Kv).Listed.Keys, StringComparer.Ordinal);
        Assert.Equal(
            "inner",
            Complete(Kv with { Kind = MotorKind.Brushless }).Listed["motor.rotor"].Word
        );
    }

    [Theory]
    [InlineData(MotorKind.Brushed, null, null, 2.25)]
    [InlineData(MotorKind.Brushed, null, MagnetMaterial.Ndfeb, 1.96)]
    [InlineData(MotorKind.Brushless, RotorLayout.Inner, null, 1.69)]
    [InlineData(MotorKind.Brushless, RotorLayout.Outer, null, 2.25)]
    public void A_resistance_from_mass_spreads_by_the_square_of_the_motor_constants_factor(
        MotorKind kind,
        RotorLayout? rotor,
        MagnetMaterial? magnet,
        double factor
    )
    {
        var spread = Complete(Kv with { Kind = kind, Rotor = rotor, Magnet = magnet, MassKg = 0.2 })
            .Listed["motor.resistanceMilliohm"]
            .Spread;

        Assert.Equal(SpreadKind.Factor, spread.Kind);
        Assert.Equal((factor, factor), (Math.Round(spread.Low, 9), Math.Round(spread.High, 9)));
    }

    [Fact]
    public void An_unsaid_no_load_current_is_1_5_A_where_resistance_or_cells_are_not_known()
    {
        var (motor, listed) = Complete(Kv with { Kind = MotorKind.Brushless });
        // Half of it at standstill; the rest is reached at V/kt, the resistance left out.
        var speed = 11.1 * Unit.RpmPerVolt.ToSi(2000);

        Assert.Equal(1.5, listed["motor.noLoadPoints.0.currentA"].Value);
        Assert.StartsWith(
            "assumed: 1.5 A",
            listed["motor.noLoadPoints.0.currentA"].Basis,
            StringComparison.Ordinal
        );
        Assert.Equal(0.75, motor.NoLoad.StandstillA);
        Assert.Equal(1.5, motor.NoLoad.CurrentAt(speed), 1e-9);
        // Without cells there is no speed to reach: no slope.
        Assert.Equal(
            new NoLoadLine(0.75, 0),
            Complete(Kv with { ResistanceOhm = 0.05 }, double.NaN).Motor.NoLoad
        );
    }

    [Fact]
    public void A_known_no_load_share_says_so()
    {
        var listed = Complete(Kv with { ResistanceOhm = 0.05, MassKg = 0.2 }).Listed;

        Assert.Contains(
            "of nominal pack voltage over resistance",
            listed["motor.noLoadPoints.0.currentA"].Basis,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_unloaded_motor_turns_at_a_thousandth_of_its_voltage_at_least()
    {
        // 5 A through 2 Ω ask for 10 V of 7.4 V: 0.0074 V over 0.005 V·s/rad are left.
        Assert.Equal(1.48, MotorDefaults.NoLoadSpeed(7.4, 5, 0.005, 2, 0), 1e-12);
        Assert.Equal(1440, MotorDefaults.NoLoadSpeed(7.4, 1, 0.005, 0.1, 0.1), 1e-9);
    }

    [Fact]
    public void No_load_points_on_a_flat_line_and_on_one_through_nothing_are_taken_as_they_are()
    {
        NoLoadLine Line(params NoLoadPoint[] points) =>
            Complete(
                Kv with
                {
                    Kind = MotorKind.Brushless,
                    ResistanceOhm = 0,
                    NoLoadPoints = points,
                }
            ).Motor.NoLoad;
        var kv = Unit.RpmPerVolt.ToSi(2000);

        Assert.Equal(new NoLoadLine(1.5, 0), Line(new(4, 1.5), new(8, 1.5)));
        Assert.Equal(0, Line(new(4, 1), new(8, 2)).StandstillA, 1e-9);
        Assert.Equal(1 / (4 * kv), Line(new(4, 1), new(8, 2)).SlopeAPerRadPerS, 1e-12);
        // A line that would start below nothing: the mean at every speed.
        Assert.Equal(new NoLoadLine(1.5, 0), Line(new(4, 0.5), new(8, 2.5)));
    }

    [Fact]
    public void A_can_of_known_length_gets_its_diameter_from_the_mass()
    {
        var can = MotorCan.Complete(new() { MassKg = 0.2, CanLengthM = 0.05 }, new Ledger());

        // 0.2 kg over 3500 kg/m³ in a cylinder of 50 mm: d = √(4·0.2/(3500·π·0.05)).
        Assert.Equal(Math.Sqrt(0.8 / (3500 * Math.PI * 0.05)), can.DiameterM, 1e-12);
        Assert.Equal(0.05, can.LengthM);
        var unknown = MotorCan.Complete(new() { CanLengthM = 0.05 }, new Ledger());
        Assert.True(double.IsNaN(unknown.MassKg) && double.IsNaN(unknown.DiameterM));
        Assert.Equal(0.05, unknown.LengthM);
    }

    [Theory]
    [InlineData(MotorKind.Brushed, "rotor 35 %", "copper 12 %", "75 s", 1.2, 3, "msl")]
    [InlineData(MotorKind.Brushless, "copper 20 %", "the winding is", "20 s", 1.1, 2, "magnets")]
    public void What_is_said_of_a_heat_network_is_of_its_kind_of_motor(
        MotorKind kind,
        string winding,
        string copper,
        string toCase,
        double low,
        double high,
        string source
    )
    {
        var listed = Complete(Kv with { Kind = kind, MassKg = 0.2 }).Listed;
        void Says(string path, string said) =>
            Assert.Contains(said, listed[path].Basis, StringComparison.Ordinal);

        Says("motor.thermal.windingJPerK", winding);
        Says("motor.thermal.copperJPerK", copper);
        Says("motor.thermal.windingToCaseKPerW", toCase);
        Assert.Equal(Spread.Interval(low, high), listed["motor.lockedHeatFactor"].Spread);
        Assert.Equal(source, listed["motor.magnetCoefficientPerK"].Source);
    }
}
