namespace PowerCheck.Api.Pages.Forms;

/// <summary>Names of the fields of vehicle, gearing and wiring.</summary>
internal static class RigLabels
{
    public static readonly IReadOnlyDictionary<string, Label> All = new Dictionary<string, Label>(
        StringComparer.Ordinal
    )
    {
        ["id"] = new("Name of this sheet", "Yours to choose; it comes back in the answer."),
        ["vehicle.name"] = new("Name of the rig", "For you; not used."),
        ["vehicle.massKg"] = new("Mass, ready to run", "With the pack in it."),
        ["vehicle.tireDiameterMm"] = new("Tire diameter", "Top to ground, rig standing on it."),
        ["vehicle.tireDiameterPrinted"] = new(
            "Is that the printed diameter?",
            "The printed one is larger than the loaded one."
        ),
        ["vehicle.loadedTireShare"] = new("Loaded diameter over printed", "A share, such as 0.95."),
        ["vehicle.drivenWeightShare"] = new(
            "Share of the weight on driven wheels",
            "1 when all wheels drive."
        ),
        ["vehicle.motorCount"] = new("Motors", "Each with a controller of its own, on one pack."),
        ["vehicle.drivetrain"] = new("Gears and driveline"),
        ["vehicle.drivetrain.pinionTeeth"] = new("Pinion"),
        ["vehicle.drivetrain.spurTeeth"] = new("Spur"),
        ["vehicle.drivetrain.transmissionRatio"] = new(
            "Transmission ratio",
            "Behind the spur, low gear."
        ),
        ["vehicle.drivetrain.axleRatio"] = new("Axle ratio"),
        ["vehicle.drivetrain.overallRatio"] = new(
            "… or overall ratio",
            "Motor turns a wheel turn, instead of the four above."
        ),
        ["vehicle.drivetrain.ratios"] = new(
            "Gearbox with several speeds",
            "Its ratios, in place of the transmission ratio."
        ),
        ["vehicle.drivetrain.ratios.0"] = new("Ratio"),
        ["vehicle.drivetrain.efficiency"] = new(
            "Efficiency, motor shaft to wheel",
            "A share, such as 0.75."
        ),
        ["vehicle.drivetrain.spurStages"] = new("Spur gear stages", "The pinion's included."),
        ["vehicle.drivetrain.axleGear"] = new("Axle gear"),
        ["vehicle.drivetrain.pinionPitch"] = new("Pinion teeth"),
        ["vehicle.drivetrain.spurPitch"] = new("Spur teeth"),
        ["vehicle.drivetrain.pinionPitch.diametral"] = new(
            "Pinion pitch",
            "Teeth an inch of diameter, such as 32 or 48."
        ),
        ["vehicle.drivetrain.pinionPitch.moduleMm"] = new("… or pinion module"),
        ["vehicle.drivetrain.spurPitch.diametral"] = new("Spur pitch"),
        ["vehicle.drivetrain.spurPitch.moduleMm"] = new("… or spur module"),
        ["vehicle.drivetrain.meshCenterMinMm"] = new(
            "Closest mesh",
            "Smallest distance of the shafts that the mount allows."
        ),
        ["vehicle.drivetrain.meshCenterMaxMm"] = new("Widest mesh"),
        ["vehicle.drivetrain.motorClearanceMm"] = new(
            "Room around the motor shaft",
            "Free radius for the pinion."
        ),
        ["vehicle.drivetrain.maxWheelTorqueNm"] = new(
            "Torque the driveline stands",
            "All wheels together."
        ),
        ["wiring"] = new("Leads, connector, fuse"),
        ["wiring.batteryLeadAwg"] = new("Battery lead, gauge"),
        ["wiring.batteryLeadMm"] = new("Battery lead, length", "One way."),
        ["wiring.motorLeadAwg"] = new("Motor lead, gauge"),
        ["wiring.motorLeadMm"] = new("Motor lead, length", "One way."),
        ["wiring.insulationC"] = new("What the insulation stands"),
        ["wiring.connectorContinuousA"] = new("Battery connector, lasting current"),
        ["wiring.fuseA"] = new("Fuse in the battery lead"),
    };
}
