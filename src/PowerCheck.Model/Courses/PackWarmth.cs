using PowerCheck.Model.Batteries;

namespace PowerCheck.Model.Courses;

/// <summary>A pack as one warm body (M2): C·dT/dt = P − (T − T_a)/R.</summary>
/// <param name="Battery">The pack.</param>
/// <param name="AmbientC">Air temperature [°C].</param>
public readonly record struct PackWarmth(Battery Battery, double AmbientC)
{
    private double TimeConstantS => Battery.HeatJPerK * Battery.PackToAmbientKPerW;

    /// <summary>Where a lasting heat settles [°C].</summary>
    /// <param name="heatW">Heat [W].</param>
    public double SettledC(double heatW) => AmbientC + (Battery.PackToAmbientKPerW * heatW);

    /// <summary>Temperature after a time [°C].</summary>
    /// <param name="startC">Temperature at the start [°C].</param>
    /// <param name="heatW">Heat [W].</param>
    /// <param name="seconds">How long [s]; infinity for ever.</param>
    public double AfterC(double startC, double heatW, double seconds)
    {
        var settled = SettledC(heatW);
        return settled + ((startC - settled) * Math.Exp(-seconds / TimeConstantS));
    }

    /// <summary>Time to the limit [s]; infinity when never.</summary>
    /// <param name="startC">Temperature at the start [°C].</param>
    /// <param name="heatW">Heat [W].</param>
    public double TimeToLimit(double startC, double heatW)
    {
        var settled = SettledC(heatW);
        return double.IsNaN(startC + settled) ? double.NaN
            : startC >= Battery.LimitC ? 0
            : settled <= Battery.LimitC ? double.PositiveInfinity
            : TimeConstantS * Math.Log((settled - startC) / (settled - Battery.LimitC));
    }
}
