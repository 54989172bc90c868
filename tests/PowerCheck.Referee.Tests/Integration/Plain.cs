using PowerCheck.Circuit.Rigs;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Rigs;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>
/// The figures of a rig that the integrations start from: what its maker prints, and single figures that completing it
/// works out. Nothing here knows how the check computes.
/// </summary>
internal sealed class Plain
{
    public const double Alpha = 0.00393;
    private const double Gravity = 9.80665;

    public Plain(PlainRig rig)
        : this(rig, RigCompletion.Of(PlainLabel.Of(rig)).Rig) { }

    private Plain(PlainRig rig, Rig complete)
    {
        Rig = rig;
        Complete = complete;
        Kt20 = 30 / (Math.PI * rig.Motor.KvRpmPerVolt);
        R20 =
            rig.Motor.ResistanceMilliohm
            / 1000
            / (1 + (Alpha * (rig.Motor.ResistanceTemperatureC - 20)));
        StandstillA = complete.Motor.NoLoad.StandstillA;
        FrictionSlope = complete.Motor.NoLoad.SlopeAPerRadPerS;
        LoopOhm = (rig.Controller.OnResistanceMilliohm / 1000) + complete.Leads.MotorOhm;
        SourceOhm = complete.Battery.LastingResistanceOhm + complete.Leads.BatteryOhm;
        AuxiliaryA = complete.Auxiliary.CurrentA;
        AuxiliaryW = complete.Auxiliary.PowerW;
        FreewheelV = rig.Controller.DiodeFreewheel ? 0.8 : 0;
        EdgeShare = rig.Controller.EdgeTimeNs * 1e-9 * rig.Controller.PwmFrequencyKhz * 1000 / 2;
        var v = rig.Vehicle;
        Ratio = v.SpurTeeth * v.TransmissionRatios.Max() * v.AxleRatio / v.PinionTeeth;
        RadiusM = v.TireDiameterMm / 2000 * (v.TireDiameterPrinted ? v.LoadedTireShare : 1);
        BackEfficiency = Math.Max(0, 2 - (1 / v.Efficiency));
        SlipRad = Math.Atan(rig.Course.FrictionCoefficient * v.DrivenWeightShare);
    }

    public PlainRig Rig { get; }

    public Rig Complete { get; }

    public double Kt20 { get; }

    public double R20 { get; }

    public double StandstillA { get; }

    public double FrictionSlope { get; }

    /// <summary>Switches, cold, and motor leads.</summary>
    public double LoopOhm { get; }

    public double SourceOhm { get; }

    public double AuxiliaryA { get; }

    public double AuxiliaryW { get; }

    public double FreewheelV { get; }

    public double EdgeShare { get; }

    public double Ratio { get; }

    public double RadiusM { get; }

    public double SlipRad { get; }

    private double BackEfficiency { get; }

    public int Motors => Rig.Vehicle.MotorCount;

    public double AmbientC => Rig.Course.AmbientC;

    public bool Ripples => Rig.Motor.InductanceMicrohenry is not null;

    public double OpenCircuitV(double charge) => Complete.Battery.OpenCircuitV(charge);

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
