using PowerCheck.Api.Door;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Limits;

/// <summary>
/// How much the service takes on. Each can be set in the configuration, section Limits, under the names given here. The defaults
/// are assumed: what two cores serve without anybody waiting long, and no caller needs more.
/// </summary>
public sealed class ServiceLimits
{
    /// <summary>Of checks, and of each line of many at once.</summary>
    public CheckLimits Check { get; init; } = new();

    /// <summary>Of choosing a part.</summary>
    public ShortlistLimits Shortlist { get; init; } = new();

    /// <summary>Of many checks at once.</summary>
    public BatchLimits Batch { get; init; } = new();
}

/// <summary>Limits of a check.</summary>
public sealed class CheckLimits
{
    /// <summary>Most bytes of one rig, as a body or as a line of many. Reached: a problem.</summary>
    [Figure(nameof(Unit.One), 1, 1e9, BodyReader.MostBytes)]
    public int Bytes => BodyReader.MostBytes;

    /// <summary>Longest time that one rig may take. Reached: a problem.</summary>
    [Figure(nameof(Unit.Second), 0.001, 86400, 60)]
    public double Seconds { get; init; } = 60;

    /// <summary>Checks that are computed at once; more wait.</summary>
    [Figure(nameof(Unit.One), 1, 10000, 8)]
    public int AtOnce { get; init; } = 4 * Environment.ProcessorCount;

    /// <summary>Checks that wait. Reached: a problem with status 503, and after how long to try again.</summary>
    [Figure(nameof(Unit.One), 0, 100000, 200)]
    public int Waiting { get; init; } = 100 * Environment.ProcessorCount;
}

/// <summary>Limits of choosing a part.</summary>
public sealed class ShortlistLimits
{
    /// <summary>Most bytes of a body. Reached: a problem.</summary>
    [Figure(nameof(Unit.One), 1, 1e9, BodyReader.MostBytes)]
    public int Bytes => BodyReader.MostBytes;

    /// <summary>Longest time that one answer may take. Reached: a problem.</summary>
    [Figure(nameof(Unit.Second), 0.001, 86400, 300)]
    public double Seconds { get; init; } = 300;

    /// <summary>Answers that are computed at once; more wait.</summary>
    [Figure(nameof(Unit.One), 1, 10000, 2)]
    public int AtOnce { get; init; } = Environment.ProcessorCount;

    /// <summary>Requests that wait. Reached: a problem with status 503, and after how long to try again.</summary>
    [Figure(nameof(Unit.One), 0, 100000, 16)]
    public int Waiting { get; init; } = 8 * Environment.ProcessorCount;
}

/// <summary>Limits of many checks at once.</summary>
public sealed class BatchLimits
{
    /// <summary>Most lines of one request. Reached: a tally that says so.</summary>
    [Figure(nameof(Unit.One), 1, 1e12, 10_000_000)]
    public long Lines { get; init; } = 10_000_000;

    /// <summary>Most lines of a request that is answered with one JSON object. Reached: a tally that says so.</summary>
    [Figure(nameof(Unit.One), 1, 1e6, 1000)]
    public int JsonLines { get; init; } = 1000;

    /// <summary>Most bytes of one request. Reached: a tally that says so.</summary>
    [Figure(nameof(Unit.One), 1, 1e15, 1e12)]
    public long Bytes { get; init; } = 1_000_000_000_000;

    /// <summary>Longest time from the first byte to the last line taken. Reached: a tally that says so.</summary>
    [Figure(nameof(Unit.Second), 0.001, 4e6, 86400)]
    public double Seconds { get; init; } = 86400;

    /// <summary>Longest time without a byte of the request. Reached: a tally that says so.</summary>
    [Figure(nameof(Unit.Second), 0.001, 86400, 300)]
    public double IdleSeconds { get; init; } = 300;

    /// <summary>Longest time in which the caller reads nothing of the answer although all is sent. Reached: the connection is closed.</summary>
    [Figure(nameof(Unit.Second), 0.001, 86400, 300)]
    public double UnreadSeconds { get; init; } = 300;

    /// <summary>Most bytes that are put aside for a caller who sends without reading. Reached, and still nothing read: a tally that says so.</summary>
    [Figure(nameof(Unit.One), 65536, 1e12, 1_073_741_824)]
    public long AsideBytes { get; init; } = 1_073_741_824;

    /// <summary>Lines of one request that are in work at once.</summary>
    [Figure(nameof(Unit.One), 1, 10000, 8)]
    public int InFlight => 4 * Environment.ProcessorCount;

    /// <summary>Requests that are answered at once. Reached: a problem with status 503, and after how long to try again.</summary>
    [Figure(nameof(Unit.One), 1, 10000, 4)]
    public int AtOnce { get; init; } = 4;
}
