using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Thermal;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Printed currents and cautions of motor and controller (M11), from both sides.</summary>
public sealed class MotorAndControllerTests
{
    private static Inspection Rated(double continuousA, double burstA, double burstS) =>
        Inspected.Brushless.WithRig(rig =>
            rig with
            {
                Motor = rig.Motor with
                {
                    Ratings = rig.Motor.Ratings with
                    {
                        ContinuousCurrentA = continuousA,
                        BurstCurrentA = burstA,
                        BurstS = burstS,
                    },
                },
            }
        );

    private static Inspection Currents(Inspection it, double slip, double punch, double jam) =>
        it.With(LoadCaseName.Slip, load => load with { MotorCurrentA = slip })
            .With(LoadCaseName.Punch, load => load with { MotorCurrentA = punch })
            .With(LoadCaseName.Jam, load => load with { MotorCurrentA = jam });

    private static Inspection Controlled(double limitA, double burstA) =>
        Inspected.Brushless.WithRig(rig =>
            rig with
            {
                Controller = rig.Controller with { CurrentLimitA = limitA, BurstCurrentA = burstA },
            }
        );

    private static TemperatureReport Stall(TemperatureReport warm, double seconds)
    {
        NodeReport Node(NodeReport node) =>
            node with
            {
                Cases =
                [
                    .. node.Cases.Select(c =>
                        c.Case == LoadCaseName.Stall ? c with { FromCold = new(seconds) } : c
                    ),
                ],
            };
        return warm with
        {
            MotorWinding = Node(warm.MotorWinding),
            Controller = Node(warm.Controller),
        };
    }

    [Theory]
    [InlineData(8, Outcome.Holds)]
    [InlineData(9.5, Outcome.Doubtful)]
    [InlineData(10.5, Outcome.Fails)]
    public void The_courses_rms_current_is_held_against_the_continuous_rating(
        double rms,
        Outcome outcome
    )
    {
        var it = Rated(10, double.NaN, double.NaN);
        it = it with
        {
            Result = it.Result with
            {
                Endurance = it.Result.Endurance with { RmsMotorCurrentA = rms },
            },
        };

        Assert.Equal((rms, 10, outcome), it.Only(MotorContinuousCurrent).Figures());
        Assert.Empty(Inspected.Brushless.All(MotorContinuousCurrent));
    }

    [Fact]
    public void Slip_punch_and_jam_are_held_against_the_burst_rating_for_their_seconds()
    {
        var it = Currents(Rated(10, 30, 2.5), 20, 28, 31);
        var found = it.All(MotorBurstCurrent);
        // 3 s of slip and punch are longer than the burst's 2.5 s; 2 s of jam are not.
        var longer = BurstRating.AllowedA(10, 30, 2.5, 3);

        Assert.InRange(longer, 25, 30);
        Assert.Equal(
            [
                ("slip", 20, longer, 3, Outcome.Holds),
                ("punch", 28, longer, 3, longer < 28 ? Outcome.Fails : Outcome.Doubtful),
                ("jam", 31, 30.0, 2, Outcome.Fails),
            ],
            found.Select(f => (f.LoadCase!, f.Estimate, f.Limit, f.DurationS, f.Outcome))
        );
        Assert.Empty(Inspected.Brushless.All(MotorBurstCurrent));
    }

    [Theory]
    [InlineData(59.9, "")]
    [InlineData(60, "")]
    [InlineData(60.6, "reaches 61 °C")]
    [InlineData(double.PositiveInfinity, "gets hotter and hotter")]
    public void A_case_over_60_degrees_burns_who_touches_it(double peakC, string said)
    {
        var found = Inspected
            .Brushless.WithWarmth(warm =>
                warm with
                {
                    MotorCase = warm.MotorCase with { PeakC = peakC },
                }
            )
            .All(MotorTouchTemperature);

        Assert.Equal(said.Length > 0 ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Contains(said, f.Message, StringComparison.Ordinal));
        Assert.All(found, f => Assert.Equal((peakC, 60), (f.Estimate, f.Limit)));
    }

    [Theory]
    [InlineData(MagnetMaterial.Ferrite, -1, true)]
    [InlineData(MagnetMaterial.Ferrite, 0, false)]
    [InlineData(MagnetMaterial.Ferrite, 5, false)]
    [InlineData(MagnetMaterial.Ndfeb, -1, false)]
    public void A_ferrite_magnet_minds_the_frost(
        MagnetMaterial magnet,
        double ambientC,
        bool caution
    )
    {
        var found = Inspected
            .Brushed.WithRig(rig =>
                rig with
                {
                    Motor = rig.Motor with { Magnet = magnet },
                    Road = rig.Road with { AmbientC = ambientC },
                }
            )
            .All(MotorColdMagnet);

        Assert.Equal(caution ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Equal((ambientC, 0, true), (f.Estimate, f.Limit, f.Caution)));
    }

