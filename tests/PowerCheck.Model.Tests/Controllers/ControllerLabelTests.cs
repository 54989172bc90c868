using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Tests.Controllers;

/// <summary>What a controller's box says is what the controller has; what it does not say is filled in (M3, M7).</summary>
public sealed class ControllerLabelTests
{
    private static Controller Complete(
        ControllerLabel label,
        bool brushless = true,
        Ledger? ledger = null
    ) => ControllerDefaults.Complete(label, brushless, Chemistry.Lipo, ledger ?? new Ledger());

    private static string[] Listed(ControllerLabel label, bool brushless)
    {
        var ledger = new Ledger();
        Complete(label, brushless, ledger);
        return [.. ledger.Assumptions.Select(a => a.Path)];
    }

    [Fact]
    public void What_is_printed_is_taken_as_it_is()
    {
        var controller = Complete(
            new()
            {
                MinVoltageV = 5,
                MaxVoltageV = 13,
                MinCells = 2,
                MaxCells = 3,
                BurstCurrentA = 90,
                CurrentLimitA = 80,
                EdgeTimeS = 50e-9,
                PwmFrequencyHz = 4000,
                Freewheel = Freewheel.Diode,
                MaxElectricalSpeedRadPerS = 9000,
                VehicleMassLimitKg = 2.5,
                ThermalTimeConstantS = 12,
                LowSpeedStart = true,
                CellLimits = [new(Chemistry.Nimh, 5, 8)],
            }
        );

        Assert.Equal(
            (5, 13, 2, 3),
            (
                controller.Supply.MinVoltageV,
                controller.Supply.MaxVoltageV,
                controller.Supply.MinCells,
                controller.Supply.MaxCells
            )
        );
        Assert.Equal((90, 80), (controller.BurstCurrentA, controller.CurrentLimitA));
        Assert.Equal((50e-9, 4000), (controller.EdgeTimeS, controller.PwmFrequencyHz));
        Assert.Equal(
            (9000, 2.5, 12),
            (
                controller.MaxElectricalSpeedRadPerS,
                controller.VehicleMassLimitKg,
                controller.ThermalTimeConstantS
            )
        );
        Assert.True(controller.PwmKnown && controller.FreewheelKnown && controller.LowSpeedStart);
        Assert.Equal((5, 8), controller.Supply.CellsFor(Chemistry.Nimh));
        Assert.Equal((2, 3), controller.Supply.CellsFor(Chemistry.Liion));
    }

    [Fact]
    public void What_is_not_printed_and_has_no_default_is_not_known()
    {
        var controller = Complete(new());

        Assert.All(
            [
                controller.BurstCurrentA,
                controller.CurrentLimitA,
                controller.MaxElectricalSpeedRadPerS,
                controller.VehicleMassLimitKg,
                controller.ContinuousCurrentA,
                controller.Supply.MinCells,
                controller.Supply.MaxCells,
                controller.Supply.MinVoltageV,
                controller.Supply.MaxVoltageV,
            ],
            figure => Assert.True(double.IsNaN(figure))
        );
        Assert.False(controller.PwmKnown || controller.FreewheelKnown);
        Assert.Equal(0, controller.EdgeTimeS);
    }

    [Theory]
    [InlineData(null, 0.002, "2 mΩ")]
    [InlineData(45.0, 0.002, "0.09 V")]
    [InlineData(90.0, 0.001, "0.09 V")]
    public void Switches_drop_0_09_V_at_the_continuous_current_or_have_2_milliohms(
        double? continuousA,
        double ohm,
        string basis
    )
    {
        var ledger = new Ledger();

        var controller = Complete(new() { ContinuousCurrentA = continuousA }, true, ledger);

        Assert.Equal(ohm, controller.OnResistanceOhm, 1e-12);
        Assert.Contains(
            basis,
            ledger.Assumptions.Single(a => a.Path == "controller.onResistanceMilliohm").Basis,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(120.0, 25.4707)]
    [InlineData(40.0, 30)]
    [InlineData(20.0, 30)]
    [InlineData(null, 30)]
    public void A_burst_above_the_continuous_current_gives_the_time_constant(
        double? burstA,
        double seconds
    )
    {
        // −3/ln(1 − (40/120)²) = 3/0.117783 = 25.4707 s.
        var label = new ControllerLabel
        {
            ContinuousCurrentA = 40,
            BurstCurrentA = burstA,
            BurstS = 3,
        };

        Assert.Equal(seconds, Complete(label).ThermalTimeConstantS, 1e-3);
    }

    [Fact]
    public void Standstill_and_low_speed_starts_are_matters_of_brushless_motors()
    {
        var brushed = Complete(new() { LowSpeedStart = true }, brushless: false);
        var brushless = Complete(new());

        Assert.Equal(
            (false, 0, 1),
            (brushed.LowSpeedStart, brushed.LowSpeedBackEmfV, brushed.StandstillRatingShare)
        );
        Assert.Equal(
            (false, 0.3, 0.7),
            (brushless.LowSpeedStart, brushless.LowSpeedBackEmfV, brushless.StandstillRatingShare)
        );
        string[] matters =
        [
            "controller.lowSpeedStart",
            "controller.lowSpeedBackEmfV",
            "controller.standstillRatingShare",
        ];
        Assert.Empty(Listed(new(), brushless: false).Intersect(matters, StringComparer.Ordinal));
        Assert.Equal(3, Listed(new(), brushless: true).Intersect(matters).Count());
    }

    [Theory]
    [InlineData(true, 16_000)]
    [InlineData(false, 8_000)]
    public void Switching_is_assumed_at_16_kHz_brushless_and_8_kHz_brushed(
        bool brushless,
        double hertz
    ) => Assert.Equal(hertz, Complete(new(), brushless).PwmFrequencyHz);
}
