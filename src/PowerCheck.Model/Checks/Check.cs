namespace PowerCheck.Model.Checks;

/// <summary>The check of a rig.</summary>
public static class Check
{
    /// <summary>Completes the rig, runs every load case, and holds every figure against its limit.</summary>
    /// <param name="label">The rig as the caller knows it, already within the ranges of the door.</param>
    /// <returns>The verdict with its reasons.</returns>
    public static CheckResult Run(RigLabel label) =>
        throw new NotSupportedException("not written yet");
}
