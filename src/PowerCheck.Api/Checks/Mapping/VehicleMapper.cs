using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the vehicle of a request into the model's label.</summary>
internal static class VehicleMapper
{
    /// <summary>One inch in metres, by definition.</summary>
    private const double InchM = 0.0254;

    public static VehicleLabel Map(VehicleRequest vehicle) =>
        new()
        {
            MassKg = vehicle.MassKg ?? double.NaN,
            TireDiameterM = Unit.Millimetre.Of(vehicle.TireDiameterMm),
            TireDiameterPrinted = vehicle.TireDiameterPrinted,
            LoadedTireShare = vehicle.LoadedTireShare,
            DrivenWeightShare = vehicle.DrivenWeightShare,
            MotorCount = vehicle.MotorCount,
            Drivetrain = Drivetrain(vehicle.Drivetrain ?? new()),
        };

    private static DrivetrainLabel Drivetrain(DrivetrainRequest drivetrain) =>
        new()
        {
            OverallRatio = drivetrain.OverallRatio,
            PinionTeeth = drivetrain.PinionTeeth,
            SpurTeeth = drivetrain.SpurTeeth,
            TransmissionRatio = drivetrain.TransmissionRatio,
            AxleRatio = drivetrain.AxleRatio,
            Ratios = drivetrain.Ratios ?? [],
            Efficiency = drivetrain.Efficiency,
            SpurStages = drivetrain.SpurStages,
            AxleGear = Word<AxleGear>.Of(drivetrain.AxleGear),
            PinionModuleM = Module(drivetrain.PinionPitch),
            SpurModuleM = Module(drivetrain.SpurPitch),
            MeshCenterMinM = Unit.Millimetre.Of(drivetrain.MeshCenterMinMm),
            MeshCenterMaxM = Unit.Millimetre.Of(drivetrain.MeshCenterMaxMm),
            MotorClearanceM = Unit.Millimetre.Of(drivetrain.MotorClearanceMm),
            MaxWheelTorqueNm = drivetrain.MaxWheelTorqueNm,
        };

    /// <summary>A diametral pitch counts teeth an inch of diameter, a module the diameter a tooth: one is the other's inverse.</summary>
    private static double? Module(PitchRequest? pitch) =>
        pitch?.Diametral is { } diametral ? InchM / diametral : Unit.Millimetre.Of(pitch?.ModuleMm);
}
