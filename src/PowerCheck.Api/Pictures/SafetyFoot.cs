using PowerCheck.Api.Pictures.Drawing;
using PowerCheck.Api.Safety;

namespace PowerCheck.Api.Pictures;

/// <summary>The leading caution about batteries, and where all of them stand.</summary>
internal sealed class SafetyFoot : IDrawing
{
    private const float Inset = 10;
    private const float Wide = Paper.Width - (2 * (Paper.Margin + Inset));

    private readonly string signal;
    private readonly IReadOnlyList<string> text;
    private readonly IReadOnlyList<string> address;

    public SafetyFoot(BatterySafety safety, string safetyAddress)
    {
        signal =
            $"⚠ {(safety.Cautions is [var first, ..] ? first.Severity : "warning").ToUpperInvariant()}: battery";
        text = Typesetting.Wrap(safety.Leading, Face.Small, Wide);
        address = Typesetting.Wrap($"All cautions: {safetyAddress}", Face.Small, Wide);
    }

    public float Height => 30 + ((text.Count + address.Count) * Paper.Line) + 2;

    public void Draw(Brush brush, float top)
    {
        var box = new SkiaSharp.SKRect(Paper.Margin, top, Paper.Width - Paper.Margin, top + Height);
        brush.Outline(box, new(Paper.Ink, 1.6f));
        var x = Paper.Margin + Inset;
        brush.Text(signal, x, top + 17, new(12, true));
        brush.Lines(text, x, top + 34, Face.Small);
        brush.Lines(address, x, top + 34 + (text.Count * Paper.Line), Face.Small);
    }
}
