namespace PowerCheck.Model.Courses;

/// <summary>What is driven, every figure filled in (M8, M11).</summary>
/// <param name="Segments">The segments of one lap, in order.</param>
/// <param name="WantedS">How long the rig is to run [s]; NaN when not said.</param>
/// <param name="Judging">For how long each load case is judged.</param>
public sealed record Course(IReadOnlyList<Segment> Segments, double WantedS, Judging Judging)
{
    /// <summary>Duration of one lap [s].</summary>
    public double LapS => Segments.Sum(segment => segment.DurationS);
}

/// <summary>One segment of a lap.</summary>
/// <param name="DurationS">How long it lasts [s].</param>
/// <param name="Kind">What happens in it.</param>
/// <param name="SlopeRad">Slope [rad], negative downhill.</param>
/// <param name="SpeedMPerS">Speed [m/s] of a creep.</param>
/// <param name="Throttle">Throttle, 0 to 1, of a jam.</param>
public readonly record struct Segment(
    double DurationS,
    SegmentKind Kind,
    double SlopeRad,
    double SpeedMPerS,
    double Throttle
)
{
    private const double LongestPartS = 10;
    private const double LongestJammedPartS = 1;
    private const double MostParts = 60;

    /// <summary>
    /// The segment in parts of at most 10 s, jammed 1 s, and no more than 60: pack and controller feel each with the motor as
    /// warm as it is in that part.
    /// </summary>
    public IEnumerable<Segment> Parts()
    {
        var longest = Kind == SegmentKind.Jammed ? LongestJammedPartS : LongestPartS;
        var count = (int)Math.Clamp(Math.Ceiling(DurationS / longest), 1, MostParts);
        return Enumerable.Repeat(this with { DurationS = DurationS / count }, count);
    }
}

/// <summary>For how long each load case is judged [s].</summary>
/// <param name="ClimbS">Climb [s].</param>
/// <param name="HoldS">Hold [s].</param>
/// <param name="SlipS">Slip [s].</param>
/// <param name="PunchS">Punch [s].</param>
/// <param name="JamS">Jam [s].</param>
public sealed record Judging(double ClimbS, double HoldS, double SlipS, double PunchS, double JamS);
