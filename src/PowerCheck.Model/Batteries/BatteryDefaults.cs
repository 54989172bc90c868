using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Batteries;

/// <summary>Fills in what a pack's label does not say (M2); every fill goes through the ledger.</summary>
public static class BatteryDefaults
{
    private const double HeatJPerKgK = 1000;
    private const double FilmWPerM2K = 10;
    private const double DensityKgPerM3 = 2000;

    /// <summary>The pack, complete.</summary>
    /// <param name="label">What the label says.</param>
    /// <param name="ambientC">Air temperature [°C].</param>
    /// <param name="ledger">Where each fill is listed.</param>
    public static Battery Complete(BatteryLabel label, double ambientC, Ledger ledger)
    {
        var chemistry = ledger.Word(
            label.Chemistry,
            "battery.chemistry",
            Chemistry.Lipo,
            "assumed: lithium polymer"
        );
        var data = CellData.For(chemistry);
        var series = ledger.Known(label.SeriesCells, "battery.seriesCells", Unit.Cells, 1, 6);
        var parallel = ledger.Figure(
            label.ParallelCells,
            "battery.parallelCells",
            Unit.Cells,
            1,
            Spread.None,
            "assumed: one row of cells"
        );
        var capacity = ledger.Known(
            label.CapacityCoulomb,
            "battery.capacityMah",
            Unit.MilliampereHour,
            Unit.MilliampereHour.ToSi(200),
            Unit.MilliampereHour.ToSi(15_000)
        );
        var condition = ledger.Word(
            label.Condition,
            "battery.condition",
            PackCondition.New,
            "assumed: new"
        );
        var (resistanceGrowth, capacityShare) = Wear(condition);
        var mass = ledger.Figure(
            label.MassKg,
            "battery.massG",
            Unit.Gram,
            data.MassKgPerCellCoulomb * series * capacity,
            Spread.Relative(0.2),
            "assumed: typical mass a cell and ampere-hour of the chemistry"
        );
        return new Battery
        {
            Chemistry = chemistry,
            SeriesCells = series,
            ParallelCells = parallel,
            LabelCapacityCoulomb = capacity,
            CapacityShare = capacityShare,
            CellResistanceOhm = CellResistance(
                label,
                data,
                capacity / parallel,
                resistanceGrowth,
                ledger
            ),
            CellResistanceGiven = label.CellResistanceOhm is not null,
            LastingFactor = ledger.Figure(
                label.LastingResistanceFactor,
                "battery.lastingResistanceFactor",
                Unit.One,
                data.LastingFactor,
                Spread.Relative(0.2),
                "assumed: resistance under lasting load over what a charger reads"
            ),
            ResistanceTemperatureConstantK = ledger.Figure(
                label.ResistanceTemperatureConstantK,
                "battery.resistanceTemperatureConstantK",
                Unit.Kelvin,
                2400,
                Spread.Relative(0.5),
                "assumed: cells grow resistive in the cold by exp[2400·(1/T − 1/298.15)]"
            ),
            ConnectorOhm = ledger.Figure(
                label.ConnectorOhm,
                "battery.connectorMilliohm",
                Unit.Milliohm,
                0.5e-3,
                Spread.Factor(2),
                "assumed: a clean connector"
            ),
            TemperatureC = ledger.Figure(
                label.TemperatureC,
                "battery.temperatureC",
                Unit.Celsius,
                ambientC,
                Spread.Absolute(5),
                "assumed: as warm as the air"
            ),
            ContinuousC = label.ContinuousC ?? double.NaN,
            BurstC = label.BurstC ?? double.NaN,
            BurstS = label.BurstS ?? double.NaN,
            HeatJPerK = mass * HeatJPerKgK,
            PackToAmbientKPerW = ledger.Figure(
                label.PackToAmbientKPerW,
                "battery.packToAmbientKPerW",
                Unit.KelvinPerWatt,
                1 / (FilmWPerM2K * SurfaceM2(mass)),
                Spread.Relative(0.4),
                "assumed: 10 W/(m²·K) over a brick 4 : 1.5 : 1 of 2000 kg/m³"
            ),
            LimitC = ledger.Figure(
                label.MaxTemperatureC,
                "battery.maxTemperatureC",
                Unit.Celsius,
                60,
                Spread.Absolute(5),
                "highest temperature of a cell while it is discharged",
                "cells"
            ),
            ReserveShare = ledger.Figure(
                label.ReserveShare,
                "battery.reserveShare",
                Unit.One,
                0.2,
                Spread.Absolute(0.1),
                "assumed: a fifth of the charge is kept back"
            ),
            PeukertExponent = ledger.Figure(
                label.PeukertExponent,
                "battery.peukertExponent",
                Unit.One,
                data.PeukertExponent,
                data.Lithium ? Spread.Interval(1, 1.05) : Spread.Interval(1, 1.15),
                "assumed: capacity shrinks a little with the current"
            ),
            RatedS = ledger.Figure(
                label.RatedS,
                "battery.ratedHours",
                Unit.Hour,
                5 * 3600,
                Spread.None,
                "assumed: capacity rated in five hours, as cell standards do"
            ),
        };
    }

    /// <summary>Surface of a pack [m²]: a brick 4 : 1.5 : 1, assumed.</summary>
    /// <param name="massKg">Mass [kg].</param>
    public static double SurfaceM2(double massKg)
    {
        var edge = Math.Cbrt(massKg / DensityKgPerM3 / 6);
        return 23 * edge * edge;
    }

    private static (double Resistance, double Capacity) Wear(PackCondition condition) =>
        condition switch
        {
            PackCondition.Used => (1.5, 0.9),
            PackCondition.Worn => (2.5, 0.75),
            _ => (1, 1),
        };

    // A measured resistance is what the pack has now: wear does not count twice.
    private static double CellResistance(
        BatteryLabel label,
        CellData data,
        double cellCoulomb,
        double growth,
        Ledger ledger
    ) =>
        ledger.Figure(
            label.CellResistanceOhm,
            "battery.cellResistanceMilliohm",
            Unit.Milliohm,
            data.ResistanceOhmCoulomb / cellCoulomb * growth,
            Spread.Factor(1.7),
            "assumed: typical resistance times capacity of the chemistry, grown by wear"
        );
}
