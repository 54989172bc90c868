using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Vehicles.VehicleLabel>;

namespace PowerCheck.Model.Vehicles;

/// <summary>Every measured or printed figure of the rig (M4, M12); teeth and ratios are counted and have no spread.</summary>
public static class VehicleFigures
{
    /// <summary>The figures.</summary>
    public static IReadOnlyList<LabelFigure<VehicleLabel>> All =>
        [
            .. Chassis,
            .. Drivetrain.Select(figure =>
                figure.In<VehicleLabel>(
                    vehicle => vehicle.Drivetrain,
                    (vehicle, drivetrain) => vehicle with { Drivetrain = drivetrain }
                )
            ),
        ];

    private static readonly Figure[] Chassis =
    [
        new(
            "vehicle.massKg",
            Unit.Kilogram,
            vehicle => vehicle.MassKg,
            (vehicle, value) => vehicle with { MassKg = value },
            LabelSpreads.Measured
        ),
        new(
            "vehicle.tireDiameterMm",
            Unit.Millimetre,
            vehicle => vehicle.TireDiameterM,
            (vehicle, value) => vehicle with { TireDiameterM = value },
            LabelSpreads.Measured
        ),
        new(
            "vehicle.loadedTireShare",
            Unit.One,
            vehicle => vehicle.LoadedTireShare,
            (vehicle, value) => vehicle with { LoadedTireShare = value },
            Spread.Absolute(0.01),
            0.5,
            1
        ),
        new(
            "vehicle.drivenWeightShare",
            Unit.One,
            vehicle => vehicle.DrivenWeightShare,
            (vehicle, value) => vehicle with { DrivenWeightShare = value },
            Spread.None,
            0.01,
            1
        ),
    ];

    private static readonly LabelFigure<DrivetrainLabel>[] Drivetrain =
    [
        new(
            "vehicle.drivetrain.overallRatio",
            Unit.One,
            drivetrain => drivetrain.OverallRatio,
            (drivetrain, value) => drivetrain with { OverallRatio = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.pinionTeeth",
            Unit.Teeth,
            drivetrain => drivetrain.PinionTeeth,
            (drivetrain, value) =>
                drivetrain with
                {
                    PinionTeeth = Math.Max(1, (int)Math.Round(value)),
                },
            Spread.None,
            1
        ),
        new(
            "vehicle.drivetrain.spurTeeth",
            Unit.Teeth,
            drivetrain => drivetrain.SpurTeeth,
            (drivetrain, value) =>
                drivetrain with
                {
                    SpurTeeth = Math.Max(1, (int)Math.Round(value)),
                },
            Spread.None,
            1
        ),
        new(
            "vehicle.drivetrain.transmissionRatio",
            Unit.One,
            drivetrain => drivetrain.TransmissionRatio,
            (drivetrain, value) => drivetrain with { TransmissionRatio = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.axleRatio",
            Unit.One,
            drivetrain => drivetrain.AxleRatio,
            (drivetrain, value) => drivetrain with { AxleRatio = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.efficiency",
            Unit.One,
            drivetrain => drivetrain.Efficiency,
            (drivetrain, value) => drivetrain with { Efficiency = value },
            LabelSpreads.Held,
            0.01,
            1
        ),
        new(
            "vehicle.drivetrain.meshCenterMinMm",
            Unit.Millimetre,
            drivetrain => drivetrain.MeshCenterMinM,
            (drivetrain, value) => drivetrain with { MeshCenterMinM = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.meshCenterMaxMm",
            Unit.Millimetre,
            drivetrain => drivetrain.MeshCenterMaxM,
            (drivetrain, value) => drivetrain with { MeshCenterMaxM = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.motorClearanceMm",
            Unit.Millimetre,
            drivetrain => drivetrain.MotorClearanceM,
            (drivetrain, value) => drivetrain with { MotorClearanceM = value },
            Spread.None
        ),
        new(
            "vehicle.drivetrain.maxWheelTorqueNm",
            Unit.NewtonMetre,
            drivetrain => drivetrain.MaxWheelTorqueNm,
            (drivetrain, value) => drivetrain with { MaxWheelTorqueNm = value },
            LabelSpreads.Label
        ),
    ];
}
