using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// What the elements of a deck are, in SI, from the plain figures: the arithmetic of labels, before any circuit.
/// </summary>
/// <param name="Rig">The rig.</param>
public sealed record RigPhysics(PlainRig Rig)
{
    /// <summary>Drop of a freewheel diode [V].</summary>
    public const double DiodeV = 0.8;

    private const double CopperPerK = 0.00393;
    private const double CopperOhmM = 1e-6 / 58;
    private const double Gravity = 9.80665;
    private const double Degree = Math.PI / 180;

    private PlainMotor Motor => Rig.Motor;

    private PlainVehicle Vehicle => Rig.Vehicle;

    private PlainCourse Course => Rig.Course;

    /// <summary>Torque and back-EMF constant [N·m/A].</summary>
    public double TorqueNmPerA => 30 / (Math.PI * Motor.KvRpmPerVolt);

    /// <summary>Winding at 20 °C [Ω].</summary>
    public double WindingOhm =>
        Motor.ResistanceMilliohm / 1000 / (1 + (CopperPerK * (Motor.ResistanceTemperatureC - 20)));

    /// <summary>Both switches, cold [Ω].</summary>
    public double SwitchesOhm => Rig.Controller.OnResistanceMilliohm / 1000;

    /// <summary>Two motor leads [Ω].</summary>
    public double MotorLeadsOhm => LeadsOhm(Rig.Wiring.MotorLeadAwg, Rig.Wiring.MotorLeadMm);

    /// <summary>Two battery leads [Ω].</summary>
    public double BatteryLeadsOhm => LeadsOhm(Rig.Wiring.BatteryLeadAwg, Rig.Wiring.BatteryLeadMm);

    /// <summary>The whole loop of a motor [Ω].</summary>
    public double LoopOhm => WindingOhm + SwitchesOhm + MotorLeadsOhm;

    /// <summary>Drop of both brushes [V].</summary>
    public double BrushV => Motor.BrushDropV;

    /// <summary>Drop while the current freewheels, beyond the loop's resistance [V].</summary>
    public double FreewheelV => Rig.Controller.DiodeFreewheel ? DiodeV : 0;

    /// <summary>Motors on the pack.</summary>
    public int Motors => Vehicle.MotorCount;

    /// <summary>Motor turns a wheel turn in the lowest gear.</summary>
    public double Ratio =>
        (double)Vehicle.SpurTeeth
        / Vehicle.PinionTeeth
        * Vehicle.TransmissionRatios.Max()
        * Vehicle.AxleRatio;

    /// <summary>Loaded rolling radius [m].</summary>
    public double RadiusM =>
        Vehicle.TireDiameterMm / 2000 * (Vehicle.TireDiameterPrinted ? Vehicle.LoadedTireShare : 1);

    /// <summary>Weight [N].</summary>
    public double WeightN => Vehicle.MassKg * Gravity;

    /// <summary>Slope at which the tires let go [rad].</summary>
    public double SlipSlopeRad => Math.Atan(Course.FrictionCoefficient * Vehicle.DrivenWeightShare);

    /// <summary>Slope of the climb, no more than the ground holds [rad].</summary>
    public double ClimbSlopeRad => Math.Min(Course.ClimbSlopeDegrees * Degree, SlipSlopeRad);

    /// <summary>Force at the tires that creeps up a slope [N].</summary>
    /// <param name="slopeRad">The slope [rad].</param>
    public double CreepN(double slopeRad) =>
        WeightN * (Math.Sin(slopeRad) + (Course.RollingResistanceCoefficient * Math.Cos(slopeRad)));

    /// <summary>Force at the tires when they just let go on the level, rolling resistance included [N].</summary>
    public double SlipN =>
        WeightN
        * Vehicle.DrivenWeightShare
        * (Course.FrictionCoefficient + Course.RollingResistanceCoefficient);

    /// <summary>Force with which the rig wants to roll back from the climb's slope; under 0 it does not [N].</summary>
    public double RollBackN =>
        WeightN
        * (
            Math.Sin(ClimbSlopeRad)
            - (Course.RollingResistanceCoefficient * Math.Cos(ClimbSlopeRad))
        );

    /// <summary>Shaft torque over wheel torque, one motor, when the wheels drive it: the losses help [1].</summary>
    public double BackDrivenShare => Math.Max(0, 2 - (1 / Vehicle.Efficiency)) / (Ratio * Motors);

    /// <summary>Torque at all wheels that a motor current makes, 0 or more [N·m].</summary>
    /// <param name="motorA">Current of each motor [A].</param>
    /// <param name="frictionA">What friction takes of it [A].</param>
    public double WheelNm(double motorA, double frictionA) =>
        Math.Max(0, motorA - frictionA) * TorqueNmPerA * Ratio * Vehicle.Efficiency * Motors;

