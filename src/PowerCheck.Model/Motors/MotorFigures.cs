using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Motors.MotorLabel>;

namespace PowerCheck.Model.Motors;

/// <summary>Every measured or printed figure of a motor (M1, M6, M12).</summary>
public static class MotorFigures
{
    /// <summary>The figures that every motor has.</summary>
    public static IEnumerable<LabelFigure<MotorLabel>> All => [.. Electrical, .. Ratings, .. Body];

    private static readonly Figure[] Electrical =
    [
        new(
            "motor.kvRpmPerVolt",
            Unit.RpmPerVolt,
            motor => motor.SpeedConstantRadPerSPerV,
            (motor, value) => motor with { SpeedConstantRadPerSPerV = value },
            LabelSpreads.Held
        ),
        new(
            "motor.resistanceMilliohm",
            Unit.Milliohm,
            motor => motor.ResistanceOhm,
            (motor, value) => motor with { ResistanceOhm = value },
            LabelSpreads.Label
        ),
        new(
            "motor.resistanceTemperatureC",
            Unit.Celsius,
            motor => motor.ResistanceTemperatureC,
            (motor, value) => motor with { ResistanceTemperatureC = value },
            Spread.Absolute(2)
        ),
        new(
            "motor.noLoadStandstillShare",
            Unit.One,
            motor => motor.NoLoadStandstillShare,
            (motor, value) => motor with { NoLoadStandstillShare = value },
            LabelSpreads.Label,
            0,
            1
        ),
        new(
            "motor.brushDropV",
            Unit.Volt,
            motor => motor.BrushDropV,
            (motor, value) => motor with { BrushDropV = value },
            LabelSpreads.Label,
            0
        ),
        new(
            "motor.inductanceMicrohenry",
            Unit.Microhenry,
            motor => motor.InductanceH,
            (motor, value) => motor with { InductanceH = value },
            LabelSpreads.Label
        ),
        new(
            "motor.polePairs",
            Unit.One,
            motor => motor.PolePairs,
            (motor, value) => motor with { PolePairs = Math.Max(1, (int)Math.Round(value)) },
            Spread.None,
            1
        ),
    ];

    private static readonly Figure[] Ratings =
    [
        new(
            "motor.maxVoltageV",
            Unit.Volt,
            motor => motor.MaxVoltageV,
            (motor, value) => motor with { MaxVoltageV = value },
            Spread.None
        ),
        new(
            "motor.maxSpeedRpm",
            Unit.Rpm,
            motor => motor.MaxSpeedRadPerS,
            (motor, value) => motor with { MaxSpeedRadPerS = value },
            Spread.None
        ),
        new(
            "motor.continuousCurrentA",
            Unit.Ampere,
            motor => motor.ContinuousCurrentA,
            (motor, value) => motor with { ContinuousCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "motor.burstCurrentA",
            Unit.Ampere,
            motor => motor.BurstCurrentA,
            (motor, value) => motor with { BurstCurrentA = value },
            LabelSpreads.Ampere
        ),
        new(
            "motor.burstSeconds",
            Unit.Second,
            motor => motor.BurstS,
            (motor, value) => motor with { BurstS = value },
            Spread.None
        ),
        new(
            "motor.hotSpotAllowanceK",
            Unit.Kelvin,
            motor => motor.HotSpotAllowanceK,
            (motor, value) => motor with { HotSpotAllowanceK = value },
            LabelSpreads.Label,
            0
        ),
        new(
            "motor.magnetMaxC",
            Unit.Celsius,
            motor => motor.MagnetMaxC,
            (motor, value) => motor with { MagnetMaxC = value },
            LabelSpreads.Kelvin
        ),
        new(
            "motor.magnetCoefficientPerK",
            Unit.PerKelvin,
            motor => motor.MagnetCoefficientPerK,
            (motor, value) => motor with { MagnetCoefficientPerK = value },
            LabelSpreads.Label
        ),
    ];

    private static readonly Figure[] Body =
    [
        new(
            "motor.massG",
            Unit.Gram,
            motor => motor.MassKg,
            (motor, value) => motor with { MassKg = value },
            LabelSpreads.Measured
        ),
        new(
            "motor.canDiameterMm",
            Unit.Millimetre,
            motor => motor.CanDiameterM,
            (motor, value) => motor with { CanDiameterM = value },
            LabelSpreads.Measured
        ),
        new(
            "motor.canLengthMm",
            Unit.Millimetre,
            motor => motor.CanLengthM,
            (motor, value) => motor with { CanLengthM = value },
            LabelSpreads.Measured
        ),
        new(
            "motor.lockedHeatFactor",
            Unit.One,
            motor => motor.LockedHeatFactor,
            (motor, value) => motor with { LockedHeatFactor = value },
            LabelSpreads.Label,
            1
        ),
        new(
            "motor.thermal.windingToCaseKPerW",
            Unit.KelvinPerWatt,
            motor => motor.WindingToCaseKPerW,
            (motor, value) => motor with { WindingToCaseKPerW = value },
            LabelSpreads.Label
        ),
        new(
            "motor.thermal.caseToAmbientKPerW",
            Unit.KelvinPerWatt,
            motor => motor.CaseToAmbientKPerW,
            (motor, value) => motor with { CaseToAmbientKPerW = value },
            LabelSpreads.Label
        ),
        new(
            "motor.thermal.windingJPerK",
            Unit.JoulePerKelvin,
            motor => motor.WindingJPerK,
            (motor, value) => motor with { WindingJPerK = value },
            LabelSpreads.Label
        ),
        new(
            "motor.thermal.caseJPerK",
            Unit.JoulePerKelvin,
            motor => motor.CaseJPerK,
            (motor, value) => motor with { CaseJPerK = value },
            LabelSpreads.Label
        ),
        new(
            "motor.thermal.copperJPerK",
            Unit.JoulePerKelvin,
            motor => motor.CopperJPerK,
            (motor, value) => motor with { CopperJPerK = value },
            LabelSpreads.Label
        ),
    ];

    /// <summary>The figures of a no-load point.</summary>
    /// <param name="n">Its place in the list, from 0.</param>
    public static IEnumerable<LabelFigure<MotorLabel>> NoLoadPoint(int n) =>
        [
            new(
                $"motor.noLoadPoints.{n}.voltageV",
                Unit.Volt,
                motor => motor.NoLoadPoints[n].VoltageV,
                (motor, value) => With(motor, n, motor.NoLoadPoints[n] with { VoltageV = value }),
                Spread.None
            ),
            new(
                $"motor.noLoadPoints.{n}.currentA",
                Unit.Ampere,
                motor => motor.NoLoadPoints[n].CurrentA,
                (motor, value) => With(motor, n, motor.NoLoadPoints[n] with { CurrentA = value }),
                LabelSpreads.Label
            ),
        ];

    private static MotorLabel With(MotorLabel motor, int n, NoLoadPoint point) =>
        motor with
        {
            NoLoadPoints = [.. motor.NoLoadPoints.Select((old, at) => at == n ? point : old)],
        };
}
