using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Tests.Thermal;

/// <summary>The two-node network (M6) against Runge-Kutta on its equations, and in its limits.</summary>
public sealed class TwoNodeTests
{
    internal sealed record Setting(
        MotorHeat Heat,
        double Ohm,
        double Current2,
        double ConstantW,
        double AmbientC
    )
    {
        public TwoNode Network => new(Heat, Ohm, Current2, ConstantW, AmbientC);

        // The equations as the model's text has them.
        public Vector<double> Rate(Vector<double> x)
        {
            var copper = Current2 * Ohm * (1 + (0.00393 * (x[0] - 20)));
            var between = (x[0] - x[1]) / Heat.WindingToCaseKPerW;
            var outward = (x[1] - AmbientC) / Heat.CaseToAmbientKPerW;
            var inWinding = Heat.SpinHeatInWinding ? ConstantW : 0;
            return Vector<double>.Build.Dense([
                (copper + inWinding - between) / Heat.WindingJPerK,
                (ConstantW - inWinding + between - outward) / Heat.CaseJPerK,
            ]);
        }

        public MotorTemperature Stepped(MotorTemperature start, double seconds, int steps = 2000)
        {
            var end = RungeKutta.FourthOrder(
                Vector<double>.Build.Dense([start.WindingC, start.CaseC]),
                0,
                seconds,
                steps,
                (_, x) => Rate(x)
            )[^1];
            return new(end[0], end[1]);
        }
    }

    private static readonly Gen<Setting> Settings =
        from winding in Gen.Double[5, 60]
        from housing in Gen.Double[20, 150]
        from between in Gen.Double[0.2, 4]
        from outward in Gen.Double[1, 12]
        from spin in Gen.Bool
        from ohm in Gen.Double[0.01, 0.2]
        from current in Gen.Double[0, 40]
        from constant in Gen.Double[0, 15]
        from ambient in Gen.Double[-10, 45]
        select new Setting(
            Parts.Heat(winding, housing, between, outward, spin),
            ohm,
            current * current,
            constant,
            ambient
        );

    [Fact]
    [Trait("speed", "slow")]
    public void After_any_time_it_is_where_Runge_Kutta_gets_it() =>
        Gen.Select(Settings, Gen.Double[0.1, 300], Gen.Double[-10, 150], Gen.Double[-10, 100])
            .Sample(
                (setting, seconds, windingC, caseC) =>
                {
                    var start = new MotorTemperature(windingC, caseC);
                    var exact = setting.Network.Over(seconds).Apply(start);
                    if (exact.WindingC > 2000)
                    {
                        return;
                    }

                    var stepped = setting.Stepped(start, seconds);
                    Near(stepped.WindingC, exact.WindingC, 1e-5);
                    Near(stepped.CaseC, exact.CaseC, 1e-5);
                },
                iter: 200
            );

    [Fact]
    public void Two_halves_of_a_time_are_the_whole() =>
        Gen.Select(Settings, Gen.Double[0.1, 2000])
            .Sample(
                (setting, seconds) =>
                {
                    if (setting.Network.Slow * seconds > 20)
                    {
                        return;
                    }

                    var start = MotorTemperature.At(setting.AmbientC);
                    var whole = setting.Network.Over(seconds).Apply(start);
                    var half = setting.Network.Over(seconds / 2);
                    Near(whole.WindingC, half.Apply(half.Apply(start)).WindingC, 1e-7);
                    Near(whole.WindingC, half.Then(half).Apply(start).WindingC, 1e-7);
                    Near(whole.CaseC, half.Then(half).Apply(start).CaseC, 1e-7);
                }
            );

    [Fact]
    public void Where_it_settles_nothing_flows_and_a_long_time_leads_there() =>
        Settings.Sample(setting =>
        {
            var settled = setting.Network.Settled;
            if (double.IsInfinity(settled.WindingC))
            {
                Assert.True(setting.Network.Slow >= 0);
                return;
            }

            var rate = setting.Rate(Vector<double>.Build.Dense([settled.WindingC, settled.CaseC]));
            Assert.Equal(0, rate[0], 1e-6 * (1 + Math.Abs(settled.WindingC)));
            Assert.Equal(0, rate[1], 1e-6 * (1 + Math.Abs(settled.WindingC)));
            var late = setting
                .Network.Over(-40 / setting.Network.Slow)
                .Apply(MotorTemperature.At(setting.AmbientC));
            Near(settled.WindingC, late.WindingC, 1e-6);
        });

    [Fact]
    public void After_no_time_nothing_has_changed() =>
        Settings.Sample(setting =>
        {
            var start = new MotorTemperature(70, 40);
            Assert.Equal(start, setting.Network.Over(0).Apply(start));
        });

