namespace PowerCheck.Api.Shortlists;

/// <summary>An invented rig whose controller is sought: the document's example.</summary>
internal static class ExampleSearch
{
    /// <summary>The search as a request body.</summary>
    public const string Json = """
        {
          "check": {
            "motor": {
              "kind": "brushless",
              "sensored": true,
              "kvRpmPerVolt": 3300,
              "resistanceMilliohm": 22,
              "noLoadPoints": [{ "voltageV": 7.4, "currentA": 2.4 }],
              "polePairs": 2,
              "massG": 165,
              "maxVoltageV": 12.6
            },
            "battery": { "chemistry": "lipo", "seriesCells": 3, "capacityMah": 2200, "continuousC": 35 },
            "vehicle": { "massKg": 3.2, "tireDiameterMm": 118, "drivetrain": { "overallRatio": 42 } },
            "course": { "climbSlopeDegrees": 40 }
          },
          "seek": "controller",
          "fitted": { "controller": { "motorKinds": ["brushless"], "continuousCurrentA": 25 } },
          "candidates": [
            {
              "id": "small",
              "controller": { "motorKinds": ["brushless"], "sensorInput": true, "minCells": 2, "maxCells": 3, "continuousCurrentA": 25 }
            },
            {
              "id": "large",
              "controller": { "motorKinds": ["brushless"], "sensorInput": true, "minCells": 2, "maxCells": 4, "continuousCurrentA": 80, "burstCurrentA": 300, "burstSeconds": 1 }
            }
          ]
        }
        """;
}