    [Fact]
    public void A_jam_at_three_times_the_lasting_current_is_no_caution_yet_and_brushless_none_at_all()
    {
        Inspection Jammed(Inspection it, double amperes) =>
            it.With(LoadCaseName.Jam, jam => jam with { MotorCurrentA = amperes }) with
            {
                Result = it.Result with { ContinuousMotorA = 10 },
            };

        Assert.Empty(Jammed(Inspected.Brushed, 30).All(MotorCommutator));
        Assert.Single(Jammed(Inspected.Brushed, 30.001).All(MotorCommutator));
        Assert.Empty(Jammed(Inspected.Brushless, 1e6).All(MotorCommutator));
    }

    [Theory]
    [InlineData(7, "for about 7 s from cold", "lasts about 7 s from cold")]
    [InlineData(double.PositiveInfinity, "without end; the motor gives in first", "stays under")]
    [InlineData(double.NaN, "is not to be told", "is not to be told")]
    public void Cautions_say_how_long_a_stall_is_stood(
        double seconds,
        string controller,
        string motor
    )
    {
        var it = Inspected
            .Brushless.WithWarmth(warm => Stall(warm, seconds))
            .With(LoadCaseName.Stall, load => load with { MotorCurrentA = 90 });
        var byController = it.Only(ControllerStallTime);
        var byMotor = it.Only(MotorStallTime);

        Assert.Contains(controller, byController.Message, StringComparison.Ordinal);
        Assert.Contains(motor, byMotor.Message, StringComparison.Ordinal);
        Assert.Equal((90, 90), (byController.Estimate, byMotor.Estimate));
        var told = double.IsFinite(seconds) ? seconds : double.NaN;
        Assert.Equal((told, told), (byController.DurationS, byMotor.DurationS));
        Assert.Equal(
            !double.IsNaN(seconds),
            byController.Message.Contains("90 A", StringComparison.Ordinal)
        );
        Assert.Equal(
            !double.IsNaN(seconds),
            byMotor.Message.Contains("90 A", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(50, 60, 70, 70, "jam")]
    [InlineData(80, 60, 70, 80, "slip")]
    [InlineData(50, 90, 70, 90, "punch")]
    [InlineData(50, double.NaN, 70, double.NaN, "punch")]
    public void The_highest_of_slip_punch_and_jam_is_held_against_the_controllers_burst(
        double slip,
        double punch,
        double jam,
        double highest,
        string name
    )
    {
        var found = Currents(Controlled(double.NaN, 100), slip, punch, jam)
            .Only(ControllerBurstCurrent);

        Assert.Equal((highest, 100, name), (found.Estimate, found.Limit, found.LoadCase));
        Assert.Equal(double.IsNaN(highest) ? Outcome.Unknown : Outcome.Holds, found.Outcome);
    }

    [Theory]
    [InlineData(double.NaN, 100, true)]
    [InlineData(101, 100, true)]
    [InlineData(100, 100, false)]
    [InlineData(80, 100, false)]
    [InlineData(double.NaN, double.NaN, false)]
    public void A_current_limit_at_or_under_the_burst_makes_it_hold_by_itself(
        double limitA,
        double burstA,
        bool judged
    ) =>
        Assert.Equal(judged ? 1 : 0, Controlled(limitA, burstA).All(ControllerBurstCurrent).Length);

    [Theory]
    [InlineData(3.3, true)]
    [InlineData(3.4, false)]
    [InlineData(3.5, false)]
    [InlineData(double.NaN, false)]
    public void A_rig_heavier_than_the_class_on_the_label_is_a_caution(double classKg, bool caution)
    {
        var found = Inspected
            .Brushless.WithRig(rig =>
                rig with
                {
                    Controller = rig.Controller with { VehicleMassLimitKg = classKg },
                }
            )
            .All(ControllerMassClass);

        Assert.Equal(caution ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Equal((3.4, classKg), (f.Estimate, f.Limit)));
    }

    [Theory]
    [InlineData(MotorKind.Brushed, false, true)]
    [InlineData(MotorKind.Brushed, true, false)]
    [InlineData(MotorKind.Brushless, false, false)]
    public void An_unsaid_switching_frequency_matters_to_brushes(
        MotorKind kind,
        bool known,
        bool caution
    )
    {
        var found = Inspected
            .Brushed.WithRig(rig =>
                rig with
                {
                    Motor = rig.Motor with { Kind = kind },
                    Controller = rig.Controller with { PwmKnown = known, PwmFrequencyHz = 8000 },
                }
            )
            .All(ControllerSwitchingFrequency);

        Assert.Equal(caution ? 1 : 0, found.Length);
        Assert.All(found, f => Assert.Equal(8000, f.Estimate));
    }

    [Theory]
    [InlineData(MotorKind.Brushed, false, true)]
    [InlineData(MotorKind.Brushed, true, false)]
    [InlineData(MotorKind.Brushless, false, false)]
    public void An_unsaid_freewheel_matters_to_brushes(MotorKind kind, bool known, bool caution)
    {
        var found = Inspected
            .Brushed.WithRig(rig =>
                rig with
                {
                    Motor = rig.Motor with { Kind = kind },
                    Controller = rig.Controller with { FreewheelKnown = known },
                }
            )
            .With(
                LoadCaseName.Level,
                level => level with { MotorCurrentA = 200, MotorRmsCurrentA = 200 }
            )
            .All(ControllerFreewheel);

        Assert.Equal(caution ? 1 : 0, found.Length);
    }
}
