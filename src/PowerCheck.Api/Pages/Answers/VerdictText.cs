namespace PowerCheck.Api.Pages.Answers;

/// <summary>Verdicts and outcomes in words.</summary>
internal static class VerdictText
{
    /// <summary>The verdict as a title.</summary>
    public static string Title(string verdict) =>
        verdict switch
        {
            "suitable" => "Suitable",
            "limited" => "Limited",
            "unsuitable" => "Unsuitable",
            _ => "Undetermined",
        };

    /// <summary>What the verdict means to the builder.</summary>
    public static string Meaning(string verdict) =>
        verdict switch
        {
            "suitable" => "Every judged limit holds.",
            "limited" => "It works, but one limit is in doubt or costs performance.",
            "unsuitable" => "At least one limit fails.",
            _ => "Too little is known to tell.",
        };

    /// <summary>The summary without the verdict that leads it.</summary>
    public static string Sentence(string summary)
    {
        var colon = summary.IndexOf(": ", StringComparison.Ordinal);
        return colon is > 0 and < 14
            ? char.ToUpperInvariant(summary[colon + 2]) + summary[(colon + 3)..]
            : summary;
    }

    /// <summary>How sure the verdict is, in words.</summary>
    public static string Sure(string confidence) =>
        confidence switch
        {
            "high" => "Confidence high",
            "medium" => "Confidence medium: one more measurement would help",
            _ => "Confidence low: the figures leave it close",
        };

    /// <summary>A chance in percent.</summary>
    public static string Chance(double probability) =>
        probability switch
        {
            < 0.01 => "Less than 1 % chance of passing the limit.",
            > 0.99 => "More than 99 % chance of passing the limit.",
            _ => $"{Math.Round(probability * 100)} % chance of passing the limit.",
        };
}
