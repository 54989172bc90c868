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
                            Warmth(check).Settled(Drive.Current(check.Si("current"), 0)).WindingC
                        )
                            ? 1
                            : 0
                    )
                ),
            ["MotorWarmth.Settled/throttle"] = Throttle,
        };

    private static MotorHeat Heat(PublishedCheck check)
    {
        var (inner, outer) = (check.Si("windingToCase"), check.Si("caseToAmbient"));
        return Parts.Heat(
            Capacity(check, "winding", inner, 10),
            Capacity(check, "case", outer, 100),
            inner,
            outer,
            spinInWinding: check.Has("windingLoss"),
            limitC: check.Si("limit", 120)
        );
    }

    // A data sheet gives a node's time constant over its own resistance.
    private static double Capacity(
        PublishedCheck check,
        string node,
        double resistance,
        double otherwise
    ) =>
        check.Has(node + "TimeConstant")
            ? check.Si(node + "TimeConstant") / resistance
            : check.Si(node + "Heat", otherwise);

    private static MotorWarmth Warmth(PublishedCheck check) =>
        new(
            Parts.Motor(resistanceOhm: check.Si("resistance", 1), heat: Heat(check)),
            check.Si("ambient", 25)
        );

    // Where the model's coefficient has the document's value, less where the document has it.
    private static double Shift(PublishedCheck check)
    {
        if (!check.Has("coefficient"))
        {
            return 0;
        }

        const double Alpha = Copper.TemperatureCoefficientPerK;
        var model = 20 + ((Alpha / check.Si("coefficient")) - 1) / Alpha;
        return model - check.Si("reference", check.Si("ambient", 20));
    }

    private static double AtTwenty(PublishedCheck check, double copperW) =>
        copperW / Copper.Growth(check.Si("reference", 20) + Shift(check));

    private static TwoNode Network(PublishedCheck check, double copperW)
    {
        var shift = Shift(check);
        return new(
            Heat(check),
            check.Si("resistance", 1),
            check.Has("current") ? Math.Pow(check.Si("current"), 2) : AtTwenty(check, copperW),
            check.Si("caseLoss", check.Si("windingLoss", 0)),
            check.Si("ambient") + shift
        );
    }

    private static IReadOnlyDictionary<string, double> Settled(PublishedCheck check)
    {
        var settled = Network(check, check.Si("copperLoss", 0)).Settled;
        var shift = Shift(check);
        return Of(
            ("winding", settled.WindingC - shift),
            ("case", settled.CaseC - shift),
            ("rise", settled.WindingC - shift - check.Si("ambient")),
            (
                "copperLoss",
                AtTwenty(check, check.Si("copperLoss", 0)) * Copper.Growth(settled.WindingC)
            )
        );
    }

    private static IReadOnlyDictionary<string, double> Over(PublishedCheck check)
    {
        var shift = Shift(check);
        var start = check.Si("start");
        var x = new MotorTemperature(start + shift, check.Si("caseStart", start) + shift);
        var pieces = check.Has("cycle") ? check.Pieces("cycle") : [(0.0, check.Si("time"))];
        var left = check.Si("time");
        for (var n = 0; left > 1e-9; n++)
        {
            var (copperW, seconds) = pieces[n % pieces.Length];
            x = Network(check, copperW).Over(seconds).Apply(x);
            left -= seconds;
        }

        return Of(("winding", x.WindingC - shift), ("case", x.CaseC - shift));
    }

    // The fast one from the determinant of the map, which is e^((λ₁ + λ₂)·t).
    private static IReadOnlyDictionary<string, double> TimeConstants(PublishedCheck check)
    {
        var network = new TwoNode(Heat(check), 1, 0, 0, 0);
        var map = network.Over(10);
        var both = Math.Log((map.F11 * map.F22) - (map.F12 * map.F21)) / 10;
        return Of(("slow", -1 / network.Slow), ("fast", -1 / (both - network.Slow)));
    }

    private static IReadOnlyDictionary<string, double> Runaway(PublishedCheck check)
    {
        var warmth = Warmth(check);
        var current = warmth.RunawayA;
        var reference = check.Si("reference", 20) + Shift(check);
        return Of(
            ("current", current),
            ("copperLoss", current * current * warmth.Motor.ResistanceAt(reference))
        );
    }

    private static IReadOnlyDictionary<string, double> Continuous(PublishedCheck check)
    {
        var warmth = Warmth(check);
        var current = warmth.ContinuousA;
        return Of(
            ("current", current),
            ("loss", current * current * warmth.Motor.ResistanceAt(check.Si("limit")))
        );
    }

    private static IReadOnlyDictionary<string, double> Throttle(PublishedCheck check)
    {
        var shift = Shift(check);
        var ambient = check.Si("ambient") + shift;
        var motor = Parts.Motor(
            resistanceOhm: Copper.AtReference(check.Si("resistance"), ambient),
            heat: Heat(check)
        );
        double Current(double windingC) =>
            Bus.AtDuty(
                new Source(check.Si("voltage"), 0),
                Parts.Nothing,
                1,
                1,
                motor.ResistanceAt(windingC),
                0
            ).MotorA;
        var settled = new MotorWarmth(motor, ambient)
            .Settled(Drive.Throttle(t => new(Current(t), 0), 1))
            .WindingC;
        return Of(
            ("rise", settled - ambient),
            ("current", Current(settled)),
            ("resistance", motor.ResistanceAt(settled))
        );
    }
}
