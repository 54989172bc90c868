namespace PowerCheck.Model.Uncertainty;

/// <summary>Quantities that depend on inputs, each input given by its standard normal deviate from its best value.</summary>
/// <param name="deviates">A deviate an input; all zero is the best estimate.</param>
/// <returns>The quantities, always in the same order.</returns>
public delegate double[] Quantities(double[] deviates);

/// <summary>Quantities in many places.</summary>
public static class QuantitiesInManyPlaces
{
    /// <summary>The quantities at each row of deviates, worked out side by side.</summary>
    /// <param name="quantities">The quantities, asked by several threads at once.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="stop">Tells that nobody waits for them any more.</param>
    /// <exception cref="OperationCanceledException">Nobody waits any more.</exception>
    public static double[][] AtEach(
        this Quantities quantities,
        double[][] rows,
        CancellationToken stop
    )
    {
        var at = new double[rows.Length][];
        Parallel.For(
            0,
            rows.Length,
            new ParallelOptions { CancellationToken = stop },
            row => at[row] = quantities(rows[row])
        );
        return at;
    }
}
