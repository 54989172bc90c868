namespace PowerCheck.Model.Tests.Published;

/// <summary>What the model answers to a row, compared in the document's own units.</summary>
internal sealed record Answered(PublishedCheck Check, IReadOnlyDictionary<string, double> Figures)
{
    public static Answered By(PublishedCheck check) =>
        new(check, PublishedFunctions.All[check.Function](check));

    /// <summary>How far the answer is from a published figure.</summary>
    public double Off(string name, string published)
    {
        var quantity = new Quantity(published);
        return Math.Abs(quantity.Unit.FromSi(Figures[name]) - quantity.Figure);
    }

    /// <summary>How far off it may be; sums of binary fractions end a little off the printed decimal.</summary>
    public double Allowed(string name)
    {
        var expected = new Quantity(Check.Expected[name]);
        return Check.Tolerance.Of(expected) + (1e-12 * Math.Abs(expected.Figure));
    }

    public double Shown(string name) =>
        new Quantity(Check.Expected[name]).Unit.FromSi(Figures[name]);
}
