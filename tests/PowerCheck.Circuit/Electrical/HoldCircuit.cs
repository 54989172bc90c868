using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// Standing on a slope at neutral. The slope drives the wheels, the gearing's losses and the motor's friction at rest help;
/// what is left turns the shaft against a shorted winding, or is held by a current, or by nothing.
/// </summary>
/// <param name="At">Name of the circuit.</param>
/// <param name="Rig">The rig.</param>
/// <param name="OpenV">Open-circuit voltage of the pack [V].</param>
internal sealed record HoldCircuit(string At, RigPhysics Rig, double OpenV)
{
    private double ShaftNm =>
        (Rig.RollBackN * Rig.RadiusM * Rig.BackDrivenShare) - (Rig.TorqueNmPerA * Rig.NoLoad.RestA);

    /// <summary>Whether friction alone holds it.</summary>
    public bool HeldByFriction => ShaftNm <= 0;

    /// <summary>Motor current that an active hold feeds [A].</summary>
    public double ActiveA => ShaftNm / Rig.TorqueNmPerA;

    private bool Rolls => Rig.Rig.Controller.Hold == PlainHold.None && !HeldByFriction;

    private bool Braked => Rig.Rig.Controller.Hold == PlainHold.DragBrake && !HeldByFriction;

    /// <summary>Adds the circuits: the pack with what else it feeds, and the shorted motor.</summary>
    public HoldCircuit AddTo(Bench bench)
    {
        bench.Pack($"{At}o", Rig, OpenV, lasting: true);
        bench.Pack(At, Rig, OpenV, lasting: true).ConstantPower(At, Rig, $"(v({At}obus)/2)");
        bench
            .Pack($"{At}h", Rig, OpenV, lasting: true)
            .Add($"e{At}hhalf {At}hbus 0 {At}obus 0 0.5");
        if (Braked)
        {
            // The motor drives its current through brushes, winding, leads and switches; the shaft's torque balance
            // makes its speed.
            bench
                .Add($"i{At}slope 0 {At}w {ShaftNm}")
                .Add($"e{At}emf {At}x 0 {At}w 0 {Rig.TorqueNmPerA}")
                .Add($"v{At}brush {At}x {At}y {Rig.BrushV}")
                .Add($"r{At}winding {At}y {At}t {Rig.WindingOhm}")
                .Add($"r{At}motorleads {At}t {At}b {Rig.MotorLeadsOhm}")
                .Add($"r{At}switches {At}b 0 {Rig.SwitchesOhm}")
                .Add($"f{At}torque {At}w 0 v{At}brush {Rig.TorqueNmPerA}")
                .Add($"g{At}drag {At}w 0 {At}w 0 {Rig.TorqueNmPerA * Rig.NoLoad.PerRadPerS}")
                .Ask($"i(v{At}brush)", $"v({At}w)", $"v({At}t)", $"v({At}b)");
        }

        return this;
    }

    /// <summary>What the simulator found, with a drag brake or with nothing to hold it by.</summary>
    public CasePoint Read(Bench bench)
    {
        var (motorA, motorV, switchesV, speed) = Shorted(bench);
        var carried = bench[$"v({At}bus)"] >= bench[$"v({At}obus)"] / 2;
        var pack = carried ? At : $"{At}h";
        var busV = bench[$"v({pack}bus)"];
        var batteryA = -bench[$"i(v{pack}pack)"];
        return new()
        {
            MotorA = motorA,
            MotorV = motorV,
            SpeedRadPerS = speed,
            CreepBackMPerS = speed / Rig.Ratio * Rig.RadiusM,
            BusV = busV,
            BatteryA = batteryA,
            BatteryRmsA = batteryA,
            Duty = 0,
            WheelNm = Rig.RollBackN * Rig.RadiusM,
            MotorW = Braked
                ? (speed * Rig.RollBackN * Rig.RadiusM * Rig.BackDrivenShare) - (motorV * motorA)
                : speed * 0,
            ControllerW = (switchesV * motorA) + Rig.ReceiverSupplyW(busV),
            BatteryW = batteryA * batteryA * (Rig.CellsOhm(lasting: true) + Rig.ConnectorOhm),
        };
    }

    // Brushes let no current through that would drive the motor: it turns freely where its friction holds it slow enough.
    private (double MotorA, double MotorV, double SwitchesV, double SpeedRadPerS) Shorted(
        Bench bench
    ) =>
        Rolls ? (0, 0, 0, double.NaN)
        : !Braked ? (0, 0, 0, 0)
        : bench[$"i(v{At}brush)"] < 0
            ? (0, 0, 0, ShaftNm / (Rig.TorqueNmPerA * Rig.NoLoad.PerRadPerS))
        : (bench[$"i(v{At}brush)"], bench[$"v({At}t)"], bench[$"v({At}b)"], bench[$"v({At}w)"]);
}
