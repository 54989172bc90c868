using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Vehicles;

/// <summary>Fills in what is not known of the rig (M4); every fill goes through the ledger.</summary>
public static class VehicleDefaults
{
    private const double LoadedOverPrinted = 0.95;
    private const double SpurStage = 0.95;
    private const double BevelAxle = 0.93;
    private const double WormAxle = 0.6;

    /// <summary>The rig's chassis, complete.</summary>
    /// <param name="label">What is known.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Vehicle Complete(VehicleLabel label, Ledger ledger) =>
        new(
            label.MassKg,
            TireDiameter(label, ledger),
            ledger.Figure(
                label.DrivenWeightShare,
                "vehicle.drivenWeightShare",
                Unit.One,
                1,
                Spread.None,
                "assumed: all wheels driven"
            ),
            ledger.Figure(
                label.MotorCount,
                "vehicle.motorCount",
                Unit.One,
                1,
                Spread.None,
                "assumed: one motor"
            ),
            Gearing(label.Drivetrain, ledger)
        );

    private static double TireDiameter(VehicleLabel label, Ledger ledger)
    {
        var diameter = ledger.Figure(
            label.TireDiameterM,
            "vehicle.tireDiameterMm",
            Unit.Millimetre,
            0.115,
            Spread.Relative(0.1),
            "assumed: loaded rolling diameter of a common crawling tire"
        );
        var printed =
            label.TireDiameterM is not null
            && ledger.Word(
                label.TireDiameterPrinted,
                "vehicle.tireDiameterPrinted",
                false,
                "assumed: the given diameter is the loaded rolling one"
            );
        return printed
            ? diameter
                * ledger.Figure(
                    label.LoadedTireShare,
                    "vehicle.loadedTireShare",
                    Unit.One,
                    LoadedOverPrinted,
                    Spread.Absolute(0.03),
                    "assumed: a soft tire rolls on 0.95 of its printed diameter"
                )
            : diameter;
    }

    private static Gearing Gearing(DrivetrainLabel label, Ledger ledger) =>
        new(
            Ratios(label, ledger),
            Efficiency(label, ledger),
            new(
                label.PinionTeeth ?? double.NaN,
                label.SpurTeeth ?? double.NaN,
                label.PinionModuleM ?? double.NaN,
                label.SpurModuleM ?? double.NaN,
                label.MeshCenterMinM ?? double.NaN,
                label.MeshCenterMaxM ?? double.NaN,
                label.MotorClearanceM ?? double.NaN
            ),
            label.MaxWheelTorqueNm ?? double.NaN
        );

    private static double[] Ratios(DrivetrainLabel label, Ledger ledger)
    {
        if (label is { OverallRatio: null, PinionTeeth: { } pinion, SpurTeeth: { } spur })
        {
            var speeds = label.Ratios.Count > 0 ? label.Ratios : [label.TransmissionRatio ?? 1];
            return
            [
                .. speeds
                    .Select(speed =>
                        Vehicles.Gearing.Ratio(pinion, spur, speed, label.AxleRatio ?? 1)
                    )
                    .OrderDescending(),
            ];
        }

        return
        [
            ledger.Figure(
                label.OverallRatio,
                "vehicle.drivetrain.overallRatio",
                Unit.One,
                40,
                Spread.Factor(1.5),
                "assumed: a usual crawling ratio"
            ),
        ];
    }

    private static double Efficiency(DrivetrainLabel label, Ledger ledger)
    {
        const string Path = "vehicle.drivetrain.efficiency";
        return label is { SpurStages: { } stages, AxleGear: { } axle }
            ? ledger.Figure(
                label.Efficiency,
                Path,
                Unit.One,
                Vehicles.Gearing.Chain([
                    .. Enumerable.Repeat(SpurStage, stages),
                    axle == AxleGear.Worm ? WormAxle : BevelAxle,
                ]),
                Spread.Relative(0.08),
                "assumed: 0.95 a spur stage, 0.93 a bevel axle, 0.6 a worm axle",
                "gears"
            )
            : ledger.Figure(
                label.Efficiency,
                Path,
                Unit.One,
                0.75,
                Spread.Relative(0.12),
                "assumed: 0.75 motor shaft to wheel",
                "gears"
            );
    }
}
