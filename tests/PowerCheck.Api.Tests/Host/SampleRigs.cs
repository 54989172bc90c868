using System.Text.Json.Nodes;

namespace PowerCheck.Api.Tests.Host;

/// <summary>Invented rigs of different kinds, for tests that should hold for any rig.</summary>
internal static class SampleRigs
{
    public static IEnumerable<string> All => Bodies.Keys;

    public static TheoryData<string> Names => [.. All];

    public static JsonObject Of(string name) => JsonNode.Parse(Bodies[name])!.AsObject();

    private static readonly Dictionary<string, string> Bodies = new(StringComparer.Ordinal)
    {
        ["the example"] = Rigs.Example().ToJsonString(),
        ["as little as possible"] = Rigs.Least,
        ["brushed, label figures only"] = """
            {
              "motor": { "kind": "brushed", "turns": 35, "slots": 3, "canDiameterMm": 36, "canLengthMm": 57 },
              "controller": { "motorKinds": ["brushed"], "maxCells": 3, "minCells": 2, "continuousCurrentA": 60, "pwmFrequencyHz": 2000 },
              "battery": { "chemistry": "nimh", "seriesCells": 6, "capacityMah": 3000, "condition": "used" },
              "vehicle": { "massKg": 2.4, "tireDiameterMm": 110, "tireDiameterPrinted": true }
            }
            """,
        ["sensorless, two motors, gearbox"] = """
            {
              "motor": { "kind": "brushless", "sensored": false, "rotor": "outer", "kvRpmPerVolt": 900, "resistanceMilliohm": 60, "polePairs": 7, "massG": 110 },
              "controller": { "motorKinds": ["brushless", "brushed"], "cellLimits": [{ "chemistry": "lipo", "minCells": 2, "maxCells": 4 }], "continuousCurrentA": 40, "burstCurrentA": 80, "burstSeconds": 10, "holdMode": "active", "receiverSupply": { "regulator": "linear", "voltageV": 5, "continuousCurrentA": 2 } },
              "battery": { "seriesCells": 4, "capacityMah": 1300, "temperatureC": 10 },
              "vehicle": { "massKg": 4, "motorCount": 2, "drivetrain": { "pinionTeeth": 14, "spurTeeth": 60, "ratios": [2.5, 1.5], "axleRatio": 3, "pinionPitch": { "diametral": 32 }, "spurPitch": { "moduleMm": 0.8 }, "spurStages": 3, "axleGear": "worm" } },
              "course": { "segments": [{ "seconds": 20, "kind": "creep", "slopeDegrees": 30 }, { "seconds": 5, "kind": "hold", "slopeDegrees": 30 }, { "seconds": 1, "kind": "jammed", "throttle": 0.3 }, { "seconds": 10, "kind": "rest" }] },
              "accessories": [{ "kind": "winch", "supply": "battery", "workingCurrentA": 4 }],
              "wiring": { "fuseA": 30 }
            }
            """,
        ["a controller that burns"] = """
            {
              "motor": { "kind": "brushless", "sensored": true, "kvRpmPerVolt": 3300, "resistanceMilliohm": 15, "massG": 150 },
              "controller": { "motorKinds": ["brushless"], "sensorInput": true, "minCells": 2, "maxCells": 2, "continuousCurrentA": 5 },
              "battery": { "seriesCells": 6, "capacityMah": 300, "continuousC": 5, "condition": "worn" },
              "vehicle": { "massKg": 9, "drivetrain": { "overallRatio": 9 } },
              "course": { "ambientC": 45 }
            }
            """,
    };
}
