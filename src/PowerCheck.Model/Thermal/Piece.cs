namespace PowerCheck.Model.Thermal;

/// <summary>
/// A piece of time so short that the current of its middle stands for all of it (M6): the motor's network in it, exact for
/// that current.
/// </summary>
/// <param name="Network">The network.</param>
/// <param name="Seconds">How long the piece is [s].</param>
public readonly record struct Piece(TwoNode Network, double Seconds)
{
    /// <summary>The winding may change by about this much within a piece [K].</summary>
    private const double MostK = 4;

    /// <summary>A hot winding may change by this share of its rise over the air, assumed.</summary>
    private const double MostShare = 0.02;

    /// <summary>Longest piece, where nothing changes much [s].</summary>
    private const double LongestS = 30;

    /// <summary>Shortest piece, however fast the winding warms [s].</summary>
    private const double ShortestS = 0.05;

    /// <summary>No drive is cut into more pieces than about this.</summary>
    private const double Most = 2000;

    /// <summary>The next piece of a drive.</summary>
    /// <param name="warmth">The motor in its air.</param>
    /// <param name="drive">The drive.</param>
    /// <param name="x">Temperatures at its start.</param>
    /// <param name="leftS">How long the drive still lasts [s].</param>
    public static Piece Next(MotorWarmth warmth, Drive drive, MotorTemperature x, double leftS)
    {
        var network = drive.Network(warmth, x);
        if (drive.Held)
        {
            return new(network, leftS);
        }

        var shortest = Math.Max(ShortestS, leftS / Most);
        var rate = Math.Abs(network.WindingRate(x));
        var seconds = Math.Min(
            leftS,
            Math.Min(
                Math.Max(LongestS, shortest),
                Math.Max(
                    shortest,
                    Math.Max(MostK, MostShare * (x.WindingC - warmth.AmbientC)) / rate
                )
            )
        );
        if (!(seconds > 0))
        {
            return new(network, leftS);
        }

        var middle = network.Over(seconds / 2).Apply(x);
        return new(drive.Network(warmth, middle), seconds);
    }

    /// <summary>Temperatures at its end.</summary>
    /// <param name="x">Temperatures at its start.</param>
    public MotorTemperature Apply(MotorTemperature x) => Network.Over(Seconds).Apply(x);
}
