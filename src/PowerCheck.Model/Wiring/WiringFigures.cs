using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Wiring.WiringLabel>;

namespace PowerCheck.Model.Wiring;

/// <summary>Every measured or printed figure of leads, connector and fuse (M10, M12).</summary>
public static class WiringFigures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyList<LabelFigure<WiringLabel>> All => Leads;

    private static readonly Figure[] Leads =
    [
        new(
            "wiring.batteryLeadAwg",
            Unit.Awg,
            wiring => wiring.BatteryLeadAwg,
            (wiring, value) => wiring with { BatteryLeadAwg = value },
            Spread.None,
            0,
            40
        ),
        new(
            "wiring.batteryLeadMm",
            Unit.Millimetre,
            wiring => wiring.BatteryLeadM,
            (wiring, value) => wiring with { BatteryLeadM = value },
            LabelSpreads.Held
        ),
        new(
            "wiring.motorLeadAwg",
            Unit.Awg,
            wiring => wiring.MotorLeadAwg,
            (wiring, value) => wiring with { MotorLeadAwg = value },
            Spread.None,
            0,
            40
        ),
        new(
            "wiring.motorLeadMm",
            Unit.Millimetre,
            wiring => wiring.MotorLeadM,
            (wiring, value) => wiring with { MotorLeadM = value },
            LabelSpreads.Held
        ),
        new(
            "wiring.insulationC",
            Unit.Celsius,
            wiring => wiring.InsulationC,
            (wiring, value) => wiring with { InsulationC = value },
            Spread.None
        ),
        new(
            "wiring.connectorContinuousA",
            Unit.Ampere,
            wiring => wiring.ConnectorContinuousA,
            (wiring, value) => wiring with { ConnectorContinuousA = value },
            LabelSpreads.Ampere
        ),
        new(
            "wiring.fuseA",
            Unit.Ampere,
            wiring => wiring.FuseA,
            (wiring, value) => wiring with { FuseA = value },
            Spread.None
        ),
    ];
}
