using PowerCheck.Model.Accessories;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Rigs;

/// <summary>Two invented rigs that tests start from: everything that a builder knows is given.</summary>
internal static class SampleRig
{
    /// <summary>A sensored crawler on three lithium-polymer cells.</summary>
    public static RigLabel Brushless { get; } =
        new()
        {
            Motor = new MotorLabel
            {
                Kind = MotorKind.Brushless,
                Sensored = true,
                Rotor = RotorLayout.Inner,
                Magnet = MagnetMaterial.Ndfeb,
                SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(3300),
                ResistanceOhm = 0.022,
                NoLoadPoints = [new(7.4, 2.4)],
                PolePairs = 1,
                MassKg = 0.15,
                CanDiameterM = 0.036,
                CanLengthM = 0.050,
                MaxSpeedRadPerS = Unit.Rpm.ToSi(50_000),
                Mount = MotorMount.Metal,
            },
            Controller = new ControllerLabel
            {
                MotorKinds = [MotorKind.Brushed, MotorKind.Brushless],
                SensorInput = true,
                MinCells = 2,
                MaxCells = 3,
                ContinuousCurrentA = 40,
                BurstCurrentA = 120,
                BurstS = 3,
                Freewheel = Freewheel.Synchronous,
                PwmFrequencyHz = 16_000,
                Hold = HoldMode.DragBrake,
            },
            Battery = new BatteryLabel
            {
                Chemistry = Chemistry.Lipo,
                SeriesCells = 3,
                CapacityCoulomb = Unit.MilliampereHour.ToSi(3000),
                CellResistanceOhm = 0.004,
                Condition = PackCondition.New,
            },
            Vehicle = new()
            {
                MassKg = 3.4,
                TireDiameterM = 0.118,
                Drivetrain = new()
                {
                    PinionTeeth = 12,
                    SpurTeeth = 56,
                    TransmissionRatio = 2.8,
                    AxleRatio = 3.5,
                    PinionModuleM = 0.0254 / 32,
                    SpurModuleM = 0.0254 / 32,
                },
            },
            Accessories =
            [
                new() { Kind = AccessoryKind.Servo },
                new() { Kind = AccessoryKind.Radio },
            ],
        };

    /// <summary>A brushed trail rig on two cells; a switching frequency so high that ripple does not count.</summary>
    public static RigLabel Brushed { get; } =
        Brushless with
        {
            Motor = new MotorLabel
            {
                Kind = MotorKind.Brushed,
                SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(1600),
                ResistanceOhm = 0.09,
                NoLoadPoints = [new(7.2, 1.2)],
                MassKg = 0.16,
                CanDiameterM = 0.036,
                CanLengthM = 0.057,
            },
            Battery = Brushless.Battery with { SeriesCells = 2 },
            Vehicle = Brushless.Vehicle with { MassKg = 2.6 },
        };

    public static Rig Of(RigLabel label) => RigCompletion.Of(label).Rig;

    public static Inspection Inspect(RigLabel label) => Inspect(RigCompletion.Of(label));

    private static Inspection Inspect(RigCompletion complete) =>
        Inspection.Of(complete.Rig, complete.Course);
}
