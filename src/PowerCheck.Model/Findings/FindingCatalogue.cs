namespace PowerCheck.Model.Findings;

/// <summary>Every kind of finding that a check can make.</summary>
public static class FindingCatalogue
{
    /// <summary>Motor kind against the kinds that the controller drives.</summary>
    public static readonly FindingKind ControllerMotorKind = Of(
        "controller.motor-kind",
        Severity.Notice,
        Effect.Damage,
        true,
        "Motor kind against the kinds that the controller drives.",
        "the controller's box",
        "a controller of the wrong kind does not run the motor",
        "practice"
    );

    /// <summary>Cells in series against the count that the controller allows.</summary>
    public static readonly FindingKind ControllerCellCount = Of(
        "controller.cell-count",
        Severity.Warning,
        Effect.Fire,
        true,
        "Cells in series against the count that the controller allows.",
        "the controller's box",
        "above its count a controller's switches and capacitors break down, under it the controller may not start",
        "practice"
    );

    /// <summary>Full-charge pack voltage against the controller's highest and lowest supply voltage; the pack at its cut-off against the lowest is a caution.</summary>
    public static readonly FindingKind ControllerVoltage = Of(
        "controller.voltage",
        Severity.Warning,
        Effect.Fire,
        true,
        "Full-charge pack voltage against the controller's highest and lowest supply voltage; the pack at its cut-off against the lowest is a caution.",
        "the controller's box",
        "too much breaks switches and capacitors down, too little does not start it",
        "cells"
    );

    /// <summary>No-load speed on a full pack times pole pairs against the electrical speed that the controller commutates.</summary>
    public static readonly FindingKind ControllerElectricalSpeed = Of(
        "controller.electrical-speed",
        Severity.Notice,
        Effect.Damage,
        true,
        "No-load speed on a full pack times pole pairs against the electrical speed that the controller commutates.",
        "the controller's box",
        "commutation loses step at speed",
        "definition"
    );

    /// <summary>Whether the controller knows where a brushless rotor stands at crawling speed: a sensor that both have, or a low-speed start and enough back-EMF.</summary>
    public static readonly FindingKind ControllerRotorSensing = Of(
        "controller.rotor-sensing",
        Severity.Notice,
        Effect.Performance,
        true,
        "Whether the controller knows where a brushless rotor stands at crawling speed: a sensor that both have, or a low-speed start and enough back-EMF.",
        "back-EMF that the controller needs, assumed or as given",
        "the motor cogs and cannot be started or held under control on a slope",
        "practice"
    );

    /// <summary>Controller temperature by its thermal memory, over the course and in each load case for as long as it is judged.</summary>
    public static readonly FindingKind ControllerHeat = Of(
        "controller.heat",
        Severity.Notice,
        Effect.Shutdown,
        true,
        "Controller temperature by its thermal memory, over the course and in each load case for as long as it is judged.",
        "by its continuous and burst ratings",
        "it shuts down on the slope, or burns",
        "iec60149",
        "slva"
    );

    /// <summary>Highest motor current of slip, punch and jam against the burst rating, where the controller does not limit itself.</summary>
    public static readonly FindingKind ControllerBurstCurrent = Of(
        "controller.burst-current",
        Severity.Notice,
        Effect.Damage,
        true,
        "Highest motor current of slip, punch and jam against the burst rating, where the controller does not limit itself.",
        "the controller's box",
        "more than the switches are made for, even for a moment",
        "practice"
    );

    /// <summary>Vehicle mass against the class printed on the controller: a label, not physics.</summary>
    public static readonly FindingKind ControllerMassClass = Of(
        "controller.mass-class",
        Severity.Caution,
        Effect.Performance,
        false,
        "Vehicle mass against the class printed on the controller: a label, not physics.",
        "the controller's box",
        "the computed currents and temperatures decide, not the class",
        "practice"
    );

    /// <summary>Motor turns against the fewest that the controller's box allows at this cell count: a label for current.</summary>
    public static readonly FindingKind ControllerMinimumTurns = Of(
        "controller.minimum-turns",
        Severity.Caution,
        Effect.Performance,
        false,
        "Motor turns against the fewest that the controller's box allows at this cell count: a label for current.",
        "the controller's box",
        "the computed currents decide, not the turns",
        "practice"
    );

    /// <summary>Switching frequency of a controller for brushed motors that is not printed.</summary>
    public static readonly FindingKind ControllerSwitchingFrequency = Of(
        "controller.switching-frequency",
        Severity.Caution,
        Effect.Performance,
        false,
        "Switching frequency of a controller for brushed motors that is not printed.",
        "assumed",
        "slow switching makes ripple that heats motor, controller and pack more than computed",
        "practice"
    );

