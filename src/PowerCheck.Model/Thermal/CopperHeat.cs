using PowerCheck.Model.Materials;

namespace PowerCheck.Model.Thermal;

/// <summary>Heat in a winding as a straight line over its temperature (M6).</summary>
/// <param name="AtZeroW">At 0 °C [W].</param>
/// <param name="PerKelvinW">More by kelvin [W/K].</param>
public readonly record struct CopperHeat(double AtZeroW, double PerKelvinW)
{
    /// <summary>Of a held current: i²·R₂₀·(1 + α(T − 20)).</summary>
    /// <param name="current2">Mean square current, unevenness included [A²].</param>
    /// <param name="resistanceOhm">Resistance at 20 °C [Ω].</param>
    public static CopperHeat Of(double current2, double resistanceOhm)
    {
        var copperW = current2 * resistanceOhm;
        var growth = copperW * Copper.TemperatureCoefficientPerK;
        return new(copperW - (20 * growth), growth);
    }

    /// <summary>The tangent of any heat over temperature.</summary>
    /// <param name="heatW">Heat from the winding's temperature [W from °C].</param>
    /// <param name="windingC">Winding temperature at which it touches [°C].</param>
    public static CopperHeat Along(Func<double, double> heatW, double windingC)
    {
        const double Half = 0.25;
        var slope = (heatW(windingC + Half) - heatW(windingC - Half)) / (2 * Half);
        return new(heatW(windingC) - (slope * windingC), slope);
    }
}
