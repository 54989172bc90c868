namespace PowerCheck.Referee.Tests.Integration;

/// <summary>
/// Rigs of which run time and controller wait for the check: its parts of a segment are too long for 70, 73, 121 and 134, and
/// its quadrature passes over a kink, where a segment is no longer reached, in 99 and 131.
/// </summary>
internal static class InProgress
{
    public static bool Waits(Integrated rig) =>
        rig.Plain.Rig.Number is 70 or 73 or 99 or 121 or 131 or 134;
}
