using System.Collections.Frozen;

namespace PowerCheck.Model.Findings;

/// <summary>What to measure so that a doubtful limit is decided, and how with common tools (common practice, no source).</summary>
/// <param name="Path">The member that then gives it.</param>
/// <param name="How">How it is measured.</param>
public sealed record Measure(string Path, string How)
{
    /// <summary>Share of the variance from which on measuring an input is worth the while, assumed.</summary>
    private const double LeastShare = 0.1;

    private const string Scale = "Weigh it on a kitchen scale.";
    private const string Calliper = "Measure it with a calliper.";
    private const string Cooling =
        "Warm it up on the course, let it stand and read it with an infrared thermometer every half minute, and note the time in which its rise over the air falls to 37 %: ";
    private const string Resistance = Cooling + "that time over its heat capacity.";
    private const string Capacity = Cooling + "that time over its resistance to the air.";

    private const string Gauge =
        "Read the number printed on its insulation, or measure the bare strands, twisted tight, with a calliper and look the diameter up in a wire table.";
    private const string Servo =
        "Put a meter or a clamp into its supply lead and read the current; hold a servo's horn against the stop for a moment only.";

    private static readonly FrozenDictionary<string, string> Ways = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["motor.kvRpmPerVolt"] =
            "Run the bare motor at a known voltage and read its speed with an optical tachometer: speed over voltage, the voltage less resistance times no-load current.",
        ["motor.resistanceMilliohm"] =
            "Send a few amperes from a current-limited supply through the motor, shaft held, for a second or two and read the voltage at its terminals: voltage over current, the mean of several shaft positions. A meter's own ohm range is too coarse.",
        ["motor.noLoadPoints.0.voltageV"] =
            "Read the voltage at the motor with a meter while it runs bare.",
        ["motor.noLoadPoints.0.currentA"] =
            "Run the bare motor at a known voltage and read the current with a wattmeter or a clamp.",
        ["motor.noLoadStandstillShare"] =
            "Raise the current from a bench supply until the bare shaft just turns: that current over the no-load current.",
        ["motor.brushDropV"] =
            "Hold the shaft, read voltage and current at two small currents and extend the line to no current: the voltage that is left.",
        ["motor.inductanceMicrohenry"] = "Read it across the terminals with an LCR meter at 1 kHz.",
        ["motor.polePairs"] =
            "Count the magnets of the rotor, or the catches in one turn of the shaft with two leads joined: half of the magnets.",
        ["motor.massG"] = Scale,
        ["motor.canDiameterMm"] = Calliper,
        ["motor.canLengthMm"] = Calliper,
        ["motor.thermal.caseToAmbientKPerW"] = Resistance,
        ["motor.thermal.caseJPerK"] = Capacity,
        ["motor.thermal.windingToCaseKPerW"] =
            "Measure the winding's resistance right after a steady run, and the can with an infrared thermometer: copper gains 0.39 % a kelvin. What the winding is warmer than the can, over the heat in it.",
        ["motor.thermal.windingJPerK"] =
            "Hold the shaft, send a few amperes from a current-limited supply through the cold motor for five seconds, and measure the winding's resistance before and right after: copper gains 0.39 % a kelvin. The heat put in over the rise.",
        ["controller.onResistanceMilliohm"] =
            "At full throttle and a steady load read the voltage between pack and motor leads across the controller: voltage over current.",
        ["controller.pwmFrequencyHz"] =
            "Look it up among the controller's settings, or read it at a motor lead at half throttle with a meter that shows frequency.",
        ["controller.quiescentCurrentA"] =
            "Put a meter into the battery lead with the throttle at rest.",
        ["controller.thermalTimeConstantS"] =
            "Drive until its case is warm, stop, and read the case with an infrared thermometer every ten seconds: the time in which its rise falls to 37 %.",
        ["controller.cutoffVPerCell"] =
            "Look it up among the controller's settings, or read the pack's voltage the moment it cuts off.",
        ["controller.receiverSupply.voltageV"] =
            "Read the voltage at a free socket of the receiver with a meter.",
        ["battery.capacityMah"] =
            "Run the pack down to the cut-off, charge it full and read the charger's mAh.",
        ["battery.cellResistanceMilliohm"] =
            "Read each cell's internal resistance on the charger, the pack half charged and at 20 to 25 °C; take the mean.",
        ["battery.connectorMilliohm"] =
            "Read the voltage across the mated connector at a steady load: voltage over current.",
        ["battery.packToAmbientKPerW"] = Resistance,
        ["battery.massG"] = Scale,
        ["battery.temperatureC"] = "Read the pack with an infrared thermometer before the run.",
        ["vehicle.massKg"] = "Weigh it ready to run, pack and body on, on a kitchen scale.",
        ["vehicle.tireDiameterMm"] =
            "Roll the loaded rig through ten turns of a wheel beside a tape measure: the way over 31.4.",
        ["vehicle.loadedTireShare"] =
            "Roll the loaded rig through ten turns of a wheel beside a tape measure: the way over 31.4, over the printed diameter.",
        ["vehicle.drivetrain.overallRatio"] =
            "Mark a wheel and the motor shaft and count the motor's turns for ten turns of the wheel, both wheels of the axle turning.",
        ["vehicle.drivetrain.efficiency"] =
            "Hang a known mass on a thread from the tread of the only free wheel and read the motor current that just lifts it: torque at the wheel over torque at the motor times the ratio.",
        ["course.rollingResistanceCoefficient"] =
            "Take the pinion out of mesh and pull the rig over level ground with a luggage scale: pull over weight.",
        ["course.frictionCoefficient"] =
            "Lay the rig with locked wheels on a board of the course's surface and raise it until the rig slides: the tangent of that angle.",
        ["wiring.batteryLeadAwg"] = Gauge,
        ["wiring.motorLeadAwg"] = Gauge,
        ["wiring.batteryLeadMm"] = "Lay a tape measure along it.",
        ["wiring.motorLeadMm"] = "Lay a tape measure along it.",
        ["accessories.0.idleCurrentA"] = Servo,
        ["accessories.0.workingCurrentA"] = Servo,
        ["accessories.0.jammedCurrentA"] = Servo,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The input that decides the most of those that can be measured; null where none decides enough.</summary>
    /// <param name="decidedBy">What decides it, the largest share first.</param>
    public static Measure? Of(IReadOnlyList<Share> decidedBy)
    {
        foreach (var share in decidedBy)
        {
            if (share.Part >= LeastShare && Ways.TryGetValue(Place(share.Path), out var how))
            {
                return new(share.Path, how);
            }
        }

        return null;
    }

    // Of lists all are measured alike.
    private static string Place(string path) =>
        string.Join('.', path.Split('.').Select(step => step.All(char.IsAsciiDigit) ? "0" : step));
}
