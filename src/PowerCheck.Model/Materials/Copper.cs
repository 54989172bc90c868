namespace PowerCheck.Model.Materials;

/// <summary>Copper, as windings and leads are made of (M1, M10).</summary>
public static class Copper
{
    /// <summary>Growth of resistance with temperature at 20 °C [1/K]. Source: iec60028.</summary>
    public const double TemperatureCoefficientPerK = 0.00393;

    /// <summary>Resistivity at 20 °C [Ω·m]: 100 % IACS is 58 MS/m. Source: hph.</summary>
    public const double ResistivityOhmM = 1 / 58e6;

    /// <summary>Specific heat capacity [J/(kg·K)]. Source: pybamm (collector foil, 385).</summary>
    public const double HeatCapacityJPerKgK = 385;

    /// <summary>
    /// Resistance over its value at 20 °C: 1 + α·(T − 20). Straight line, good to 1 % from −40 to 200 °C. Source: msl.
    /// </summary>
    /// <param name="temperatureC">Temperature [°C].</param>
    public static double Growth(double temperatureC) =>
        1 + (TemperatureCoefficientPerK * (temperatureC - 20));

    /// <summary>Resistance at 20 °C of a piece that measured <paramref name="resistanceOhm"/> elsewhere [Ω].</summary>
    /// <param name="resistanceOhm">Resistance [Ω] at <paramref name="temperatureC"/>.</param>
    /// <param name="temperatureC">Temperature of the measurement [°C].</param>
    public static double AtReference(double resistanceOhm, double temperatureC) =>
        resistanceOhm / Growth(temperatureC);
}
