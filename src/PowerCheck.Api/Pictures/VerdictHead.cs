using PowerCheck.Api.Pictures.Drawing;

namespace PowerCheck.Api.Pictures;

/// <summary>The verdict and the summary.</summary>
internal sealed class VerdictHead : IDrawing
{
    private const float Wide = Paper.Width - (2 * Paper.Margin);
    private static readonly Face Word = new(22, true);
    private static readonly Face Body = new(12);

    private readonly string verdict;
    private readonly string beside;
    private readonly string word;
    private readonly IReadOnlyList<string> summary;

    public VerdictHead(PictureContent content)
    {
        var answer = content.Answer;
        verdict = answer.Verdict;
        word = verdict.ToUpperInvariant();
        var sure = answer.Confidence is { } confidence ? $"confidence {confidence}" : "";
        var room = Wide - 32 - Typesetting.Width(word, Word) - 14;
        beside = Typesetting.Fit(
            string.Join(" · ", new[] { sure, answer.Id ?? "" }.Where(text => text.Length > 0)),
            Body,
            room
        );
        summary = Typesetting.Wrap(answer.Summary, Body, Wide);
    }

    public float Height => 46 + (summary.Count * Paper.Line) + 10;

    public void Draw(Brush brush, float top)
    {
        OutcomeMark.Draw(brush, verdict, new(Paper.Margin + 12, top + 23), 1.8f);
        brush.Text(word, Paper.Margin + 32, top + 31, Word);
        brush.Text(
            beside,
            Paper.Margin + 32 + Typesetting.Width(word, Word) + 14,
            top + 31,
            Body,
            Paper.Gray
        );
        brush.Lines(summary, Paper.Margin, top + 46 + 12, Body);
    }
}
