using PowerCheck.Model.Sources;

namespace PowerCheck.Model.Tests.Published;

/// <summary>What every row has to say of itself.</summary>
internal static class RowForm
{
    private const string FromMemory = "from memory";

    public static void Holds(PublishedCheck check)
    {
        Assert.NotEmpty(check.What);
        Assert.NotEmpty(check.Source.Place);
        Assert.NotEmpty(check.Tolerance.Reason);
        Assert.Matches(@"^(FOUND|DERIVED|MEMORY)(\+DERIVED)?( \(2nd\))?$", check.Tag);
        double?[] ways =
        [
            check.Tolerance.Relative,
            check.Tolerance.Absolute,
            check.Tolerance.Digits,
        ];
        Assert.Single(ways.OfType<double>(), way => way > 0);
        Assert.Equal(
            check.Tag.Contains("MEMORY", StringComparison.Ordinal),
            check.Source.Place.Contains(FromMemory, StringComparison.Ordinal)
        );
        DocumentIsKnown(check);
    }

    private static void DocumentIsKnown(PublishedCheck check)
    {
        var source = SourceList.All.SingleOrDefault(source =>
            string.Equals(source.Key, check.Source.Key, StringComparison.Ordinal)
        );
        Assert.True(
            source is not null || PublishedRows.Documents.ContainsKey(check.Source.Key),
            $"no document {check.Source.Key}"
        );
        Assert.False(
            source is { Seen: "memory" or "own" }
                && check.Tag.Contains("FOUND", StringComparison.Ordinal),
            $"{check.Id} says found, its document was not seen"
        );
    }
}
