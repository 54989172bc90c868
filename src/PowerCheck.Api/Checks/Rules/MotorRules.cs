using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a motor together.</summary>
internal static class MotorRules
{
    public static void Apply(MotorRequest? motor, Place place)
    {
        if (motor is null)
        {
            return;
        }

        BurstRule.Apply(
            place,
            ("continuousCurrentA", motor.ContinuousCurrentA),
            ("burstCurrentA", motor.BurstCurrentA),
            motor.BurstSeconds
        );
        place.Needs(
            "resistanceTemperatureC",
            motor.ResistanceTemperatureC is not null,
            "resistanceMilliohm",
            motor.ResistanceMilliohm is not null
        );
        Kind(motor, place);
        NoLoadPoints(motor.NoLoadPoints ?? [], place);
    }

    private static void Kind(MotorRequest motor, Place place)
    {
        if (motor is { Kind: "brushed", Sensored: true })
        {
            place.Conflict(
                "sensored",
                "A brushed motor has no rotor sensor. Correct one of the two.",
                "kind"
            );
        }

        if (motor is { Kind: "brushed", Rotor: "outer" })
        {
            place.Conflict(
                "rotor",
                "A brushed motor's rotor turns inside. Correct one of the two.",
                "kind"
            );
        }

        if (motor is { Kind: "brushless", BrushDropV: > 0 })
        {
            place.Conflict(
                "brushDropV",
                "A brushless motor has no brushes. Leave brushDropV out.",
                "kind"
            );
        }
    }

    private static void NoLoadPoints(IReadOnlyList<NoLoadPointRequest> points, Place place)
    {
        for (var at = 1; at < points.Count; at++)
        {
            var voltage = points[at].VoltageV;
            var earlier = Earlier(points, at, voltage);
            if (earlier >= 0 && !place.Broken($"noLoadPoints.{at}.voltageV"))
            {
                NoteSameVoltage(place, at, earlier, voltage);
            }
        }
    }

    private static int Earlier(IReadOnlyList<NoLoadPointRequest> points, int at, double? voltage) =>
        Enumerable.Range(0, at).FirstOrDefault(i => points[i].VoltageV == voltage, -1);

    private static void NoteSameVoltage(Place place, int at, int earlier, double? voltage) =>
        place.Conflict(
            $"noLoadPoints.{at}.voltageV",
            voltage is null
                ? "Only one no-load point may leave its voltage out. Give the others theirs."
                : $"Two no-load points stand at {voltage} V. Give each voltage once.",
            $"noLoadPoints.{earlier}.voltageV"
        );
}