    /// <summary>Controller temperature if the freewheel current of a brushed motor flows through a diode, which the box does not tell.</summary>
    public static readonly FindingKind ControllerFreewheel = Of(
        "controller.freewheel",
        Severity.Caution,
        Effect.Shutdown,
        false,
        "Controller temperature if the freewheel current of a brushed motor flows through a diode, which the box does not tell.",
        "by its ratings",
        "with a diode it would run that much hotter",
        "slva"
    );

    /// <summary>How long the controller lasts with the motor wedged at full throttle, cold.</summary>
    public static readonly FindingKind ControllerStallTime = Of(
        "controller.stall-time",
        Severity.Caution,
        Effect.Damage,
        false,
        "How long the controller lasts with the motor wedged at full throttle, cold.",
        "by its ratings",
        "let go of the throttle before",
        "iec60149"
    );

    /// <summary>Full-charge pack voltage against the highest that the motor's box allows.</summary>
    public static readonly FindingKind MotorVoltage = Of(
        "motor.voltage",
        Severity.Notice,
        Effect.Damage,
        true,
        "Full-charge pack voltage against the highest that the motor's box allows.",
        "the motor's box",
        "it overspeeds and its commutation suffers",
        "cells"
    );

    /// <summary>No-load speed on a full pack against the highest that the motor's box allows.</summary>
    public static readonly FindingKind MotorSpeed = Of(
        "motor.speed",
        Severity.Notice,
        Effect.Damage,
        true,
        "No-load speed on a full pack against the highest that the motor's box allows.",
        "the motor's box",
        "the rotor may burst or the bearings fail",
        "definition"
    );

    /// <summary>Mean winding temperature over the course and in each load case for as long as it is judged, against the insulation's class less the hot spot.</summary>
    public static readonly FindingKind MotorWindingTemperature = Of(
        "motor.winding-temperature",
        Severity.Notice,
        Effect.Damage,
        true,
        "Mean winding temperature over the course and in each load case for as long as it is judged, against the insulation's class less the hot spot.",
        "insulation class less the hot spot",
        "the insulation chars and the winding shorts",
        "iec60085",
        "msl"
    );

    /// <summary>Magnet temperature over the course and in each load case for as long as it is judged.</summary>
    public static readonly FindingKind MotorMagnetTemperature = Of(
        "motor.magnet-temperature",
        Severity.Notice,
        Effect.Damage,
        true,
        "Magnet temperature over the course and in each load case for as long as it is judged.",
        "magnet grade, assumed or as given",
        "the magnet loses strength for good",
        "magnets"
    );

    /// <summary>Root mean square motor current over the course against the continuous current printed on the motor.</summary>
    public static readonly FindingKind MotorContinuousCurrent = Of(
        "motor.continuous-current",
        Severity.Notice,
        Effect.Damage,
        true,
        "Root mean square motor current over the course against the continuous current printed on the motor.",
        "the motor's box",
        "more than its maker says that it stands for long",
        "iec60034-1"
    );

    /// <summary>Motor current of slip, punch and jam against the burst current printed on the motor, for as long as each is judged.</summary>
    public static readonly FindingKind MotorBurstCurrent = Of(
        "motor.burst-current",
        Severity.Notice,
        Effect.Damage,
        true,
        "Motor current of slip, punch and jam against the burst current printed on the motor, for as long as each is judged.",
        "the motor's box",
        "more than its maker says that it stands for moments",
        "iec60149"
    );

    /// <summary>Case temperature at its peak over the course against the touch warning for bare metal.</summary>
    public static readonly FindingKind MotorTouchTemperature = Of(
        "motor.touch-temperature",
        Severity.Caution,
        Effect.Injury,
        false,
        "Case temperature at its peak over the course against the touch warning for bare metal.",
        "touch warning for bare metal",
        "let it cool before you touch it",
        "iso13732"
    );

    /// <summary>Current of a wedged brushed motor against three times its lasting current.</summary>
    public static readonly FindingKind MotorCommutator = Of(
        "motor.commutator",
        Severity.Caution,
        Effect.Damage,
        false,
        "Current of a wedged brushed motor against three times its lasting current.",
        "common practice, no source",
        "the commutator burns where the brushes stand",
        "practice"
    );

