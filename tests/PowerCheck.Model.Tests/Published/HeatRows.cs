using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about the two-node network of a motor.</summary>
/// <remarks>
/// The model has one coefficient, 0.00393 per kelvin at 20 °C. A document with another coefficient at its own reference
/// describes the same straight line of resistance at shifted temperatures: everything is moved by that shift, and back.
/// </remarks>
internal static class HeatRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["TwoNode.Settled"] = Settled,
            ["TwoNode.Over"] = Over,
            ["TwoNode.Slow"] = TimeConstants,
            ["MotorWarmth.RunawayA"] = Runaway,
            ["MotorWarmth.ContinuousA"] = Continuous,
            ["MotorWarmth.Settled"] = check =>
                Of(
                    (
                        "runaway",
                        double.IsInfinity(
                            Warmth(check)
                                .Settled(Drive.Current(check.Number("currentA"), 0))
                                .WindingC
                        )
                            ? 1
                            : 0
                    )
                ),
            ["MotorWarmth.Settled/throttle"] = Throttle,
            ["MotorCan.SurfaceM2"] = check =>
                Of(
                    (
                        "surfaceM2",
                        new MotorCan(
                            1,
                            check.Number("diameterMm") / 1000,
                            check.Number("lengthMm") / 1000
                        ).SurfaceM2
                    )
                ),
        };

    private static MotorHeat Heat(PublishedCheck check) =>
        Parts.Heat(
            check.Number("windingJPerK", 10),
            check.Number("caseJPerK", 100),
            check.Number("windingToCaseKPerW"),
            check.Number("caseToAmbientKPerW"),
            spinInWinding: check.Has("windingW"),
            limitC: check.Number("limitC", 120)
        );

    private static MotorWarmth Warmth(PublishedCheck check) =>
        new(
            Parts.Motor(resistanceOhm: check.Number("resistanceOhm", 1), heat: Heat(check)),
            check.Number("ambientC", 25)
        );

    // Where the model's coefficient has the document's value, less where the document has it.
    private static double Shift(PublishedCheck check)
    {
        if (!check.Has("coefficientPerK"))
        {
            return 0;
        }

        const double Alpha = Copper.TemperatureCoefficientPerK;
        var model = 20 + ((Alpha / check.Number("coefficientPerK")) - 1) / Alpha;
        return model - check.Number("referenceC", check.Number("ambientC", 20));
    }

    private static TwoNode Network(PublishedCheck check, double copperW)
    {
        var shift = Shift(check);
        var at20 = copperW / Copper.Growth(check.Number("referenceC", 20) + shift);
        return new(
            Heat(check),
            check.Number("resistanceOhm", 1),
            check.Has("currentA") ? Math.Pow(check.Number("currentA"), 2) : at20,
            check.Number("caseW", check.Number("windingW", 0)),
            check.Number("ambientC") + shift
        );
    }

    private static IReadOnlyDictionary<string, double> Settled(PublishedCheck check)
    {
        var settled = Network(check, check.Number("copperW", 0)).Settled;
        var shift = Shift(check);
        return Of(
            ("windingC", settled.WindingC - shift),
            ("caseC", settled.CaseC - shift),
            ("riseK", settled.WindingC - shift - check.Number("ambientC"))
        );
    }

    private static IReadOnlyDictionary<string, double> Over(PublishedCheck check)
    {
        var shift = Shift(check);
        var start = check.Number("startC");
        var x = new MotorTemperature(start + shift, check.Number("caseStartC", start) + shift);
        var pieces = check.Has("cycle") ? check.Pieces("cycle") : [(0.0, check.Number("seconds"))];
        var left = check.Number("seconds");
        for (var n = 0; left > 1e-9; n++)
        {
            var (copperW, seconds) = pieces[n % pieces.Length];
            x = Network(check, copperW).Over(seconds).Apply(x);
            left -= seconds;
        }

        return Of(("windingC", x.WindingC - shift), ("caseC", x.CaseC - shift));
    }

    // The fast one from the determinant of the map, which is e^((λ₁ + λ₂)·t).
    private static IReadOnlyDictionary<string, double> TimeConstants(PublishedCheck check)
    {
        var network = new TwoNode(Heat(check), 1, 0, 0, 0);
        var map = network.Over(10);
        var both = Math.Log((map.F11 * map.F22) - (map.F12 * map.F21)) / 10;
        return Of(("slowS", -1 / network.Slow), ("fastS", -1 / (both - network.Slow)));
    }

    private static IReadOnlyDictionary<string, double> Runaway(PublishedCheck check)
    {
        var warmth = Warmth(check);
        var current = warmth.RunawayA;
        var reference = check.Number("referenceC", 20) + Shift(check);
        return Of(
            ("currentA", current),
            ("copperW", current * current * warmth.Motor.ResistanceAt(reference))
        );
    }

    private static IReadOnlyDictionary<string, double> Continuous(PublishedCheck check)
    {
        var warmth = Warmth(check);
        var current = warmth.ContinuousA;
        return Of(
            ("currentA", current),
            ("lossW", current * current * warmth.Motor.ResistanceAt(check.Number("limitC")))
        );
    }

    private static IReadOnlyDictionary<string, double> Throttle(PublishedCheck check)
    {
        var shift = Shift(check);
        var ambient = check.Number("ambientC") + shift;
        var motor = Parts.Motor(
            resistanceOhm: Copper.AtReference(check.Number("resistanceOhm"), ambient),
            heat: Heat(check)
        );
        double Current(double windingC) =>
            Bus.AtDuty(
                new Source(check.Number("voltageV"), 0),
                Parts.Nothing,
                1,
                1,
                motor.ResistanceAt(windingC),
                0
            ).MotorA;
        var settled = new MotorWarmth(motor, ambient)
            .Settled(Drive.Throttle(Current, 0, 1))
            .WindingC;
        return Of(
            ("riseK", settled - ambient),
            ("currentA", Current(settled)),
            ("resistanceOhm", motor.ResistanceAt(settled))
        );
    }
}
