using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>What to measure where a limit is in doubt, and how sure a verdict is (M12, M13).</summary>
public sealed class MeasureTests
{
    private static Measure? Of(params (string Path, double Part)[] shares) =>
        Measure.Of([.. shares.Select(share => new Share(share.Path, share.Part, true))]);

    private static Confidence Sure(
        double exceedance,
        params (double Part, bool Assumed)[] shares
    ) =>
        Thresholds.Confidence(
            new(
                exceedance,
                1,
                2,
                0.1,
                [.. shares.Select(share => new Share("motor.massG", share.Part, share.Assumed))]
            )
        );

    [Fact]
    public void Where_it_is_open_and_no_figure_decides_nothing_is_sure() =>
        Assert.Equal(Confidence.Low, Sure(0.5));

    // What only its maker knows, what is assumed about materials and men, and what is chosen.
    private static readonly string[] NotMeasured =
    [
        "motor.resistanceTemperatureC",
        "motor.continuousCurrentA",
        "motor.burstCurrentA",
        "motor.hotSpotAllowanceK",
        "motor.magnetMaxC",
        "motor.magnetCoefficientPerK",
        "motor.lockedHeatFactor",
        "motor.thermal.copperJPerK",
        "controller.continuousCurrentA",
        "controller.burstCurrentA",
        "controller.currentLimitA",
        "controller.maxTemperatureC",
        "controller.hotResistanceFactor",
        "controller.edgeTimeNs",
        "controller.lowSpeedBackEmfV",
        "controller.standstillRatingShare",
        "controller.receiverSupply.continuousCurrentA",
        "controller.receiverSupply.peakCurrentA",
        "controller.receiverSupply.dropoutV",
        "controller.receiverSupply.maxHeatW",
        "controller.receiverSupply.efficiency",
        "controller.receiverSupply.receiverResetV",
        "battery.continuousC",
        "battery.burstC",
        "battery.lastingResistanceFactor",
        "battery.resistanceTemperatureConstantK",
        "battery.peukertExponent",
        "battery.reserveShare",
        "battery.ratedHours",
        "battery.maxTemperatureC",
        "vehicle.drivetrain.maxWheelTorqueNm",
        "wiring.connectorContinuousA",
    ];

    [Fact]
    public void Every_figure_of_the_parts_that_may_be_off_can_be_measured_or_is_one_that_cannot()
    {
        var inputs = Enumerable
            .Range(1, 60)
            .SelectMany(n =>
            {
                var label = RandomRig.Of(n);
                var complete = RigCompletion.Of(label);
                return Input.Of(RigFill.Of(label, complete), complete.Ledger.Assumptions);
            })
            .Select(input => input.Figure.Path)
            .Where(path =>
                !path.StartsWith("course.", StringComparison.Ordinal)
                || path.EndsWith("Coefficient", StringComparison.Ordinal)
            )
            .Distinct(StringComparer.Ordinal)
            .ToArray();

        Assert.True(inputs.Length > 50);
        Assert.All(
            inputs,
            path =>
                Assert.True(
                    Of((path, 1)) is not null != NotMeasured.Contains(path, StringComparer.Ordinal),
                    path
                )
        );
        Assert.NotNull(Of(("accessories.2.jammedCurrentA", 1)));
    }

    [Fact]
    public void The_input_that_decides_the_most_of_those_that_can_be_measured_is_named()
    {
        var measure = Of(
            ("controller.continuousCurrentA", 0.5),
            ("motor.resistanceMilliohm", 0.3),
            ("vehicle.massKg", 0.2)
        );

        Assert.Equal("motor.resistanceMilliohm", measure?.Path);
        Assert.Contains("voltage over current", measure!.How, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1, true)]
    [InlineData(0.099, false)]
    public void What_decides_little_is_not_worth_measuring(double part, bool worth) =>
        Assert.Equal(worth, Of(("motor.resistanceMilliohm", part)) is not null);

    [Theory]
    [InlineData(0.05, Confidence.High)]
    [InlineData(0.051, Confidence.Low)]
    [InlineData(0.949, Confidence.Low)]
    [InlineData(0.95, Confidence.High)]
    public void A_verdict_is_sure_where_its_deciding_limit_is_clear(
        double exceedance,
        Confidence confidence
    ) => Assert.Equal(confidence, Sure(exceedance, (0.51, true), (0.49, false)));

    [Fact]
    public void In_doubt_confidence_is_medium_where_what_was_given_decides_half()
    {
        Assert.Equal(Confidence.Medium, Sure(0.5, (0.5, true), (0.5, false)));
        Assert.Equal(Confidence.Low, Sure(0.5, (0.3, true), (0.21, true), (0.49, false)));
    }

    [Fact]
    public void A_verdict_of_which_nothing_can_be_said_is_of_low_confidence() =>
        Assert.Equal(Confidence.Low, Judgement.Of([]).Confidence);
}
