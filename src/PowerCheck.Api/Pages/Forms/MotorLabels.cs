namespace PowerCheck.Api.Pages.Forms;

/// <summary>Names of the fields of the motor.</summary>
internal static class MotorLabels
{
    public static readonly IReadOnlyDictionary<string, Label> All = new Dictionary<string, Label>(
        StringComparer.Ordinal
    )
    {
        ["motor.name"] = new("Name of the motor", "For you; not used."),
        ["motor.kind"] = new("Kind of motor"),
        ["motor.sensored"] = new("Has it a sensor cable?"),
        ["motor.rotor"] = new("Rotor", "Inside the can, or the can itself turns."),
        ["motor.magnet"] = new("Magnets"),
        ["motor.kvRpmPerVolt"] = new("Kv", "Speed per volt, without load."),
        ["motor.turns"] = new("Turns", "As printed on brushed motors, such as 35T."),
        ["motor.slots"] = new("Slots of the armature", "3 and 5 tell Kv from the turns."),
        ["motor.resistanceMilliohm"] = new(
            "Winding resistance",
            "Terminal to terminal, of the motor alone."
        ),
        ["motor.resistanceTemperatureC"] = new("Winding temperature when measured"),
        ["motor.noLoadPoints"] = new(
            "Current without load",
            "Motor out of the rig, spinning freely."
        ),
        ["motor.noLoadPoints.0.voltageV"] = new("At a voltage of"),
        ["motor.noLoadPoints.0.currentA"] = new("it draws"),
        ["motor.noLoadStandstillShare"] = new("No-load current left at standstill", "A share."),
        ["motor.brushDropV"] = new("Voltage lost in the brushes", "Both together."),
        ["motor.inductanceMicrohenry"] = new("Inductance"),
        ["motor.polePairs"] = new("Pole pairs of the rotor"),
        ["motor.massG"] = new("Mass of the motor"),
        ["motor.canDiameterMm"] = new("Can, diameter"),
        ["motor.canLengthMm"] = new("Can, length", "Without the shaft."),
        ["motor.shaftDiameterMm"] = new("Shaft, diameter", "Not used yet."),
        ["motor.maxVoltageV"] = new("Highest voltage printed"),
        ["motor.maxSpeedRpm"] = new("Highest speed printed"),
        ["motor.continuousCurrentA"] = new("Lasting motor current printed"),
        ["motor.burstCurrentA"] = new("Burst motor current printed"),
        ["motor.burstSeconds"] = new("Burst lasts"),
        ["motor.insulationClass"] = new("Insulation class of the winding"),
        ["motor.hotSpotAllowanceK"] = new("Hottest spot over the mean"),
        ["motor.magnetMaxC"] = new("What the magnets stand"),
        ["motor.magnetCoefficientPerK"] = new(
            "Magnet strength lost with heat",
            "Share per kelvin, below zero."
        ),
        ["motor.mount"] = new("Bolted to", "Metal takes heat away."),
        ["motor.fan"] = new("Does a fan blow over it?"),
        ["motor.sealed"] = new("Is it sealed in?"),
        ["motor.lockedHeatFactor"] = new("Uneven heat when locked", "A factor."),
        ["motor.thermal"] = new("Measured heat figures of the motor"),
        ["motor.thermal.windingToCaseKPerW"] = new("Heat path, winding to case"),
        ["motor.thermal.caseToAmbientKPerW"] = new("Heat path, case to air"),
        ["motor.thermal.windingJPerK"] = new("Heat the winding takes"),
        ["motor.thermal.caseJPerK"] = new("Heat the case takes"),
        ["motor.thermal.copperJPerK"] = new("Heat the copper takes"),
    };
}
