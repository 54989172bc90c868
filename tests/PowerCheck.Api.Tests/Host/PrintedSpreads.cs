using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Door;

namespace PowerCheck.Api.Tests.Host;

/// <summary>Rigs drawn from the spreads that an answer prints: all that a caller knows of how far off figures may be.</summary>
internal static class PrintedSpreads
{
    // Limits of which the figure must not be under; all others must not be over.
    private static readonly string[] AtLeast =
    [
        "battery.cutoff",
        "drivetrain.torque-reserve",
        "drivetrain.creep-control",
        "receiver-supply.output-voltage",
        "course.run-time",
        "controller.rotor-sensing",
    ];

    /// <summary>Whether a code is of a limit that a figure must not be under.</summary>
    public static bool IsAtLeast(string code) => AtLeast.Contains(code, StringComparer.Ordinal);

    /// <summary>The entries of an answer that say a figure or a word, in their order.</summary>
    public static JsonElement[] Entries(JsonElement answer) =>
        [
            .. answer
                .GetProperty("assumptions")
                .EnumerateArray()
                .Concat(answer.GetProperty("tolerances").EnumerateArray())
                // The speed of a segment that was left out follows the creep speed.
                .Where(entry => !Path(entry).EndsWith(".speedMPerS", StringComparison.Ordinal)),
        ];

    /// <summary>The rig with every assumption said, and every figure that has a spread drawn from it.</summary>
    /// <param name="body">The rig as it was sent.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="normal">A standard normal number for the entry of that place.</param>
    public static JsonObject Drawn(JsonObject body, JsonElement answer, Func<int, double> normal)
    {
        var entries = Entries(answer);
        for (var n = 0; n < entries.Length; n++)
        {
            body.With(Path(entries[n]), Value(entries[n], normal(n)));
        }

        return body;
    }

    /// <summary>A standard normal number.</summary>
    public static double Normal(Random dice) =>
        Math.Sqrt(-2 * Math.Log(1 - dice.NextDouble())) * Math.Cos(Math.Tau * dice.NextDouble());

    private static JsonNode? Value(JsonElement entry, double normal)
    {
        if (entry.TryGetProperty("word", out var word))
        {
            return word.GetString() switch
            {
                "true" => true,
                "false" => false,
                var text => text,
            };
        }

        var value = entry.GetProperty("value").GetDouble();
        var drawn = entry.TryGetProperty("spread", out var spread)
            ? Draw(value, spread, normal / 1.96)
            : value;
        var range = Ranges.GetOrAdd(Path(entry), Range);
        drawn = Math.Clamp(drawn, range.Minimum, range.Maximum);
        return Path(entry) == "motor.polePairs" ? Math.Round(drawn) : drawn;
    }

    // Of attributes, which are slow to read a million times.
    private static readonly ConcurrentDictionary<string, FigureAttribute> Ranges = new(
        StringComparer.Ordinal
    );

    private static FigureAttribute Range(string path) =>
        RequestMembers
            .Of(
                string.Join(
                    '.',
                    path.Split('.').Select(step => char.IsAsciiDigit(step[0]) ? "0" : step)
                )
            )
            .Figure!;

    // Normal, log-normal for a factor, two normal halves between unlike ends; the ends hold 95 %.
    private static double Draw(double value, JsonElement spread, double normal)
    {
        double Of(string member) => spread.GetProperty(member).GetDouble();
        return spread.EnumerateObject().First().Name switch
        {
            "relative" => value * Math.Max(0.02, 1 + (Of("relative") * normal)),
            "factor" => value * Math.Pow(Of("factor"), normal),
            "absolute" => value + (Of("absolute") * normal),
            _ => value + (Math.Abs(Of(normal < 0 ? "low" : "high") - value) * normal),
        };
    }

    private static string Path(JsonElement entry) => entry.GetProperty("path").GetString()!;
}
