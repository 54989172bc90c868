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
        return new([
            SteadyCases.Level(rig),
            SteadyCases.Climb(rig),
            HoldCase.Of(rig),
            slip,
            FullThrottleCases.Punch(rig, HalfCharge),
            LockedCases.Jam(rig, slip.MotorCurrentA),
            LockedCases.Stall(rig),
            FullThrottleCases.Top(rig, rig.Vehicle.Gearing.LowestRatio),
        ]);
    }
}
