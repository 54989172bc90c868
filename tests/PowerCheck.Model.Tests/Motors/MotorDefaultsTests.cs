using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Motors;

/// <summary>What is filled in for a motor (M1, M6), against hand arithmetic.</summary>
public sealed class MotorDefaultsTests
{
    private static Motor Complete(
        MotorLabel label,
        Ledger? ledger = null,
        double nominalV = 11.1
    ) => MotorDefaults.Complete(label, nominalV, false, ledger ?? new Ledger());

    private static MotorLabel Kv(double rpmPerVolt) =>
        new() { SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(rpmPerVolt) };

    [Theory]
    [InlineData(MotorKind.Brushed, null, null, 0.055, 0.3)]
    [InlineData(MotorKind.Brushed, null, MagnetMaterial.Ndfeb, 0.075, 0.3)]
    [InlineData(MotorKind.Brushless, RotorLayout.Inner, null, 0.105, 0.0)]
    [InlineData(MotorKind.Brushless, RotorLayout.Outer, null, 0.22, 0.0)]
    public void Resistance_follows_from_mass_and_KV(
        MotorKind kind,
        RotorLayout? rotor,
        MagnetMaterial? magnet,
        double constant,
        double brushV
    )
    {
        var motor = Complete(
            Kv(2000) with
            {
                Kind = kind,
                Rotor = rotor,
                Magnet = magnet,
                MassKg = 0.16,
            }
        );
        // R = (kt/Km)², Km = c·m^(5/6): written as kt²/(c²·m^(5/3)).
        var kt = 60 / (2 * Math.PI * 2000);
        Assert.Equal(
            kt * kt / (constant * constant * Math.Pow(0.16, 5.0 / 3)),
            motor.ResistanceOhm,
            1e-9
        );
        Assert.Equal(brushV, motor.BrushDropV);
    }

    [Fact]
    public void A_resistance_measured_warm_is_brought_back_to_twenty_degrees()
    {
        var label = Kv(2000) with { ResistanceOhm = 0.06, ResistanceTemperatureC = 45 };
        Assert.Equal(0.06 / (1 + (0.00393 * 25)), Complete(label).ResistanceOhm, 1e-12);
    }

    [Theory]
    [InlineData(3, 55_000)]
    [InlineData(5, 37_000)]
    [InlineData(null, 45_000)]
    public void Turns_and_slots_give_KV(int? slots, double product)
    {
        var motor = Complete(new() { Turns = 35, Slots = slots });
        Assert.Equal(product / 35, Unit.RpmPerVolt.FromSi(motor.SpeedConstantRadPerSPerV), 1e-9);
    }

    [Fact]
    public void Without_slots_both_are_covered_by_a_wide_spread()
    {
        var ledger = new Ledger();
        var motor = Complete(new() { Turns = 35 }, ledger);
        var kv = ledger.Assumptions.Single(a =>
            string.Equals(a.Path, "motor.kvRpmPerVolt", StringComparison.Ordinal)
        );
        var found = Unit.RpmPerVolt.FromSi(motor.SpeedConstantRadPerSPerV);
        Assert.InRange(37_000.0 / 35, found * (1 - kv.Spread.Low), found);
        Assert.InRange(55_000.0 / 35, found, found * (1 + kv.Spread.High));
    }

    [Fact]
    public void Given_KV_wins_over_turns() =>
        Assert.Equal(
            1500,
            Unit.RpmPerVolt.FromSi(Complete(Kv(1500) with { Turns = 35 }).SpeedConstantRadPerSPerV),
            1e-9
        );

    [Theory]
    [InlineData(MotorKind.Brushed, 0.03)]
    [InlineData(MotorKind.Brushless, 0.01)]
    public void No_load_current_is_a_share_of_nominal_voltage_over_resistance(
        MotorKind kind,
        double share
    )
    {
        var motor = Complete(Kv(2000) with { Kind = kind, ResistanceOhm = 0.05 });
        var i0 = share * 11.1 / 0.05;
        var kt = 60 / (2 * Math.PI * 2000);
        var brush = kind == MotorKind.Brushed ? 0.3 : 0;
        var atSpeed = (11.1 - (i0 * 0.05) - brush) / kt;
        Assert.Equal(0.5 * i0, motor.NoLoad.StandstillA, 1e-9);
        Assert.Equal(i0, motor.NoLoad.CurrentAt(atSpeed), 1e-9);
    }

    [Fact]
    public void A_measured_no_load_point_comes_out_at_its_own_speed()
    {
        var motor = Complete(
            Kv(3300) with
            {
                ResistanceOhm = 0.022,
                NoLoadPoints = [new(7.4, 2.4)],
                Sensored = true,
                NoLoadStandstillShare = 0.3,
            }
        );
        var speed = (7.4 - (2.4 * 0.022)) * Unit.RpmPerVolt.ToSi(3300);
        Assert.Equal(2.4, motor.NoLoad.CurrentAt(speed), 1e-9);
        Assert.Equal(0.72, motor.NoLoad.StandstillA, 1e-9);
    }

    [Fact]
    public void Two_no_load_points_make_the_line_themselves()
    {
        var motor = Complete(
            Kv(3300) with
            {
                ResistanceOhm = 0.022,
                NoLoadPoints = [new(4, 1.5), new(8, 2.0)],
                Sensored = true,
            }
        );
        var kv = Unit.RpmPerVolt.ToSi(3300);
        Assert.Equal(1.5, motor.NoLoad.CurrentAt((4 - (1.5 * 0.022)) * kv), 1e-9);
        Assert.Equal(2.0, motor.NoLoad.CurrentAt((8 - (2.0 * 0.022)) * kv), 1e-9);
    }

