using System.Reflection;

namespace PowerCheck.Api.Door;

/// <summary>A figure with a unit and a range.</summary>
internal sealed class FigureMember(PropertyInfo property, FigureAttribute figure) : Member(property)
{
    private readonly Action<object, double?> set = Setter.Of<double?>(property);

    public override string Wanted => $"a number {figure.Range}";

    public override TextForm Text { get; } = TextForm.Figure(figure);

    public override void Read(ref Walk walk, object owner)
    {
        if (Figures.TryRead(ref walk, figure, out var value))
        {
            set(owner, value);
        }
    }
}

/// <summary>A whole number with a range.</summary>
internal sealed class WholeMember(PropertyInfo property, FigureAttribute figure) : Member(property)
{
    private readonly Action<object, int?> set = Setter.Of<int?>(property);

    public override string Wanted => $"a whole number {figure.Range}";

    public override TextForm Text { get; } = TextForm.Figure(figure);

    public override void Read(ref Walk walk, object owner)
    {
        if (Figures.TryReadWhole(ref walk, figure, out var value))
        {
            set(owner, value);
        }
    }
}
