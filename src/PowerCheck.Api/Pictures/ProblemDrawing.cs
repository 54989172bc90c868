using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pictures;

/// <summary>What is wrong with a request, and the caution.</summary>
internal sealed class ProblemDrawing : IDrawing
{
    /// <summary>More than these would make the picture too long, assumed; text and page have up to a hundred.</summary>
    private const int MostErrors = 12;

    private const float Wide = Paper.Width - (2 * Paper.Margin);
    private const float Gap = 4;
    private static readonly Face Body = new(12);

    private readonly string title;
    private readonly IReadOnlyList<IReadOnlyList<string>> texts;
    private readonly SafetyFoot foot;

    public ProblemDrawing(Problem problem, string safetyAddress)
    {
        title = problem.Title;
        texts = [.. Texts(problem).Select(text => Typesetting.Wrap(text, Body, Wide))];
        foot = new(problem.BatterySafety, safetyAddress);
    }

    public float Height =>
        46 + texts.Sum(lines => (lines.Count * Paper.Line) + Gap) + 8 + foot.Height + 14;

    public void Draw(Brush brush, float top)
    {
        brush.Text(title, Paper.Margin, top + 31, new(18, true));
        var y = top + 46 + 12;
        foreach (var lines in texts)
        {
            brush.Lines(lines, Paper.Margin, y, Body);
            y += (lines.Count * Paper.Line) + Gap;
        }

        foot.Draw(brush, y);
    }

    /// <summary>The picture in words.</summary>
    public static string Alt(Problem problem) =>
        string.Join(' ', Texts(problem).Prepend($"{problem.Title}."));

    private static IEnumerable<string> Texts(Problem problem)
    {
        if (problem.Errors is not { Count: > 0 } errors)
        {
            return [problem.Detail];
        }

        var shown = errors.Take(MostErrors).Select(error => $"· {error.Message}");
        return problem.ErrorsTruncated is true ? shown.Append("and many more.")
            : errors.Count > MostErrors ? shown.Append($"and {errors.Count - MostErrors} more.")
            : shown;
    }
}
