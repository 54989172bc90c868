using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Simulator;

namespace PowerCheck.Circuit.Thermal;

/// <summary>
/// What drives a warm motor, as nodes of a deck: current (<c>i</c>), resistance of the loop (<c>r</c>), bus (<c>b</c>),
/// duty (<c>d</c>), mean square of the ripple (<c>q</c>) and what the bridge draws for it (<c>s</c>), each following the
/// temperatures at every moment. Node names begin with the drive's name.
/// </summary>
/// <remarks>
/// Bus, duty and ripple hang on each other. The bus follows what duty and ripple make of it (<c>n</c>) behind a delay that
/// is short against all heat: it comes down from the open circuit to the upper root, and nothing has to be searched for.
/// </remarks>
/// <param name="At">Name of the drive.</param>
/// <param name="Rig">The rig.</param>
/// <param name="Lasting">Whether the load lasts, for the pack's resistance.</param>
/// <param name="OpenV">Open-circuit voltage of the pack [V].</param>
internal sealed record WarmDrive(string At, RigPhysics Rig, bool Lasting, double OpenV)
{
    private const double CopperPerK = 0.00393;

    /// <summary>Delay of the bus [s]: short against what is looked at, and no shorter than need be.</summary>
    public double DelayS { get; init; } = 0.01;

    private double PeriodS => 1e-3 / Rig.Rig.Controller.PwmFrequencyKhz;

    private bool Rippling => Rig.Rig.Motor.InductanceMicrohenry is not null;

    private bool Bare => Rig.Rig.Controller.PwmFrequencyKhz < 4;

    private double SourceOhm => Rig.CellsOhm(Lasting) + Rig.ConnectorOhm + Rig.BatteryLeadsOhm;

    private double PathOhm => Rig.SwitchesOhm + Rig.MotorLeadsOhm;

    // What the constant currents leave of the open-circuit voltage.
    private double LeftV => Math.Max(0, OpenV - (SourceOhm * Rig.ConstantA));

    // Share of the motor current that both edges of a switching draw from the bus.
    private double Edges => Rig.Rig.Controller.EdgeTimeNs * 1e-9 / PeriodS / 2;

    /// <summary>Heat in the winding by current and ripple [W].</summary>
    public string WindingW =>
        FormattableString.Invariant($"(v({At}i)*v({At}i)+v({At}q))*(v({At}r)-{PathOhm:R})");

    /// <summary>Heat that the brushes' drop makes [W].</summary>
    public string BrushW => FormattableString.Invariant($"{Rig.BrushV:R}*abs(v({At}i))");

    /// <summary>Heat in a controller whose switches are hot, without its receiver supply [W].</summary>
    public string ControllerW
    {
        get
        {
            var hotOhm = Rig.SwitchesOhm * Rig.Rig.Controller.HotResistanceFactor;
            return FormattableString.Invariant(
                $"((v({At}i)*v({At}i)+v({At}q))*{hotOhm:R}+max(v({At}i),0)*({Rig.FreewheelV:R}*(1-v({At}d))+{Edges:R}*v({At}b)*u(1-1e-6-v({At}d)))*u(v({At}d)-1e-6)-{Rig.FreewheelV:R}*v({At}s))"
            );
        }
    }

    private string Magnet =>
        FormattableString.Invariant(
            $"({Rig.TorqueNmPerA:R}*min(max(1+({Rig.Rig.Motor.MagnetCoefficientPerK:R})*(v(tm)-20),0.1),2))"
        );

    /// <summary>A torque at a speed: the current follows the magnet.</summary>
    /// <remarks>Bus and duty only where the ripple needs them, or where they are asked for.</remarks>
    public WarmDrive Torque(
        Deck deck,
        double torqueNm,
        double speedRadPerS,
        double frictionA,
        bool bus
    )
    {
        deck.Add($"B{At}i {At}i 0 v={torqueNm}/{Magnet}+{frictionA}");
        var turning = Loop(deck);
        return bus || Rippling ? turning.Fed(deck, speedRadPerS) : turning.Still(deck);
    }

