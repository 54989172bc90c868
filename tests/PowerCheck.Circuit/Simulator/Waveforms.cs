namespace PowerCheck.Circuit.Simulator;

/// <summary>What a transient analysis wrote: the moments that the simulator chose, and each expression at them.</summary>
/// <param name="TimeS">Moments, rising [s].</param>
/// <param name="Columns">Values by expression, one at each moment.</param>
public sealed record Waveforms(
    IReadOnlyList<double> TimeS,
    IReadOnlyDictionary<string, double[]> Columns
)
{
    /// <summary>An expression at a moment, on the straight line between its neighbours.</summary>
    /// <param name="expression">The expression, as it was asked for.</param>
    /// <param name="timeS">The moment [s], within the run.</param>
    public double At(string expression, double timeS)
    {
        var column = Columns[expression];
        var rounding = 1e-9 * TimeS[^1];
        if (timeS < TimeS[0] - rounding || timeS > TimeS[^1] + rounding)
        {
            throw new ArgumentOutOfRangeException(nameof(timeS), timeS, "Not within the run.");
        }
        var after = After(timeS);
        var (t0, t1) = (TimeS[after - 1], TimeS[after]);
        return column[after - 1] + (column[after] - column[after - 1]) * (timeS - t0) / (t1 - t0);
    }

    /// <summary>First moment at which an expression has risen to a level; infinity when it does not [s].</summary>
    /// <param name="expression">The expression, as it was asked for.</param>
    /// <param name="level">The level.</param>
    public double FirstReached(string expression, double level)
    {
        var column = Columns[expression];
        var after = Array.FindIndex(column, value => value >= level);
        if (after <= 0)
        {
            return after == 0 ? TimeS[0] : double.PositiveInfinity;
        }
        var share = (level - column[after - 1]) / (column[after] - column[after - 1]);
        return TimeS[after - 1] + share * (TimeS[after] - TimeS[after - 1]);
    }

    // The first moment at or after a time, and never the first of all.
    private int After(double timeS)
    {
        var (low, high) = (1, TimeS.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = TimeS[middle] < timeS ? (middle + 1, high) : (low, middle);
        }
        return low;
    }
}
