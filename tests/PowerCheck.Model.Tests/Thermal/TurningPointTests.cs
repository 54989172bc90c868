using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>Peaks and crossings of a temperature that turns on its way (M6), against a walk in small steps.</summary>
public sealed class TurningPointTests
{
    private const double Step = 0.02;
    private const double Horizon = 240;

    private static TwoNode Network(double current2) =>
        new(Parts.Heat(caseToAmbient: 8), 0.05, current2, 1, 25);

    private static (double T, double C)[] Walk(
        TwoNode network,
        MotorTemperature start,
        double weight
    ) =>
        [
            .. Enumerable
                .Range(0, (int)(Horizon / Step) + 1)
                .Select(n => (n * Step, network.Over(n * Step).Apply(start).Weighted(weight))),
        ];

    /// <summary>Case or winding warmed by the other node, fed or not; a dip; a plain rise and a plain fall.</summary>
    public static TheoryData<double, double, double, double> Starts =>
        new()
        {
            { 100, 30, 0, 0 },
            { 100, 30, 0, 0.5 },
            { 100, 30, 0, 1 },
            { 30, 100, 0, 1 },
            { 30, 100, 0, 0.5 },
            { 30, 100, 0, 0 },
            { 30, 100, 60, 1 },
            { 60, 25, 500, 1 },
            { 90, 25, 300, 0.5 },
            { 25, 25, 300, 1 },
            { 140, 60, 200, 0 },
        };

    [Theory]
    [MemberData(nameof(Starts))]
    public void A_peak_is_the_highest_of_the_walk(
        double windingC,
        double caseC,
        double current2,
        double weight
    )
    {
        var network = Network(current2);
        var start = new MotorTemperature(windingC, caseC);
        var highest = Walk(network, start, weight).Max(x => x.C);

        Assert.Equal(highest, network.Peak(start, weight, Horizon), 2e-5);
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void A_limit_just_under_the_peak_is_crossed_where_the_walk_first_passes_it(
        double windingC,
        double caseC,
        double current2,
        double weight
    )
    {
        var network = Network(current2);
        var start = new MotorTemperature(windingC, caseC);
        var walk = Walk(network, start, weight);
        var limit = walk.Max(x => x.C) - 0.01;
        var first = walk.First(x => x.C >= limit).T;

        var crossing = network.FirstCrossing(start, weight, limit, Horizon);

        Assert.InRange(crossing, first - Step, first);
        Assert.True(network.Reaches(start, network.Over(Horizon).Apply(start), weight, limit));
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void A_limit_just_over_the_peak_is_not_reached(
        double windingC,
        double caseC,
        double current2,
        double weight
    )
    {
        var network = Network(current2);
        var start = new MotorTemperature(windingC, caseC);
        var limit = Walk(network, start, weight).Max(x => x.C) + 0.01;

        Assert.Equal(double.PositiveInfinity, network.FirstCrossing(start, weight, limit, Horizon));
        Assert.False(network.Reaches(start, network.Over(Horizon).Apply(start), weight, limit));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Who_starts_at_a_limit_has_reached_it(double weight)
    {
        var network = Network(0);
        var start = MotorTemperature.At(80);

        Assert.Equal(0, network.FirstCrossing(start, weight, 80, Horizon));
        Assert.True(network.Reaches(start, network.Over(Horizon).Apply(start), weight, 80));
        Assert.Equal(80, network.Peak(start, weight, Horizon));
    }

    [Fact]
    public void Close_to_the_boundary_of_runaway_it_is_where_small_steps_lead()
    {
        // Growth balances what leaves at i² = 1/(α·R·(R_wc + R_ca)); a little more grows by 1 % of a thousandth in the time.
        const double Seconds = 1000;
        var current2 = 1 / (0.00393 * 0.05 * 9) * (1 + 5e-6);
        var network = Network(current2);
        Assert.InRange(network.Slow * Seconds, 2e-6, 9.9e-6);

        double winding = 25,
            housing = 25;
        const int Steps = 4000;
        const double Dt = Seconds / Steps;
        (double W, double C) Rate(double w, double c) =>
            (
                ((current2 * 0.05 * (1 + (0.00393 * (w - 20)))) - (w - c)) / 20,
                (w - c + 1 - ((c - 25) / 8)) / 60
            );
        for (var n = 0; n < Steps; n++)
        {
            var a = Rate(winding, housing);
            var b = Rate(winding + (Dt / 2 * a.W), housing + (Dt / 2 * a.C));
            var c = Rate(winding + (Dt / 2 * b.W), housing + (Dt / 2 * b.C));
            var d = Rate(winding + (Dt * c.W), housing + (Dt * c.C));
            winding += Dt / 6 * (a.W + (2 * b.W) + (2 * c.W) + d.W);
            housing += Dt / 6 * (a.C + (2 * b.C) + (2 * c.C) + d.C);
        }

        var end = network.Over(Seconds).Apply(MotorTemperature.At(25));
        Assert.Equal(winding, end.WindingC, 1e-5);
        Assert.Equal(housing, end.CaseC, 1e-5);
    }

    [Fact]
    public void What_never_settles_is_infinitely_warm_however_it_is_weighted() =>
        Assert.Equal(
            double.PositiveInfinity,
            new MotorTemperature(double.PositiveInfinity, 30).Weighted(0)
        );

    [Theory]
    [InlineData(100, 30, 400, 1)]
    [InlineData(40, 60, 0, 1)]
    [InlineData(60, 60, 900, 1)]
    public void A_winding_warms_by_what_it_gets_less_what_it_gives(
        double windingC,
        double caseC,
        double current2,
        double toCase
    )
    {
        var copper = current2 * 0.05 * (1 + (0.00393 * (windingC - 20)));

        Assert.Equal(
            (copper - ((windingC - caseC) / toCase)) / 20,
            Network(current2).WindingRate(new(windingC, caseC)),
            1e-9
        );
    }

    [Fact]
    public void A_light_case_takes_the_mean_over_a_peak_while_the_winding_cools()
    {
        // 70 W from a winding of 60 J/K at 100 °C into a case of 5 J/K at 30 °C: −1.2 K/s here, 13.9 K/s there.
        var network = new TwoNode(Parts.Heat(60, 5), 0.05, 0, 0, 25);
        var start = new MotorTemperature(100, 30);
        var highest = Walk(network, start, 0.5).Max(x => x.C);

        Assert.True(highest > 70);
        Assert.Equal(highest, network.Peak(start, 0.5, Horizon), 2e-5);
        Assert.True(
            network.Reaches(start, network.Over(Horizon).Apply(start), 0.5, highest - 0.01)
        );
    }

    [Fact]
    public void A_peak_that_is_over_is_not_reached_again()
    {
        var network = Network(0);
        var walk = Walk(network, new(140, 60), 0);
        var peak = walk.MaxBy(x => x.C);
        var later = network.Over(peak.T + 20).Apply(new(140, 60));

        Assert.True(later.CaseC < peak.C - 0.2);
        Assert.Equal(
            double.PositiveInfinity,
            network.FirstCrossing(later, 0, peak.C - 0.1, Horizon)
        );
    }
}
