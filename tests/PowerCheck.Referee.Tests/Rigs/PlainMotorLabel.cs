using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Motors;

namespace PowerCheck.Referee.Tests.Rigs;

/// <summary>A plain motor as the label that the check takes.</summary>
internal static class PlainMotorLabel
{
    public static MotorLabel Of(PlainMotor motor) =>
        new()
        {
            Kind = motor.Brushed ? MotorKind.Brushed : MotorKind.Brushless,
            Sensored = motor.Brushed ? null : motor.Sensored,
            Rotor =
                motor.Brushed ? null
                : motor.OuterRotor ? RotorLayout.Outer
                : RotorLayout.Inner,
            Magnet = motor.Neodymium ? MagnetMaterial.Ndfeb : MagnetMaterial.Ferrite,
            SpeedConstantRadPerSPerV = motor.KvRpmPerVolt * Math.PI / 30,
            ResistanceOhm = motor.ResistanceMilliohm / 1000,
            ResistanceTemperatureC = motor.ResistanceTemperatureC,
            InductanceH = motor.InductanceMicrohenry * 1e-6,
            BrushDropV = motor.Brushed ? motor.BrushDropV : null,
            NoLoadPoints =
            [
                .. motor.NoLoadPoints.Select(at => new NoLoadPoint(at.VoltageV, at.CurrentA)),
            ],
            NoLoadStandstillShare = motor.NoLoadStandstillShare,
            PolePairs = motor.Brushed ? null : motor.PolePairs,
            MassKg = motor.MassG / 1000,
            CanDiameterM = motor.CanDiameterMm / 1000,
            CanLengthM = motor.CanLengthMm / 1000,
            Insulation = Class(motor.InsulationC),
            HotSpotAllowanceK = motor.HotSpotAllowanceK,
            MagnetMaxC = motor.MagnetMaxC,
            MagnetCoefficientPerK = motor.MagnetCoefficientPerK,
            Mount = MotorMount.Plastic,
            Fan = false,
            Sealed = false,
            LockedHeatFactor = motor.LockedHeatFactor,
            WindingToCaseKPerW = motor.WindingToCaseKPerW,
            CaseToAmbientKPerW = motor.CaseToAmbientKPerW,
            WindingJPerK = motor.WindingJPerK,
            CaseJPerK = motor.CaseJPerK,
            CopperJPerK = motor.CopperJPerK,
        };

    private static InsulationClass Class(double insulationC) =>
        insulationC switch
        {
            105 => InsulationClass.A,
            120 => InsulationClass.E,
            130 => InsulationClass.B,
            155 => InsulationClass.F,
            180 => InsulationClass.H,
            _ => throw new ArgumentOutOfRangeException(nameof(insulationC)),
        };
}