    /// <summary>Motor speed at the creep speed [rad/s].</summary>
    public double CreepRadPerS => Course.CreepSpeedMPerS / RadiusM * Ratio;

    /// <summary>Open-circuit voltage of the pack [V].</summary>
    /// <param name="cellV">Of one cell [V].</param>
    public double OpenV(double cellV) => cellV * Rig.Battery.SeriesCells;

    /// <summary>The pack's cells [Ω].</summary>
    /// <param name="lasting">Whether the load lasts.</param>
    public double CellsOhm(bool lasting)
    {
        var pack = Rig.Battery;
        var cold = Math.Exp(
            pack.ResistanceTemperatureConstantK
                * ((1 / (pack.TemperatureC + 273.15)) - (1 / 298.15))
        );
        return pack.CellResistanceMilliohm
            / 1000
            * (lasting ? pack.LastingResistanceFactor : 1)
            * cold
            * pack.SeriesCells
            / pack.ParallelCells;
    }

    /// <summary>The pack's connector [Ω].</summary>
    public double ConnectorOhm => Rig.Battery.ConnectorMilliohm / 1000;

    /// <summary>The whole source, pack and battery leads [Ω].</summary>
    /// <param name="lasting">Whether the load lasts.</param>
    public double SourceOhm(bool lasting) => CellsOhm(lasting) + ConnectorOhm + BatteryLeadsOhm;

    /// <summary>Whether capacitors smooth the bus within a period.</summary>
    public bool Smoothed => Rig.Controller.PwmFrequencyKhz >= Ripple.UnsmoothedUnderKhz;

    /// <summary>
    /// What the ripple heats, as a resistance of one motor's ripple: its loop and, where the bus is not smoothed, the source
    /// while the bridge is on, which carries the ripple of all motors [Ω].
    /// </summary>
    /// <param name="duty">Share of the time that the bridge is on.</param>
    /// <param name="lasting">Whether the load lasts.</param>
    public double RippleOhm(double duty, bool lasting) =>
        Smoothed ? LoopOhm : LoopOhm + (duty * Motors * SourceOhm(lasting));

    /// <summary>Mean current that the receiver supply gives [A].</summary>
    public double ReceiverA => Rig.Accessories.Where(one => !one.OnPack).Sum(MeanA);

    /// <summary>Currents drawn from the bus whatever its voltage [A].</summary>
    public double ConstantA =>
        (Motors * Rig.Controller.QuiescentCurrentA)
        + Rig.Accessories.Where(one => one.OnPack).Sum(MeanA)
        + (Rig.Controller.ReceiverSupply.Linear ? ReceiverA : 0);

    /// <summary>Power drawn from the bus whatever its voltage [W].</summary>
    public double ConstantW =>
        Rig.Controller.ReceiverSupply.Linear
            ? 0
            : Rig.Controller.ReceiverSupply.VoltageV
                * ReceiverA
                / Rig.Controller.ReceiverSupply.Efficiency;

    /// <summary>No-load current at standstill [A] and its growth with speed [A·s/rad].</summary>
    public (double RestA, double PerRadPerS) NoLoad
    {
        get
        {
            var first = Motor.NoLoadPoints[0];
            var firstRadPerS = NoLoadRadPerS(first);
            if (Motor.NoLoadPoints.Count == 1)
            {
                var restA = Motor.NoLoadStandstillShare * first.CurrentA;
                return (restA, (first.CurrentA - restA) / firstRadPerS);
            }

            var second = Motor.NoLoadPoints[1];
            var slope = (second.CurrentA - first.CurrentA) / (NoLoadRadPerS(second) - firstRadPerS);
            return (first.CurrentA - (slope * firstRadPerS), slope);
        }
    }

    /// <summary>Heat of the receiver supply [W].</summary>
    /// <param name="busV">Bus voltage [V].</param>
    public double ReceiverSupplyW(double busV)
    {
        var supply = Rig.Controller.ReceiverSupply;
        return supply.Linear
            ? Math.Max(0, busV - supply.VoltageV) * ReceiverA
            : ConstantW - (supply.VoltageV * ReceiverA);
    }

    private double NoLoadRadPerS(PlainNoLoadPoint point) =>
        (point.VoltageV - (point.CurrentA * WindingOhm) - BrushV) / TorqueNmPerA;

    private double MeanA(PlainAccessory one) =>
        one.IdleCurrentA + (Course.AccessoryDuty * (one.WorkingCurrentA - one.IdleCurrentA));

    private double LeadsOhm(double gauge, double lengthMm)
    {
        var diameterM = 0.000127 * Math.Pow(92, (36 - gauge) / 39);
        var area = Math.PI * diameterM * diameterM / 4;
        return CopperOhmM
            * 2
            * (lengthMm / 1000)
            / area
            * (1 + (CopperPerK * (Course.AmbientC - 20)));
    }
}
