using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>What cells and resistances do to a stall, to the torque in reserve and to the top speed.</summary>
public sealed class ResistanceLaws
{
    public static TheoryData<string> Places =>
        ["winding", "leads", "cells", "connector", "switches"];

    [Fact]
    public void More_of_the_same_cells_never_lower_the_prospective_stall_current() =>
        Law.Holds(
            400,
            1,
            label =>
            {
                var pack = label.Battery;
                var cell = SampleRig.Of(label).Battery.CellResistanceOhm;
                var few = label with { Battery = pack with { CellResistanceOhm = cell } };
                var more = few with
                {
                    Battery = few.Battery with { SeriesCells = pack.SeriesCells + 1 },
                };
                return Law.NoLess("stall current", Stall(few), Stall(more));
            }
        );

    [Theory]
    [MemberData(nameof(Places))]
    public void Added_resistance_never_raises_stall_current_reserve_or_top_speed(string place) =>
        Law.Holds(
            200,
            0.8,
            label =>
            {
                var rig = SampleRig.Of(label);
                if (!CarriesAccessories(rig))
                {
                    return null;
                }

                return string.Concat(
                    new[] { 0.0001, 0.01, 1.0 }.Select(ohm =>
                    {
                        var more = With(rig, place, ohm);
                        return Law.NoMore("stall current", Stall(rig), Stall(more))
                            + Law.NoMore("torque reserve", Reserve(rig), Reserve(more))
                            + Law.NoMore("top speed", Top(rig), Top(more));
                    })
                );
            }
        );

    // Accessories that draw constant power take the more current the lower the bus. On a pack that they nearly break down
    // alone, a motor that takes less lifts the bus so much that more is left for it: from V = √(Rs·P) on downward.
    internal static bool CarriesAccessories(Rig rig)
    {
        var source = rig.SourceAt(rig.Battery.ReserveShare, true);
        var stall = OperatingPoint.AtDuty(rig, source, 1, 0);
        var busV = stall.Bus.BusV;
        return stall.MotorA > 0 && busV * busV > source.ResistanceOhm * rig.Auxiliary.PowerW;
    }

    private static Rig With(Rig rig, string place, double ohm) =>
        place switch
        {
            "winding" => rig with
            {
                Motor = rig.Motor with { ResistanceOhm = rig.Motor.ResistanceOhm + ohm },
            },
            "leads" => rig with
            {
                Leads = rig.Leads with
                {
                    BatteryLeadM = rig.Leads.BatteryLeadM * (1 + (100 * ohm)),
                    MotorLeadM = rig.Leads.MotorLeadM * (1 + (100 * ohm)),
                },
            },
            "cells" => rig with
            {
                Battery = rig.Battery with
                {
                    CellResistanceOhm = rig.Battery.CellResistanceOhm + ohm,
                },
            },
            "connector" => rig with
            {
                Battery = rig.Battery with { ConnectorOhm = rig.Battery.ConnectorOhm + ohm },
            },
            _ => rig with
            {
                Controller = rig.Controller with
                {
                    OnResistanceOhm = rig.Controller.OnResistanceOhm + ohm,
                },
            },
        };

    private static double Stall(RigLabel label) => Stall(SampleRig.Of(label));

    private static double Stall(Rig rig) => LockedCases.Stall(rig).ProspectiveCurrentA;

    private static double Reserve(Rig rig) =>
        TorqueReserve.Of(rig, rig.Vehicle.Gearing.LowestRatio).Ratio;

    private static double Top(Rig rig) => DrivetrainRunner.Run(rig).TopSpeedMPerS;
}
