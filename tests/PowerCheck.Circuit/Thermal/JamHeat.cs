using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>
/// A wedged motor from cold, full pack: the copper alone at first, then the whole network. The throttle is held and the
/// current falls as the winding warms; where the controller's limit bounds the current, that is held instead.
/// </summary>
/// <param name="Rig">The rig.</param>
/// <param name="Cold">Where the jam starts: the cold case.</param>
public sealed record JamHeat(RigPhysics Rig, CasePoint Cold)
{
    private const double CopperAloneS = 2;

    // On the way from the open circuit a locked motor draws many times what it does then.
    private const double BusDelayS = 2e-5;

    private const string Winding = "v(tw)";

    private bool Limited =>
        Rig.Rig.Controller.CurrentLimitA is { } limitA && Cold.MotorA > limitA * (1 - 1e-9);

    /// <summary>Temperature of the winding [°C] at moments after the throttle was opened.</summary>
    /// <param name="momentsS">The moments [s], above 0.</param>
    /// <returns>The temperature at each moment, and the highest up to the last of them.</returns>
    public (double[] WindingC, double HighestC) Run(params double[] momentsS)
    {
        var last = momentsS.Max();
        var copper = Copper(momentsS.Where(moment => moment < CopperAloneS));
        var whole =
            last > CopperAloneS
                ? Whole(copper.At(Winding, CopperAloneS), momentsS.Select(at => at - CopperAloneS))
                : null;
        var read = Array.ConvertAll(
            momentsS,
            at =>
                at <= CopperAloneS ? copper.At(Winding, at) : whole!.At(Winding, at - CopperAloneS)
        );
        return (read, Math.Max(read.Max(), whole?.Columns[Winding].Max() ?? 0));
    }

    private Waveforms Copper(IEnumerable<double> momentsS) =>
        Run(new Deck("wedged, copper alone").Copper(Rig).Moments(momentsS), CopperAloneS, false);

    private Waveforms Whole(double handedC, IEnumerable<double> momentsS)
    {
        var moments = momentsS.ToList();
        var deck = new Deck("wedged, whole motor").Network(Rig, handedC, Rig.Rig.Course.AmbientC);
        return Run(deck.Moments(moments), moments.Max(), true);
    }

    // The brushes' drop heats the rotor once the whole of it counts.
    private Waveforms Run(Deck deck, double stopS, bool whole)
    {
        var drive = new WarmDrive("j", Rig, false, Rig.OpenV(Rig.Rig.Battery.Cell.FullV))
        {
            DelayS = BusDelayS,
        };
        drive = Limited ? drive.Held(deck, Cold.MotorA, 1, false) : drive.Throttle(deck, Cold.Duty);
        deck.Add(
            $"BH 0 tw i={Rig.Rig.Motor.LockedHeatFactor}*{drive.WindingW}+{(whole ? drive.BrushW : "0")}"
        );
        var span = new TransientSpan(stopS, stopS / 50) { RelativeTolerance = 1e-6 };
        return CircuitSimulator.Transient(deck, span, Winding);
    }
}
