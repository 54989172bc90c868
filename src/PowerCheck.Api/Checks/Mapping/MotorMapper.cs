using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the motor of a request into the model's label.</summary>
internal static class MotorMapper
{
    public static MotorLabel Map(MotorRequest motor) => Thermal(Electrical(motor), motor);

    private static MotorLabel Electrical(MotorRequest motor) =>
        new()
        {
            Kind = Word<MotorKind>.Of(motor.Kind),
            Sensored = motor.Sensored,
            Rotor = Word<RotorLayout>.Of(motor.Rotor),
            Magnet = Word<MagnetMaterial>.Of(motor.Magnet),
            SpeedConstantRadPerSPerV = Unit.RpmPerVolt.Of(motor.KvRpmPerVolt),
            Turns = motor.Turns,
            Slots = motor.Slots,
            ResistanceOhm = Unit.Milliohm.Of(motor.ResistanceMilliohm),
            ResistanceTemperatureC = motor.ResistanceTemperatureC,
            NoLoadPoints = [.. (motor.NoLoadPoints ?? []).Select(NoLoadPoint)],
            NoLoadStandstillShare = motor.NoLoadStandstillShare,
            BrushDropV = motor.BrushDropV,
            InductanceH = Unit.Microhenry.Of(motor.InductanceMicrohenry),
            PolePairs = motor.PolePairs,
            MaxVoltageV = motor.MaxVoltageV,
            MaxSpeedRadPerS = Unit.Rpm.Of(motor.MaxSpeedRpm),
            ContinuousCurrentA = motor.ContinuousCurrentA,
            BurstCurrentA = motor.BurstCurrentA,
            BurstS = motor.BurstSeconds,
        };

    private static MotorLabel Thermal(MotorLabel label, MotorRequest motor) =>
        label with
        {
            MassKg = Unit.Gram.Of(motor.MassG),
            CanDiameterM = Unit.Millimetre.Of(motor.CanDiameterMm),
            CanLengthM = Unit.Millimetre.Of(motor.CanLengthMm),
            ShaftDiameterM = Unit.Millimetre.Of(motor.ShaftDiameterMm),
            Insulation = Word<InsulationClass>.Of(motor.InsulationClass),
            HotSpotAllowanceK = motor.HotSpotAllowanceK,
            MagnetMaxC = motor.MagnetMaxC,
            MagnetCoefficientPerK = motor.MagnetCoefficientPerK,
            Mount = Word<MotorMount>.Of(motor.Mount),
            Fan = motor.Fan,
            Sealed = motor.Sealed,
            LockedHeatFactor = motor.LockedHeatFactor,
            WindingToCaseKPerW = motor.Thermal?.WindingToCaseKPerW,
            CaseToAmbientKPerW = motor.Thermal?.CaseToAmbientKPerW,
            WindingJPerK = motor.Thermal?.WindingJPerK,
            CaseJPerK = motor.Thermal?.CaseJPerK,
            CopperJPerK = motor.Thermal?.CopperJPerK,
        };

    private static NoLoadPoint NoLoadPoint(NoLoadPointRequest point) =>
        new(point.VoltageV, point.CurrentA!.Value);
}