    [Fact]
    public void Without_heat_and_without_a_difference_nothing_moves()
    {
        var quiet = new TwoNode(Parts.Heat(), 0.05, 0, 0, 25);
        var after = quiet.Over(1234).Apply(MotorTemperature.At(25));
        Assert.Equal(25, after.WindingC, 1e-9);
        Assert.Equal(25, after.CaseC, 1e-9);
        Assert.Equal(25, quiet.Settled.WindingC, 1e-9);
    }

    [Fact]
    public void A_case_at_the_airs_temperature_by_force_leaves_one_exponential()
    {
        // Case so large that it does not warm: T_w = T_a + P·R·(1 − e^(−t/(R·C))).
        var heat = Parts.Heat(20, 1e12, 2, 5, spinInWinding: true);
        var after = new TwoNode(heat, 0.05, 0, 10, 25).Over(30).Apply(MotorTemperature.At(25));
        Assert.Equal(25 + (20 * (1 - Math.Exp(-30 / 40.0))), after.WindingC, 1e-6);
    }

    [Fact]
    public void Crossing_into_runaway_is_smooth()
    {
        var heat = Parts.Heat(20, 60, 1, 5);
        var critical = 1 / (0.00393 * 0.05 * 6);
        double After(double share) =>
            new TwoNode(heat, 0.05, critical * share, 0, 25)
                .Over(600)
                .Apply(MotorTemperature.At(25))
                .WindingC;
        var at = After(1);
        Assert.Equal(0, new TwoNode(heat, 0.05, critical, 0, 25).Slow, 1e-12);
        foreach (var near in new[] { 1e-4, 1e-6, 1e-8, 1e-10 })
        {
            Assert.InRange(After(1 - near), at * (1 - (20 * near) - 1e-9), at);
            Assert.InRange(After(1 + near), at, at * (1 + (20 * near) + 1e-9));
        }

        Assert.True(
            double.IsInfinity(new TwoNode(heat, 0.05, critical * 1.0001, 0, 25).Settled.WindingC)
        );
        Assert.True(new TwoNode(heat, 0.05, critical * 0.9999, 0, 25).Settled.WindingC > 10_000);
    }

    [Fact]
    public void Far_into_runaway_figures_stay_finite()
    {
        var mad = new TwoNode(Parts.Heat(), 0.05, 250_000, 0, 25)
            .Over(3600)
            .Apply(MotorTemperature.At(25));
        Assert.True(double.IsFinite(mad.WindingC) && mad.WindingC > 1e6);
    }

    [Fact]
    [Trait("speed", "slow")]
    public void A_crossing_is_the_first_and_lies_on_the_limit() =>
        Gen.Select(Settings, Gen.Double[30, 200], Gen.Double[0, 1])
            .Sample(
                (setting, limit, weight) =>
                {
                    var start = MotorTemperature.At(Math.Min(setting.AmbientC, 25));
                    var network = setting.Network;
                    var crossing = network.FirstCrossing(start, weight, limit, 600);
                    double At(double t) => network.Over(t).Apply(start).Weighted(weight);
                    var highest = Enumerable.Range(0, 6001).Max(n => At(n / 10.0));
                    if (double.IsInfinity(crossing))
                    {
                        Assert.True(highest < limit + 1e-6, $"{highest} {limit}");
                        return;
                    }

                    Assert.Equal(limit, At(crossing), 1e-6 * limit);
                    Assert.All(
                        Enumerable.Range(0, 100),
                        n => Assert.True(At(crossing * n / 100) <= limit + 1e-9)
                    );
                    Assert.True(
                        network.Reaches(start, network.Over(600).Apply(start), weight, limit)
                    );
                },
                iter: 200
            );

    [Fact]
    [Trait("speed", "slow")]
    public void The_peak_is_the_highest_of_the_way() =>
        Gen.Select(Settings, Gen.Double[20, 150], Gen.Double[20, 150], Gen.Double[0, 1])
            .Sample(
                (setting, windingC, caseC, weight) =>
                {
                    var start = new MotorTemperature(windingC, caseC);
                    var network = setting.Network;
                    var highest = Enumerable
                        .Range(0, 3001)
                        .Max(n => network.Over(n / 10.0).Apply(start).Weighted(weight));
                    var peak = network.Peak(start, weight, 300);
                    Assert.InRange(
                        peak,
                        highest - 1e-9,
                        highest + (1e-2 * (1 + Math.Abs(highest)))
                    );
                },
                iter: 200
            );

    [Fact]
    public void Hotter_starts_stay_hotter() =>
        Gen.Select(Settings, Gen.Double[1, 100])
            .Sample(
                (setting, seconds) =>
                {
                    var map = setting.Network.Over(seconds);
                    Assert.True(map.F11 > 0 && map.F12 > 0 && map.F21 > 0 && map.F22 > 0);
                }
            );

    private static void Near(double expected, double actual, double tolerance) =>
        Assert.True(
            Math.Abs(expected - actual) <= tolerance * (1 + Math.Abs(expected)),
            $"{expected:R} against {actual:R}"
        );
}
