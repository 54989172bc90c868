namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// A pack that feeds a motor current through a bridge whose duty follows the bus: a constant power for the pack, with the
/// losses of the bridge. Down to the voltage at which the bridge is fully on; what lies below is not attained. Beside it
/// stand the same pack with the bridge fully on, and the pack at half its voltage, where it gives the most.
/// </summary>
/// <param name="Rig">The rig.</param>
/// <param name="Feed">What is fed.</param>
internal sealed record FedCircuit(RigPhysics Rig, Feed Feed)
{
    private string At => Feed.At;

    /// <summary>Adds the circuits.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="rippleA2">Mean square of the ripple, so far [A²].</param>
    public void AddTo(Bench bench, double rippleA2)
    {
        Empty(bench, $"{At}o");
        Empty(bench, $"{At}z").Add(Motors($"{At}z"));
        Empty(bench, At)
            .ConstantPower(At, Rig, Lowest(Rig.Smoothed ? "o" : "z"))
            .Add(Rig.Smoothed ? Bridge(At, rippleA2) : BridgeWhileOn(At, rippleA2));
        Empty(bench, $"{At}f").ConstantPower($"{At}f", Rig, Lowest("z")).Add(Motors($"{At}f"));
        Empty(bench, $"{At}h").Add($"e{At}hhalf {At}hbus 0 {At}obus 0 0.5");
    }

    /// <summary>Bus voltage [V], duty and whether it is attained.</summary>
    public (double BusV, double Duty, bool Attained) Read(Bench bench)
    {
        var busV = bench[$"v({At}bus)"];
        var duty = (Feed.BridgeV + Rig.FreewheelV) / (busV + Rig.FreewheelV);
        var lowestV = bench[$"v({At}{(Rig.Smoothed ? "o" : "z")}bus)"] * Share;
        return (busV, duty, busV >= Feed.BridgeV && busV > lowestV);
    }

    /// <summary>Bus voltage [V] and battery current [A] of what is not attained.</summary>
    public (double BusV, double BatteryA) ReadFullyOn(Bench bench)
    {
        var at = bench[$"v({At}fbus)"] >= bench[$"v({At}hbus)"] ? $"{At}f" : $"{At}h";
        return (bench[$"v({at}bus)"], -bench[$"i(v{at}pack)"]);
    }

    // What draws a constant power alone takes the bus down to half of what it would have without, and no further; a diode's
    // drop counts with the bus, so that a bridge goes a little further.
    private string Lowest(string twin) =>
        FormattableString.Invariant($"max(v({At}{twin}bus)*{Share},0.05)");

    // Under half, for round-off and diode.
    private double Share => Rig.Smoothed && Rig.FreewheelV == 0 ? 0.49999 : 0.45;

    private Bench Empty(Bench bench, string at) => bench.Pack(at, Rig, Feed.OpenV, Feed.Lasting);

    // The bridge is on.
    private FormattableString Motors(string at) =>
        $"i{at}motors {at}bus 0 {Rig.Motors * Feed.MotorA}";

    // The bridge at the duty that the bus leaves it, fully on where the bus is too low. The ripple's heat, too, comes from
    // the bus: of the mean while it is on, a diode takes the part that its drop has in the step.
    private FormattableString Bridge(string at, double rippleA2)
    {
        var (bridgeV, diodeV) = (Feed.BridgeV, Rig.FreewheelV);
        var stepVA = (Feed.MotorA * (bridgeV + diodeV)) + (rippleA2 * Rig.LoopOhm);
        return $"b{at}motors {at}bus 0 i={Rig.Motors}*({stepVA}/(max(v({at}bus),{bridgeV})+{diodeV})+{Feed.MotorA * Elements.Edges(Rig)})";
    }

    // The same of the time that the bridge is on, where nothing smooths the bus: all of the current, and above its mean what
    // the ripple's heat and the edges take.
    private FormattableString BridgeWhileOn(string at, double rippleA2)
    {
        var (bridgeV, diodeV) = (Feed.BridgeV, Rig.FreewheelV);
        var duty = FormattableString.Invariant(
            $"({bridgeV + diodeV:R}/(max(v({at}bus),{bridgeV:R})+{diodeV:R}))"
        );
        var ripplePerV = rippleA2 / (bridgeV + diodeV);
        var sourceOhm = Rig.Motors * Rig.SourceOhm(Feed.Lasting);
        return $"b{at}motors {at}bus 0 i={Rig.Motors}*({Feed.MotorA}*(1+{Elements.Edges(Rig)}/{duty})+{ripplePerV}*({Rig.LoopOhm}+{sourceOhm}*{duty}))";
    }
}