    [Fact]
    public void No_load_points_that_fall_with_speed_give_their_mean_and_no_slope()
    {
        var motor = Complete(
            Kv(3300) with
            {
                ResistanceOhm = 0.022,
                NoLoadPoints = [new(4, 2.0), new(8, 1.5)],
                Sensored = true,
            }
        );
        Assert.Equal((1.75, 0), (motor.NoLoad.StandstillA, motor.NoLoad.SlopeAPerRadPerS));
    }

    [Fact]
    public void Without_resistance_mass_and_size_the_resistance_is_not_known_and_listed()
    {
        var ledger = new Ledger();
        Assert.True(double.IsNaN(Complete(Kv(2000), ledger).ResistanceOhm));
        Assert.Contains(
            ledger.Unknowns,
            unknown =>
                string.Equals(unknown.Path, "motor.resistanceMilliohm", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_sensor_makes_a_motor_of_unsaid_kind_brushless()
    {
        Assert.Equal(MotorKind.Brushless, Complete(Kv(2000) with { Sensored = false }).Kind);
        Assert.Equal(MotorKind.Brushed, Complete(Kv(2000)).Kind);
    }

    [Fact]
    public void A_brushed_heat_network_follows_from_the_mass()
    {
        var heat = Complete(
            Kv(2000) with
            {
                Kind = MotorKind.Brushed,
                MassKg = 0.2,
                CanDiameterM = 0.036,
                CanLengthM = 0.05,
            }
        ).Heat;
        Assert.Equal(0.35 * 0.2 * 420, heat.WindingJPerK, 1e-9);
        Assert.Equal(0.65 * 0.2 * 460, heat.CaseJPerK, 1e-9);
        Assert.Equal(0.12 * 0.2 * 385, heat.CopperJPerK, 1e-9);
        Assert.Equal(75 / 29.4, heat.WindingToCaseKPerW, 1e-9);
        // A = π·d·l + π·d²/2 = 0.0076906 m², h = 15.
        Assert.Equal(1 / (15 * 0.0076906), heat.CaseToAmbientKPerW, 1e-3);
        Assert.True(heat.SpinHeatInWinding);
        Assert.Equal(2.0, heat.LockedHeatFactor);
        Assert.Equal(
            (120, 200, -0.0020),
            (heat.WindingLimitC, heat.MagnetLimitC, heat.MagnetCoefficientPerK)
        );
    }

    [Fact]
    public void A_brushless_heat_network_follows_from_the_mass()
    {
        var heat = Complete(
            Kv(2000) with
            {
                Kind = MotorKind.Brushless,
                MassKg = 0.2,
                Insulation = InsulationClass.H,
            }
        ).Heat;
        Assert.Equal(0.20 * 0.2 * 385, heat.WindingJPerK, 1e-9);
        Assert.Equal(0.80 * 0.2 * 460, heat.CaseJPerK, 1e-9);
        Assert.Equal(heat.WindingJPerK, heat.CopperJPerK);
        Assert.Equal(20 / heat.WindingJPerK, heat.WindingToCaseKPerW, 1e-9);
        Assert.False(heat.SpinHeatInWinding);
        Assert.Equal(1.5, heat.LockedHeatFactor);
        Assert.Equal(
            (170, 120, -0.0011),
            (heat.WindingLimitC, heat.MagnetLimitC, heat.MagnetCoefficientPerK)
        );
    }

    [Theory]
    [InlineData(true, false, MotorMount.Plastic, 30, 0)]
    [InlineData(false, true, MotorMount.Plastic, 10.5, 0)]
    [InlineData(false, false, MotorMount.Metal, 15, 0.05)]
    public void Fan_seal_and_metal_mount_change_what_the_case_sheds(
        bool fan,
        bool closed,
        MotorMount mount,
        double film,
        double extra
    )
    {
        var heat = Complete(
            Kv(2000) with
            {
                CanDiameterM = 0.036,
                CanLengthM = 0.05,
                Fan = fan,
                Sealed = closed,
                Mount = mount,
            }
        ).Heat;
        Assert.Equal((film * 0.00769060) + extra, 1 / heat.CaseToAmbientKPerW, 1e-6);
    }

    [Fact]
    public void A_can_of_unsaid_size_has_the_assumed_density_and_shape()
    {
        var can = MotorCan.Complete(new() { MassKg = 0.2 }, new Ledger());
        Assert.Equal(0.2, 3500 * Math.PI / 4 * can.DiameterM * can.DiameterM * can.LengthM, 1e-12);
        Assert.Equal(1.4, can.LengthM / can.DiameterM, 1e-12);
        var back = MotorCan.Complete(
            new() { CanDiameterM = can.DiameterM, CanLengthM = can.LengthM },
            new Ledger()
        );
        Assert.Equal(0.2, back.MassKg, 1e-12);
    }

    [Fact]
    public void Inductance_is_filled_in_only_where_slow_switching_needs_it()
    {
        var label = Kv(1600) with { ResistanceOhm = 0.1 };
        Assert.True(double.IsNaN(Complete(label).InductanceH));
        Assert.Equal(
            0.7e-3 * 0.1,
            MotorDefaults.Complete(label, 7.4, true, new Ledger()).InductanceH,
            1e-12
        );
    }
}
