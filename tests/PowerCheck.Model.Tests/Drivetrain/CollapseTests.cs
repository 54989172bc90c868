using CsCheck;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>A pack gives no more than its short-circuit current, whatever is asked of it (M3).</summary>
public sealed class CollapseTests
{
    [Fact]
    public void Battery_current_never_passes_the_short_circuit_current() =>
        Gen.Select(Gen.Double[4, 20], Gen.Double[0.01, 1], Gen.Double[0, 20], Gen.Double[0.02, 0.3])
            .Sample(
                (e, r, powerW, loopOhm) =>
                {
                    var (bus, _) = Bus.AtDuty(new(e, r), new(0.1, powerW), 1, 1, loopOhm, 0);
                    Assert.True(bus.BatteryA <= e / r, $"{bus.BatteryA} A of {e / r} A");
                }
            );

    [Fact]
    public void A_motor_wedged_beside_a_receiver_that_asks_for_too_much_sees_half_of_what_is_left()
    {
        var sample = SampleRig.Of(SampleRig.Brushed with { Accessories = [] });
        Rig Limited(double ampere) =>
            sample with
            {
                ReceiverSupply = sample.ReceiverSupply with { FromReceiver = new(40, 40, 40) },
                Battery = sample.Battery with { CellResistanceOhm = 0.05 },
                Controller = sample.Controller with { CurrentLimitA = ampere },
            };
        var rig = Limited(double.NaN);
        var source = rig.SourceAt(1, false);
        Assert.True(rig.Auxiliary.PowerW > source.MaxPowerW);
        // Of E − Rs·I − Rs·(V − 0.3 V)/R the receiver takes the most power at half of the voltage without it.
        var loop = 0.09 + rig.LoopOhm;
        var steadyV = source.OpenCircuitV - (source.ResistanceOhm * rig.Auxiliary.CurrentA);
        var share = source.ResistanceOhm / loop;
        var busV = (steadyV + (share * 0.3)) / (1 + share) / 2;
        var stall = LockedCases.Stall(rig);

        LoadCase[] cases =
        [
            stall,
            LockedCases.Stall(Limited(stall.MotorCurrentA)),
            LockedCases.Jam(rig, 1000),
        ];
        Assert.All(
            cases,
            load =>
            {
                Assert.Equal(busV, load.BusVoltageV, 1e-9);
                Assert.Equal((busV - 0.3) / loop, load.MotorCurrentA, 1e-9);
                Assert.Equal(
                    (source.OpenCircuitV - busV) / source.ResistanceOhm,
                    load.BatteryCurrentA,
                    1e-9
                );
            }
        );
    }
}
