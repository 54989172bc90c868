using System.Reflection;
using PowerCheck.Model.Materials;

namespace PowerCheck.Model.Tests.Published;

/// <summary>The published rows as a whole: how many, by which functions, and where a document is wrong.</summary>
public sealed class PublishedRowsTests
{
    private const BindingFlags Public =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static;

    /// <summary>Fewest rows by topic.</summary>
    private static readonly Dictionary<string, int> Fewest = new(StringComparer.Ordinal)
    {
        ["motors"] = 50,
        ["materials"] = 24,
        ["duty"] = 17,
        ["thermal"] = 24,
        ["drive"] = 17,
        ["batteries"] = 92,
        ["wire"] = 74,
        ["gears"] = 26,
        ["road"] = 10,
        ["surfaces"] = 12,
        ["uncertainty"] = 23,
    };

    public static TheoryData<string> Doubtful =>
        [
            .. PublishedRows
                .All.Where(row => row.Printed is not null || row.Doubt is not null)
                .Select(row => row.Id),
        ];

    [Theory]
    [MemberData(nameof(Doubtful))]
    public void Where_a_document_is_wrong_the_model_is_not_as_printed(string id)
    {
        var row = PublishedRows.All.Single(row =>
            string.Equals(row.Id, id, StringComparison.Ordinal)
        );
        Assert.False(string.IsNullOrEmpty(row.Doubt));
        Assert.NotNull(row.Printed);
        Assert.NotEmpty(row.Printed);
        var answer = Answered.By(row);
        Assert.All(
            row.Printed,
            pair =>
                Assert.True(
                    answer.Off(pair.Key, pair.Value) > answer.Allowed(pair.Key),
                    $"{id} {pair.Key}: the printed {pair.Value} is met as well"
                )
        );
    }

    [Fact]
    public void Every_topic_has_its_rows_and_there_are_ninety_at_least()
    {
        Assert.Equal(Fewest.Keys.Order(), PublishedRows.ByTopic.Keys.Order());
        Assert.All(
            Fewest,
            topic => Assert.InRange(PublishedRows.ByTopic[topic.Key].Count, topic.Value, 1000)
        );
        Assert.InRange(PublishedRows.All.Count(), 90, 10_000);
    }

    [Fact]
    public void Every_file_has_a_theory_of_its_own()
    {
        var files = typeof(ITopic)
            .Assembly.GetTypes()
            .Where(type => type.IsClass && type.IsAssignableTo(typeof(ITopic)))
            .Select(type => type.GetProperty(nameof(ITopic.File))?.GetValue(null) as string);
        Assert.Equal(PublishedRows.ByTopic.Keys.Order(), files.Order());
    }

    [Fact]
    public void No_two_rows_have_the_same_identifier() =>
        Assert.Distinct(PublishedRows.All.Select(row => row.Id), StringComparer.Ordinal);

    [Fact]
    public void Every_document_of_the_rows_is_cited() =>
        Assert.Equal(
            [],
            PublishedRows.Documents.Keys.Except(PublishedRows.All.Select(row => row.Source.Key))
        );

    [Fact]
    public void The_acceptance_checks_one_to_twenty_are_all_there() =>
        Assert.Equal(
            Enumerable.Range(1, 20),
            PublishedRows.All.Select(row => row.Check).OfType<int>().Distinct().Order()
        );

    [Fact]
    public void Every_function_that_a_row_names_is_one_of_the_model()
    {
        var types = typeof(Copper)
            .Assembly.GetExportedTypes()
            .ToLookup(type => type.Name, StringComparer.Ordinal);
        Assert.All(
            Functions,
            name =>
                Assert.Contains(
                    types[name.Type],
                    type => type.GetMember(name.Member, Public).Length > 0
                )
        );
    }

    private static IEnumerable<(string Type, string Member)> Functions =>
        PublishedRows
            .All.Select(row => row.Function.Split('/')[0].Split('.'))
            .Select(parts => (parts[0], parts[1]))
            .Distinct();
}
