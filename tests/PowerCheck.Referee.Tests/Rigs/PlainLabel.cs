using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Referee.Tests.Rigs;

/// <summary>A plain rig as the label that the check takes, every member given.</summary>
internal static class PlainLabel
{
    private const double Degree = Math.PI / 180;

    public static RigLabel Of(PlainRig rig) =>
        new()
        {
            Motor = PlainMotorLabel.Of(rig.Motor),
            Controller = PlainControllerLabel.Of(rig.Controller, rig.Motor.Brushed),
            Battery = PlainBatteryLabel.Of(rig.Battery),
            Vehicle = Of(rig.Vehicle),
            Course = Of(rig.Course),
            Accessories = [.. rig.Accessories.Select(Of)],
            Wiring = Of(rig.Wiring),
        };

    private static VehicleLabel Of(PlainVehicle vehicle) =>
        new()
        {
            MassKg = vehicle.MassKg,
            TireDiameterM = vehicle.TireDiameterMm / 1000,
            TireDiameterPrinted = vehicle.TireDiameterPrinted,
            LoadedTireShare = vehicle.LoadedTireShare,
            DrivenWeightShare = vehicle.DrivenWeightShare,
            MotorCount = vehicle.MotorCount,
            Drivetrain = new()
            {
                PinionTeeth = vehicle.PinionTeeth,
                SpurTeeth = vehicle.SpurTeeth,
                TransmissionRatio =
                    vehicle.TransmissionRatios.Count == 1 ? vehicle.TransmissionRatios[0] : null,
                Ratios = vehicle.TransmissionRatios.Count == 1 ? [] : vehicle.TransmissionRatios,
                AxleRatio = vehicle.AxleRatio,
                Efficiency = vehicle.Efficiency,
            },
        };

    private static WiringLabel Of(PlainWiring wiring) =>
        new()
        {
            BatteryLeadAwg = wiring.BatteryLeadAwg,
            BatteryLeadM = wiring.BatteryLeadMm / 1000,
            MotorLeadAwg = wiring.MotorLeadAwg,
            MotorLeadM = wiring.MotorLeadMm / 1000,
            InsulationC = wiring.InsulationC,
        };

    private static AccessoryLabel Of(PlainAccessory accessory) =>
        new()
        {
            Kind = AccessoryKind.Other,
            Supply = accessory.OnPack ? AccessorySupply.Battery : AccessorySupply.Receiver,
            IdleCurrentA = accessory.IdleCurrentA,
            WorkingCurrentA = accessory.WorkingCurrentA,
            JammedCurrentA = accessory.JammedCurrentA,
        };

    private static CourseLabel Of(PlainCourse course) =>
        new()
        {
            AmbientC = course.AmbientC,
            ClimbSlopeRad = course.ClimbSlopeDegrees * Degree,
            CreepSpeedMPerS = course.CreepSpeedMPerS,
            RollingResistanceCoefficient = course.RollingResistanceCoefficient,
            FrictionCoefficient = course.FrictionCoefficient,
            WantedS = course.WantedMinutes * 60,
            JamSlipFactor = course.JamSlipFactor,
            AccessoryDuty = course.AccessoryDuty,
            HoldCreepMPerS = course.HoldCreepMPerS,
            Segments = [.. course.Segments.Select(Of)],
            Judging = new()
            {
                ClimbS = course.ClimbSeconds,
                HoldS = course.HoldSeconds,
                SlipS = course.SlipSeconds,
                PunchS = course.PunchSeconds,
                JamS = course.JamSeconds,
            },
        };

    private static SegmentLabel Of(PlainSegment segment) =>
        segment.Kind switch
        {
            PlainSegmentKind.Creep => new()
            {
                Kind = SegmentKind.Creep,
                DurationS = segment.Seconds,
                SlopeRad = segment.SlopeDegrees * Degree,
                SpeedMPerS = segment.SpeedMPerS,
            },
            PlainSegmentKind.Hold => new()
            {
                Kind = SegmentKind.Hold,
                DurationS = segment.Seconds,
                SlopeRad = segment.SlopeDegrees * Degree,
            },
            PlainSegmentKind.Jammed => new()
            {
                Kind = SegmentKind.Jammed,
                DurationS = segment.Seconds,
                Throttle = segment.Throttle,
            },
            _ => new() { Kind = SegmentKind.Rest, DurationS = segment.Seconds },
        };
}
