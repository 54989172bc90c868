using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>A warmer day never cools anything, and leaves a pack of the same temperature no stronger.</summary>
[Trait("speed", "slow")]
public sealed class WeatherLaws
{
    private static readonly LoadCaseName[] Turning =
    [
        LoadCaseName.Level,
        LoadCaseName.Climb,
        LoadCaseName.Hold,
        LoadCaseName.Slip,
    ];

    [Fact]
    public void A_warmer_day_never_cools_a_motor_or_a_controller() =>
        Law.Holds(
            150,
            1,
            label =>
            {
                var cool = SampleRig.Inspect(At(label, 15));
                return string.Concat(
                    new[] { 15.01, 25.0, 40.0 }.Select(ambient =>
                    {
                        var warm = SampleRig.Inspect(At(label, ambient));
                        return Warmth.NoCooler(cool, warm, Turning) + Controller(cool, warm);
                    })
                );
            }
        );

    [Fact]
    public void A_warmer_day_at_the_same_packs_temperature_leaves_no_more() =>
        Law.Holds(
            150,
            0.8,
            label =>
            {
                var pack = label with { Battery = label.Battery with { TemperatureC = 20 } };
                var (cool, warm) = (
                    SampleRig.Inspect(At(pack, 15)),
                    SampleRig.Inspect(At(pack, 40))
                );
                if (!ResistanceLaws.CarriesAccessories(cool.Rig))
                {
                    return null;
                }

                return Law.NoMore(
                        "torque reserve",
                        cool.Drivetrain.TorqueReserve,
                        warm.Drivetrain.TorqueReserve
                    )
                    + Law.NoMore(
                        "top speed",
                        cool.Drivetrain.TopSpeedMPerS,
                        warm.Drivetrain.TopSpeedMPerS
                    )
                    + Climb(cool, warm);
            }
        );

    [Fact]
    public void A_warmer_day_never_has_leads_carry_more() =>
        Law.Holds(
            150,
            1,
            label =>
            {
                var (cool, warm) = (SampleRig.Of(At(label, 15)), SampleRig.Of(At(label, 40)));
                return Law.NoLess("leads", cool.Leads.BatteryOhm, warm.Leads.BatteryOhm)
                    + Law.NoMore(
                        "lasting current",
                        SampleRig.Inspect(At(label, 15)).Wiring.BatteryLeadLimitA,
                        SampleRig.Inspect(At(label, 40)).Wiring.BatteryLeadLimitA
                    );
            }
        );

    // A warmer winding asks for more duty: that leaves a freewheel diode less time, and ripple above a half less height.
    private static string Controller(Inspection cool, Inspection warm)
    {
        var controller = cool.Rig.Controller;
        return controller.Freewheel == Freewheel.Synchronous && !cool.Rig.Ripples
            ? Law.NoLess(
                "controller",
                cool.Result.Temperatures.Controller.PeakC,
                warm.Result.Temperatures.Controller.PeakC
            )
            : "";
    }

    // Where the climb is out of reach, the pack gives what it can, and more resistance leaves less; ripple falls with the bus.
    private static string Climb(Inspection cool, Inspection warm)
    {
        var (before, after) = (cool.Cases[LoadCaseName.Climb], warm.Cases[LoadCaseName.Climb]);
        return after.DutyRatio < 1 && !cool.Rig.Ripples
            ? Law.NoLess("climb's battery current", before.BatteryCurrentA, after.BatteryCurrentA)
            : "";
    }

    private static RigLabel At(RigLabel label, double ambientC) =>
        label with
        {
            Course = label.Course with { AmbientC = ambientC },
        };
}
