namespace PowerCheck.Model.Drivetrain;

/// <summary>Load cases with a wedged wheel: jam and stall (M5).</summary>
public static class LockedCases
{
    /// <summary>
    /// Wheel wedged, driver feeding throttle: the least of full-throttle stall, the controller's limit and a multiple of
    /// the slip current.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="slipA">Motor current of the slip case [A].</param>
    public static LoadCase Jam(Rig rig, double slipA)
    {
        var source = rig.SourceAt(1, false);
        var full = OperatingPoint.AtDuty(rig, source, 1, 0);
        var fed = rig.Road.JamSlipFactor * slipA;
        var limit = rig.Controller.CurrentLimitA;
        var current = double.IsNaN(full.MotorA) ? fed : Math.Min(full.MotorA, fed);
        var limited = current > limit;
        current = limited ? limit : current;
        var point =
            current < full.MotorA || double.IsNaN(full.MotorA)
                ? OperatingPoint.Feeding(rig, source, current, 0)
                : full;
        return Locked(rig, LoadCaseName.Jam, source, point) with
        {
            Attainable = CaseFigures.Known(current, true),
            Obstacle = limited ? Obstacle.CurrentLimit : null,
            UpperBound = double.IsNaN(full.MotorA),
        };
    }

    /// <summary>
    /// Wedged at full throttle, cold: what would flow, and what does, held to the controller's limit or, without one, to
    /// its burst rating.
    /// </summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Stall(Rig rig)
    {
        var source = rig.SourceAt(1, false);
        var full = OperatingPoint.AtDuty(rig, source, 1, 0);
        var ceiling = rig.Controller.CeilingA;
        var point = full.MotorA > ceiling ? OperatingPoint.Feeding(rig, source, ceiling, 0) : full;
        return Locked(rig, LoadCaseName.Stall, source, point) with
        {
            Attainable = CaseFigures.Known(full.MotorA, true),
            Obstacle = full.MotorA > ceiling ? Obstacle.CurrentLimit : null,
            ProspectiveCurrentA = full.MotorA,
        };
    }

    private static LoadCase Locked(
        Rig rig,
        LoadCaseName name,
        Source source,
        OperatingPoint point
    ) => CaseFigures.Of(rig, name, source, point, rig.Motor.TorqueOf(point.MotorA, 0), 0);
}