    /// <summary>Air temperature of a ferrite motor that may be overloaded.</summary>
    public static readonly FindingKind MotorColdMagnet = Of(
        "motor.cold-magnet",
        Severity.Caution,
        Effect.Damage,
        false,
        "Air temperature of a ferrite motor that may be overloaded.",
        "ferrite is easier to demagnetise in the cold",
        "a cold, overloaded ferrite magnet loses strength for good",
        "magnets"
    );

    /// <summary>How long the winding lasts with the motor wedged at full throttle, cold.</summary>
    public static readonly FindingKind MotorStallTime = Of(
        "motor.stall-time",
        Severity.Caution,
        Effect.Damage,
        false,
        "How long the winding lasts with the motor wedged at full throttle, cold.",
        "insulation class less the hot spot",
        "let go of the throttle before",
        "iec60085"
    );

    /// <summary>Voltage at the controller in a climb at half charge and in a punch at the reserve, against the cut-off.</summary>
    public static readonly FindingKind BatteryCutoff = Of(
        "battery.cutoff",
        Severity.Caution,
        Effect.Shutdown,
        true,
        "Voltage at the controller in a climb at half charge and in a punch at the reserve, against the cut-off.",
        "cut-off of controller or chemistry",
        "the controller cuts out, and cells are pulled lower than is good for them",
        "cells"
    );

    /// <summary>Root mean square battery current over the course against the continuous rate on the label.</summary>
    public static readonly FindingKind BatteryContinuousRate = Of(
        "battery.continuous-rate",
        Severity.Warning,
        Effect.Fire,
        true,
        "Root mean square battery current over the course against the continuous rate on the label.",
        "the pack's label",
        "an overloaded cell overheats, vents and may catch fire",
        "cells"
    );

    /// <summary>Battery current in a punch against the burst rate on the label, or the continuous one without it.</summary>
    public static readonly FindingKind BatteryBurstRate = Of(
        "battery.burst-rate",
        Severity.Warning,
        Effect.Fire,
        true,
        "Battery current in a punch against the burst rate on the label, or the continuous one without it.",
        "the pack's label",
        "an overloaded cell overheats, vents and may catch fire",
        "cells"
    );

    /// <summary>Cell temperature at the end of the run.</summary>
    public static readonly FindingKind BatteryTemperature = Of(
        "battery.temperature",
        Severity.Warning,
        Effect.Fire,
        true,
        "Cell temperature at the end of the run.",
        "common data sheets of cells",
        "a cell that hot ages fast and may catch fire",
        "cells"
    );

    /// <summary>Whether a cell of the given resistance could keep up the rate on its label.</summary>
    public static readonly FindingKind BatteryLabelRate = Of(
        "battery.label-rate",
        Severity.Notice,
        Effect.Performance,
        false,
        "Whether a cell of the given resistance could keep up the rate on its label.",
        "resistance that the label would need",
        "the rate on the label is not plausible",
        "cells"
    );

    /// <summary>The cell resistance that the rate on the label would need; measure it with the charger.</summary>
    public static readonly FindingKind BatteryLabelResistance = Of(
        "battery.label-resistance",
        Severity.Notice,
        Effect.Performance,
        false,
        "The cell resistance that the rate on the label would need; measure it with the charger.",
        "resistance that the label would need",
        "where a charger shows more, do not count on the label",
        "cells"
    );

    /// <summary>Pitch of the pinion against that of the spur gear.</summary>
    public static readonly FindingKind DrivetrainPitch = Of(
        "drivetrain.pitch",
        Severity.Notice,
        Effect.Damage,
        true,
        "Pitch of the pinion against that of the spur gear.",
        "the same pitch or none",
        "gears of different pitch do not run together",
        "gears"
    );

    /// <summary>Center distance of pinion and spur gear against what the motor mount allows.</summary>
    public static readonly FindingKind DrivetrainMeshCenter = Of(
        "drivetrain.mesh-center",
        Severity.Notice,
        Effect.Damage,
        true,
        "Center distance of pinion and spur gear against what the motor mount allows.",
        "the motor mount",
        "the gears do not mesh in this mount",
        "gears"
    );

    /// <summary>Can radius of the motor against the room around its shaft.</summary>
    public static readonly FindingKind DrivetrainMotorClearance = Of(
        "drivetrain.motor-clearance",
        Severity.Notice,
        Effect.Damage,
        true,
        "Can radius of the motor against the room around its shaft.",
        "the chassis",
        "the motor does not fit",
        "definition"
    );

