using System.Reflection;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Sources;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Every published figure, through the function that the check itself calls.</summary>
public sealed class PublishedCheckTests
{
    public static TheoryData<string> Ids => [.. PublishedCheck.All.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_model_meets_the_published_figure(string id)
    {
        var check = PublishedCheck.All[id];
        var answer = PublishedFunctions.All[check.Function](check);
        Assert.NotEmpty(check.Expected);
        Assert.All(
            check.Expected,
            expected =>
            {
                var found = answer[expected.Key];
                Assert.True(
                    Math.Abs(found - expected.Value) <= check.Tolerance.Of(expected.Value),
                    $"{id} {expected.Key}: {found:R}, published {expected.Value:R}, "
                        + $"tolerance {check.Tolerance.Of(expected.Value):G3} ({check.Tolerance.Reason})"
                );
            }
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_row_says_where_it_stands_and_how_far_off_the_model_may_be(string id)
    {
        var check = PublishedCheck.All[id];
        Assert.NotEmpty(check.What);
        Assert.NotEmpty(check.Source.Place);
        Assert.NotEmpty(check.Tolerance.Reason);
        Assert.Matches("FOUND|DERIVED|MEMORY", check.Tag);
        Assert.True(check.Tolerance.Relative is null != check.Tolerance.Absolute is null);
        Assert.True(
            PublishedCheck.Documents.ContainsKey(check.Source.Key)
                || SourceList.All.Any(source =>
                    string.Equals(source.Key, check.Source.Key, StringComparison.Ordinal)
                ),
            $"no document {check.Source.Key}"
        );
    }

    [Fact]
    public void The_acceptance_checks_one_to_nineteen_are_all_there()
    {
        var present = PublishedCheck
            .All.Values.Select(check => check.Check)
            .OfType<int>()
            .ToHashSet();
        Assert.Equal(Enumerable.Range(1, 19), present.Order());
    }

    [Fact]
    public void Every_function_that_a_row_names_is_one_of_the_model()
    {
        var types = typeof(Copper).Assembly.GetExportedTypes();
        Assert.All(
            PublishedCheck
                .All.Values.Select(check => check.Function)
                .Distinct(StringComparer.Ordinal),
            function =>
            {
                var name = function.Split('/')[0].Split('.');
                Assert.Contains(
                    types.Where(type =>
                        string.Equals(type.Name, name[0], StringComparison.Ordinal)
                    ),
                    type =>
                        type.GetMember(
                            name[1],
                            BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static
                        ).Length > 0
                );
            }
        );
    }
}
