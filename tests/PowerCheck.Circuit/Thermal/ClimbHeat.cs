using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>A motor that climbs from cold: the current that the torque asks for grows as the magnet warms.</summary>
/// <param name="run">What the simulator wrote.</param>
public sealed class ClimbHeat(Waveforms run)
{
    private const string Winding = "v(tw)";
    private const string Case = "v(tc)";
    private const string Magnet = "v(tm)";

    /// <summary>Runs the climb.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="stopS">How long [s].</param>
    /// <param name="momentsS">The moments that will be read [s].</param>
    public static ClimbHeat Run(RigPhysics rig, double stopS, params double[] momentsS)
    {
        var speed = rig.CreepRadPerS;
        var force = rig.CreepN(rig.ClimbSlopeRad);
        var torque = force * rig.RadiusM / (rig.Ratio * rig.Rig.Vehicle.Efficiency * rig.Motors);
        var (restA, perRadPerS) = rig.NoLoad;
        var frictionA = restA + (perRadPerS * speed);
        var ambient = rig.Rig.Course.AmbientC;
        var deck = new Deck("climb").Network(rig, ambient, ambient).Moments(momentsS);
        var drive = new WarmDrive("c", rig, true, rig.OpenV(rig.Rig.Battery.Cell.HalfV));
        drive.Torque(deck, torque, speed, frictionA, false);
        deck.Add($"BH 0 tw i={drive.WindingW}");
        deck.Add(
            $"BO 0 {(rig.Rig.Motor.Brushed ? "tw" : "tc")} i={rig.TorqueNmPerA * frictionA * speed}+{drive.BrushW}"
        );
        var span = new TransientSpan(stopS, stopS / 100) { RelativeTolerance = 1e-6 };
        return new(CircuitSimulator.Transient(deck, span, Winding, Case, Magnet));
    }

    /// <summary>Winding at a moment [°C].</summary>
    public double WindingC(double momentS) => run.At(Winding, momentS);

    /// <summary>Case at a moment [°C].</summary>
    public double CaseC(double momentS) => run.At(Case, momentS);

    /// <summary>Magnet at a moment [°C].</summary>
    public double MagnetC(double momentS) => run.At(Magnet, momentS);

    /// <summary>Winding at the end of the run, or the highest where it ran away on the way [°C].</summary>
    public double SettledC =>
        run.Columns[Winding].Max() > MotorHeatDeck.RunawayC
            ? run.Columns[Winding].Max()
            : run.Columns[Winding][^1];
}
