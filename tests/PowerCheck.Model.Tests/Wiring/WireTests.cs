using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Tests.Wiring;

/// <summary>Leads (M10).</summary>
public sealed class WireTests
{
    [Fact]
    public void Gauge_thirty_six_is_five_thousandths_of_an_inch() =>
        Assert.Equal(0.127e-3, Wire.DiameterM(36), 1e-15);

    [Fact]
    public void Thirty_nine_gauges_are_a_factor_of_ninety_two() =>
        Assert.Equal(92, Wire.DiameterM(-3) / Wire.DiameterM(36), 1e-9);

    [Fact]
    public void A_lead_of_no_length_has_no_resistance() =>
        Assert.Equal(0, Wire.ResistanceOhm(14, 0, 80));

    [Fact]
    public void A_warm_lead_is_more_resistive() =>
        Assert.Equal(
            1 + (0.00393 * 60),
            Wire.ResistanceOhm(14, 1, 80) / Wire.ResistanceOhm(14, 1, 20),
            1e-12
        );

    [Fact]
    public void Both_leads_count_there_and_back()
    {
        var leads = SampleRig.Of(SampleRig.Brushless).Leads with { AmbientC = 20 };
        // Two times 150 mm of 8.2855 mΩ/m.
        Assert.Equal(0.3 * 8.2855e-3, leads.BatteryOhm, 1e-6);
        Assert.Equal(leads.BatteryOhm, leads.MotorOhm);
    }

    [Fact]
    public void A_connector_carries_what_is_printed_and_an_unsaid_one_is_not_known()
    {
        var printed = SampleRig.Of(
            SampleRig.Brushless with
            {
                Wiring = new() { ConnectorContinuousA = 60 },
            }
        );

        Assert.Equal(60, printed.Leads.ConnectorContinuousA);
        Assert.True(double.IsNaN(SampleRig.Of(SampleRig.Brushless).Leads.ConnectorContinuousA));
    }

    [Fact]
    public void No_room_between_air_and_insulation_leaves_no_current()
    {
        Assert.Equal(0, Wire.FreeAirA(14, 60, 60));
        Assert.Equal(0, Wire.FreeAirA(14, 60, 70));
    }

    [Fact]
    public void Current_in_free_air_goes_with_the_root_of_the_rise() =>
        Assert.Equal(2, Wire.FreeAirA(14, 180, 20) / Wire.FreeAirA(14, 60, 20), 1e-12);

    [Fact]
    public void Four_times_as_long_takes_half_the_current_to_the_same_heat() =>
        Assert.Equal(2, Wire.AdiabaticA(14, 25, 200, 1) / Wire.AdiabaticA(14, 25, 200, 4), 1e-12);

    [Fact]
    public void A_wire_that_is_already_that_hot_takes_no_current() =>
        Assert.Equal(0, Wire.AdiabaticA(14, 200, 200, 1));

    [Fact]
    public void Adiabatic_heating_agrees_with_its_own_heat_balance()
    {
        // ∫ρ(T)·i²/A² dt = ∫c·γ dT for copper of 385 J/(kg·K), 8.89 g/cm³: within 4 % of the rounded old formula.
        const double Seconds = 5;
        var area = Wire.AreaM2(14);
        var heat = 0.0;
        for (var celsius = 25.0; celsius < 200; celsius += 0.01)
        {
            heat += 385 * 8890 / (1.0 / 58e6 * (1 + (0.00393 * (celsius - 20)))) * 0.01;
        }

        Assert.Equal(
            1,
            area * Math.Sqrt(heat / Seconds) / Wire.AdiabaticA(14, 25, 200, Seconds),
            0.04
        );
    }

    [Fact]
    public void A_short_at_the_controller_is_met_by_pack_and_leads_alone()
    {
        var leads = SampleRig.Of(SampleRig.Brushless).Leads;
        var report = WiringRunner.Run(leads, 12.6, 0.0125);
        Assert.Equal(12.6 / (0.0125 + report.BatteryLeadOhm), report.FaultCurrentA, 1e-9);
    }
}
