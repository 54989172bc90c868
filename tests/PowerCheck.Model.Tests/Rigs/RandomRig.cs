using PowerCheck.Model.Accessories;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Tests.Rigs;

/// <summary>
/// Random rigs as builders combine them: a chassis of some weight, a motor and pack meant for it, a controller from the
/// same shelf; one in three with one part that does not belong there. The same number gives the same rig.
/// </summary>
internal sealed class RandomRig
{
    private readonly Random dice;

    private RandomRig(int number) => dice = new Random(number);

    public static RigLabel Of(int number) => new RandomRig(number).Build();

    private RigLabel Build()
    {
        var heavy = dice.NextDouble() < 0.3;
        var mass = heavy ? Between(3.0, 5.0) : Between(1.5, 3.2);
        var brushed = Chance(0.5);
        var cells = brushed ? Pick(2, 2, 3) : Pick(2, 3, 3, 3);
        var chemistry = Pack();
        var kv = brushed
            ? Between(900, 1900) * (cells == 3 ? 0.8 : 1)
            : Between(1800, 3500) * (cells == 2 ? 1 : 0.85);
        var motor = brushed ? Brushed(kv) : Brushless(kv);
        var rig = new RigLabel
        {
            Motor = motor,
            Controller = Controller(motor, cells, heavy),
            Battery = Battery(chemistry, cells, heavy),
            Vehicle = Chassis(mass, heavy, kv * cells),
            Course = Day(),
            Accessories = Accessories(heavy),
            Wiring = Leads(heavy),
        };
        return Chance(0.33) ? Mismatched(rig) : rig;
    }

    private MotorLabel Brushed(double kv)
    {
        // Fewer turns: faster, thicker wire. About 0.1 Ω at 1500 rpm/V.
        var resistance = 0.1 * Math.Pow(1500 / kv, 1.8) * Between(0.75, 1.35);
        return new()
        {
            Kind = MotorKind.Brushed,
            SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(kv),
            ResistanceOhm = Chance(0.6) ? resistance : null,
            NoLoadPoints = Chance(0.5) ? [new(7.2, Between(0.7, 1.8))] : [],
            Turns = Chance(0.5) ? Math.Round(52_000 / kv) : null,
            MassKg = Between(0.15, 0.21),
            CanDiameterM = 0.036,
            CanLengthM = Between(0.050, 0.060),
            Mount = Chance(0.6) ? MotorMount.Metal : null,
            Fan = Chance(0.15) ? true : null,
            Magnet = Chance(0.2) ? MagnetMaterial.Ndfeb : null,
        };
    }

    private MotorLabel Brushless(double kv)
    {
        var sensored = Chance(0.85);
        return new()
        {
            Kind = MotorKind.Brushless,
            Sensored = sensored,
            Rotor = RotorLayout.Inner,
            SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(kv),
            ResistanceOhm = Chance(0.7)
                ? 0.02 * Math.Pow(3300 / kv, 1.6) * Between(0.8, 1.4)
                : null,
            NoLoadPoints = Chance(0.6) ? [new(7.4, Between(1.0, 2.6))] : [],
            PolePairs = Pick(1, 2, 2),
            MassKg = Between(0.13, 0.20),
            CanDiameterM = 0.036,
            CanLengthM = Between(0.045, 0.055),
            MaxSpeedRadPerS = Chance(0.5) ? Unit.Rpm.ToSi(50_000) : null,
            Mount = Chance(0.6) ? MotorMount.Metal : null,
            Insulation = Chance(0.3) ? InsulationClass.H : null,
        };
    }

    private Chemistry Pack() =>
        Pick(
            Chemistry.Lipo,
            Chemistry.Lipo,
            Chemistry.Lipo,
            Chemistry.Lipo,
            Chemistry.Lipo,
            Chemistry.Lipo,
            Chemistry.Lihv,
            Chemistry.Liion,
            Chemistry.Lifepo4,
            Chemistry.Nimh
        );

