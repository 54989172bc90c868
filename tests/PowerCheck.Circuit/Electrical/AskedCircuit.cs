namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// What a road asks of the motor at a speed: torques flow as currents into the motor's torque constant as a conductance,
/// whose voltage is the current asked for; it drives the winding, whose voltage is what the bridge has to give.
/// </summary>
/// <param name="At">Name of the circuit.</param>
/// <param name="Rig">The rig.</param>
/// <param name="SpeedRadPerS">Motor speed [rad/s].</param>
/// <param name="ForceN">Force at the tires [N].</param>
internal sealed record AskedCircuit(string At, RigPhysics Rig, double SpeedRadPerS, double ForceN)
{
    /// <summary>Adds the circuit.</summary>
    public AskedCircuit AddTo(Bench bench)
    {
        bench
            .Add($"v{At}speed {At}w 0 {SpeedRadPerS}")
            .Road(At, Rig, ForceN, "0", $"{At}q")
            .Add($"i{At}rest 0 {At}q {Rig.TorqueNmPerA * Rig.NoLoad.RestA}")
            .Add($"g{At}drag 0 {At}q {At}w 0 {Rig.TorqueNmPerA * Rig.NoLoad.PerRadPerS}")
            .Add($"r{At}constant {At}q 0 {1 / Rig.TorqueNmPerA}")
            .Add($"g{At}drive 0 {At}a {At}q 0 1")
            .Motor(At, Rig);
        return this;
    }

    /// <summary>What the simulator found, to be fed by the pack.</summary>
    public Feed Read(Bench bench, double openV) =>
        new(
            At,
            bench[$"i(v{At}brush)"],
            bench[$"v({At}a)"],
            SpeedRadPerS,
            ForceN * Rig.RadiusM,
            openV,
            Lasting: true
        );
}

/// <summary>What a pack has to feed.</summary>
/// <param name="At">Name of the circuit.</param>
/// <param name="MotorA">Motor current [A].</param>
/// <param name="BridgeV">Mean voltage behind the bridge [V].</param>
/// <param name="SpeedRadPerS">Motor speed [rad/s].</param>
/// <param name="WheelNm">Torque at all wheels [N·m].</param>
/// <param name="OpenV">Open-circuit voltage of the pack [V].</param>
/// <param name="Lasting">Whether the load lasts.</param>
internal sealed record Feed(
    string At,
    double MotorA,
    double BridgeV,
    double SpeedRadPerS,
    double WheelNm,
    double OpenV,
    bool Lasting
)
{
    /// <summary>A current fed into a motor that stands.</summary>
    public static Feed Standing(
        string at,
        RigPhysics rig,
        double motorA,
        double openV,
        bool lasting
    ) =>
        new(
            at,
            motorA,
            (motorA * rig.LoopOhm) + rig.BrushV,
            0,
            rig.WheelNm(motorA, rig.NoLoad.RestA),
            openV,
            lasting
        );
}
