using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Answers;

/// <summary>Where the same check can be had by a link, in each form.</summary>
public sealed class LinksAnswer
{
    /// <summary>This answer.</summary>
    [Text(8000, "http://localhost:5080/v1/checks?motor.kind=brushed&vehicle.massKg=2.5")]
    public required string Self { get; init; }

    /// <summary>The page with the rig in its form and the answer beside it.</summary>
    [Text(8000, "http://localhost:5080/?motor.kind=brushed&vehicle.massKg=2.5")]
    public required string Page { get; init; }

    /// <summary>A few lines of text.</summary>
    [Text(8000, "http://localhost:5080/v1/checks?motor.kind=brushed&vehicle.massKg=2.5&form=text")]
    public required string Text { get; init; }

    /// <summary>The picture as SVG.</summary>
    [Text(8000, "http://localhost:5080/v1/checks?motor.kind=brushed&vehicle.massKg=2.5&form=svg")]
    public required string Svg { get; init; }

    /// <summary>The picture as PNG.</summary>
    [Text(8000, "http://localhost:5080/v1/checks?motor.kind=brushed&vehicle.massKg=2.5&form=png")]
    public required string Png { get; init; }
}
