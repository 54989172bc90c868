using PowerCheck.Model.Spreads;

namespace PowerCheck.Model.Tests.Spreads;

/// <summary>Draws of which a response says otherwise (M12), counted by hand.</summary>
public sealed class CrossedTests
{
    private static readonly (double Drawn, double Expected)[] Four =
    [
        (0.5, -0.2),
        (-0.1, 0.3),
        (0.2, -0.4),
        (0.4, 0.6),
    ];

    [Fact]
    public void Draws_past_the_limit_where_the_response_is_not_are_over_the_others_under()
    {
        var crossed = Crossed.Of(Four, 0);

        Assert.Equal((2, 1, 1), (crossed.Over, crossed.Under, crossed.Surplus));
        Assert.Equal(0.25, crossed.Share);
        // Of four draws that add 1, −1, 1 and 0, and one more.
        Assert.Equal(Math.Sqrt(((4.0 / 4) - (0.25 * 0.25)) / 4), crossed.StandardError, 1e-12);
    }

    [Fact]
    public void At_the_limit_neither_is_past_it() =>
        Assert.Equal((0, 0), Counted(Crossed.Of([(0, 0), (0, -1), (-1, 0)], 0)));

    [Fact]
    public void Without_any_that_crossed_the_error_is_that_of_one_more_draw() =>
        Assert.Equal(
            Math.Sqrt(1.0 / 2 / 2),
            Crossed.Of([(1, 1), (-1, -1)], 0).StandardError,
            1e-12
        );

    [Theory]
    [InlineData(new[] { 1.0, -1, -1 }, 0.4)]
    [InlineData(new[] { 1.0, 1, -1 }, 0.15)]
    [InlineData(new[] { -1.0, -1, -1 }, 0.5)]
    public void A_distance_matches_that_is_passed_as_often_as_the_limit(
        double[] drawn,
        double matching
    )
    {
        double[] expected = [0.3, 0, 0.5];
        var draws = drawn.Zip(expected).ToArray();

        Assert.Equal(matching, Crossed.Matching(draws), 1e-12);
        Assert.Equal(0, Crossed.Of(draws, matching).Surplus);
    }

    [Fact]
    public void Where_every_draw_is_past_the_limit_so_is_every_response() =>
        Assert.Equal(
            (0, 0),
            Counted(Crossed.Of([(1, 0.3), (1, 0.5)], Crossed.Matching([(1, 0.3), (1, 0.5)])))
        );

    private static (int, int) Counted(Crossed crossed) => (crossed.Over, crossed.Under);
}
