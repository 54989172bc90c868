using MathNet.Numerics;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Motors;

/// <summary>Fills in what a motor's box does not say (M1); every fill goes through the ledger.</summary>
public static class MotorDefaults
{
    /// <summary>Most no-load power of a motor over its mass [W/kg], assumed.</summary>
    private const double MostNoLoadWPerKg = 150;

    /// <summary>The motor, complete.</summary>
    /// <param name="label">What the box says.</param>
    /// <param name="nominalPackV">Nominal pack voltage [V]; NaN when not known.</param>
    /// <param name="slowSwitching">Whether the controller switches so slowly that the inductance counts.</param>
    /// <param name="ledger">Where each fill is listed.</param>
    /// <param name="likely">The one kind of motor that the controller drives; null when it is not one.</param>
    public static Motor Complete(
        MotorLabel label,
        double nominalPackV,
        bool slowSwitching,
        Ledger ledger,
        MotorKind? likely = null
    )
    {
        var kind = ledger.Word(
            label.Kind,
            "motor.kind",
            LooksBrushless(label) ? MotorKind.Brushless : likely ?? MotorKind.Brushed,
            "assumed: brushless where a sensor, rotor layout or pole pairs are given, else what the controller drives"
        );
        var brushless = kind == MotorKind.Brushless;
        var rotor = brushless
            ? ledger.Word(label.Rotor, "motor.rotor", RotorLayout.Inner, "assumed: inner rotor")
            : RotorLayout.Inner;
        var magnet = ledger.Word(
            label.Magnet,
            "motor.magnet",
            brushless ? MagnetMaterial.Ndfeb : MagnetMaterial.Ferrite,
            "assumed: neodymium-iron-boron in brushless, ferrite in brushed motors"
        );
        var can = MotorCan.Complete(label, ledger);
        var kt = 1 / SpeedConstant(label, ledger);
        var resistance = Resistance(label, brushless, rotor, magnet, kt, can.MassKg, ledger);
        var brush = brushless
            ? 0
            : ledger.Figure(
                label.BrushDropV,
                "motor.brushDropV",
                Unit.Volt,
                0.3,
                Spread.Interval(0.1, 0.6),
                "assumed: carbon or copper-graphite brushes, both together"
            );

        return new Motor
        {
            Kind = kind,
            KindKnown = label.Kind is not null,
            Sensored = label.Sensored,
            MagnetAtCase = !brushless || rotor == RotorLayout.Outer,
            Magnet = magnet,
            TorqueConstantNmPerA = kt,
            ResistanceOhm = resistance,
            BrushDropV = brush,
            NoLoad = NoLoad(
                label,
                brushless,
                kt,
                resistance,
                brush,
                can.MassKg,
                nominalPackV,
                ledger
            ),
            InductanceH = Inductance(label, resistance, slowSwitching, ledger),
            PolePairs = label.PolePairs ?? double.NaN,
            Turns = label.Turns ?? double.NaN,
            CanDiameterM = can.DiameterM,
            Ratings = new(
                label.MaxVoltageV ?? double.NaN,
                label.MaxSpeedRadPerS ?? double.NaN,
                label.ContinuousCurrentA ?? double.NaN,
                label.BurstCurrentA ?? double.NaN,
                label.BurstS ?? double.NaN
            ),
            Heat = MotorHeatDefaults.Complete(label, kind, magnet, can, ledger),
        };
    }

    private static bool LooksBrushless(MotorLabel label) =>
        label.Sensored is not null || label.Rotor is not null || label.PolePairs is not null;

    private static double SpeedConstant(MotorLabel label, Ledger ledger)
    {
        const string Path = "motor.kvRpmPerVolt";
        if (label.SpeedConstantRadPerSPerV is null && label.Turns is { } turns)
        {
            var (product, spread, basis) = label.Slots switch
            {
                3 => (55_000, 0.25, "assumed: 55 000 rpm/V over the turns, 3 slots, 36 mm can"),
                5 => (37_000, 0.25, "assumed: 37 000 rpm/V over the turns, 5 slots, 36 mm can"),
                _ => (45_000, 0.45, "assumed: 45 000 rpm/V over the turns, slots not given"),
            };
            var assumed = Unit.RpmPerVolt.ToSi(product / turns);
            return ledger.Figure(
                null,
                Path,
                Unit.RpmPerVolt,
                assumed,
                Spread.Relative(spread),
                basis
            );
        }

        return ledger.Known(
            label.SpeedConstantRadPerSPerV,
            Path,
            Unit.RpmPerVolt,
            Unit.RpmPerVolt.ToSi(200),
            Unit.RpmPerVolt.ToSi(12_000)
        );
    }

