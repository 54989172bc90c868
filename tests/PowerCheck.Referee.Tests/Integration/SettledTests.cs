using MathNet.Numerics.LinearAlgebra;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>Load cases that a torque drives, the current following a magnet that weakens as it warms (M6, M11).</summary>
public sealed class SettledTests : IClassFixture<DeviationReport>
{
    private static readonly LoadCaseName[] Names =
    [
        LoadCaseName.Level,
        LoadCaseName.Climb,
        LoadCaseName.Slip,
        LoadCaseName.Top,
    ];

    private const double LookedAtS = 3600;
    private const double NearlyK = 0.2;

    [Fact]
    public void A_torque_held_for_ever_settles_where_the_check_says_or_runs_away()
    {
        var said = "";
        int settled = 0,
            ran = 0;
        foreach (var rig in Integrated.All)
        {
            foreach (var name in Names)
            {
                var check = rig.Check.Temperatures.MotorWinding.Cases.First(c => c.Case == name);
                var own = Settled(rig, name);
                if (own[0] > 400)
                {
                    ran++;
                    said += double.IsPositiveInfinity(check.SettledC)
                        ? ""
                        : $"rig {rig.Plain.Rig.Number}, {name} runs away, check {check.SettledC}\n";
                    continue;
                }

                settled++;
                said += rig.Kelvin($"settled winding, {name}", own[0], check.SettledC);
            }
        }

        Assert.True(said.Length == 0, said);
        Assert.True(settled >= 60 && ran >= 20, $"{settled} settle, {ran} run away");
    }

    [Fact]
    public void A_winding_is_at_its_limit_after_the_time_that_the_check_says()
    {
        var said = "";
        int timed = 0,
            never = 0;
        foreach (var rig in Integrated.All)
        {
            var node = rig.Check.Temperatures.MotorWinding;
            foreach (var name in Names)
            {
                var seconds = node.Cases.First(c => c.Case == name).FromColdS;
                if (seconds > 0 && double.IsFinite(seconds))
                {
                    timed++;
                    var own = FromCold(rig, name, seconds);
                    said += rig.Kelvin($"at the limit, {name}", own, node.LimitC);
                    continue;
                }

                never += double.IsPositiveInfinity(seconds) ? 1 : 0;
                said += Untimed(rig, name, seconds, node.LimitC);
            }
        }

        Assert.True(said.Length == 0, said);
        Assert.True(timed >= 60 && never >= 200, $"{timed} times, {never} without end");
    }

    // No time at all: too warm when cold; without end: not within the hour that is looked at.
    private static string Untimed(Integrated rig, LoadCaseName name, double seconds, double limitC)
    {
        var own = seconds == 0 ? rig.Plain.AmbientC : FromCold(rig, name, LookedAtS);
        var agrees =
            seconds == 0
                ? own >= limitC
                : double.IsPositiveInfinity(seconds) && own <= limitC + NearlyK;
        return agrees
            ? ""
            : $"rig {rig.Plain.Rig.Number}, {name}: {own:R} °C, limit {limitC}, check {seconds} s\n";
    }

    private static double FromCold(Integrated rig, LoadCaseName name, double seconds) =>
        Over(rig, name, new Nodes(rig.Plain, 2).Cold, seconds)[0];

    private static Vector<double> Settled(Integrated rig, LoadCaseName name)
    {
        var x = new Nodes(rig.Plain, 2).Cold;
        for (var n = 0; n < 400; n++)
        {
            var next = Over(rig, name, x, 300);
            if (next[0] > 400 || (next - x).InfinityNorm() < 1e-5)
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    // The torque that the answer's current makes at the answer's speed, kept while the magnet weakens.
    private static Vector<double> Over(
        Integrated rig,
        LoadCaseName name,
        Vector<double> start,
        double seconds
    )
    {
        var plain = rig.Plain;
        var load = rig.Check.LoadCases[name];
        var speed = load.MotorSpeedRadPerS;
        var shaftNm = plain.Kt20 * (load.MotorCurrentA - plain.FrictionA(speed));
        var bridge = new Bridge(plain);
        return new Nodes(plain, 2).Over(
            start,
            seconds,
            (windingC, magnetC) =>
            {
                var kt = plain.Kt(magnetC);
                var current = (shaftNm / kt) + plain.FrictionA(speed);
                var counter = (kt * speed) + plain.Rig.Motor.BrushDropV;
                var flow =
                    plain.Ripples && name != LoadCaseName.Top
                        ? bridge.Feed(0.5, current, plain.Ohm(windingC), counter)
                        : new(current, 0, 0, 0, 0, 0);
                return flow with { RadPerS = speed };
            },
            1
        )[^1];
    }
}
