namespace PowerCheck.Model.Tests.Published;

/// <summary>A topic: the file of its rows.</summary>
public interface ITopic
{
    static abstract string File { get; }
}

/// <summary>Every published figure of a topic, through the function that the check itself calls.</summary>
public abstract class PublishedTopic<T>
    where T : ITopic
{
    private static IReadOnlyDictionary<string, PublishedCheck> Rows =>
        PublishedRows.ByTopic[T.File];

    public static TheoryData<string> Ids => [.. Rows.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_model_meets_the_published_figure(string id)
    {
        var check = Rows[id];
        var answer = Answered.By(check);
        Assert.NotEmpty(check.Expected);
        Assert.All(
            check.Expected,
            pair =>
            {
                var off = answer.Off(pair.Key, pair.Value);
                var allowed = answer.Allowed(pair.Key);
                Assert.True(
                    off <= allowed,
                    $"{id} {pair.Key}: {answer.Shown(pair.Key)}, published {pair.Value}, "
                        + $"tolerance {allowed:G3} ({check.Tolerance.Reason})"
                );
            }
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_row_says_where_it_stands_and_how_far_off_the_model_may_be(string id) =>
        RowForm.Holds(Rows[id]);
}