    /// <summary>Wheel torque of the climb against what full throttle gives at creep speed, reserve charge and a hot winding.</summary>
    public static readonly FindingKind DrivetrainTorqueReserve = Of(
        "drivetrain.torque-reserve",
        Severity.Notice,
        Effect.Performance,
        true,
        "Wheel torque of the climb against what full throttle gives at creep speed, reserve charge and a hot winding.",
        "the climb's own torque, or with enough to spare; assumed",
        "it stalls on the slope when pack and motor are tired",
        "definition",
        "mjc"
    );

    /// <summary>Duty at level creep: how fine the throttle is.</summary>
    public static readonly FindingKind DrivetrainCreepControl = Of(
        "drivetrain.creep-control",
        Severity.Caution,
        Effect.Performance,
        true,
        "Duty at level creep: how fine the throttle is.",
        "what a thumb can feel, assumed",
        "the first step of the throttle is already too fast; gear lower or take a slower motor",
        "practice"
    );

    /// <summary>Speed at which the rig creeps back on the slope at neutral.</summary>
    public static readonly FindingKind DrivetrainHold = Of(
        "drivetrain.hold",
        Severity.Notice,
        Effect.Performance,
        true,
        "Speed at which the rig creeps back on the slope at neutral.",
        "slower counts as holding, assumed or as given",
        "it does not stand on the slope",
        "definition"
    );

    /// <summary>Slope against the one at which the tires let go; judged as doubt at most.</summary>
    public static readonly FindingKind DrivetrainTraction = Of(
        "drivetrain.traction",
        Severity.Caution,
        Effect.Performance,
        true,
        "Slope against the one at which the tires let go; judged as doubt at most.",
        "where the tires let go, by friction assumed or as given",
        "the tires are the limit, whatever the motor does",
        "definition"
    );

    /// <summary>Wheel torque of a jam against what the driveline stands.</summary>
    public static readonly FindingKind DrivetrainWheelTorque = Of(
        "drivetrain.wheel-torque",
        Severity.Notice,
        Effect.Damage,
        true,
        "Wheel torque of a jam against what the driveline stands.",
        "as given",
        "gears or shafts break",
        "definition"
    );

    /// <summary>Overall ratio against the usual range for crawling.</summary>
    public static readonly FindingKind DrivetrainRatio = Of(
        "drivetrain.ratio",
        Severity.Caution,
        Effect.Performance,
        false,
        "Overall ratio against the usual range for crawling.",
        "common practice, no source",
        "check whether all stages were counted",
        "practice"
    );

    /// <summary>Torque reserve in a higher gear.</summary>
    public static readonly FindingKind DrivetrainGear = Of(
        "drivetrain.gear",
        Severity.Caution,
        Effect.Performance,
        false,
        "Torque reserve in a higher gear.",
        "the climb's torque",
        "shift down before the slope",
        "definition"
    );

    /// <summary>Servos, winch and the rest at work against the continuous current of the receiver supply.</summary>
    public static readonly FindingKind ReceiverSupplyContinuousCurrent = Of(
        "receiver-supply.continuous-current",
        Severity.Caution,
        Effect.Shutdown,
        true,
        "Servos, winch and the rest at work against the continuous current of the receiver supply.",
        "as given or assumed",
        "the supply overheats and steering is lost",
        "practice"
    );

    /// <summary>Everything jammed at once for two seconds against the peak current of the receiver supply.</summary>
    public static readonly FindingKind ReceiverSupplyPeakCurrent = Of(
        "receiver-supply.peak-current",
        Severity.Caution,
        Effect.Shutdown,
        false,
        "Everything jammed at once for two seconds against the peak current of the receiver supply.",
        "as given or assumed",
        "the voltage dips when everything pulls at once",
        "practice"
    );

    /// <summary>Heat of a linear receiver supply with everything at work.</summary>
    public static readonly FindingKind ReceiverSupplyHeat = Of(
        "receiver-supply.heat",
        Severity.Caution,
        Effect.Shutdown,
        true,
        "Heat of a linear receiver supply with everything at work.",
        "as given, or its continuous current on two full lithium cells",
        "it overheats and steering is lost",
        "definition"
    );

    /// <summary>Voltage left for the receiver at the lowest bus voltage of punch, jam and climb.</summary>
    public static readonly FindingKind ReceiverSupplyOutputVoltage = Of(
        "receiver-supply.output-voltage",
        Severity.Caution,
        Effect.Shutdown,
        true,
        "Voltage left for the receiver at the lowest bus voltage of punch, jam and climb.",
        "where a receiver resets, assumed or as given",
        "a receiver that resets is a vehicle out of control",
        "practice"
    );