    /// <summary>A current on a motor that stands, held as long as a duty can drive it.</summary>
    public WarmDrive Held(Deck deck, double currentA, double duty, bool bus)
    {
        var full = (this with { At = At + "f" }).Throttle(deck, duty);
        deck.Add($"B{At}i {At}i 0 v=min({currentA},v({full.At}i))");
        var standing = Loop(deck);
        return bus || Rippling ? standing.Fed(deck, 0) : standing.Still(deck);
    }

    /// <summary>A torque held by a shorted winding: nothing from the bus, no ripple.</summary>
    public WarmDrive Shorted(Deck deck, double torqueNm)
    {
        deck.Add($"B{At}i {At}i 0 v={torqueNm}/{Magnet}");
        Still(deck);
        deck.Add($"V{At}d {At}d 0 0").Add($"V{At}b {At}b 0 {LeftV}");
        return Loop(deck);
    }

    /// <summary>A duty on a motor that stands: the current follows the winding.</summary>
    /// <remarks>
    /// With i = (D·V − c)/r the bus is A·V = B − source·P/V, whose upper root stands here; where the constant powers ask for
    /// more than the motor leaves them, they get the most that they can have.
    /// </remarks>
    public WarmDrive Throttle(Deck deck, double duty)
    {
        var lostV = ((1 - duty) * Rig.FreewheelV) + Rig.BrushV;
        var edges = duty < 1 ? Edges : 0;
        var drawn = Rig.Motors * SourceOhm * (Bare ? 1 + (edges / duty) : duty + edges);
        var rippleW = Bare ? "0" : FormattableString.Invariant($"{Rig.Motors}*v({At}s)*v({At}b)");
        var rippleV = Bare ? Rig.Motors * SourceOhm / duty : 0;
        deck.Add($"B{At}a {At}a 0 v=1+{drawn * duty}/v({At}r)");
        deck.Add($"B{At}x {At}x 0 v={LeftV}+{drawn * lostV}/v({At}r)-{rippleV}*v({At}s)");
        deck.Add(
            $"B{At}n {At}n 0 v=(v({At}x)+sqrt(max(v({At}x)*v({At}x)-{4 * SourceOhm}*v({At}a)*({Rig.ConstantW}+{rippleW}),0)))/(2*v({At}a))"
        );
        Bus(deck).Add($"V{At}d {At}d 0 {duty}");
        deck.Add($"B{At}i {At}i 0 v=max(({duty}*v({At}b)-{lostV})/v({At}r),0)");
        return duty < 1 ? Loop(deck).Ripple(deck, "d", "q", "s") : Loop(deck).Still(deck);
    }

    // The simulator starts its search at .ic: without it at 0, where a resistance cannot be divided by.
    private WarmDrive Loop(Deck deck)
    {
        deck.Add(
            $"B{At}r {At}r 0 v={Rig.WindingOhm}*(1+{CopperPerK}*(max(min(v(tw),{MotorHeatDeck.ClampC}),{MotorHeatDeck.LeastC})-20))+{PathOhm}"
        );
        deck.Add($".ic v({At}r)={Rig.LoopOhm}");
        return this;
    }

    private Deck Bus(Deck deck) =>
        deck.Add($"R{At}n {At}n {At}b 1")
            .Add($"C{At}b {At}b 0 {DelayS} ic={LeftV}")
            .Add($".ic v({At}b)={LeftV}");