    private BatteryLabel Battery(Chemistry chemistry, int cells, bool heavy)
    {
        var ampereHours = heavy ? Between(3.0, 6.0) : Between(1.8, 5.0);
        var lithium = chemistry != Chemistry.Nimh;
        var rate = chemistry switch
        {
            Chemistry.Liion => Between(7, 12),
            Chemistry.Nimh => Between(10, 15),
            Chemistry.Lifepo4 => Between(15, 30),
            _ => Between(25, 60),
        };
        return new()
        {
            Chemistry = chemistry,
            SeriesCells =
                lithium ? cells
                : cells == 2 ? Pick(6, 7)
                : 8,
            ParallelCells = chemistry == Chemistry.Liion ? 2 : null,
            CapacityCoulomb = Unit.MilliampereHour.ToSi(1000 * ampereHours),
            ContinuousC = Chance(0.8) ? Math.Round(rate) : null,
            CellResistanceOhm =
                lithium && Chance(0.4)
                    ? CellData.For(chemistry).ResistanceOhmCoulomb
                        / (ampereHours * 3600)
                        * (chemistry == Chemistry.Liion ? 2 : 1)
                        * Between(0.7, 1.6)
                    : null,
            Condition = Pick(PackCondition.New, PackCondition.New, PackCondition.Used),
        };
    }

    private ControllerLabel Controller(MotorLabel motor, int cells, bool heavy)
    {
        var brushless = motor.Kind == MotorKind.Brushless;
        var continuous = (double)(heavy ? Pick(60, 80, 100) : Pick(40, 45, 60, 80));
        return new()
        {
            MotorKinds = brushless
                ? Chance(0.5)
                    ? [MotorKind.Brushed, MotorKind.Brushless]
                    : [MotorKind.Brushless]
                : [MotorKind.Brushed],
            SensorInput = brushless ? motor.Sensored == true || Chance(0.5) : null,
            MinCells = 2,
            MaxCells = Math.Max(cells, Pick(3, 3, 4)),
            ContinuousCurrentA = continuous,
            BurstCurrentA = Chance(0.8) ? continuous * Between(2.5, 4.5) : null,
            BurstS = Chance(0.4) ? Pick(1, 2, 3) : null,
            OnResistanceOhm = Chance(0.3) ? 0.09 / continuous * Between(0.6, 1.3) : null,
            Freewheel = Chance(0.4) ? Freewheel.Synchronous : null,
            PwmFrequencyHz = brushless
                ? Chance(0.4)
                    ? Pick(8_000, 16_000, 32_000)
                    : null
                : Chance(0.5)
                    ? Pick(1_000, 2_000, 8_000, 16_000)
                    : null,
            Hold = brushless
                ? Pick(HoldMode.DragBrake, HoldMode.Active, HoldMode.DragBrake)
                : HoldMode.DragBrake,
            LowSpeedStart = brushless && motor.Sensored == false ? Chance(0.6) : null,
            VehicleMassLimitKg = Chance(0.25) ? Between(1.5, 4.5) : null,
            ReceiverSupply = new()
            {
                Regulator = Chance(0.15) ? Regulator.Linear : Regulator.Switching,
                VoltageV = Pick(6.0, 6.0, 7.4),
                ContinuousCurrentA = heavy ? Pick(4.0, 6.0, 8.0) : Pick(3.0, 4.0, 6.0),
            },
        };
    }

    // Builders gear a fast motor lower: at full throttle on the nominal voltage about 2 to 3.5 m/s.
    private VehicleLabel Chassis(double mass, bool heavy, double kvCells)
    {
        var tire = heavy ? Between(0.118, 0.140) : Between(0.096, 0.120);
        var top = Between(1.8, 3.6);
        var wanted = kvCells * 3.7 / 60 * Math.PI * tire / top;
        var pinion = Pick(11, 12, 13, 14, 15);
        var spur = Pick(54, 56, 58, 60);
        var rest = Math.Clamp(wanted * pinion / spur, 5, 16);
        return new()
        {
            MassKg = mass,
            TireDiameterM = tire,
            TireDiameterPrinted = Chance(0.2) ? true : null,
            Drivetrain = new()
            {
                PinionTeeth = pinion,
                SpurTeeth = spur,
                TransmissionRatio = rest / 3.2,
                AxleRatio = 3.2,
                Efficiency = Chance(0.2) ? Between(0.65, 0.85) : null,
                PinionModuleM = 0.0254 / 32,
                SpurModuleM = 0.0254 / 32,
                MeshCenterMinM = Chance(0.3) ? 0.024 : null,
                MeshCenterMaxM = Chance(0.3) ? 0.031 : null,
            },
        };
    }

