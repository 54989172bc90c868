namespace PowerCheck.Model.Drivetrain;

/// <summary>Runs the eight load cases of a rig (M5), winding and magnet at 20 °C, in the lowest gear.</summary>
public static class CaseRunner
{
    /// <summary>Charge at which the lasting cases are run.</summary>
    public const double HalfCharge = 0.5;

    /// <summary>All eight cases.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCases Run(Rig rig)
    {
        var slip = SteadyCases.Slip(rig);
        var reserve = FullThrottleCases.Punch(rig, rig.Battery.ReserveShare);
        return new(
            [
                SteadyCases.Level(rig),
                SteadyCases.Climb(rig),
                HoldCase.Of(rig),
                slip,
                CutOff(FullThrottleCases.Punch(rig, HalfCharge), reserve),
                LockedCases.Jam(rig, slip.MotorCurrentA),
                LockedCases.Stall(rig),
                FullThrottleCases.Top(rig, rig.Vehicle.Gearing.LowestRatio),
            ],
            reserve
        );
    }

    // A punch that the controller cuts off with only the reserve left is not to be had.
    private static LoadCase CutOff(LoadCase punch, LoadCase reserve) =>
        punch.Obstacle is null && reserve.Obstacle == Obstacle.Cutoff
            ? punch with
            {
                Attainable = false,
                Obstacle = Obstacle.Cutoff,
            }
            : punch;
}
