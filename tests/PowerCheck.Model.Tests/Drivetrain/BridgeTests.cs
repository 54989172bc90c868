using CsCheck;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>Diode, edges, ripple and an unsmoothed bus (M3), put back into Kirchhoff's laws.</summary>
public sealed class BridgeTests
{
    private static readonly Gen<(Source Source, AuxiliaryLoad Auxiliary, double Motors)> Circuits =
        from e in Gen.Double[7, 25]
        from r in Gen.Double[0.0005, 0.03]
        from a in Gen.Double[0, 2]
        from p in Gen.Double[0, 15]
        from n in Gen.Int[1, 2]
        select (new Source(e, r), new AuxiliaryLoad(a, p), (double)n);

    private static readonly Bridge[] Kinds =
    [
        default,
        new(0.8, 0.004, false),
        new(0, 0.01, false),
        new(0.8, 0.002, true),
        new(0, 0, true),
    ];

    private static readonly Gen<Bridge> Bridges = Gen.Int[0, Kinds.Length - 1]
        .Select(n => Kinds[n]);

    private static void Near(double expected, double found) =>
        Assert.Equal(expected, found, 1e-9 * Math.Max(1, Math.Abs(expected)));

    [Fact]
    public void A_held_duty_closes_every_loop_with_what_is_drawn_besides() =>
        Gen.Select(Circuits, Bridges, Gen.Double[0.1, 1], Gen.Double[0.05, 0.5], Gen.Double[0, 4])
            .Sample(
                (circuit, bridge, duty, loopOhm, besidesW) =>
                {
                    var (source, auxiliary, n) = circuit;
                    var lift = besidesW / 10;
                    var (bus, motorA) = Bus.AtDuty(
                        source,
                        auxiliary,
                        n,
                        duty,
                        loopOhm,
                        1,
                        bridge,
                        new(0, 0, 0, besidesW, lift)
                    );
                    if (motorA == 0 || bus.BusV < 1.05 * source.OpenCircuitV / 2)
                    {
                        return;
                    }

                    // On for the duty, through the diode for the rest.
                    Near(
                        (duty * bus.BusV) - ((1 - duty) * bridge.FreewheelV) - 1,
                        motorA * loopOhm
                    );
                    var others = auxiliary.CurrentA + (auxiliary.PowerW / bus.BusV);
                    Near(others, bus.AuxiliaryA);
                    // Smoothed, the pack carries the mean; unsmoothed, all of it while the bridge is on.
                    var besidesA = bridge.Unsmoothed ? duty * lift : besidesW / bus.BusV;
                    Near(others + (n * ((duty * motorA) + besidesA)), bus.BatteryA);
                    var carried = bridge.Unsmoothed ? others + (n * (motorA + lift)) : bus.BatteryA;
                    Near(source.OpenCircuitV - (source.ResistanceOhm * carried), bus.BusV);
                }
            );

    [Fact]
    public void Fully_on_nothing_switches()
    {
        var source = new Source(11, 0.01);
        var (plain, plainA) = Bus.AtDuty(source, new(0, 0), 1, 1, 0.1, 1);
        var (bus, motorA) = Bus.AtDuty(source, new(0, 0), 1, 1, 0.1, 1, new(0.8, 0.02, false));

        Assert.Equal((plain, plainA), (bus, motorA));
        Assert.True(bus.Reached && !bus.PowerExceeded);
        Assert.Equal(10 / 0.11, motorA, 1e-9);
        Assert.Equal(11 - (0.01 * motorA), bus.BusV, 1e-9);
    }

