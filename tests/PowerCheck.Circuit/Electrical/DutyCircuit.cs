namespace PowerCheck.Circuit.Electrical;

/// <summary>The bridge at its duty, with the motor behind it at its speed: it must draw the current that was asked for.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Feed">What is fed.</param>
/// <param name="Duty">Share of the time that the bridge is on.</param>
/// <param name="RippleA2">Mean square of the ripple [A²].</param>
internal sealed record DutyCircuit(RigPhysics Rig, Feed Feed, double Duty, double RippleA2)
{
    private string At => Feed.At;

    // What the bus carries of the motor's current: its share of the time and the edges, all of it within the time that the
    // bridge is on where nothing smooths the bus.
    private double Drawn => (Duty + Elements.Edges(Rig)) / (Rig.Smoothed ? 1 : Duty);

    // By the energy of a period the ripple's heat divides into bus and diode.
    private double RippleVA => RippleA2 * Rig.RippleOhm(Duty, Feed.Lasting);

    /// <summary>Adds the circuit.</summary>
    public void AddTo(Bench bench)
    {
        bench
            .Pack(At, Rig, Feed.OpenV, Feed.Lasting)
            .ConstantPower(At, Rig, "0.1")
            .Motor(At, Rig)
            .Bridge(At, Rig, Duty, Drawn)
            .Add($"v{At}speed {At}w 0 {Feed.SpeedRadPerS}");
        bench.Add(
            Rig.Smoothed
                ? (FormattableString)
                    $"b{At}ripple {At}bus 0 i={Rig.Motors * RippleVA}/(max(v({At}bus),0.1)+{Rig.FreewheelV})"
                : $"i{At}ripple {At}bus 0 {WhileOn}"
        );
    }

    /// <summary>What the simulator found.</summary>
    public CasePoint Read(Bench bench)
    {
        var motorA = bench[$"i(v{At}brush)"];
        var (batteryA, rmsA) = Battery(-bench[$"i(v{At}pack)"], Rig.Motors * motorA);
        return CaseHeat.With(
            Rig,
            bench[$"v({At}a)"] - bench[$"v({At}t)"],
            Feed.Lasting,
            new()
            {
                MotorA = motorA,
                RippleA2 = RippleA2,
                MotorV = bench[$"v({At}t)"],
                SpeedRadPerS = Feed.SpeedRadPerS,
                BusV = bench[$"v({At}bus)"],
                BatteryA = batteryA,
                BatteryRmsA = rmsA,
                Duty = Duty,
                WheelNm = Feed.WheelNm,
                MotorW = 0,
                ControllerW = 0,
                BatteryW = 0,
            }
        );
    }

    // What the ripple adds to the bus current of all motors while the bridge is on [A].
    private double WhileOn => Rig.Motors * RippleVA / (Feed.BridgeV + Rig.FreewheelV);

    // Mean and root mean square of the battery current. Without a capacitor the pack carries the motors while the bridge is
    // on, and what else is drawn all the time.
    private (double MeanA, double RmsA) Battery(double packA, double motorsA)
    {
        if (Rig.Smoothed)
        {
            return (packA, packA);
        }

        var restA = packA - (motorsA * Drawn) - WhileOn;
        var square =
            (Duty * ((packA * packA) + (Rig.Motors * Rig.Motors * RippleA2)))
            + ((1 - Duty) * restA * restA);
        return ((Duty * packA) + ((1 - Duty) * restA), Math.Sqrt(square));
    }
}
