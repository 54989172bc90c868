using PowerCheck.Api.Faces;

namespace PowerCheck.Api.Pages;

/// <summary>Pictures of an answer as SVG markup, each with what it shows in words.</summary>
/// <param name="SlopeSvg">Margins over the slope.</param>
/// <param name="SlopeAlt">The same in words.</param>
/// <param name="HeatSvg">Temperatures over the run.</param>
/// <param name="HeatAlt">The same in words.</param>
/// <param name="LimitsSvg">Every limit with its figure.</param>
/// <param name="LimitsAlt">The same in words.</param>
public sealed record PagePictures(
    string? SlopeSvg,
    string SlopeAlt,
    string? HeatSvg,
    string HeatAlt,
    string? LimitsSvg,
    string LimitsAlt
)
{
    /// <summary>The pictures of a check; null where none are drawn.</summary>
    /// <param name="view">The check.</param>
    internal static PagePictures? Of(CheckView view)
    {
        _ = view;
        return null;
    }
}