    [Fact]
    public void What_is_out_of_reach_is_fully_on_and_what_is_left_goes_elsewhere()
    {
        // 10.5 V needed at 100 A from 11 V behind 10 mΩ leave 10 V: 100 A are carried, and 1 A else.
        var bus = Bus.Feeding(new Source(11, 0.01), new(1, 0), 1, 100, 10.5);

        Assert.False(bus.Reached);
        Assert.Equal((1, 9.99), (bus.Duty, Math.Round(bus.BusV, 9)));
        Assert.Equal((101, 1), (Math.Round(bus.BatteryA, 9), Math.Round(bus.AuxiliaryA, 9)));
        Assert.False(bus.PowerExceeded);
        // 800 A would need more than the pack's greatest power of 11²/(4·0.01) = 3025 W.
        var much = Bus.Feeding(new Source(11, 0.01), new(0, 0), 1, 800, 10.5);
        Assert.True(much.PowerExceeded);
        Assert.Equal((5.5, 550), (Math.Round(much.BusV, 9), Math.Round(much.BatteryA, 9)));
        Assert.Equal(0, much.AuxiliaryA);
    }

    [Theory]
    [InlineData(double.NaN, 11, 0.01)]
    [InlineData(3, double.NaN, 0.01)]
    [InlineData(3, 11, double.NaN)]
    public void What_is_not_known_leaves_the_whole_bus_unknown(
        double neededV,
        double openV,
        double ohm
    )
    {
        var bus = Bus.Feeding(new Source(openV, ohm), new(1, 1), 1, 10, neededV);

        Assert.True(
            double.IsNaN(bus.BusV)
                && double.IsNaN(bus.Duty)
                && double.IsNaN(bus.BatteryA)
                && double.IsNaN(bus.AuxiliaryA)
        );
        Assert.False(bus.Reached || bus.PowerExceeded);
    }

    [Fact]
    public void A_resting_motor_takes_nothing()
    {
        var bus = Bus.Feeding(new Source(11, 0.01), new(2, 0), 1, 0, 3);

        Assert.Equal((0, 2, 10.98), (bus.Duty, bus.BatteryA, Math.Round(bus.BusV, 9)));
    }

    [Theory]
    [InlineData(Freewheel.Diode, 100e-9, 16_000, 0.8, 0.0008, false)]
    [InlineData(Freewheel.Synchronous, 0, 4000, 0, 0, false)]
    [InlineData(Freewheel.Synchronous, 50e-9, 3999, 0, 0.5 * 50e-9 * 3999, true)]
    public void A_bridge_is_what_the_controllers_box_says(
        Freewheel freewheel,
        double edgeS,
        double hertz,
        double diodeV,
        double edgeShare,
        bool unsmoothed
    )
    {
        var controller = Parts.Controller(
            new()
            {
                Freewheel = freewheel,
                EdgeTimeS = edgeS,
                PwmFrequencyHz = hertz,
            }
        );
        var bridge = Bridge.Of(controller);

        Assert.Equal((diodeV, unsmoothed), (bridge.FreewheelV, bridge.Unsmoothed));
        Assert.Equal(edgeShare, bridge.EdgeShare, 1e-15);
    }

    [Theory]
    // 20 A: diode 0.8 V for three quarters of the time, edges 0.01 of 10 V.
    [InlineData(0.25, 20 * ((0.8 * 0.75) + (0.01 * 10)))]
    [InlineData(1.0, 0)]
    [InlineData(0.0, 20 * 0.8)]
    public void A_bridge_loses_in_its_diode_while_off_and_at_its_edges_while_switching(
        double duty,
        double watts
    ) =>
        Assert.Equal(
            watts,
            new Bridge(0.8, 0.01, false).LossW(20, new(10, duty, 5, 0, true, false)),
            1e-9
        );

    [Theory]
    // A braking motor is shorted through the switches.
    [InlineData(0.8, -20, 10, 0.25)]
    // Nothing is lost by nothing, whatever the bus.
    [InlineData(0.8, 0, double.NaN, double.NaN)]
    [InlineData(0.8, 0, double.NaN, 0.5)]
    // Synchronous switches have no diode, whatever the duty.
    [InlineData(0, 20, double.NaN, double.NaN)]
    public void A_bridge_loses_nothing_where_no_current_passes_diode_or_edges(
        double diodeV,
        double motorA,
        double busV,
        double duty
    ) =>
        Assert.Equal(
            0,
            new Bridge(diodeV, 0.01, false).LossW(motorA, new(busV, duty, 5, 0, true, false))
        );
}
