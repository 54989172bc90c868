namespace PowerCheck.Model.Uncertainty;

/// <summary>Quantities that depend on inputs, each input given by its standard normal deviate from its best value.</summary>
/// <param name="deviates">A deviate an input; all zero is the best estimate.</param>
/// <returns>The quantities, always in the same order.</returns>
public delegate double[] Quantities(double[] deviates);
