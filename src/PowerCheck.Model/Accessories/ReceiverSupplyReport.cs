namespace PowerCheck.Model.Accessories;

/// <summary>What the receiver supply has to give and what is left of it.</summary>
/// <param name="IdleCurrentA">Everything on it at rest [A].</param>
/// <param name="WorkingCurrentA">Everything on it at work [A].</param>
/// <param name="JammedCurrentA">Everything on it jammed [A].</param>
/// <param name="ContinuousCurrentA">What it gives continuously [A].</param>
/// <param name="PeakCurrentA">What it gives for moments [A].</param>
/// <param name="HeatW">Heat in a linear one at work, 50 % charge; in a switching one its loss [W].</param>
/// <param name="MaxHeatW">Heat that a linear one can shed [W]; NaN for a switching one.</param>
/// <param name="LowestBusV">Lowest bus voltage of punch, jam and climb [V].</param>
/// <param name="LowestOutputV">Output left at that bus voltage [V].</param>
public sealed record ReceiverSupplyReport(
    double IdleCurrentA,
    double WorkingCurrentA,
    double JammedCurrentA,
    double ContinuousCurrentA,
    double PeakCurrentA,
    double HeatW,
    double MaxHeatW,
    double LowestBusV,
    double LowestOutputV
);
