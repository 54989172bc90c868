namespace PowerCheck.Model.Vehicles;

/// <summary>The rig's chassis, every figure filled in (M4). NaN is not given.</summary>
/// <param name="MassKg">Mass, ready to run [kg].</param>
/// <param name="TireDiameterM">Loaded rolling diameter [m].</param>
/// <param name="DrivenWeightShare">Share of the weight on driven wheels.</param>
/// <param name="MotorCount">Motors, each with a controller of its own.</param>
/// <param name="Gearing">The gearing.</param>
public sealed record Vehicle(
    double MassKg,
    double TireDiameterM,
    double DrivenWeightShare,
    double MotorCount,
    Gearing Gearing
)
{
    /// <summary>Loaded rolling radius [m].</summary>
    public double RadiusM => TireDiameterM / 2;
}

/// <summary>The gearing, every figure filled in (M4). NaN is not given.</summary>
/// <param name="Ratios">Motor turns a wheel turn in each speed, lowest gear (largest) first; one without a gearbox.</param>
/// <param name="Efficiency">Efficiency motor shaft to wheel.</param>
/// <param name="Mesh">Pinion and spur gear.</param>
/// <param name="MaxWheelTorqueNm">Highest torque that the driveline stands [N·m].</param>
public sealed record Gearing(
    IReadOnlyList<double> Ratios,
    double Efficiency,
    GearMesh Mesh,
    double MaxWheelTorqueNm
)
{
    /// <summary>Ratio of the lowest gear, which decides the climb.</summary>
    public double LowestRatio => Ratios[0];

    /// <summary>
    /// Efficiency when the wheels drive the motor: max(0, 2 − 1/η), so that the same loss torque counts both ways.
    /// </summary>
    public double BackDrivingEfficiency => Math.Max(0, 2 - (1 / Efficiency));

    /// <summary>Ratio of a chain of stages: (spur/pinion)·transmission·axle.</summary>
    /// <param name="pinionTeeth">Pinion teeth.</param>
    /// <param name="spurTeeth">Spur gear teeth.</param>
    /// <param name="transmission">Ratio behind the spur gear.</param>
    /// <param name="axle">Ratio of the axles.</param>
    public static double Ratio(
        double pinionTeeth,
        double spurTeeth,
        double transmission,
        double axle
    ) => spurTeeth / pinionTeeth * transmission * axle;

    /// <summary>Efficiency of stages in a row: the product.</summary>
    /// <param name="stages">Efficiency of each stage, 0 to 1.</param>
    public static double Chain(IEnumerable<double> stages) =>
        stages.Aggregate(1.0, (product, stage) => product * stage);
}

/// <summary>Pinion and spur gear (M4). NaN is not given.</summary>
/// <param name="PinionTeeth">Pinion teeth.</param>
/// <param name="SpurTeeth">Spur gear teeth.</param>
/// <param name="PinionModuleM">Module of the pinion [m].</param>
/// <param name="SpurModuleM">Module of the spur gear [m].</param>
/// <param name="CenterMinM">Smallest center distance of the mount [m].</param>
/// <param name="CenterMaxM">Largest center distance of the mount [m].</param>
/// <param name="MotorClearanceM">Free radius around the motor shaft [m].</param>
public sealed record GearMesh(
    double PinionTeeth,
    double SpurTeeth,
    double PinionModuleM,
    double SpurModuleM,
    double CenterMinM,
    double CenterMaxM,
    double MotorClearanceM
)
{
    /// <summary>Center distance m·(N₁ + N₂)/2 [m]. Source: gears.</summary>
    /// <param name="moduleM">Module [m]; a diametral pitch P is 0.0254/P.</param>
    /// <param name="pinionTeeth">Pinion teeth.</param>
    /// <param name="spurTeeth">Spur gear teeth.</param>
    public static double CenterDistanceM(double moduleM, double pinionTeeth, double spurTeeth) =>
        moduleM * (pinionTeeth + spurTeeth) / 2;

    /// <summary>Center distance of this pair [m]; by the one pitch that is given, or the spur gear's.</summary>
    public double CenterM =>
        CenterDistanceM(
            double.IsNaN(SpurModuleM) ? PinionModuleM : SpurModuleM,
            PinionTeeth,
            SpurTeeth
        );

    /// <summary>Pinion's module over the spur gear's, less 1; 0 when they run together.</summary>
    public double PitchMismatch => (PinionModuleM / SpurModuleM) - 1;
}
