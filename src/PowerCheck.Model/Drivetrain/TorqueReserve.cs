namespace PowerCheck.Model.Drivetrain;

/// <summary>
/// Wheel torque available at creep speed over the climb's: full throttle, reserve charge, winding at its limit, switches
/// hot, no more current than the controller gives (M5).
/// </summary>
/// <param name="Ratio">Available over needed torque; NaN when not known.</param>
/// <param name="CurrentA">Motor current behind it [A].</param>
/// <param name="LimitedBy">What bounds it; null when not known.</param>
public readonly record struct TorqueReserve(double Ratio, double CurrentA, Obstacle? LimitedBy)
{
    /// <summary>The reserve of a rig in one gear.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ratio">Motor turns a wheel turn.</param>
    public static TorqueReserve Of(Rig rig, double ratio)
    {
        var load = WheelLoad.Creep(rig, ratio, rig.ClimbSlopeRad, rig.Road.CreepMPerS);
        var motor = rig.Motor;
        var loop =
            motor.ResistanceAt(motor.Heat.WindingLimitC)
            + rig.Controller.HotResistanceOhm
            + rig.Leads.MotorOhm;
        var (_, fullA) = Bus.AtDuty(
            rig.SourceAt(rig.Battery.ReserveShare, true),
            rig.Auxiliary,
            rig.Vehicle.MotorCount,
            1,
            loop,
            motor.CounterVoltage(load.SpeedRadPerS),
            Bridge.Of(rig.Controller)
        );
        var ceiling = rig.Controller.CeilingA;
        var current = fullA > ceiling ? ceiling : fullA;
        return new(
            Math.Max(0, motor.TorqueOf(current, load.SpeedRadPerS) / load.ShaftNm),
            current,
            double.IsNaN(fullA) ? null
                : fullA > ceiling ? Obstacle.CurrentLimit
                : Obstacle.Voltage
        );
    }
}
