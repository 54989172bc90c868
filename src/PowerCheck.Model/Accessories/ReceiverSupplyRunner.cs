namespace PowerCheck.Model.Accessories;

/// <summary>Bus voltages that matter to a receiver supply.</summary>
/// <param name="UsualV">Creeping on the level, half charged [V].</param>
/// <param name="LowestV">Lowest of punch, jam and climb [V].</param>
public readonly record struct BusVoltages(double UsualV, double LowestV);

/// <summary>Works out what the receiver supply has to give (M9).</summary>
public static class ReceiverSupplyRunner
{
    /// <summary>The report.</summary>
    /// <param name="supply">The supply and what hangs on it.</param>
    /// <param name="bus">The bus.</param>
    public static ReceiverSupplyReport Run(ReceiverSupply supply, BusVoltages bus)
    {
        var currents = supply.FromReceiver;
        return new(
            currents.IdleA,
            currents.WorkingA,
            currents.JammedA,
            supply.ContinuousCurrentA,
            supply.PeakCurrentA,
            supply.HeatW(bus.UsualV, currents.WorkingA),
            supply.MaxHeatW,
            bus.LowestV,
            supply.OutputV(bus.LowestV)
        );
    }
}
