using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>What makes a rig's work harder never makes it easier: weight and slope.</summary>
[Trait("speed", "slow")]
public sealed class LoadLaws
{
    [Fact]
    public void A_heavier_rig_never_needs_less_or_can_do_more() =>
        Law.Holds(
            150,
            1,
            label =>
                string.Concat(
                    new[] { 1.001, 1.3, 3 }.Select(times =>
                    {
                        var heavy = label with
                        {
                            Vehicle = label.Vehicle with { MassKg = label.Vehicle.MassKg * times },
                        };
                        return Harder(
                            label,
                            heavy,
                            [
                                LoadCaseName.Level,
                                LoadCaseName.Climb,
                                LoadCaseName.Hold,
                                LoadCaseName.Slip,
                            ]
                        );
                    })
                )
        );

    [Fact]
    public void A_steeper_slope_never_needs_less_or_leaves_more() =>
        Law.Holds(
            150,
            1,
            label =>
            {
                RigLabel At(double slope) =>
                    label with
                    {
                        Course = label.Course with { ClimbSlopeRad = slope },
                    };
                // Force sin θ + Crr·cos θ grows up to 90° − atan Crr; where tires let go it stays.
                return string.Concat(
                    new[] { (0, 0.2), (0.5, 0.502), (0.6, 0.9), (0.7, 1.5) }.Select(slopes =>
                        Harder(
                            At(slopes.Item1),
                            At(slopes.Item2),
                            [LoadCaseName.Climb, LoadCaseName.Hold]
                        )
                    )
                );
            }
        );

    private static string Harder(RigLabel easy, RigLabel hard, LoadCaseName[] names)
    {
        var (a, b) = (SampleRig.Inspect(easy), SampleRig.Inspect(hard));
        // What a rig does that nothing holds is not computed.
        names =
            a.Rig.Controller.Hold == HoldMode.None
                ? [.. names.Where(n => n != LoadCaseName.Hold)]
                : names;
        var said =
            Law.NoMore("torque reserve", a.Drivetrain.TorqueReserve, b.Drivetrain.TorqueReserve)
            + Law.NoMore("top speed", a.Drivetrain.TopSpeedMPerS, b.Drivetrain.TopSpeedMPerS);
        foreach (var name in names)
        {
            var (before, after) = (a.Cases[name], b.Cases[name]);
            said +=
                Law.NoLess($"{name} current", before.MotorCurrentA, after.MotorCurrentA)
                + Law.NoLess($"{name} wheel torque", before.WheelTorqueNm, after.WheelTorqueNm)
                + Law.NoLess($"{name} duty", before.DutyRatio, after.DutyRatio);
        }

        // Ripple is greatest at half duty: with it, more duty can mean less heat and less battery current.
        if (a.Rig.Ripples)
        {
            return said;
        }

        foreach (var name in names)
        {
            var (before, after) = (a.Cases[name], b.Cases[name]);
            said +=
                Law.NoLess($"{name} battery current", before.BatteryCurrentA, after.BatteryCurrentA)
                + Law.NoMore($"{name} bus", before.BusVoltageV, after.BusVoltageV)
                + Law.NoLess($"{name} motor heat", before.MotorHeatW, after.MotorHeatW)
                + Law.NoLess($"{name} pack heat", before.BatteryHeatW, after.BatteryHeatW);
        }

        return said
            + Warmth.NoCooler(a, b, names)
            + Law.NoMore("run time", a.Result.Endurance.RunTimeS, b.Result.Endurance.RunTimeS);
    }
}
