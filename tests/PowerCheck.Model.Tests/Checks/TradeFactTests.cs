using CsCheck;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;
using Check = PowerCheck.Model.Checks.Check;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>
/// Facts of the trade (common practice, no source): a short-can sensored brushless motor of 3300 rpm/V goes well with
/// three lithium-polymer cells, and with 12 on 56 teeth of 32 pitch a rig of up to 8 lb gives a small controller that
/// allows three cells and sensored brushless motors no trouble, though its label names a lighter class.
/// </summary>
public sealed class TradeFactTests
{
    private const double EightPoundsKg = 3.63;

    private static readonly Gen<RigLabel> Rest =
        from mass in Gen.Double[2.2, EightPoundsKg]
        from tire in Gen.Double[0.108, 0.120]
        from transmission in Gen.Double[2.6, 3.0]
        from axle in Gen.Double[3.3, 3.75]
        from milliohm in Gen.Double[15, 30]
        from motorKg in Gen.Double[0.14, 0.18]
        from noLoad in Gen.Double[1.2, 2.6]
        from rating in Gen.Int[40, 60]
        from burst in Gen.Double[2.5, 4]
        from ampereHours in Gen.Double[2.2, 5]
        from slope in Gen.Double[30, 45]
        from ambient in Gen.Double[10, 30]
        select SampleRig.Brushless with
        {
            Motor = SampleRig.Brushless.Motor with
            {
                SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(3300),
                ResistanceOhm = milliohm / 1000,
                NoLoadPoints = [new NoLoadPoint(7.4, noLoad)],
                MassKg = motorKg,
            },
            Controller = SampleRig.Brushless.Controller with
            {
                ContinuousCurrentA = rating,
                BurstCurrentA = burst * rating,
                BurstS = null,
                MaxCells = 3,
                Hold = HoldMode.Active,
                VehicleMassLimitKg = 2,
            },
            Battery = new BatteryLabel
            {
                Chemistry = Chemistry.Lipo,
                SeriesCells = 3,
                CapacityCoulomb = ampereHours * 3600,
                ContinuousC = 30,
            },
            Vehicle = SampleRig.Brushless.Vehicle with
            {
                MassKg = mass,
                TireDiameterM = tire,
                Drivetrain = SampleRig.Brushless.Vehicle.Drivetrain with
                {
                    TransmissionRatio = transmission,
                    AxleRatio = axle,
                },
            },
            Course = new() { AmbientC = ambient, ClimbSlopeRad = Unit.Degree.ToSi(slope) },
        };

    [Fact]
    [Trait("speed", "slow")]
    public void Such_a_rig_is_never_unsuitable_and_its_class_label_only_cautions() =>
        Rest.Sample(
            label =>
            {
                var result = Check.Run(label);
                Assert.True(result.Verdict is Verdict.Suitable or Verdict.Limited, result.Summary);
                var label2 = result.Findings.Single(f =>
                    f.Kind.Equals(FindingCatalogue.ControllerMassClass)
                );
                Assert.Equal(Outcome.Holds, label2.Outcome);
                Assert.True(label2.Caution);
                Assert.Equal(label.Vehicle.MassKg, label2.Estimate);
                Assert.Equal(2, label2.Limit);
            },
            iter: 200
        );

    [Fact]
    [Trait("speed", "slow")]
    public void The_class_label_changes_no_other_finding() =>
        Rest.Sample(
            label =>
            {
                var unlabelled = label with
                {
                    Controller = label.Controller with { VehicleMassLimitKg = null },
                };
                var (with, without) = (Check.Run(label), Check.Run(unlabelled));
                Assert.Equal(without.Verdict, with.Verdict);
                Assert.Equal(
                    without.Findings.Select(f => f.Message),
                    with.Findings.Where(f => !f.Kind.Equals(FindingCatalogue.ControllerMassClass))
                        .Select(f => f.Message),
                    StringComparer.Ordinal
                );
            },
            iter: 30
        );

    [Fact]
    public void The_sample_of_it_is_suitable() =>
        Assert.Equal(
            Verdict.Suitable,
            Check
                .Run(
                    SampleRig.Brushless with
                    {
                        Controller = SampleRig.Brushless.Controller with { Hold = HoldMode.Active },
                    }
                )
                .Verdict
        );
}
