using CsCheck;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;
using Check = PowerCheck.Model.Checks.Check;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>Laws that hold for every rig. A failure prints the rig's number.</summary>
public sealed class LawTests
{
    private static readonly Gen<int> Numbers = Gen.Int[1, 1_000_000];

    [Fact]
    [Trait("speed", "slow")]
    public void A_heavier_rig_never_climbs_with_less_current() =>
        Gen.Select(Numbers, Gen.Double[1, 3])
            .Sample(
                (number, times) =>
                {
                    var label = RandomRig.Of(number);
                    var heavier = label with
                    {
                        Vehicle = label.Vehicle with { MassKg = label.Vehicle.MassKg * times },
                    };
                    Assert.True(Climb(heavier) >= Climb(label) * (1 - 1e-12));
                }
            );

    [Fact]
    public void A_steeper_slope_never_climbs_with_less_current_while_tires_hold() =>
        Numbers.Sample(number =>
        {
            var rig = SampleRig.Of(RandomRig.Of(number));
            // Force sin θ + Crr·cos θ grows up to 90° − atan Crr.
            double At(double slope) =>
                SteadyCases
                    .Climb(rig with { Road = rig.Road with { SlopeRad = slope } })
                    .MotorCurrentA;
            Assert.True(At(0.9) >= At(0.6) && At(0.6) >= At(0.3));
        });

    [Fact]
    public void More_cells_never_lower_the_prospective_stall_current() =>
        Numbers.Sample(number =>
        {
            var label = RandomRig.Of(number);
            var more = label with
            {
                Battery = label.Battery with { SeriesCells = label.Battery.SeriesCells + 1 },
            };
            Assert.True(Stall(more) > Stall(label));
        });

    [Fact]
    public void A_lower_gear_never_needs_more_current_to_climb() =>
        Numbers.Sample(number =>
        {
            var rig = SampleRig.Of(RandomRig.Of(number));
            var climb = WheelLoad.Creep(rig, 40, rig.ClimbSlopeRad, 0.3);
            Assert.True(WheelLoad.Creep(rig, 50, rig.ClimbSlopeRad, 0.3).ShaftNm < climb.ShaftNm);
        });

    [Fact]
    [Trait("speed", "slow")]
    public void Teeth_or_their_ratio_give_the_same_figures() =>
        Numbers.Sample(
            number =>
            {
                var label = RandomRig.Of(number);
                var teeth = label.Vehicle.Drivetrain;
                var ratio = SampleRig.Of(label).Vehicle.Gearing.LowestRatio;
                var whole = label with
                {
                    Vehicle = label.Vehicle with
                    {
                        Drivetrain = new() { OverallRatio = ratio, Efficiency = teeth.Efficiency },
                    },
                };
                var (a, b) = (SampleRig.Inspect(label), SampleRig.Inspect(whole));
                Assert.Equal(a.Cases.All, b.Cases.All);
                Assert.Equal(a.Result.Endurance, b.Result.Endurance);
                Assert.Equal(a.Drivetrain.TorqueReserve, b.Drivetrain.TorqueReserve);
            },
            iter: 50
        );

    [Fact]
    [Trait("speed", "slow")]
    public void The_order_of_accessories_and_of_motor_kinds_is_of_no_account() =>
        Numbers.Sample(
            number =>
            {
                var label = RandomRig.Of(number);
                var turned = label with
                {
                    Accessories = label.Accessories is { } list ? [.. list.Reverse()] : null,
                    Controller = label.Controller with
                    {
                        MotorKinds = [.. label.Controller.MotorKinds.Reverse()],
                    },
                };
                var (a, b) = (Check.Run(label), Check.Run(turned));
                Assert.Equal(a.Verdict, b.Verdict);
                Assert.Equal(a.Summary, b.Summary);
                Assert.All(
                    a.LoadCases.All.Zip(b.LoadCases.All),
                    pair =>
                        Assert.Equal(pair.First.BatteryCurrentA, pair.Second.BatteryCurrentA, 1e-9)
                );
            },
            iter: 50
        );

    [Fact]
    [Trait("speed", "slow")]
    public void A_segment_in_two_halves_gives_the_temperatures_of_the_whole() =>
        Numbers.Sample(
            number =>
            {
                var label = RandomRig.Of(number);
                RigLabel With(params double[] seconds) =>
                    label with
                    {
                        Course = label.Course with
                        {
                            Segments =
                            [
                                .. seconds.Select(s => new Model.Courses.SegmentLabel
                                {
                                    DurationS = s,
                                    Kind = Model.Courses.SegmentKind.Creep,
                                    SlopeRad = 0.4,
                                }),
                                new() { DurationS = 12, Kind = Model.Courses.SegmentKind.Rest },
                            ],
                        },
                    };
                var whole = SampleRig.Inspect(With(40)).Result.Temperatures;
                var halves = SampleRig.Inspect(With(20, 20)).Result.Temperatures;
                Near(whole.MotorWinding.PeakC, halves.MotorWinding.PeakC, 1e-4);
                Near(whole.MotorCase.PeakC, halves.MotorCase.PeakC, 1e-4);
                // Pack and controller are run at each segment's mean winding temperature, which halves change a little.
                Near(whole.Controller.PeakC, halves.Controller.PeakC, 0.5);
            },
            iter: 60
        );

    [Fact]
    [Trait("speed", "slow")]
    public void The_same_rig_gets_the_same_answer() =>
        Numbers.Sample(
            number =>
            {
                var (a, b) = (Check.Run(RandomRig.Of(number)), Check.Run(RandomRig.Of(number)));
                Assert.Equal(a.Summary, b.Summary);
                Assert.Equal(
                    a.Findings.Select(f => f.Message),
                    b.Findings.Select(f => f.Message),
                    StringComparer.Ordinal
                );
            },
            iter: 20
        );

    [Fact]
    [Trait("speed", "slow")]
    public void A_warmer_day_never_cools_a_motor() =>
        Numbers.Sample(
            number =>
            {
                var label = RandomRig.Of(number);
                double Peak(double ambient) =>
                    SampleRig
                        .Inspect(label with { Course = label.Course with { AmbientC = ambient } })
                        .Result.Temperatures.MotorWinding.PeakC;
                Assert.True(Peak(35) >= Peak(15));
            },
            iter: 60
        );

    private static double Climb(RigLabel label) =>
        SteadyCases.Climb(SampleRig.Of(label)).MotorCurrentA;

    private static double Stall(RigLabel label) =>
        LockedCases.Stall(SampleRig.Of(label)).ProspectiveCurrentA;

    private static void Near(double expected, double actual, double kelvin) =>
        Assert.True(
            expected.Equals(actual) || Math.Abs(expected - actual) <= kelvin,
            $"{expected:R} against {actual:R}"
        );
}
