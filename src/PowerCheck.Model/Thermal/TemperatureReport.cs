using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Thermal;

/// <summary>How warm each part gets.</summary>
public sealed record TemperatureReport
{
    /// <summary>Mean winding (brushed: rotor) temperature.</summary>
    public required NodeReport MotorWinding { get; init; }

    /// <summary>Magnet temperature.</summary>
    public required NodeReport MotorMagnet { get; init; }

    /// <summary>Case temperature.</summary>
    public required NodeReport MotorCase { get; init; }

    /// <summary>Controller temperature, by its thermal memory.</summary>
    public required NodeReport Controller { get; init; }

    /// <summary>Cell temperature.</summary>
    public required NodeReport Battery { get; init; }

    /// <summary>Lasting motor current above which the winding never settles [A].</summary>
    public required double RunawayCurrentA { get; init; }
}

/// <summary>How warm one part gets; NaN is not known.</summary>
public sealed record NodeReport
{
    /// <summary>At the end of the course, run as long as wanted or as the pack lasts, from cold [°C].</summary>
    public required double CourseEndC { get; init; }

    /// <summary>Highest within a lap of the course repeated for ever [°C]; infinity for runaway.</summary>
    public required double PeakC { get; init; }

    /// <summary>
    /// Time into the course, from cold, at which it reaches its limit [s]; infinity when it does not within the run or an
    /// hour, NaN when that is not computed.
    /// </summary>
    public double CourseTimeToLimitS => CourseTime.Value;

    /// <summary>Finds that time when it is asked for.</summary>
    public Lazy<double> CourseTime { get; init; } = new(double.NaN);

    /// <summary>What it stands [°C].</summary>
    public required double LimitC { get; init; }

    /// <summary>Settled temperature and time to the limit of each load case that was computed.</summary>
    public required IReadOnlyList<CaseTemperature> Cases { get; init; }
}

/// <summary>One part in one load case.</summary>
/// <param name="Case">The load case.</param>
/// <param name="SettledC">Where it would settle if the case lasted [°C]; infinity for runaway, NaN when not known.</param>
/// <param name="FromCold">Finds the time to the limit from the air's temperature [s]; infinity when never reached.</param>
/// <param name="FromWarm">Finds the time to the limit from the end of a lap [s]; infinity when never reached.</param>
/// <param name="JudgedS">For how long the case is judged [s]; infinity for settled, NaN when it is not judged.</param>
/// <param name="JudgedC">Temperature after that time from warm [°C]; infinity for runaway, NaN when it is not judged.</param>
public sealed record CaseTemperature(
    LoadCaseName Case,
    double SettledC,
    Lazy<double> FromCold,
    Lazy<double> FromWarm,
    double JudgedS,
    double JudgedC
)
{
    /// <summary>Time to the limit from the air's temperature [s]; infinity when never reached.</summary>
    public double FromColdS => FromCold.Value;

    /// <summary>Time to the limit from the end of a lap [s]; infinity when never reached.</summary>
    public double FromWarmS => FromWarm.Value;
}
