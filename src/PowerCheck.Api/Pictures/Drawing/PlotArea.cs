extern alias Charts;

using Charts::ScottPlot;
using SkiaSharp;

namespace PowerCheck.Api.Pictures.Drawing;

/// <summary>A plot with two axes on a picture.</summary>
/// <param name="Box">Where its data lie [px].</param>
/// <param name="X">The axis along the bottom.</param>
/// <param name="Y">The axis along the left.</param>
internal sealed record PlotArea(SKRect Box, Scale X, Scale Y)
{
    /// <summary>Room that the figures along the left need [px].</summary>
    private const float LeftRoom = 46;

    /// <summary>Room that the figures along the bottom need [px].</summary>
    private const float BottomRoom = 20;

    private const float RightRoom = 10;
    private const float TopRoom = 6;

    /// <summary>Where a point of the data lies [px].</summary>
    /// <param name="x">Along the bottom.</param>
    /// <param name="y">Along the left.</param>
    public SKPoint At(double x, double y) =>
        new(
            Box.Left + (X.Share(x) * Box.Width),
            Box.Bottom - (Math.Clamp(Y.Share(y), -1, 2) * Box.Height)
        );

    /// <summary>Writes what the axis along the bottom is of, beneath its right end.</summary>
    /// <param name="brush">Writes it.</param>
    /// <param name="name">What it is of.</param>
    public void NameAcross(Brush brush, string name) =>
        brush.Text(
            name,
            Box.Right - Typesetting.Width(name, Face.Small),
            Box.Bottom + 34,
            Face.Small,
            Paper.Gray
        );

    /// <summary>Draws axes, bands and curves.</summary>
    /// <param name="brush">Draws it.</param>
    /// <param name="bands">The bands, beneath.</param>
    /// <param name="curves">The curves; a gap where a figure is not known.</param>
    public void Draw(Brush brush, IEnumerable<Band> bands, IEnumerable<Curve> curves)
    {
        var plot = new Plot();
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        plot.Layout.Fixed(new PixelPadding(LeftRoom, RightRoom, BottomRoom, TopRoom));
        plot.FigureBackground.Color = Colors.Transparent;
        plot.DataBackground.Color = Colors.Transparent;
        foreach (var band in bands)
        {
            var fill = plot.Add.FillY([.. band.X], [.. band.Low], [.. band.High]);
            fill.FillColor = Of(band.Color);
            fill.LineWidth = 0;
        }

        foreach (var curve in curves)
        {
            Add(plot, curve);
        }

        Dress(plot.Axes.Bottom, X);
        Dress(plot.Axes.Left, Y);
        plot.Axes.Right.IsVisible = false;
        plot.Axes.Top.IsVisible = false;
        plot.Grid.MajorLineColor = Of(Paper.Grid);
        plot.Axes.SetLimits(X.From, X.To, Y.From, Y.To);
        var whole = new PixelRect(
            Box.Left - LeftRoom,
            Box.Right + RightRoom,
            Box.Bottom + BottomRoom,
            Box.Top - TopRoom
        );
        // A plot is laid out by drawing it twice, the first time: nowhere, so that nothing lies on the paper twice.
        using var nowhere = new SKNoDrawCanvas((int)Paper.Width, (int)whole.Height);
        plot.RenderManager.Render(nowhere, whole);
        plot.RenderManager.Render(brush.Canvas, whole);
    }

    /// <summary>Keeps labels off curves, where they can.</summary>
    /// <param name="spots">Where labels go.</param>
    /// <param name="curves">The curves.</param>
    public void Avoid(LabelSpots spots, IEnumerable<Curve> curves)
    {
        foreach (var (x, y) in curves.SelectMany(curve => curve.Runs()))
        {
            for (var n = 1; n < x.Length; n++)
            {
                var (from, to) = (At(x[n - 1], y[n - 1]), At(x[n], y[n]));
                spots.Avoid(
                    new(from.X, Math.Min(from.Y, to.Y) - 2, to.X, Math.Max(from.Y, to.Y) + 2)
                );
            }
        }
    }

    private static void Add(Plot plot, Curve curve)
    {
        foreach (var (x, y) in curve.Runs())
        {
            var line = plot.Add.ScatterLine(x, y);
            line.Color = Of(curve.Pen.Color);
            line.LineWidth = curve.Pen.Width;
            line.LinePattern =
                curve.Pen.Dashes.Length == 0
                    ? LinePattern.Solid
                    : new LinePattern(curve.Pen.Dashes, 0, "dashes");
        }
    }

    private static void Dress(IAxis axis, Scale scale)
    {
        var ticks = new Charts::ScottPlot.TickGenerators.NumericManual(
            [.. scale.Marks],
            [.. scale.Labels]
        );
        axis.TickGenerator = ticks;
        axis.TickLabelStyle.FontName = Typefaces.Family;
        axis.TickLabelStyle.FontSize = Paper.Small;
        axis.TickLabelStyle.ForeColor = Of(Paper.Ink);
        axis.FrameLineStyle.Color = Of(Paper.Gray);
        axis.MajorTickStyle.Color = Of(Paper.Gray);
    }

    private static Charts::ScottPlot.Color Of(SKColor color) =>
        new(color.Red, color.Green, color.Blue, color.Alpha);
}

/// <summary>A curve of a plot.</summary>
/// <param name="X">Along the bottom, rising.</param>
/// <param name="Y">Along the left; NaN where it is not known.</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record Curve(IReadOnlyList<double> X, IReadOnlyList<double> Y, Pen Pen)
{
    /// <summary>The stretches in which it is known.</summary>
    public IEnumerable<(double[] X, double[] Y)> Runs()
    {
        var (x, y) = (new List<double>(), new List<double>());
        for (var n = 0; n <= X.Count; n++)
        {
            if (n < X.Count && double.IsFinite(Y[n]))
            {
                x.Add(X[n]);
                y.Add(Y[n]);
            }
            else if (x.Count > 0)
            {
                yield return ([.. x], [.. y]);
                (x, y) = ([], []);
            }
        }
    }
}

/// <summary>A band of a plot.</summary>
/// <param name="X">Along the bottom, rising.</param>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
/// <param name="Color">What fills it.</param>
internal sealed record Band(
    IReadOnlyList<double> X,
    IReadOnlyList<double> Low,
    IReadOnlyList<double> High,
    SKColor Color
);
