using PowerCheck.Model.Uncertainty;

namespace PowerCheck.Model.Tests.Uncertainty;

/// <summary>What draws make of the response to each input, against moments of the normal distribution in closed form.</summary>
public sealed class DrawnResponseTests
{
    private static Response Drawn(Response each, Func<double[], double> quantity) =>
        DrawnResponse.Of(
            each,
            [
                .. LatinSquare
                    .Deviates([.. each.Slopes.Select((_, n) => 5 + n)], 4000)
                    .Select(z => (z, quantity(z))),
            ]
        );

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.6)]
    public void An_exponential_has_the_part_of_its_moments(double a)
    {
        // E[exp(az)] = exp(a²/2), differentiated once and twice: E[z·exp(az)] = a·exp(a²/2), E[(z² − 1)·exp(az)] = a²·exp(a²/2).
        // Source: moment generating function of the normal distribution, from memory.
        var found = Drawn(new(1, [a, 1], [0, 0]), z => Math.Exp(a * z[0]) + z[1]);

        Assert.Equal(a * Math.Exp(a * a / 2), found.Slopes[0], 0.02);
        Assert.Equal(a * a * Math.Exp(a * a / 2) / 2, found.Curvatures[0], 0.02);
        Assert.Equal(1, found.Slopes[1], 0.02);
        Assert.Equal(0, found.Curvatures[1], 0.02);
    }

    [Fact]
    public void An_input_that_only_answers_beyond_where_it_was_tried_is_seen()
    {
        // E[z·z³] = 3, the fourth moment of the normal distribution.
        var found = Drawn(new(0, [0, 2], [0, 0]), z => (z[0] * z[0] * z[0]) + (2 * z[1]));

        Assert.Equal(3, found.Slopes[0], 0.15);
        Assert.Equal(2, found.Slopes[1], 0.2);
    }

    [Fact]
    public void A_response_that_is_right_is_left_as_it_is()
    {
        var each = new Response(4, [0.5, -2, 0], [0.1, 0, -0.3]);

        Assert.Equal(each.Variances(), Drawn(each, each.At).Variances());
    }

    [Fact]
    public void What_two_inputs_do_only_together_is_of_neither()
    {
        var found = Drawn(new(0, [1, 0], [0, 0]), z => z[0] * (1 + (0.5 * z[1])));

        Assert.Equal([1, 0], found.Slopes, Near);
        Assert.Equal([0, 0], found.Curvatures, Near);
    }

    private static readonly Func<double, double, bool> Near = (a, b) => Math.Abs(a - b) < 0.05;
}
