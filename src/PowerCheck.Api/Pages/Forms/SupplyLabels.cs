namespace PowerCheck.Api.Pages.Forms;

/// <summary>Names of the fields of controller and pack.</summary>
internal static class SupplyLabels
{
    public static readonly IReadOnlyDictionary<string, Label> All = new Dictionary<string, Label>(
        StringComparer.Ordinal
    )
    {
        ["controller.name"] = new("Name of the controller", "For you; not used."),
        ["controller.motorKinds"] = new("Drives motors that are"),
        ["controller.sensorInput"] = new("Does it read a sensor cable?"),
        ["controller.cellLimits"] = new(
            "Cells allowed, by chemistry",
            "In place of fewest and most lithium cells."
        ),
        ["controller.cellLimits.0.chemistry"] = new("Chemistry"),
        ["controller.cellLimits.0.minCells"] = new("Fewest"),
        ["controller.cellLimits.0.maxCells"] = new("Most"),
        ["controller.minCells"] = new("Fewest lithium cells"),
        ["controller.maxCells"] = new("Most lithium cells", "2S to 3S printed: 3."),
        ["controller.minVoltageV"] = new("Lowest supply voltage"),
        ["controller.maxVoltageV"] = new("Highest supply voltage"),
        ["controller.continuousCurrentA"] = new(
            "Lasting current printed",
            "Motor current, as labels have it."
        ),
        ["controller.burstCurrentA"] = new("Burst current printed"),
        ["controller.burstSeconds"] = new("Burst lasts"),
        ["controller.currentLimitA"] = new("Limits itself to", "Motor current."),
        ["controller.onResistanceMilliohm"] = new("Resistance of its switches"),
        ["controller.hotResistanceFactor"] = new("… times, when hot"),
        ["controller.freewheel"] = new(
            "Current while switched off",
            "Through a switch or a diode."
        ),
        ["controller.pwmFrequencyHz"] = new("Switching frequency"),
        ["controller.edgeTimeNs"] = new("Switching edges", "Rise and fall together."),
        ["controller.holdMode"] = new("At neutral on a slope"),
        ["controller.lowSpeedStart"] = new("Crawls a sensorless motor under control?"),
        ["controller.lowSpeedBackEmfV"] = new("Loses a sensorless motor under"),
        ["controller.maxElectricalSpeedRpm"] = new(
            "Highest electrical speed",
            "Motor speed times pole pairs."
        ),
        ["controller.vehicleMassLimitKg"] = new("Vehicle class printed, up to"),
        ["controller.minTurns"] = new("Fewest motor turns allowed"),
        ["controller.minTurns.0.cells"] = new("On so many cells"),
        ["controller.minTurns.0.turns"] = new("at least"),
        ["controller.cutoffVPerCell"] = new("Cut-off voltage", "Volts a cell under load."),
        ["controller.maxTemperatureC"] = new("What the controller stands"),
        ["controller.thermalTimeConstantS"] = new("How slowly it warms"),
        ["controller.standstillRatingShare"] = new("Rating left at standstill", "A share."),
        ["controller.quiescentCurrentA"] = new("Current it draws itself"),
        ["controller.receiverSupply"] = new("Its supply for receiver and servos"),
        ["controller.receiverSupply.regulator"] = new("Kind of supply for the servos"),
        ["controller.receiverSupply.voltageV"] = new("Voltage for receiver and servos"),
        ["controller.receiverSupply.continuousCurrentA"] = new("Servo supply, lasting current"),
        ["controller.receiverSupply.peakCurrentA"] = new("Servo supply, peak current"),
        ["controller.receiverSupply.dropoutV"] = new("Servo supply needs above its output"),
        ["controller.receiverSupply.maxHeatW"] = new("Heat a linear one sheds"),
        ["controller.receiverSupply.efficiency"] = new("Efficiency of a switching one", "A share."),
        ["controller.receiverSupply.receiverResetV"] = new("Receiver resets under"),
        ["battery.name"] = new("Name of the pack", "For you; not used."),
        ["battery.chemistry"] = new("Chemistry"),
        ["battery.seriesCells"] = new("Cells in series", "The S number: 3S is 3."),
        ["battery.parallelCells"] = new("Cells in parallel", "The P number."),
        ["battery.capacityMah"] = new("Capacity"),
        ["battery.continuousC"] = new("Lasting C rate printed"),
        ["battery.burstC"] = new("Burst C rate printed"),
        ["battery.burstSeconds"] = new("Burst lasts"),
        ["battery.cellResistanceMilliohm"] = new("Resistance of a cell", "As a charger shows it."),
        ["battery.connectorMilliohm"] = new("Resistance of the connector"),
        ["battery.condition"] = new("State of wear"),
        ["battery.temperatureC"] = new("Pack temperature at the start"),
        ["battery.massG"] = new("Mass of the pack"),
        ["battery.lastingResistanceFactor"] = new("Resistance under lasting load", "A factor."),
        ["battery.resistanceTemperatureConstantK"] = new("Growth of resistance in the cold"),
        ["battery.packToAmbientKPerW"] = new("Heat path from pack to air"),
        ["battery.reserveShare"] = new("Kept back at the end", "A share, such as 0.2."),
        ["battery.peukertExponent"] = new("Peukert's exponent"),
        ["battery.ratedHours"] = new("Capacity rated in"),
        ["battery.maxTemperatureC"] = new("What the cells stand"),
    };
}
