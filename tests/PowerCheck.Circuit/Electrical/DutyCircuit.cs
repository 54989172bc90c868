namespace PowerCheck.Circuit.Electrical;

/// <summary>The bridge at its duty, with the motor behind it at its speed: it must draw the current that was asked for.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Feed">What is fed.</param>
/// <param name="Duty">Share of the time that the bridge is on.</param>
/// <param name="RippleA2">Mean square of the ripple [A²].</param>
internal sealed record DutyCircuit(RigPhysics Rig, Feed Feed, double Duty, double RippleA2)
{
    private string At => Feed.At;

    private bool Smoothed => Rig.Rig.Controller.PwmFrequencyKhz >= Ripple.UnsmoothedUnderKhz;

    /// <summary>Adds the circuit.</summary>
    public void AddTo(Bench bench)
    {
        bench
            .Pack(At, Rig, Feed.OpenV, Feed.Lasting)
            .ConstantPower(At, Rig, "0.1")
            .Motor(At, Rig)
            .Bridge(At, Rig, Duty, Smoothed ? Duty : 1)
            .Add($"v{At}speed {At}w 0 {Feed.SpeedRadPerS}");
        if (Smoothed)
        {
            bench.Add(
                $"b{At}ripple {At}bus 0 i={Rig.Motors * RippleA2 * Rig.LoopOhm}/(max(v({At}bus),0.1)+{Rig.FreewheelV})"
            );
        }
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

    // Mean and root mean square of the battery current. Without a capacitor the pack carries the motors while the bridge is
    // on and the rest while it is off; the heat of the ripple, in the pack's own resistance too, is drawn from it as well, so
    // that the mean while the bridge is on is above the mean of all.
    private (double MeanA, double RmsA) Battery(double onA, double motorsA)
    {
        if (Smoothed)
        {
            return (onA, onA);
        }

        var restA = onA - motorsA;
        var rippleW = Rig.Motors * RippleA2 * (Rig.LoopOhm + (Duty * Rig.Motors * SourceOhm));
        var drawnA = (Duty * motorsA) + (rippleW / (Feed.OpenV + Rig.FreewheelV));
        var whileOnA = (drawnA / Duty) + restA;
        var square =
            (Duty * ((whileOnA * whileOnA) + (Rig.Motors * Rig.Motors * RippleA2)))
            + ((1 - Duty) * restA * restA);
        return (drawnA + restA, Math.Sqrt(square));
    }

    private double SourceOhm => Rig.CellsOhm(Feed.Lasting) + Rig.ConnectorOhm + Rig.BatteryLeadsOhm;
}
