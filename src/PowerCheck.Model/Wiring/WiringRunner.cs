namespace PowerCheck.Model.Wiring;

/// <summary>Works out what the leads add and stand (M10).</summary>
public static class WiringRunner
{
    /// <summary>Time for which a damaging current is given [s].</summary>
    public const double DamageS = 5;

    /// <summary>The report.</summary>
    /// <param name="leads">The leads.</param>
    /// <param name="fullV">Open-circuit voltage of a full pack [V].</param>
    /// <param name="packOhm">Its resistance for a second [Ω].</param>
    public static WiringReport Run(Leads leads, double fullV, double packOhm) =>
        new(
            leads.BatteryOhm,
            leads.MotorOhm,
            Wire.FreeAirA(leads.Battery.Awg, leads.InsulationC, leads.AmbientC),
            Wire.FreeAirA(leads.Motor.Awg, leads.InsulationC, leads.AmbientC),
            Wire.AdiabaticA(leads.Battery.Awg, leads.AmbientC, leads.InsulationC, DamageS),
            Wire.MeltingA(Wire.DiameterM(leads.Battery.Awg)),
            fullV / (packOhm + leads.BatteryOhm)
        );
}
