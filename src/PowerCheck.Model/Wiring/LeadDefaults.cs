using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Wiring;

/// <summary>Fills in what is not known of the leads (M10); every fill goes through the ledger.</summary>
public static class LeadDefaults
{
    /// <summary>The leads, complete.</summary>
    /// <param name="label">What is known.</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Leads Complete(WiringLabel label, double ambientC, Ledger ledger) =>
        new(
            new(
                Gauge(label.BatteryLeadAwg, "wiring.batteryLeadAwg", ledger),
                Length(label.BatteryLeadM, "wiring.batteryLeadMm", ledger),
                ambientC
            ),
            new(
                Gauge(label.MotorLeadAwg, "wiring.motorLeadAwg", ledger),
                Length(label.MotorLeadM, "wiring.motorLeadMm", ledger),
                ambientC
            ),
            ledger.Figure(
                label.InsulationC,
                "wiring.insulationC",
                Unit.Celsius,
                200,
                Spread.None,
                "assumed: silicone insulation"
            ),
            label.ConnectorContinuousA ?? double.NaN,
            label.FuseA ?? double.NaN
        );

    private static double Gauge(double? given, string path, Ledger ledger) =>
        ledger.Figure(given, path, Unit.Awg, 14, Spread.Absolute(2), "assumed: 14 AWG");

    private static double Length(double? given, string path, Ledger ledger) =>
        ledger.Figure(
            given,
            path,
            Unit.Millimetre,
            0.150,
            Spread.Factor(1.5),
            "assumed: 150 mm one way"
        );
}