    /// <summary>Battery current of course and climb against the lasting current of the battery lead in free air.</summary>
    public static readonly FindingKind WiringBatteryLead = Of(
        "wiring.battery-lead",
        Severity.Warning,
        Effect.Fire,
        true,
        "Battery current of course and climb against the lasting current of the battery lead in free air.",
        "gauge and insulation",
        "the insulation softens and may short",
        "hph",
        "ac43"
    );

    /// <summary>Motor current of course and climb against the lasting current of the motor lead in free air.</summary>
    public static readonly FindingKind WiringMotorLead = Of(
        "wiring.motor-lead",
        Severity.Warning,
        Effect.Fire,
        true,
        "Motor current of course and climb against the lasting current of the motor lead in free air.",
        "gauge and insulation",
        "the insulation softens and may short",
        "hph",
        "ac43"
    );

    /// <summary>Battery current of course and climb against the connector's continuous current.</summary>
    public static readonly FindingKind WiringConnector = Of(
        "wiring.connector",
        Severity.Warning,
        Effect.Fire,
        true,
        "Battery current of course and climb against the connector's continuous current.",
        "as given",
        "a hot connector loses its solder",
        "practice"
    );

    /// <summary>Battery current of course, climb and punch against what the fuse carries.</summary>
    public static readonly FindingKind WiringFuseCarries = Of(
        "wiring.fuse-carries",
        Severity.Notice,
        Effect.Shutdown,
        true,
        "Battery current of course, climb and punch against what the fuse carries.",
        "its rating, more for seconds",
        "the fuse opens while driving",
        "iso8820"
    );

    /// <summary>Twice the fuse's rating, at which it opens within 5 s, against the current that brings the battery lead to its insulation's limit in that time.</summary>
    public static readonly FindingKind WiringFuseProtects = Of(
        "wiring.fuse-protects",
        Severity.Warning,
        Effect.Fire,
        true,
        "Twice the fuse's rating, at which it opens within 5 s, against the current that brings the battery lead to its insulation's limit in that time.",
        "what damages the lead before it opens, after Onderdonk",
        "the lead burns before the fuse opens",
        "onderdonk",
        "iso8820"
    );

    /// <summary>Run time until reserve or cut-off against the wanted one; judged as doubt at most.</summary>
    public static readonly FindingKind CourseRunTime = Of(
        "course.run-time",
        Severity.Notice,
        Effect.Performance,
        true,
        "Run time until reserve or cut-off against the wanted one; judged as doubt at most.",
        "as wanted",
        "the pack is empty before the course is over",
        "definition"
    );

    /// <summary>All kinds, by part.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        ControllerMotorKind,
        ControllerCellCount,
        ControllerVoltage,
        ControllerElectricalSpeed,
        ControllerRotorSensing,
        ControllerHeat,
        ControllerBurstCurrent,
        ControllerMassClass,
        ControllerMinimumTurns,
        ControllerSwitchingFrequency,
        ControllerFreewheel,
        ControllerStallTime,
        MotorVoltage,
        MotorSpeed,
        MotorWindingTemperature,
        MotorMagnetTemperature,
        MotorContinuousCurrent,
        MotorBurstCurrent,
        MotorTouchTemperature,
        MotorCommutator,
        MotorColdMagnet,
        MotorStallTime,
        BatteryCutoff,
        BatteryContinuousRate,
        BatteryBurstRate,
        BatteryTemperature,
        BatteryLabelRate,
        BatteryLabelResistance,
        DrivetrainPitch,
        DrivetrainMeshCenter,
        DrivetrainMotorClearance,
        DrivetrainTorqueReserve,
        DrivetrainCreepControl,
        DrivetrainHold,
        DrivetrainTraction,
        DrivetrainWheelTorque,
        DrivetrainRatio,
        DrivetrainGear,
        ReceiverSupplyContinuousCurrent,
        ReceiverSupplyPeakCurrent,
        ReceiverSupplyHeat,
        ReceiverSupplyOutputVoltage,
        WiringBatteryLead,
        WiringMotorLead,
        WiringConnector,
        WiringFuseCarries,
        WiringFuseProtects,
        CourseRunTime,
    ];

    private static FindingKind Of(
        string code,
        Severity severity,
        Effect effect,
        bool judged,
        string meaning,
        string limitFrom,
        string consequence,
        params string[] sources
    ) =>
        new(
            code,
            code[..code.IndexOf('.', StringComparison.Ordinal)],
            severity,
            effect,
            meaning,
            limitFrom,
            consequence,
            judged,
            "1.0.0",
            sources
        );
}
