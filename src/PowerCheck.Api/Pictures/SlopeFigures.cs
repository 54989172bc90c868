using PowerCheck.Api.Checks.Writing;
using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Api.Pictures;

/// <summary>Figures of the answer that the slope drawing marks; null is not known.</summary>
/// <param name="ClimbDegrees">The slope asked for [°].</param>
/// <param name="SlipDegrees">The slope at which the tires let go [°].</param>
/// <param name="MotorA">Motor current of the climb [A].</param>
/// <param name="BatteryA">Battery current of the climb [A].</param>
/// <param name="Obstacle">What stops the climb, in plain words; null when nothing does.</param>
internal sealed record SlopeFigures(
    double? ClimbDegrees,
    double? SlipDegrees,
    double? MotorA,
    double? BatteryA,
    string? Obstacle
)
{
    /// <summary>Where the climb is judged: as asked, or where the tires let go before that [°].</summary>
    public double? JudgedDegrees =>
        ClimbDegrees is { } climb && SlipDegrees is { } slip ? Math.Min(climb, slip) : ClimbDegrees;

    /// <summary>Whether nothing stops the climb.</summary>
    public bool Attainable => Obstacle is null;

    /// <summary>Those of a content.</summary>
    /// <param name="content">What is drawn.</param>
    public static SlopeFigures Of(PictureContent content)
    {
        var climb = content.Answer.LoadCases.Climb;
        return new(
            content.Ratings.ClimbSlopeDegrees?.Value,
            content.Answer.Drivetrain.SlipSlopeDegrees,
            climb.MotorCurrentA,
            climb.BatteryCurrentA,
            climb.Obstacle is { } word ? Said(word) : null
        );
    }

    private static string Said(string word)
    {
        foreach (var obstacle in Enum.GetValues<Obstacle>())
        {
            if (string.Equals(LoadCaseWriter.Word(obstacle), word, StringComparison.Ordinal))
            {
                return Say.Obstacle(obstacle);
            }
        }

        return Say.Plain(word);
    }
}