    private static double Resistance(
        MotorLabel label,
        bool brushless,
        RotorLayout rotor,
        MagnetMaterial magnet,
        double kt,
        double massKg,
        Ledger ledger
    )
    {
        const string Path = "motor.resistanceMilliohm";
        if (label.ResistanceOhm is { } given)
        {
            var measuredC = ledger.Figure(
                label.ResistanceTemperatureC,
                "motor.resistanceTemperatureC",
                Unit.Celsius,
                20,
                Spread.Absolute(5),
                "assumed: a label's resistance is at 20 °C"
            );
            return Copper.AtReference(given, measuredC);
        }

        var (constant, factor, what) = MotorConstant(brushless, rotor, magnet);
        var fromMass = Math.Pow(kt / (constant * Math.Pow(massKg, 5.0 / 6)), 2);
        if (double.IsNaN(massKg))
        {
            return ledger.Known(null, Path, Unit.Milliohm, 1e-3, 3);
        }

        return ledger.Figure(
            null,
            Path,
            Unit.Milliohm,
            fromMass,
            Spread.Factor(factor * factor),
            $"assumed: from mass and KV, motor constant {constant} N·m/√W a kilogram^(5/6), {what}"
        );
    }

    private static (double Constant, double Factor, string What) MotorConstant(
        bool brushless,
        RotorLayout rotor,
        MagnetMaterial magnet
    ) =>
        (brushless, rotor, magnet) switch
        {
            (true, RotorLayout.Outer, _) => (0.22, 1.5, "brushless outer rotor"),
            (true, _, _) => (0.105, 1.3, "brushless inner rotor"),
            (false, _, MagnetMaterial.Ndfeb) => (0.075, 1.4, "brushed, rare-earth magnet"),
            _ => (0.055, 1.5, "brushed, ferrite magnet"),
        };

    private static NoLoadLine NoLoad(
        MotorLabel label,
        bool brushless,
        double kt,
        double resistance,
        double brush,
        double massKg,
        double nominalPackV,
        Ledger ledger
    )
    {
        var points = label.NoLoadPoints;
        if (points.Count > 1)
        {
            return FitLine(points, kt, resistance, brush, nominalPackV);
        }

        var share = brushless ? 0.01 : 0.03;
        var byStall = share * nominalPackV / resistance;
        var byMass = MostNoLoadWPerKg * massKg / nominalPackV;
        var typical = byStall > byMass ? byMass : byStall;
        double? given = points.Count == 1 ? points[0].CurrentA : null;
        var current = ledger.Figure(
            given,
            "motor.noLoadPoints.0.currentA",
            Unit.Ampere,
            double.IsNaN(typical) ? 1.5 : typical,
            Spread.Factor(2),
            double.IsNaN(typical)
                ? "assumed: 1.5 A, where resistance or pack voltage is not known"
                : $"assumed: {share:P0} of nominal pack voltage over resistance, 150 W a kilogram of motor at most"
        );
        var voltage = ledger.Figure(
            points.Count == 1 ? points[0].VoltageV : null,
            "motor.noLoadPoints.0.voltageV",
            Unit.Volt,
            nominalPackV,
            Spread.None,
            "assumed: no-load current is meant at nominal pack voltage"
        );
        var standing = ledger.Figure(
            label.NoLoadStandstillShare,
            "motor.noLoadStandstillShare",
            Unit.One,
            0.5,
            Spread.Interval(0.3, 0.8),
            "assumed: half of the no-load current is friction that does not depend on speed"
        );
        var speed = NoLoadSpeed(voltage, current, kt, resistance, brush);
        var slope = (1 - standing) * current / speed;
        return new(standing * current, double.IsNaN(slope) ? 0 : slope);
    }

    /// <summary>Speed of an unloaded motor [rad/s]: (V − i0·R − v_brush)/ke.</summary>
    /// <param name="voltageV">Voltage at the motor [V].</param>
    /// <param name="currentA">No-load current [A].</param>
    /// <param name="kt">Torque constant [N·m/A].</param>
    /// <param name="resistance">Resistance [Ω]; NaN when not known, then left out.</param>
    /// <param name="brush">Brush drop [V].</param>
    public static double NoLoadSpeed(
        double voltageV,
        double currentA,
        double kt,
        double resistance,
        double brush
    ) =>
        Math.Max(
            (voltageV - (double.IsNaN(resistance) ? 0 : currentA * resistance) - brush) / kt,
            1e-3 * voltageV / kt
        );

    private static NoLoadLine FitLine(
        IReadOnlyList<NoLoadPoint> points,
        double kt,
        double resistance,
        double brush,
        double nominalPackV
    )
    {
        var speeds = points
            .Select(p => NoLoadSpeed(p.VoltageV ?? nominalPackV, p.CurrentA, kt, resistance, brush))
            .ToArray();
        var currents = points.Select(p => p.CurrentA).ToArray();
        var (intercept, slope) = Fit.Line(speeds, currents);
        return intercept >= 0 && slope >= 0
            ? new(intercept, slope)
            : new(Math.Max(0, currents.Average()), 0);
    }

    private static double Inductance(
        MotorLabel label,
        double resistance,
        bool slowSwitching,
        Ledger ledger
    ) =>
        label.InductanceH is null && !slowSwitching
            ? double.NaN
            : ledger.Figure(
                label.InductanceH,
                "motor.inductanceMicrohenry",
                Unit.Microhenry,
                0.7e-3 * resistance,
                Spread.Factor(2),
                "assumed: inductance over resistance is 0.7 ms"
            );
}
