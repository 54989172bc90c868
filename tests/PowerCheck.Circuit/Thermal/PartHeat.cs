using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>
/// The controller in jam and climb, and the pack in the climb, from cold at the heat of the cold case: a capacitor behind
/// a resistor each. The controller's nodes are shares of its limit's distance from 25 °C.
/// </summary>
/// <param name="Rig">The rig.</param>
/// <param name="Jam">The jam, cold.</param>
/// <param name="Climb">The climb, cold.</param>
public sealed record PartHeat(RigPhysics Rig, CasePoint Jam, CasePoint Climb)
{
    private const string JamNode = "v(kj)";
    private const string ClimbNode = "v(kc)";
    private const string PackNode = "v(tb)";
    private const double PackJPerGramK = 1;

    private Waveforms? run;

    /// <summary>Runs the deck.</summary>
    /// <param name="momentsS">The moments that will be read [s].</param>
    public PartHeat Run(params double[] momentsS)
    {
        var (controller, pack) = (Rig.Rig.Controller, Rig.Rig.Battery);
        var deck = new Deck("controller and pack").Moments(momentsS);
        var standing = Rig.Rig.Motor.Brushed ? 1 : Math.Pow(controller.StandstillRatingShare, -2);
        deck.Add($"CJ kj 0 {controller.ThermalTimeConstantS} ic=0").Add($"RJ kj 0 1");
        deck.Add($"IJ 0 kj {Load(Jam, standing)}");
        deck.Add($"CC kc 0 {controller.ThermalTimeConstantS} ic=0").Add($"RC kc 0 1");
        deck.Add($"IC 0 kc {Load(Climb, 1)}");
        deck.Add($"VA ta 0 {Rig.Rig.Course.AmbientC}");
        deck.Add($"CB tb 0 {pack.MassG * PackJPerGramK} ic={pack.TemperatureC}");
        deck.Add($"RB tb ta {pack.PackToAmbientKPerW}").Add($"IB 0 tb {Climb.BatteryW}");
        var stopS = momentsS.Max();
        var span = new TransientSpan(stopS, stopS / 50) { RelativeTolerance = 1e-6 };
        return this with
        {
            run = CircuitSimulator.Transient(deck, span, JamNode, ClimbNode, PackNode),
        };
    }

    /// <summary>Controller in the jam [°C].</summary>
    public double JamC(double momentS) => ControllerC(JamNode, momentS);

    /// <summary>Controller in the climb [°C].</summary>
    public double ClimbC(double momentS) => ControllerC(ClimbNode, momentS);

    /// <summary>Cells in the climb [°C].</summary>
    public double PackC(double momentS) => run!.At(PackNode, momentS);

    private double ControllerC(string node, double momentS) =>
        Rig.Rig.Course.AmbientC
        + (run!.At(node, momentS) * (Rig.Rig.Controller.MaxTemperatureC - 25));

    // Heat with hot switches over that of the rated current; a linear receiver supply adds its own.
    private double Load(CasePoint point, double standing)
    {
        var controller = Rig.Rig.Controller;
        var hotOhm = Rig.SwitchesOhm * controller.HotResistanceFactor;
        var edges = point.Duty < 1 ? controller.EdgeTimeNs * controller.PwmFrequencyKhz / 2e6 : 0;
        // What the ripple draws while the bridge is on does not flow through the freewheel path while it is off.
        var sourceOhm = Rig.CellsOhm(point == Climb) + Rig.ConnectorOhm + Rig.BatteryLeadsOhm;
        var bareOhm = controller.PwmFrequencyKhz < 4 ? point.Duty * Rig.Motors * sourceOhm : 0;
        var rippleA = point.RippleA2 * (Rig.LoopOhm + bareOhm) / (point.BusV + Rig.FreewheelV);
        var freeA = (point.MotorA * (1 - point.Duty)) - rippleA;
        var lossW =
            (point.MotorRmsA * point.MotorRmsA * hotOhm)
            + (Rig.FreewheelV * freeA)
            + (point.MotorA * edges * point.BusV);
        var supplyW = controller.ReceiverSupply.Linear ? Rig.ReceiverSupplyW(point.BusV) : 0;
        return ((standing * lossW) + supplyW)
            / (controller.ContinuousCurrentA * controller.ContinuousCurrentA * hotOhm);
    }
}
