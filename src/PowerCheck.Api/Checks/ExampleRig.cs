namespace PowerCheck.Api.Checks;

/// <summary>An invented rig that every motor, controller and pack limit suits: the document's example, and what readiness is tried with.</summary>
internal static class ExampleRig
{
    /// <summary>The rig as a request body.</summary>
    public const string Json = """
        {
          "id": "example-rig",
          "motor": {
            "kind": "brushless",
            "sensored": true,
            "kvRpmPerVolt": 3300,
            "resistanceMilliohm": 22,
            "noLoadPoints": [{ "voltageV": 7.4, "currentA": 2.4 }],
            "polePairs": 2,
            "massG": 165,
            "canDiameterMm": 36,
            "canLengthMm": 50,
            "maxVoltageV": 12.6
          },
          "controller": {
            "motorKinds": ["brushless"],
            "sensorInput": true,
            "minCells": 2,
            "maxCells": 3,
            "continuousCurrentA": 60,
            "burstCurrentA": 300,
            "burstSeconds": 1,
            "receiverSupply": {
              "regulator": "switching",
              "voltageV": 6,
              "continuousCurrentA": 3,
              "peakCurrentA": 6
            }
          },
          "battery": {
            "chemistry": "lipo",
            "seriesCells": 3,
            "capacityMah": 2200,
            "continuousC": 35,
            "cellResistanceMilliohm": 5
          },
          "vehicle": {
            "massKg": 3.2,
            "tireDiameterMm": 118,
            "drivetrain": {
              "pinionTeeth": 12,
              "spurTeeth": 56,
              "transmissionRatio": 2.8,
              "axleRatio": 3.2
            }
          },
          "course": { "ambientC": 25, "climbSlopeDegrees": 40, "wantedMinutes": 20 },
          "accessories": [
            { "kind": "servo", "idleCurrentA": 0.1, "workingCurrentA": 1, "jammedCurrentA": 3 }
          ]
        }
        """;
}