    // Bus and duty of a current that is fed: the bridge takes what the duty needs to make that current flow. What is under
    // the root (k) is under 0 where the pack cannot carry it: then the bridge is fully on, and nothing ripples. The edges
    // fade with the last thousandth of the duty, for a step is nothing that can be followed.
    private WarmDrive Fed(Deck deck, double speedRadPerS)
    {
        deck.Add(
            $"B{At}v {At}v 0 v=v({At}i)*v({At}r)+{speedRadPerS}*{Magnet}+{Rig.BrushV}*u(v({At}i))"
        );
        deck.Add(
            $"B{At}e {At}e 0 v=u(v({At}i))*u(v({At}v))*min((v({At}v)+{Rig.FreewheelV})/max(v({At}b)+{Rig.FreewheelV},0.1),1)"
        );
        var edges = FormattableString.Invariant($"{Edges:R}*min(1000*(1-v({At}e)),1)");
        Ripple(deck, "e", "y", "z");
        if (Bare)
        {
            deck.Add(
                $"B{At}x {At}x 0 v=max({LeftV}-{SourceOhm * Rig.Motors}*(max(v({At}i),0)*(1+{edges}/max(v({At}e),0.001))+v({At}z)/max(v({At}e),0.001)),0)"
            );
            deck.Add($"V{At}p {At}p 0 {Rig.ConstantW}");
        }
        else
        {
            deck.Add($"V{At}x {At}x 0 {LeftV}");
            deck.Add(
                $"B{At}p {At}p 0 v={Rig.Motors}*(max(v({At}v),0)*max(v({At}i),0)+u(v({At}v))*max(v({At}i),0)*({Rig.FreewheelV}*(1-v({At}e))+{edges}*v({At}b))+v({At}z)*v({At}b))+{Rig.ConstantW}"
            );
        }

        deck.Add($"B{At}k {At}k 0 v=v({At}x)*v({At}x)-{4 * SourceOhm}*v({At}p)");
        deck.Add($"B{At}n {At}n 0 v=(v({At}x)+sqrt(max(v({At}k),0)))/2");
        Bus(deck)
            .Add($"B{At}d {At}d 0 v=v({At}e)+u(v({At}i))*u(v({At}v))*u(0-v({At}k))*(1-v({At}e))");
        deck.Add($"B{At}q {At}q 0 v=v({At}y)*u(v({At}k))");
        deck.Add($"B{At}s {At}s 0 v=v({At}z)*u(v({At}k))");
        return this;
    }

    // Mean square of the current beside its mean, of a square wave over resistance and inductance, and what it draws while
    // the bridge is on.
    private WarmDrive Ripple(Deck deck, string duty, string square, string drawn)
    {
        if (Rig.Rig.Motor.InductanceMicrohenry is not { } microhenry)
        {
            deck.Add($"V{At}{square} {At}{square} 0 0").Add($"V{At}{drawn} {At}{drawn} 0 0");
            return this;
        }

        var inductanceH = microhenry * 1e-6;
        var on = $"v({At}{duty})";
        // Clamped where a search may stray, never where it ends.
        var ohm = FormattableString.Invariant($"max(v({At}r),{PathOhm:R})");
        var busV = FormattableString.Invariant($"min(max(v({At}b),0),{LeftV:R})");
        var periods = FormattableString.Invariant($"({ohm}*{PeriodS / inductanceH:R})");
        deck.Add(
            $"B{At}{square} {At}{square} 0 v=(({busV}+{Rig.FreewheelV})/{ohm})^2*max({on}*(1-{on})-(1-exp(-{on}*{periods}))*(1-exp(-(1-{on})*{periods}))/({periods}*(1-exp(-{periods}))),0)"
        );
        var sourceOhm = Bare ? Rig.Motors * SourceOhm : 0;
        deck.Add(
            $"B{At}{drawn} {At}{drawn} 0 v=v({At}{square})*(v({At}r)+{sourceOhm}*{on})/max(v({At}b)+{Rig.FreewheelV},0.1)"
        );
        return this;
    }

    // Nothing ripples.
    private WarmDrive Still(Deck deck)
    {
        deck.Add($"V{At}q {At}q 0 0").Add($"V{At}s {At}s 0 0");
        return this;
    }
}
