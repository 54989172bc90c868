namespace PowerCheck.Circuit.Electrical;

/// <summary>Ripple of a square wave over a loop of resistance and inductance, as a Fourier series.</summary>
internal static class Ripple
{
    /// <summary>Under this the bus is not smoothed [kHz].</summary>
    public const double UnsmoothedUnderKhz = 4;

    private const int Harmonics = 2000;

    /// <summary>Mean square of all that is not the mean [A²].</summary>
    /// <param name="stepV">Height of the square wave [V].</param>
    /// <param name="duty">Share of the time that it is high.</param>
    /// <param name="loopOhm">Resistance of the loop [Ω].</param>
    /// <param name="inductanceH">Its inductance [H].</param>
    /// <param name="frequencyHz">Frequency [Hz].</param>
    public static double MeanSquareA2(
        double stepV,
        double duty,
        double loopOhm,
        double inductanceH,
        double frequencyHz
    )
    {
        var sum = 0.0;
        for (var k = Harmonics; k > 0; k--)
        {
            var peakV = 2 * stepV * Math.Sin(Math.PI * k * duty) / (Math.PI * k);
            var reactanceOhm = 2 * Math.PI * frequencyHz * k * inductanceH;
            sum += peakV * peakV / 2 / ((loopOhm * loopOhm) + (reactanceOhm * reactanceOhm));
        }

        return sum;
    }
}
