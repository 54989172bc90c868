using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>Two rigs' temperatures side by side.</summary>
internal static class Warmth
{
    /// <summary>Lap after lap, settled in each case and by the time to each limit: the second rig's motor is no cooler.</summary>
    public static string NoCooler(Inspection a, Inspection b, LoadCaseName[] cases)
    {
        var (one, other) = (a.Result.Temperatures, b.Result.Temperatures);
        return NoCooler("winding", one.MotorWinding, other.MotorWinding, cases)
            + NoCooler("magnet", one.MotorMagnet, other.MotorMagnet, cases)
            + NoCooler("case", one.MotorCase, other.MotorCase, cases);
    }

    public static string NoCooler(string part, NodeReport a, NodeReport b, LoadCaseName[] cases)
    {
        var said = Law.NoLess($"{part} peak", a.PeakC, b.PeakC, 1e-6);
        foreach (var name in cases)
        {
            if (Find(a, name) is { } before && Find(b, name) is { } after)
            {
                said +=
                    Law.NoLess($"{part} at {name}", before.SettledC, after.SettledC, 1e-6)
                    + Law.NoMore($"{part} time, {name}", before.FromColdS, after.FromColdS, 1e-6);
            }
        }

        return said;
    }

    private static CaseTemperature? Find(NodeReport node, LoadCaseName name) =>
        node.Cases.FirstOrDefault(c => c.Case == name && !double.IsNaN(c.SettledC));
}
