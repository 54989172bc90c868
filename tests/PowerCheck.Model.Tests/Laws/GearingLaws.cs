using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>Taller gears and larger tires ask more of a motor at the same road speed.</summary>
[Trait("speed", "slow")]
public sealed class GearingLaws
{
    [Fact]
    public void Taller_gears_never_ask_less() =>
        Law.Holds(
            200,
            0.8,
            label =>
                Compared(
                    label,
                    times => Geared(label, SampleRig.Of(label).Vehicle.Gearing.LowestRatio / times)
                )
        );

    [Fact]
    public void Larger_tires_never_ask_less() =>
        Law.Holds(
            200,
            0.8,
            label =>
                Compared(
                    label,
                    times =>
                        label with
                        {
                            Vehicle = label.Vehicle with
                            {
                                TireDiameterM = label.Vehicle.TireDiameterM * times,
                            },
                        }
                )
        );

    [Fact]
    public void Gears_twice_as_tall_on_tires_half_as_large_change_nothing() =>
        Law.Holds(
            100,
            1,
            label =>
            {
                var small = Geared(
                    label with
                    {
                        Vehicle = label.Vehicle with
                        {
                            TireDiameterM = label.Vehicle.TireDiameterM / 2,
                        },
                    },
                    SampleRig.Of(label).Vehicle.Gearing.LowestRatio / 2
                );
                var (a, b) = (SampleRig.Inspect(label), SampleRig.Inspect(small));
                return string.Concat(
                        a.Cases.All.Zip(b.Cases.All)
                            .Select(pair =>
                                Law.Same(
                                    $"{pair.First.Name} current",
                                    pair.First.MotorCurrentA,
                                    pair.Second.MotorCurrentA
                                )
                            )
                    )
                    + Law.Same("reserve", a.Drivetrain.TorqueReserve, b.Drivetrain.TorqueReserve)
                    + Law.Same(
                        "winding",
                        a.Result.Temperatures.MotorWinding.PeakC,
                        b.Result.Temperatures.MotorWinding.PeakC
                    );
            }
        );

    private static RigLabel Geared(RigLabel label, double ratio) =>
        label with
        {
            Vehicle = label.Vehicle with
            {
                Drivetrain = new()
                {
                    OverallRatio = ratio,
                    Efficiency = label.Vehicle.Drivetrain.Efficiency,
                },
            },
        };

    private static string? Compared(RigLabel label, Func<double, RigLabel> taller)
    {
        var low = SampleRig.Inspect(label);
        var parts = new[] { 1.001, 1.2, 2 }
            .Select(times => Harder(low, SampleRig.Inspect(taller(times))))
            .ToArray();
        return parts.All(said => said is null) ? null : string.Concat(parts);
    }

    // A motor that spins slower has less friction. Work grows with 1/G, friction's share of the current with G: a taller gear
    // asks for less where friction weighs more. So the law is for climbs in which, already in the lower gear, the heat of the
    // torque's current outweighs what spinning takes.
    private static string? Harder(Inspection low, Inspection tall)
    {
        if (!WorkOutweighsFriction(low.Rig, LoadCaseName.Climb))
        {
            return null;
        }

        var said = "";
        foreach (var name in new[] { LoadCaseName.Climb, LoadCaseName.Slip })
        {
            var (before, after) = (low.Cases[name], tall.Cases[name]);
            said +=
                Law.NoLess($"{name} current", before.MotorCurrentA, after.MotorCurrentA)
                + Law.NoMore($"{name} speed", before.MotorSpeedRadPerS, after.MotorSpeedRadPerS);
            if (!low.Rig.Ripples)
            {
                said += Law.NoLess($"{name} motor heat", before.MotorHeatW, after.MotorHeatW);
            }
        }

        var hold = (low.Cases[LoadCaseName.Hold], tall.Cases[LoadCaseName.Hold]);
        said += Law.NoLess("hold current", hold.Item1.MotorCurrentA, hold.Item2.MotorCurrentA);
        if (HasSpeedToSpare(low.Rig))
        {
            said += Law.NoMore(
                "torque reserve",
                low.Drivetrain.TorqueReserve,
                tall.Drivetrain.TorqueReserve
            );
        }

        return !low.Rig.Ripples
            ? said
                + Warmth.NoCooler(
                    "winding",
                    low.Result.Temperatures.MotorWinding with
                    {
                        PeakC = 0,
                    },
                    tall.Result.Temperatures.MotorWinding with
                    {
                        PeakC = 0,
                    },
                    [LoadCaseName.Climb, LoadCaseName.Slip]
                )
            : said;
    }

    // d/dG of i²·R + kt·i0(ω)·ω, with i = q/kt + i0(ω), q ~ 1/G and ω ~ G, is not above 0.
    private static bool WorkOutweighsFriction(Rig rig, LoadCaseName name)
    {
        var load = CaseRunner.Run(rig)[name];
        var motor = rig.Motor;
        var speed = load.MotorSpeedRadPerS;
        var rising = motor.NoLoad.SlopeAPerRadPerS * speed;
        var torqueA = load.MotorCurrentA - motor.NoLoad.CurrentAt(speed);
        var copper = 2 * load.MotorCurrentA * motor.ResistanceOhm * (torqueA - rising);
        return copper
            >= motor.TorqueConstantNmPerA * speed * (motor.NoLoad.CurrentAt(speed) + rising);
    }

    // G times the current left at creep speed grows with G as long as that current is more than half of a standing motor's.
    private static bool HasSpeedToSpare(Rig rig)
    {
        var source = rig.SourceAt(rig.Battery.ReserveShare, true);
        var standing = OperatingPoint.AtDuty(rig, source, 1, 0, rig.Motor.Heat.WindingLimitC);
        return rig.Motor.NoLoad.CurrentAt(0) < 0.1 * standing.MotorA
            && TorqueReserve.Of(rig, rig.Vehicle.Gearing.LowestRatio).CurrentA
                > 0.7 * standing.MotorA;
    }
}
