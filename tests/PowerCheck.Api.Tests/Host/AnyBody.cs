using System.Text.Json.Nodes;

namespace PowerCheck.Api.Tests.Host;

/// <summary>Bodies of random rigs: a sample rig with some figures of its own. The same number gives the same rig.</summary>
internal static class AnyBody
{
    private static readonly string[] Samples = [.. SampleRigs.All];

    public static JsonObject Of(int number)
    {
        var dice = new Random(number);
        double Between(double low, double high) =>
            Math.Round(low * Math.Pow(high / low, dice.NextDouble()), 3);

        var body = SampleRigs.Of(Samples[number % Samples.Length]);
        body.With("vehicle.massKg", Between(1.5, 7));
        body.With("course.climbSlopeDegrees", Between(20, 60));
        body.With("course.wantedMinutes", Between(3, 60));
        body.With("battery.seriesCells", dice.Next(2, 5));
        body.With("battery.capacityMah", Between(800, 5000));
        body.With("controller.continuousCurrentA", Between(8, 75));
        if (body["motor"]?["kvRpmPerVolt"] is not null)
        {
            body.With("motor.kvRpmPerVolt", Between(900, 4500));
        }

        return body;
    }
}
