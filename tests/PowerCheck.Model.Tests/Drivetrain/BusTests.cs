using CsCheck;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>The averaged bridge on a source with resistance (M3), put back into Kirchhoff's laws.</summary>
public sealed class BusTests
{
    private static readonly Gen<(Source Source, AuxiliaryLoad Auxiliary, double Motors)> Circuits =
        from e in Gen.Double[4, 25]
        from r in Gen.Double[0.0005, 0.1]
        from a in Gen.Double[0, 2]
        from p in Gen.Double[0, 15]
        from n in Gen.Int[1, 2]
        select (new Source(e, r), new AuxiliaryLoad(a, p), (double)n);

    [Fact]
    public void A_fed_current_closes_every_loop() =>
        Gen.Select(Circuits, Gen.Double[0.1, 60], Gen.Double[0.05, 25])
            .Sample(
                (circuit, motorA, neededV) =>
                {
                    var (source, auxiliary, n) = circuit;
                    var bus = Bus.Feeding(source, auxiliary, n, motorA, neededV);
                    if (!bus.Reached)
                    {
                        return;
                    }

                    Near(source.OpenCircuitV - (source.ResistanceOhm * bus.BatteryA), bus.BusV);
                    Near(neededV, bus.Duty * bus.BusV);
                    Near(
                        auxiliary.CurrentA
                            + (auxiliary.PowerW / bus.BusV)
                            + (n * bus.Duty * motorA),
                        bus.BatteryA
                    );
                    Assert.InRange(bus.Duty, 0, 1 + 1e-12);
                }
            );

    [Fact]
    public void What_is_not_reached_could_not_be_reached_at_any_duty() =>
        Gen.Select(Circuits, Gen.Double[0.1, 60], Gen.Double[0.05, 25])
            .Sample(
                (circuit, motorA, neededV) =>
                {
                    var (source, auxiliary, n) = circuit;
                    var bus = Bus.Feeding(source, auxiliary, n, motorA, neededV);
                    if (bus.Reached)
                    {
                        return;
                    }

                    Assert.All(
                        Enumerable.Range(1, 500),
                        step =>
                        {
                            var duty = step / 500.0;
                            var left =
                                source.OpenCircuitV
                                - (
                                    source.ResistanceOhm
                                    * (auxiliary.CurrentA + (n * duty * motorA))
                                );
                            var root =
                                (left * left) - (4 * source.ResistanceOhm * auxiliary.PowerW);
                            Assert.False(
                                left > 0
                                    && root > 0
                                    && duty * (left + Math.Sqrt(root)) / 2 > neededV * (1 + 1e-9)
                            );
                        }
                    );
                    // The bridge fully on, and the pack still obeys its own law.
                    Assert.Equal(1, bus.Duty);
                    Assert.Equal(
                        source.OpenCircuitV - (source.ResistanceOhm * bus.BatteryA),
                        bus.BusV,
                        1e-9
                    );
                }
            );

    [Fact]
    public void A_held_duty_closes_every_loop() =>
        Gen.Select(Circuits, Gen.Double[0.02, 1], Gen.Double[0.01, 0.5], Gen.Double[0, 6])
            .Sample(
                (circuit, duty, loopOhm, counterV) =>
                {
                    var (source, auxiliary, n) = circuit;
                    var (bus, motorA) = Bus.AtDuty(source, auxiliary, n, duty, loopOhm, counterV);
                    // Only where the counter voltage is overcome and the pack carries the rest at all.
                    if (motorA == 0 || bus.BusV < 1.01 * source.OpenCircuitV / 2)
                    {
                        return;
                    }

                    Near(((duty * bus.BusV) - counterV) / loopOhm, motorA);
                    Near(
                        auxiliary.CurrentA + (auxiliary.PowerW / bus.BusV) + (n * duty * motorA),
                        bus.BatteryA
                    );
                    Near(source.OpenCircuitV - (source.ResistanceOhm * bus.BatteryA), bus.BusV);
                }
            );

    [Fact]
    public void Feeding_the_current_of_a_duty_finds_the_duty_again() =>
        Gen.Select(Gen.Double[6, 25], Gen.Double[0, 0.05], Gen.Double[0.02, 1])
            .Sample(
                (e, r, duty) =>
                {
                    var source = new Source(e, r);
                    var (bus, motorA) = Bus.AtDuty(source, new(0.1, 3), 1, duty, 0.06, 0);
                    var fed = Bus.Feeding(source, new(0.1, 3), 1, motorA, motorA * 0.06);
                    Near(bus.BusV, fed.BusV);
                    Near(duty, fed.Duty);
                }
            );

    [Fact]
    public void Without_source_resistance_the_bus_does_not_sag()
    {
        var bus = Bus.Feeding(new(11.1, 0), new(0.2, 5), 2, 40, 4);
        Assert.Equal(11.1, bus.BusV);
        Assert.Equal(0.2 + (5 / 11.1) + (2 * 40 * 4 / 11.1), bus.BatteryA, 1e-12);
    }

    [Fact]
    public void Battery_current_is_never_more_than_what_the_motors_carry()
    {
        var bus = Bus.Feeding(new(11.1, 0.02), Parts.Nothing, 1, 40, 2);
        Assert.True(bus.BatteryA < 40 * 0.25);
    }

    [Fact]
    public void A_braking_motor_takes_nothing_from_the_battery()
    {
        var auxiliary = new AuxiliaryLoad(0.1, 0);
        var braking = Bus.Feeding(new(11.1, 0.02), auxiliary, 1, -5, 3);
        Assert.Equal((0, 0.1), (braking.Duty, braking.BatteryA));
        Assert.Equal(braking, Bus.Feeding(new(11.1, 0.02), auxiliary, 1, 5, -0.5));
    }

    [Fact]
    public void A_counter_voltage_above_the_bus_drives_no_current() =>
        Assert.Equal(0, Bus.AtDuty(new(8, 0.02), Parts.Nothing, 1, 0.5, 0.05, 4.5).MotorA);

    [Fact]
    public void More_than_the_source_can_deliver_is_said()
    {
        var bus = Bus.Feeding(new(12.6, 0.1), Parts.Nothing, 1, 60, 9);
        // E²/(4·Rs) = 396.9 W against 540 W.
        Assert.Equal((false, true), (bus.Reached, bus.PowerExceeded));
    }

    [Fact]
    public void What_is_not_known_stays_not_known()
    {
        var bus = Bus.Feeding(new(11.1, 0.02), Parts.Nothing, 1, 10, double.NaN);
        Assert.True(double.IsNaN(bus.BusV) && double.IsNaN(bus.BatteryA) && !bus.Reached);
        Assert.True(double.IsNaN(Bus.Feeding(new(double.NaN, 0.02), Parts.Nothing, 1, 10, 3).BusV));
        Assert.True(double.IsNaN(Bus.Feeding(new(11.1, double.NaN), Parts.Nothing, 1, 10, 3).BusV));
    }

    private static void Near(double expected, double actual) =>
        Assert.True(
            Math.Abs(expected - actual) <= 1e-9 * (1 + Math.Abs(expected)),
            $"{expected:R} against {actual:R}"
        );
}
