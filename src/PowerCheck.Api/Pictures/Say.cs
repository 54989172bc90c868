using System.Globalization;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Api.Pictures;

/// <summary>Figures and words of an answer as they stand in a picture.</summary>
internal static class Say
{
    /// <summary>What stands for a figure that is not there.</summary>
    public const string NotKnown = "not known";

    /// <summary>A figure exactly as it stands in the answer.</summary>
    /// <param name="figure">The figure.</param>
    public static string Figure(double figure) => figure.ToString(CultureInfo.InvariantCulture);

    /// <summary>A figure as it stands in the answer, with its unit.</summary>
    /// <param name="figure">The figure; null when it is not there.</param>
    /// <param name="unit">Its unit; null for a plain number.</param>
    public static string Figure(double? figure, string? unit) =>
        figure is not { } value ? NotKnown
        : unit is null ? Figure(value)
        : string.Equals(unit, "°", StringComparison.Ordinal) ? $"{Figure(value)}°"
        : $"{Figure(value)} {unit}";

    /// <summary>A part of a code or another word of the answer in plain letters.</summary>
    /// <param name="word">The word, such as "receiver-supply".</param>
    public static string Plain(string word) => word.Replace('-', ' ');

    /// <summary>The same with a capital.</summary>
    /// <param name="word">The word.</param>
    public static string Capital(string word)
    {
        var plain = Plain(word);
        return plain.Length == 0 ? plain : char.ToUpperInvariant(plain[0]) + plain[1..];
    }

    /// <summary>What a finding is about: part and limit, and the load case.</summary>
    /// <param name="finding">The finding.</param>
    public static string About(FindingAnswer finding)
    {
        var limit = finding.Code[(finding.Code.IndexOf('.', StringComparison.Ordinal) + 1)..];
        var load =
            finding.LoadCase is null
            || string.Equals(finding.LoadCase, limit, StringComparison.Ordinal)
            || string.Equals(finding.LoadCase, finding.Part, StringComparison.Ordinal)
                ? ""
                : $", {finding.LoadCase}";
        return $"{Capital(finding.Part)}: {Plain(limit)}{load}";
    }

    /// <summary>What stops a rig.</summary>
    /// <param name="obstacle">The obstacle.</param>
    public static string Obstacle(Obstacle obstacle) =>
        obstacle switch
        {
            Model.Drivetrain.Obstacle.BatteryPower => "the pack cannot deliver the power",
            Model.Drivetrain.Obstacle.Cutoff => "the bus falls under the cut-off",
            Model.Drivetrain.Obstacle.Voltage => "the voltage is too low for the speed",
            Model.Drivetrain.Obstacle.CurrentLimit => "the controller limits the current",
            Model.Drivetrain.Obstacle.Traction => "the tires let go",
            Model.Drivetrain.Obstacle.SpeedLimit => "the rated speed is passed",
            _ => "the controller does not know where the rotor stands",
        };
}
