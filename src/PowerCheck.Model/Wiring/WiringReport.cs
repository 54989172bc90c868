namespace PowerCheck.Model.Wiring;

/// <summary>What the leads add and what they stand; NaN is not known or not given.</summary>
/// <param name="BatteryLeadOhm">Both battery leads together [Ω].</param>
/// <param name="MotorLeadOhm">Two motor leads together [Ω].</param>
/// <param name="BatteryLeadLimitA">Lasting current of a battery lead in free air [A].</param>
/// <param name="MotorLeadLimitA">Lasting current of a motor lead in free air [A].</param>
/// <param name="LeadDamageCurrentA">Current that brings a battery lead to its insulation's limit in 5 s [A].</param>
/// <param name="LeadMeltingCurrentA">Lasting current that melts a battery lead in free air [A].</param>
/// <param name="FaultCurrentA">Current of a short at the controller's input, full pack [A].</param>
public sealed record WiringReport(
    double BatteryLeadOhm,
    double MotorLeadOhm,
    double BatteryLeadLimitA,
    double MotorLeadLimitA,
    double LeadDamageCurrentA,
    double LeadMeltingCurrentA,
    double FaultCurrentA
);
