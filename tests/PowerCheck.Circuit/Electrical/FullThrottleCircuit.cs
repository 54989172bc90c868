namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// Full throttle: the bridge is on all the time. The motor turns the road's force; beside it the same motor is locked, for
/// the case that it cannot turn it, and at the speed at which its current is that of the controller's limit.
/// </summary>
/// <param name="At">Name of the circuit.</param>
/// <param name="Rig">The rig.</param>
/// <param name="OpenV">Open-circuit voltage of the pack [V].</param>
/// <param name="Lasting">Whether the load lasts.</param>
/// <param name="ForceN">Force at the tires [N]; null for a wedged wheel.</param>
/// <param name="LimitA">Motor current that the controller keeps under; infinite without a limit [A].</param>
internal sealed record FullThrottleCircuit(
    string At,
    RigPhysics Rig,
    double OpenV,
    bool Lasting,
    double? ForceN,
    double LimitA
)
{
    // A motor that would have to turn backward takes the bus under nothing: not a point, but the deck must have one.
    private const string Least = "0.05";

    private string Turning => $"{At}t";

    private string Locked => $"{At}l";

    private string Limited => $"{At}m";

    /// <summary>Adds the circuits.</summary>
    public FullThrottleCircuit AddTo(Bench bench)
    {
        Carry(bench, Locked, at => Feed(bench, at).Add($"v{at}lock {at}w 0 0"));
        if (ForceN is { } forceN)
        {
            Carry(
                bench,
                Turning,
                at => Feed(bench, at).Shaft(at, Rig).Road(at, Rig, forceN, $"{at}w", "0")
            );
        }

        if (double.IsFinite(LimitA))
        {
            // The shaft is taken to the speed at which the motor draws just that.
            Carry(bench, Limited, at => Supply(bench, at).MotorAtCurrent(at, Rig, LimitA));
        }

        return this;
    }

    /// <summary>What the simulator found.</summary>
    public CasePoint Read(Bench bench)
    {
        var turns = ForceN is not null && bench[$"v({Turning}w)"] >= 0 && Carried(bench, Turning);
        var at = turns ? Turning : Locked;
        if (bench[$"i(v{at}brush)"] > LimitA)
        {
            at = Limited;
        }
        else if (!Carried(bench, at))
        {
            at = $"{at}h";
        }

        var motorA = bench[$"i(v{at}brush)"];
        var speed = at == Locked || at == $"{Locked}h" ? 0 : bench[$"v({at}w)"];
        var batteryA = -bench[$"i(v{at}pack)"];
        var frictionA = Rig.NoLoad.RestA + (Rig.NoLoad.PerRadPerS * speed);
        return CaseHeat.With(
            Rig,
            bench[$"v({at}a)"] - bench[$"v({at}t)"],
            Lasting,
            new()
            {
                MotorA = motorA,
                MotorV = bench[$"v({at}t)"],
                SpeedRadPerS = speed,
                BusV = bench[$"v({at}bus)"],
                BatteryA = batteryA,
                BatteryRmsA = batteryA,
                Duty = 1,
                WheelNm =
                    at == Turning ? ForceN!.Value * Rig.RadiusM : Rig.WheelNm(motorA, frictionA),
                MotorW = 0,
                ControllerW = 0,
                BatteryW = 0,
            }
        );
    }

    // The same circuit three times: with what draws a constant power; without it, to know how far the bus may fall before
    // the pack gives the most that it can; and with the bus held there, for a pack that cannot give what is asked.
    private void Carry(Bench bench, string at, Action<string> circuit)
    {
        circuit(at);
        circuit($"{at}z");
        circuit($"{at}h");
        bench.ConstantPower(at, Rig, $"max(v({at}zbus)/2,{Least})");
        bench.Add($"e{at}hhalf {at}hbus 0 {at}zbus 0 0.5");
    }

    private static bool Carried(Bench bench, string at) =>
        bench[$"v({at}bus)"] >= bench[$"v({at}zbus)"] / 2;

    private Bench Feed(Bench bench, string at) => Supply(bench, at).Motor(at, Rig);

    private Bench Supply(Bench bench, string at) =>
        bench.Pack(at, Rig, OpenV, Lasting).Bridge(at, Rig, 1, 1);
}