    private CourseLabel Day() =>
        new()
        {
            AmbientC = Chance(0.7) ? Between(2, 36) : null,
            ClimbSlopeRad = Unit.Degree.ToSi(Pick(30, 35, 40, 45, 45)),
            CreepSpeedMPerS = Chance(0.5) ? Between(0.2, 0.45) : null,
            FrictionCoefficient = Chance(0.3) ? Between(0.9, 1.5) : null,
            WantedS = Chance(0.5) ? Between(10, 35) * 60 : null,
        };

    private AccessoryLabel[]? Accessories(bool heavy)
    {
        if (Chance(0.3))
        {
            return null;
        }

        var servo = new AccessoryLabel
        {
            Kind = AccessoryKind.Servo,
            WorkingCurrentA = heavy ? Between(1.0, 2.5) : Between(0.6, 1.6),
            JammedCurrentA = heavy ? Between(3, 6) : Between(2, 4),
        };
        var radio = new AccessoryLabel { Kind = AccessoryKind.Radio };
        return Chance(0.2)
                ?
                [
                    servo,
                    radio,
                    new() { Kind = AccessoryKind.Winch, WorkingCurrentA = Between(1, 2) },
                ]
            : Chance(0.3) ? [servo, radio, new() { Kind = AccessoryKind.Light }]
            : [servo, radio];
    }

    private WiringLabel Leads(bool heavy) =>
        new()
        {
            BatteryLeadAwg = Chance(0.5) ? Pick(12, 14, heavy ? 12 : 16) : null,
            BatteryLeadM = Chance(0.3) ? Between(0.1, 0.25) : null,
            MotorLeadAwg = Chance(0.5) ? Pick(12, 14, heavy ? 12 : 16) : null,
            ConnectorContinuousA = Chance(0.4) ? Pick(30.0, 40.0, 60.0) : null,
            FuseA = Chance(0.1) ? Pick(30.0, 40.0) : null,
        };

    // The mistakes that builders make: one of them.
    private RigLabel Mismatched(RigLabel rig) =>
        dice.Next(9) switch
        {
            0 => rig with
            {
                Battery = rig.Battery with { SeriesCells = rig.Battery.SeriesCells + Pick(1, 2) },
            },
            1 => Geared(rig, Between(1.6, 2.6)),
            2 => rig with
            {
                Controller = rig.Controller with { ContinuousCurrentA = 25, BurstCurrentA = 90 },
            },
            3 => rig with
            {
                Battery = rig.Battery with
                {
                    CapacityCoulomb = Unit.MilliampereHour.ToSi(Between(600, 1100)),
                    CellResistanceOhm = null,
                    Condition = PackCondition.Worn,
                },
            },
            4 => rig with
            {
                Controller = rig.Controller with
                {
                    ReceiverSupply = new()
                    {
                        Regulator = Regulator.Linear,
                        VoltageV = 6,
                        ContinuousCurrentA = 2,
                    },
                },
            },
            5 => rig with
            {
                Vehicle = rig.Vehicle with
                {
                    Drivetrain = rig.Vehicle.Drivetrain with { PinionModuleM = 0.0254 / 48 },
                },
            },
            6 => rig with { Controller = rig.Controller with { SensorInput = false } },
            7 => rig with { Vehicle = rig.Vehicle with { MassKg = rig.Vehicle.MassKg * 1.9 } },
            _ => rig with
            {
                Course = rig.Course with { ClimbSlopeRad = Unit.Degree.ToSi(60), AmbientC = 42 },
            },
        };

    private static RigLabel Geared(RigLabel rig, double taller) =>
        rig with
        {
            Vehicle = rig.Vehicle with
            {
                Drivetrain = rig.Vehicle.Drivetrain with
                {
                    TransmissionRatio = rig.Vehicle.Drivetrain.TransmissionRatio / taller,
                },
            },
        };

    private bool Chance(double share) => dice.NextDouble() < share;

    private double Between(double low, double high) => low + ((high - low) * dice.NextDouble());

    private T Pick<T>(params T[] from) => from[dice.Next(from.Length)];
}
