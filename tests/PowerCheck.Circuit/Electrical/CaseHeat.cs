namespace PowerCheck.Circuit.Electrical;

/// <summary>Heat as what goes into a part less what comes out.</summary>
internal static class CaseHeat
{
    /// <summary>The point with its heat.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="pathV">Voltage over switches and motor leads [V].</param>
    /// <param name="lasting">Whether the load lasts.</param>
    /// <param name="point">The point without its heat.</param>
    public static CasePoint With(RigPhysics rig, double pathV, bool lasting, CasePoint point)
    {
        var shaftW =
            point.SpeedRadPerS == 0
                ? 0
                : point.WheelNm
                    * point.SpeedRadPerS
                    / rig.Ratio
                    / rig.Rig.Vehicle.Efficiency
                    / rig.Motors;
        var switchesShare = rig.SwitchesOhm / (rig.SwitchesOhm + rig.MotorLeadsOhm);
        return point with
        {
            RoadMPerS = point.SpeedRadPerS / rig.Ratio * rig.RadiusM,
            MotorW = (point.MotorV * point.MotorA) - shaftW + (point.RippleA2 * rig.WindingOhm),
            ControllerW =
                (pathV * switchesShare * point.MotorA)
                + (point.RippleA2 * rig.SwitchesOhm)
                + ExtraW(rig, lasting, point)
                + rig.ReceiverSupplyW(point.BusV),
            BatteryW =
                point.BatteryRmsA * point.BatteryRmsA * (rig.CellsOhm(lasting) + rig.ConnectorOhm),
        };
    }

    // Edges, and the diode, which carries what the bus does not: the ripple's mean is higher while the bridge is on.
    private static double ExtraW(RigPhysics rig, bool lasting, CasePoint point)
    {
        if (point.Duty is 0 or 1)
        {
            return 0;
        }

        var throughDiodeA =
            (point.MotorA * (1 - point.Duty))
            - (point.RippleA2 * rig.RippleOhm(point.Duty, lasting) / (point.BusV + rig.FreewheelV));
        return (rig.FreewheelV * throughDiodeA) + (point.MotorA * Elements.Edges(rig) * point.BusV);
    }
}
