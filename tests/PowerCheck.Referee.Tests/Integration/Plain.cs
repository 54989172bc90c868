using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Batteries;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>
/// The figures of a rig that the integrations start from: what its maker prints, and what the circuit project's arithmetic of
/// labels makes of leads, pack, other loads and no-load points. One thing is the model's own: the curve of a cell's
/// open-circuit voltage over its charge, which published rows hold at the points of its tables. Nothing else here knows how
/// the check computes.
/// </summary>
internal sealed class Plain
{
    public const double Alpha = 0.00393;
    private const double Gravity = 9.80665;

    private readonly RigPhysics physics;
    private readonly Chemistry chemistry;

    public Plain(PlainRig rig)
    {
        physics = new(rig);
        chemistry = PlainBatteryLabel.Of(rig.Battery).Chemistry!.Value;
        Rig = rig;
        Kt20 = 30 / (Math.PI * rig.Motor.KvRpmPerVolt);
        R20 =
            rig.Motor.ResistanceMilliohm
            / 1000
            / (1 + (Alpha * (rig.Motor.ResistanceTemperatureC - 20)));
        (StandstillA, FrictionSlope) = physics.NoLoad;
        LoopOhm = physics.SwitchesOhm + physics.MotorLeadsOhm;
        PackOhm = physics.CellsOhm(lasting: true) + physics.ConnectorOhm;
        SourceOhm = physics.SourceOhm(lasting: true);
        AuxiliaryA = physics.ConstantA;
        AuxiliaryW = physics.ConstantW;
        ReceiverA = physics.ReceiverA;
        FreewheelV = rig.Controller.DiodeFreewheel ? 0.8 : 0;
        EdgeShare = rig.Controller.EdgeTimeNs * 1e-9 * rig.Controller.PwmFrequencyKhz * 1000 / 2;
        var v = rig.Vehicle;
        Ratio = v.SpurTeeth * v.TransmissionRatios.Max() * v.AxleRatio / v.PinionTeeth;
        RadiusM = v.TireDiameterMm / 2000 * (v.TireDiameterPrinted ? v.LoadedTireShare : 1);
        BackEfficiency = Math.Max(0, 2 - (1 / v.Efficiency));
        SlipRad = Math.Atan(rig.Course.FrictionCoefficient * v.DrivenWeightShare);
    }

    public PlainRig Rig { get; }

    public double Kt20 { get; }

    public double R20 { get; }

    public double StandstillA { get; }

    public double FrictionSlope { get; }

    /// <summary>Switches, cold, and motor leads.</summary>
    public double LoopOhm { get; }

    /// <summary>The pack under lasting load, with its connector.</summary>
    public double PackOhm { get; }

    /// <summary>Pack and battery leads.</summary>
    public double SourceOhm { get; }

    public double AuxiliaryA { get; }

    public double AuxiliaryW { get; }

    /// <summary>Mean current that the receiver supply gives.</summary>
    public double ReceiverA { get; }

    public double FreewheelV { get; }

    public double EdgeShare { get; }

    public double Ratio { get; }

    public double RadiusM { get; }

    public double SlipRad { get; }

    private double BackEfficiency { get; }

    public int Motors => Rig.Vehicle.MotorCount;

    public double AmbientC => Rig.Course.AmbientC;

    public bool Ripples => Rig.Motor.InductanceMicrohenry is not null;

    public double OpenCircuitV(double charge) =>
        physics.OpenV(OpenCircuit.CellV(chemistry, charge));

    public double Ohm(double windingC) => R20 * (1 + (Alpha * (windingC - 20)));

    public double Kt(double magnetC) =>
        Kt20 * (1 + (Rig.Motor.MagnetCoefficientPerK * (magnetC - 20)));

    public double FrictionA(double radPerS) => StandstillA + (FrictionSlope * radPerS);

    /// <summary>Where the magnet's temperature is taken: the case, or half way to the winding in an inner rotor.</summary>
    public double MagnetC(double windingC, double caseC) =>
        Rig.Motor.Brushed || Rig.Motor.OuterRotor ? caseC : (windingC + caseC) / 2;

    /// <summary>Shaft torque of creeping on a slope, of one motor [N·m].</summary>
    public double CreepNm(double slopeRad)
    {
        var slope = Math.Clamp(slopeRad, -SlipRad, SlipRad);
        var crr = Rig.Course.RollingResistanceCoefficient;
        var wheel =
            Rig.Vehicle.MassKg * Gravity * (Math.Sin(slope) + (crr * Math.Cos(slope))) * RadiusM;
        var shaft = wheel >= 0 ? wheel / Rig.Vehicle.Efficiency : wheel * BackEfficiency;
        return shaft / (Ratio * Motors);
    }

    /// <summary>Torque that the slope puts on one motor's shaft while it stands [N·m].</summary>
    public double HoldNm(double slopeRad)
    {
        var slope = Math.Min(Math.Abs(slopeRad), SlipRad);
        var crr = Rig.Course.RollingResistanceCoefficient;
        var wheel =
            Rig.Vehicle.MassKg * Gravity * (Math.Sin(slope) - (crr * Math.Cos(slope))) * RadiusM;
        return wheel * BackEfficiency / (Ratio * Motors);
    }
}
