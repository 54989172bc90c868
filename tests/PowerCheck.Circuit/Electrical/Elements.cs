namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// The parts of a rig as elements. Every name begins with the name of its circuit, so that many stand in one deck. On the
/// mechanical side a speed is a voltage and a torque or a force is a current.
/// </summary>
internal static class Elements
{
    /// <summary>
    /// The pack behind its resistances up to the node <c>bus</c>, with what draws a constant current there. Its current
    /// is that of <c>pack</c>, which counts as negative where the pack gives.
    /// </summary>
    public static Bench Pack(
        this Bench bench,
        string at,
        RigPhysics rig,
        double openV,
        bool lasting
    ) =>
        bench
            .Add($"v{at}pack {at}e 0 {openV}")
            .Add($"r{at}cells {at}e {at}c {rig.CellsOhm(lasting)}")
            .Add($"r{at}connector {at}c {at}d {rig.ConnectorOhm}")
            .Add($"r{at}leads {at}d {at}bus {rig.BatteryLeadsOhm}")
            .Add($"i{at}aux {at}bus 0 {rig.ConstantA}")
            .Add($".nodeset v({at}bus)={openV}")
            .Ask($"v({at}bus)", $"i(v{at}pack)");

    /// <summary>
    /// What draws a constant power from the bus, down to a voltage under which the pack could not carry it: there it
    /// draws a constant current, so that the circuit has a point all the same.
    /// </summary>
    public static Bench ConstantPower(
        this Bench bench,
        string at,
        RigPhysics rig,
        string lowestVolt
    ) => bench.Add($"b{at}power {at}bus 0 i={rig.ConstantW}/max(v({at}bus),{lowestVolt})");

    /// <summary>
    /// Switches, motor leads, winding, brushes and back-EMF from the node <c>a</c> to ground; the motor's terminals are the
    /// node <c>t</c>, its current flows through <c>brush</c>, and its speed is the node <c>w</c>.
    /// </summary>
    public static Bench Motor(this Bench bench, string at, RigPhysics rig) =>
        bench.Winding(at, rig).Add($"e{at}emf {at}y 0 {at}w 0 {rig.TorqueNmPerA}");

    /// <summary>The same with a held current: the shaft has the speed whose back-EMF leaves just that.</summary>
    public static Bench MotorAtCurrent(
        this Bench bench,
        string at,
        RigPhysics rig,
        double motorA
    ) =>
        bench
            .Winding(at, rig)
            .Add($"i{at}held {at}y 0 {motorA}")
            .Add($"e{at}speed {at}w 0 {at}y 0 {1 / rig.TorqueNmPerA}");

    private static Bench Winding(this Bench bench, string at, RigPhysics rig) =>
        bench
            .Add($"r{at}switches {at}a {at}b {rig.SwitchesOhm}")
            .Add($"r{at}motorleads {at}b {at}t {rig.MotorLeadsOhm}")
            .Add($"r{at}winding {at}t {at}u {rig.WindingOhm}")
            .Add($"v{at}brush {at}u {at}y {rig.BrushV}")
            .Ask($"i(v{at}brush)", $"v({at}t)", $"v({at}w)", $"v({at}a)");

    /// <summary>
    /// The averaged bridge: a transformer from the bus to the node <c>a</c>, whose ratio is the duty. While it is off a
    /// freewheel diode keeps the node under ground.
    /// </summary>
    /// <param name="bench">The bench.</param>
    /// <param name="at">Name of the circuit.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="duty">Share of the time that it is on.</param>
    /// <param name="drawn">Share of the motor's current that the bus carries.</param>
    public static Bench Bridge(
        this Bench bench,
        string at,
        RigPhysics rig,
        double duty,
        double drawn
    ) =>
        bench
            .Add($"e{at}bridge {at}h 0 {at}bus 0 {duty}")
            .Add($"v{at}diode {at}h {at}a {(1 - duty) * rig.FreewheelV}")
            .Add($"f{at}bridge {at}bus 0 v{at}brush {rig.Motors * drawn}");

    /// <summary>
    /// Share of the motor's current that the edges draw from the bus, while it switches: each is a triangle of current and
    /// voltage.
    /// </summary>
    public static double Edges(RigPhysics rig) =>
        rig.Rig.Controller.EdgeTimeNs * 1e-9 * rig.Rig.Controller.PwmFrequencyKhz * 1000 / 2;

    /// <summary>Torque of the motor into the node <c>w</c>, and its friction out of it.</summary>
    public static Bench Shaft(this Bench bench, string at, RigPhysics rig) =>
        bench
            .Add($"f{at}torque 0 {at}w v{at}brush {rig.TorqueNmPerA}")
            .Add($"i{at}rest {at}w 0 {rig.TorqueNmPerA * rig.NoLoad.RestA}")
            .Add($"g{at}drag {at}w 0 {at}w 0 {rig.TorqueNmPerA * rig.NoLoad.PerRadPerS}");

    /// <summary>
    /// Wheels and gearing: the road's speed is the node <c>v</c>, its force a current out of it, and each motor carries
    /// its part of the torque out of a node.
    /// </summary>
    public static Bench Road(
        this Bench bench,
        string at,
        RigPhysics rig,
        double forceN,
        string torqueFrom,
        string torqueTo
    )
    {
        var meter = rig.RadiusM / rig.Ratio;
        return bench
            .Add($"e{at}wheel {at}v 0 {at}w 0 {meter}")
            .Add($"v{at}force {at}v {at}g 0")
            .Add($"i{at}road {at}g 0 {forceN}")
            .Add(
                $"f{at}gear {torqueFrom} {torqueTo} v{at}force {meter / rig.Rig.Vehicle.Efficiency / rig.Motors}"
            );
    }
}
