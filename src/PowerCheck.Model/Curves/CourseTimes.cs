using PowerCheck.Model.Courses;

namespace PowerCheck.Model.Curves;

/// <summary>The times at which a course is looked at.</summary>
internal static class CourseTimes
{
    /// <summary>About so many times are looked at, assumed: a picture has some 400 px for them.</summary>
    private const int Most = 240;

    /// <summary>
    /// Times from 0 to an end, rising: the ends of all segments and times between them or, where that is too much, those of
    /// some laps.
    /// </summary>
    /// <param name="course">The course.</param>
    /// <param name="endS">The end [s].</param>
    public static double[] Of(Course course, double endS)
    {
        var laps = Math.Ceiling(endS / course.LapS);
        var room = Most / (laps * course.Segments.Count);
        var every = Math.Max(1, Math.Ceiling(1 / room));
        var phases = Phases(course, (int)Math.Clamp(room, 1, Most));
        return [0, .. Driven(course.LapS, laps, every, phases).TakeWhile(t => t < endS), endS];
    }

    private static IEnumerable<double> Driven(
        double lapS,
        double laps,
        double every,
        double[] phases
    )
    {
        for (var lap = 0.0; lap < laps; lap += every)
        {
            foreach (var phase in phases)
            {
                yield return (lap * lapS) + phase;
            }
        }
    }

    // Where in a lap is looked at: each segment in so many pieces.
    private static double[] Phases(Course course, int pieces)
    {
        var all = new List<double>();
        var start = 0.0;
        foreach (var segment in course.Segments)
        {
            all.AddRange(
                Enumerable.Range(1, pieces).Select(n => start + (segment.DurationS * n / pieces))
            );
            start += segment.DurationS;
        }

        var every = Math.Max(1, all.Count / Most);
        return [.. all.Where((_, n) => (n + 1) % every == 0 || n == all.Count - 1)];
    }
}
