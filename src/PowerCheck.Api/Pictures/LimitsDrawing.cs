using PowerCheck.Api.Pictures.Drawing;

namespace PowerCheck.Api.Pictures;

/// <summary>A row a limit: how much of it the figure takes up, how wide that lies, and what came of it.</summary>
internal sealed class LimitsDrawing : IDrawing
{
    public const string Title = "How much of each limit is taken up";
    private const float Head = 52;
    private const float StripLeft = 296;
    private const float StripRight = 474;
    private const double Most = 2;
    private const float Wide = Paper.Width - (2 * Paper.Margin);

    private readonly IReadOnlyList<Row> rows;
    private readonly IReadOnlyList<string> captions;

    /// <summary>The drawing.</summary>
    /// <param name="content">What is drawn.</param>
    /// <param name="most">Most rows that are drawn.</param>
    public LimitsDrawing(PictureContent content, int most = int.MaxValue)
    {
        var shares = LimitShare.Of(content);
        rows = [.. shares.Take(most).Select(share => new Row(share))];
        captions =
        [
            .. Captions(shares.Count - rows.Count)
                .SelectMany(text => Typesetting.Wrap(text, Face.Small, Wide)),
        ];
    }

    public float Height =>
        (rows.Count == 0 ? 30 : Head + rows.Sum(row => row.Height))
        + (captions.Count * Paper.Line)
        + 8;

    public void Draw(Brush brush, float top)
    {
        brush.Text(Title, Paper.Margin, top + 18, Face.Title);
        var y = top + (rows.Count == 0 ? 30 : Head);
        if (rows.Count > 0)
        {
            DrawAxis(brush, top + 40, top + Head, y + rows.Sum(row => row.Height));
        }

        foreach (var row in rows)
        {
            row.Draw(brush, y);
            y += row.Height;
        }

        brush.Lines(captions, Paper.Margin, y + Paper.Line - 1, Face.Small, Paper.Gray);
    }

    private static float X(double share) =>
        StripLeft + ((StripRight - StripLeft) * (float)(Math.Clamp(share, 0, Most) / Most));

    private static void DrawAxis(Brush brush, float labels, float top, float bottom)
    {
        foreach (
            var (share, text) in new[]
            {
                (0.0, "0"),
                (0.5, "50 %"),
                (1.0, "limit"),
                (1.5, "150 %"),
                (2.0, "200 %"),
            }
        )
        {
            var (x, face) = (X(share), share == 1 ? Face.SmallBold : Face.Small);
            brush.Text(text, x - (Typesetting.Width(text, face) / 2), labels, face, Paper.Gray);
            brush.Line(
                new(x, top - 6),
                new(x, bottom),
                share == 1 ? new(Paper.Ink, 1.6f) : new(Paper.Rule, 1, 2, 3)
            );
        }
    }

    private IEnumerable<string> Captions(int left)
    {
        if (rows.Count == 0)
        {
            yield return "No limit with a figure to show.";
            yield break;
        }

        if (left > 0)
        {
            yield return $"and {left} more that {(left == 1 ? "is" : "are")} further down in the answer.";
        }

        yield return rows.Any(row => row.HasInterval)
            ? "Right of the limit is past it; the bar spans 95 % of the figure's spread. Of temperatures, the rise over the air."
            : "Right of the limit is past it. Of temperatures, the rise over the air.";
    }

    /// <summary>The drawing in words.</summary>
    /// <param name="content">What it is drawn from.</param>
    public static string Alt(PictureContent content)
    {
        var shares = LimitShare.Of(content);
        if (shares.Count == 0)
        {
            return "No limit with a figure to show.";
        }

        var first = new Row(shares[0]);
        return $"{shares.Count} {(shares.Count == 1 ? "limit" : "limits")} with how much of each is taken up. First: {first.About}: {first.Figures}, {first.Outcome}.";
    }

    /// <summary>One limit.</summary>
    private sealed class Row(LimitShare share)
    {
        private const float LabelWidth = StripLeft - Paper.Margin - 22;

        private readonly IReadOnlyList<string> about = Typesetting.Wrap(
            Say.About(share.Finding),
            Face.SmallBold,
            LabelWidth
        );

        private readonly IReadOnlyList<string> figures = Typesetting.Wrap(
            Sentence(share),
            Face.Small,
            LabelWidth
        );

        public string About => Say.About(share.Finding);

        public string Figures => Sentence(share);

        public string Outcome => Say.Plain(share.Finding.Outcome);

        public bool HasInterval => !double.IsNaN(share.From + share.To);

        public float Height => ((about.Count + figures.Count) * Paper.Line) + 8;

        public void Draw(Brush brush, float top)
        {
            brush.Line(
                new(Paper.Margin, top),
                new(Paper.Width - Paper.Margin, top),
                new(Paper.Grid, 1)
            );
            brush.Lines(about, Paper.Margin, top + 14, Face.SmallBold);
            brush.Lines(
                figures,
                Paper.Margin,
                top + 14 + (about.Count * Paper.Line),
                Face.Small,
                Paper.Gray
            );
            var middle = top + (Height / 2);
            DrawInterval(brush, middle);
            if (share.At is >= 0 and <= Most)
            {
                OutcomeMark.Draw(brush, share.Finding.Outcome, new(X(share.At), middle));
            }
            else
            {
                DrawArrow(brush, share.At > Most, middle);
            }

            OutcomeMark.Draw(brush, share.Finding.Outcome, new(StripRight + 26, middle), 0.8f);
            if (share.At > 1 && share.Finding.Outcome is "holds")
            {
                // It never counts against the rig.
                brush.Text(Outcome, StripRight + 36, middle - 3, Face.Small);
                brush.Text("caution only", StripRight + 36, middle + 11, Face.Small, Paper.Gray);
                return;
            }

            brush.Text(Outcome, StripRight + 36, middle + 4, Face.Small);
        }

        private void DrawInterval(Brush brush, float y)
        {
            if (!HasInterval)
            {
                return;
            }

            var pen = new Pen(Paper.Ink, 1.6f);
            var (from, to) = (X(share.From), X(share.To));
            brush.Line(new(from, y), new(to, y), pen);
            foreach (
                var end in new[] { share.From, share.To }.Where(end => end is >= 0 and <= Most)
            )
            {
                brush.Line(new(X(end), y - 4), new(X(end), y + 4), pen);
            }

            if (share.To > Most)
            {
                brush.Text("→", StripRight + 2, y + 4, Face.Small);
            }

            if (share.From < 0)
            {
                brush.Text("←", StripLeft - 13, y + 4, Face.Small);
            }
        }

        // Off the strip: a filled arrow that points to where it lies.
        private void DrawArrow(Brush brush, bool right, float y)
        {
            var (x, way) = right ? (StripRight, 1) : (StripLeft, -1);
            brush.Shape(
                [new(x + (12 * way), y), new(x - (2 * way), y - 7), new(x - (2 * way), y + 7)],
                OutcomeMark.Color(share.Finding.Outcome),
                new(Paper.Ink, 1.1f)
            );
        }

        private static string Sentence(LimitShare share)
        {
            var finding = share.Finding;
            var figure = finding.Estimate is null
                ? "rising without end"
                : Say.Figure(finding.Estimate, finding.Unit);
            return $"{figure}; {share.Bound} {Say.Figure(finding.Limit, finding.Unit)}";
        }
    }
}
