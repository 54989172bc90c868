using System.Globalization;
using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>
/// A course, lap after lap, from cold, half charged: one deck in which each segment's drive stands all the time and a clock
/// opens the one whose turn it is.
/// </summary>
/// <param name="rig">The rig.</param>
public sealed class CourseHeat(RigPhysics rig)
{
    // Time in which one segment hands over to the next [s].
    private const double EdgeS = 1e-3;
    private const double Degree = Math.PI / 180;

    private readonly Deck deck = new($"course of rig {rig.Rig.Number}");
    private readonly List<string> windingW = [];
    private readonly List<string> otherW = [];
    private readonly List<string> controllerW = [];

    /// <summary>Winding node.</summary>
    public const string Winding = "v(tw)";

    /// <summary>Case node.</summary>
    public const string Case = "v(tc)";

    /// <summary>Magnet node.</summary>
    public const string Magnet = "v(tm)";

    /// <summary>Controller node, over the air's temperature as a share of its limit's distance from 25 °C.</summary>
    public const string Controller = "v(tk)";

    private PlainMotor Motor => rig.Rig.Motor;

    private double StandingFactor =>
        Motor.Brushed ? 1 : 1 / Math.Pow(rig.Rig.Controller.StandstillRatingShare, 2);

    /// <summary>Runs the course.</summary>
    /// <param name="stopS">How long [s].</param>
    /// <param name="momentsS">The moments that will be read [s].</param>
    public Waveforms Run(double stopS, params double[] momentsS)
    {
        var ambient = rig.Rig.Course.AmbientC;
        deck.Network(rig, ambient, ambient).Moments(momentsS);
        var lapS = rig.Rig.Course.Segments.Sum(segment => segment.Seconds);
        var startS = 0.0;
        foreach (var (index, segment) in rig.Rig.Course.Segments.Index())
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"s{index}");
            Clock(name, index == 0, startS, segment.Seconds, lapS);
            Segment(name, segment);
            startS += segment.Seconds;
        }

        deck.Add($"BH 0 tw i={Sum(windingW)}");
        deck.Add($"BO 0 {(Motor.Brushed ? "tw" : "tc")} i={Sum(otherW)}");
        Memory();
        var span = new TransientSpan(stopS, lapS / 20) { RelativeTolerance = 1e-5 };
        return CircuitSimulator.Transient(deck, span, Winding, Case, Magnet, Controller);
    }

    private static string Sum(List<string> parts) =>
        parts.Count == 0 ? "0" : string.Join('+', parts);

    private void Clock(string name, bool first, double startS, double seconds, double lapS) =>
        deck.Add(
            first
                ? (FormattableString)
                    $"V{name}g {name}g 0 pulse(1 0 {seconds} {EdgeS} {EdgeS} {lapS - seconds - EdgeS} {lapS})"
                : $"V{name}g {name}g 0 pulse(0 1 {startS} {EdgeS} {EdgeS} {seconds - EdgeS} {lapS})"
        );

    private void Segment(string name, PlainSegment segment)
    {
        var drive = new WarmDrive(name, rig, true, rig.OpenV(rig.Rig.Battery.Cell.HalfV));
        switch (segment.Kind)
        {
            case PlainSegmentKind.Creep:
                Creep(drive, segment);
                break;
            case PlainSegmentKind.Hold:
                Hold(drive, segment);
                break;
            case PlainSegmentKind.Jammed:
                Jam(drive, segment);
                break;
            default:
                Idle(name);
                break;
        }
    }

    private void Creep(WarmDrive drive, PlainSegment segment)
    {
        var speed = segment.SpeedMPerS / rig.RadiusM * rig.Ratio;
        var force = rig.CreepN(Slope(segment));
        var share =
            force >= 0
                ? 1 / (rig.Rig.Vehicle.Efficiency * rig.Ratio * rig.Motors)
                : rig.BackDrivenShare;
        var (restA, perRadPerS) = rig.NoLoad;
        var frictionA = restA + (perRadPerS * speed);
        drive.Torque(deck, force * rig.RadiusM * share, speed, frictionA, true);
        Heat(drive, 1, 1, rig.TorqueNmPerA * frictionA * speed);
    }

    private void Hold(WarmDrive drive, PlainSegment segment)
    {
        var slope = Math.Abs(Slope(segment));
        var wheelN =
            rig.WeightN
            * (Math.Sin(slope) - (rig.Rig.Course.RollingResistanceCoefficient * Math.Cos(slope)));
        var (restA, perRadPerS) = rig.NoLoad;
        var torque = (wheelN * rig.RadiusM * rig.BackDrivenShare) - (rig.TorqueNmPerA * restA);
        if (torque <= 0 || rig.Rig.Controller.Hold == PlainHold.None)
        {
            Idle(drive.At);
            return;
        }

        if (rig.Rig.Controller.Hold == PlainHold.Active)
        {
            drive.Torque(deck, torque, 0, 0, true);
            Heat(drive, Motor.LockedHeatFactor, StandingFactor, 0);
            return;
        }

        // The friction that grows with speed helps: with kt·ω = i·R + v_b the torque is kt·i + kt·s·ω. Where it holds the
        // rig under the speed at which the brushes let a current through, it does so alone.
        var constant = rig.TorqueNmPerA;
        var brakeA = (torque - (perRadPerS * rig.BrushV)) / (constant + (perRadPerS * rig.LoopOhm));
        drive.Shorted(deck, constant * Math.Max(0, brakeA));
        var speed =
            brakeA > 0
                ? ((brakeA * rig.LoopOhm) + rig.BrushV) / constant
                : torque / (constant * perRadPerS);
        Heat(drive, 1, 1, rig.TorqueNmPerA * (restA + (perRadPerS * speed)) * speed);
    }

    private void Jam(WarmDrive drive, PlainSegment segment)
    {
        if (rig.Rig.Controller.CurrentLimitA is { } limitA)
        {
            drive.Held(deck, limitA, segment.Throttle, true);
        }
        else
        {
            drive.Throttle(deck, segment.Throttle);
        }

        Heat(drive, Motor.LockedHeatFactor, StandingFactor, 0);
    }

    private double Slope(PlainSegment segment) =>
        Math.Clamp(segment.SlopeDegrees * Degree, -rig.SlipSlopeRad, rig.SlipSlopeRad);

    private void Heat(WarmDrive drive, double uneven, double standing, double spinW)
    {
        windingW.Add(FormattableString.Invariant($"v({drive.At}g)*{uneven:R}*{drive.WindingW}"));
        otherW.Add(FormattableString.Invariant($"v({drive.At}g)*({spinW:R}+{drive.BrushW})"));
        var supplyW = SupplyW($"v({drive.At}b)");
        controllerW.Add(
            FormattableString.Invariant(
                $"v({drive.At}g)*({standing:R}*{drive.ControllerW}+{supplyW})"
            )
        );
    }

    // Nothing but the receiver supply draws.
    private void Idle(string name)
    {
        var sourceOhm = rig.CellsOhm(true) + rig.ConnectorOhm + rig.BatteryLeadsOhm;
        var leftV = rig.OpenV(rig.Rig.Battery.Cell.HalfV) - (rig.ConstantA * sourceOhm);
        var supplyW = SupplyW(leftV.ToString("R", CultureInfo.InvariantCulture));
        controllerW.Add($"v({name}g)*{supplyW}");
    }

    // A linear receiver supply heats the controller; the loss of a switching one is in the rating.
    private string SupplyW(string busV)
    {
        var supply = rig.Rig.Controller.ReceiverSupply;
        return supply.Linear
            ? FormattableString.Invariant($"max({busV}-{supply.VoltageV:R},0)*{rig.ReceiverA:R}")
            : "0";
    }

    // The thermal memory: loss over the rated loss, behind a time constant.
    private void Memory()
    {
        var controller = rig.Rig.Controller;
        var ratedW =
            Math.Pow(controller.ContinuousCurrentA, 2)
            * controller.OnResistanceMilliohm
            / 1000
            * controller.HotResistanceFactor;
        deck.Add($"CK tk 0 {controller.ThermalTimeConstantS} ic=0").Add($"RK tk 0 1");
        deck.Add($"BK 0 tk i=({Sum(controllerW)})/{ratedW}");
    }
}
