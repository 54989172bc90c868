using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Motors;

/// <summary>Fills in a motor's heat network and limits (M6).</summary>
public static class MotorHeatDefaults
{
    private const double IronJPerKgK = 460;
    private const double RotorJPerKgK = 420;
    private const double FilmWPerM2K = 15;

    /// <summary>The heat network, complete.</summary>
    /// <param name="label">What the box says.</param>
    /// <param name="kind">Brushed or brushless.</param>
    /// <param name="magnet">Magnet material.</param>
    /// <param name="can">Mass and size.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static MotorHeat Complete(
        MotorLabel label,
        MotorKind kind,
        MagnetMaterial magnet,
        MotorCan can,
        Ledger ledger
    )
    {
        var brushed = kind == MotorKind.Brushed;
        var winding = Winding(label, brushed, can.MassKg, ledger);
        return new(
            winding,
            Case(label, brushed, can.MassKg, ledger),
            CopperAlone(label, brushed, can.MassKg, winding, ledger),
            WindingToCase(label, brushed, winding, ledger),
            CaseToAmbient(label, can, ledger),
            brushed,
            LockedFactor(label, brushed, ledger),
            WindingLimit(label, ledger),
            MagnetLimit(label, magnet, ledger),
            MagnetCoefficient(label, magnet, ledger)
        );
    }

    private static double Winding(MotorLabel label, bool brushed, double massKg, Ledger ledger) =>
        ledger.Figure(
            label.WindingJPerK,
            "motor.thermal.windingJPerK",
            Unit.JoulePerKelvin,
            brushed ? 0.35 * massKg * RotorJPerKgK : 0.20 * massKg * Copper.HeatCapacityJPerKgK,
            Spread.Relative(0.4),
            brushed
                ? "assumed: rotor 35 % of the mass at 420 J/(kg·K)"
                : "assumed: copper 20 % of the mass at 385 J/(kg·K)"
        );

    private static double Case(MotorLabel label, bool brushed, double massKg, Ledger ledger) =>
        ledger.Figure(
            label.CaseJPerK,
            "motor.thermal.caseJPerK",
            Unit.JoulePerKelvin,
            (brushed ? 0.65 : 0.80) * massKg * IronJPerKgK,
            Spread.Relative(0.2),
            "assumed: the rest of the mass at 460 J/(kg·K)"
        );

    private static double CopperAlone(
        MotorLabel label,
        bool brushed,
        double massKg,
        double windingJPerK,
        Ledger ledger
    ) =>
        ledger.Figure(
            label.CopperJPerK,
            "motor.thermal.copperJPerK",
            Unit.JoulePerKelvin,
            brushed ? 0.12 * massKg * Copper.HeatCapacityJPerKgK : windingJPerK,
            Spread.Relative(0.4),
            brushed
                ? "assumed: copper 12 % of the mass at 385 J/(kg·K)"
                : "assumed: the winding is copper"
        );

    private static double WindingToCase(
        MotorLabel label,
        bool brushed,
        double windingJPerK,
        Ledger ledger
    ) =>
        ledger.Figure(
            label.WindingToCaseKPerW,
            "motor.thermal.windingToCaseKPerW",
            Unit.KelvinPerWatt,
            (brushed ? 75 : 20) / windingJPerK,
            Spread.Factor(1.7),
            brushed
                ? "assumed: time constant of the rotor 75 s"
                : "assumed: time constant of the winding 20 s"
        );

    private static double CaseToAmbient(MotorLabel label, MotorCan can, Ledger ledger)
    {
        if (label.CaseToAmbientKPerW is { } given)
        {
            return given;
        }

        var mount = ledger.Word(
            label.Mount,
            "motor.mount",
            MotorMount.Plastic,
            "assumed: no heat leaves through the mount"
        );
        var fan = ledger.Word(label.Fan, "motor.fan", false, "assumed: no fan");
        var closed = ledger.Word(label.Sealed, "motor.sealed", false, "assumed: not sealed");
        var film = FilmWPerM2K * (fan ? 2 : 1) * (closed ? 0.7 : 1);
        var conductance = (film * can.SurfaceM2) + (mount == MotorMount.Metal ? 0.05 : 0);
        return ledger.Figure(
            null,
            "motor.thermal.caseToAmbientKPerW",
            Unit.KelvinPerWatt,
            1 / conductance,
            Spread.Relative(0.35),
            "assumed: 15 W/(m²·K) over side and both ends, twice with a fan, 0.7 sealed, "
                + "0.05 W/K more on a metal mount"
        );
    }

    private static double LockedFactor(MotorLabel label, bool brushed, Ledger ledger) =>
        ledger.Figure(
            label.LockedHeatFactor,
            "motor.lockedHeatFactor",
            Unit.One,
            brushed ? 2.0 : 1.5,
            brushed ? Spread.Interval(1.2, 3) : Spread.Interval(1.1, 2),
            "assumed: a standing motor heats only the coils that carry the current"
        );

    /// <summary>Temperature of an insulation class [°C]. Source: iec60085.</summary>
    /// <param name="insulation">The class.</param>
    public static double ClassC(InsulationClass insulation) =>
        insulation switch
        {
            InsulationClass.A => 105,
            InsulationClass.E => 120,
            InsulationClass.B => 130,
            InsulationClass.F => 155,
            _ => 180,
        };

    private static double WindingLimit(MotorLabel label, Ledger ledger)
    {
        var insulation = ledger.Word(
            label.Insulation,
            "motor.insulationClass",
            InsulationClass.B,
            "assumed: class B, 130 °C",
            "iec60085"
        );
        var hotSpot = ledger.Figure(
            label.HotSpotAllowanceK,
            "motor.hotSpotAllowanceK",
            Unit.Kelvin,
            10,
            Spread.Interval(5, 20),
            "hottest spot 10 K above the mean winding",
            "iec60085"
        );
        return ClassC(insulation) - hotSpot;
    }

    private static double MagnetLimit(MotorLabel label, MagnetMaterial magnet, Ledger ledger) =>
        ledger.Figure(
            label.MagnetMaxC,
            "motor.magnetMaxC",
            Unit.Celsius,
            magnet == MagnetMaterial.Ndfeb ? 120 : 200,
            Spread.Absolute(20),
            "assumed: a grade for 120 °C (neodymium-iron-boron) or 200 °C (ferrite)",
            "magnets"
        );

    private static double MagnetCoefficient(
        MotorLabel label,
        MagnetMaterial magnet,
        Ledger ledger
    ) =>
        ledger.Figure(
            label.MagnetCoefficientPerK,
            "motor.magnetCoefficientPerK",
            Unit.PerKelvin,
            magnet == MagnetMaterial.Ndfeb ? -0.0011 : -0.0020,
            Spread.Relative(0.1),
            "temperature coefficient of the magnet's remanence",
            magnet == MagnetMaterial.Ndfeb ? "magnets" : "msl"
        );
}
