using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Batteries;

/// <summary>Pack resistance, wear and run-down (M2), against hand arithmetic.</summary>
public sealed class BatteryTests
{
    private static readonly BatteryLabel ThreeCells = new()
    {
        Chemistry = Chemistry.Lipo,
        SeriesCells = 3,
        CapacityCoulomb = 3 * 3600,
        CellResistanceOhm = 0.004,
        ConnectorOhm = 0,
        TemperatureC = 25,
    };

    [Fact]
    public void One_cell_is_just_its_own_resistance() =>
        Assert.Equal(
            0.004,
            Parts.Battery(ThreeCells with { SeriesCells = 1 }).ShortResistanceOhm,
            1e-15
        );

    [Fact]
    public void A_lasting_load_meets_a_higher_resistance_and_the_connector_once()
    {
        var pack = Parts.Battery(ThreeCells with { ConnectorOhm = null });
        Assert.Equal((3 * 0.004) + 0.0005, pack.ShortResistanceOhm, 1e-15);
        Assert.Equal((3 * 0.004 * 1.4) + 0.0005, pack.LastingResistanceOhm, 1e-15);
    }

    [Fact]
    public void Nickel_cells_grow_less_under_a_lasting_load()
    {
        var pack = Parts.Battery(ThreeCells with { Chemistry = Chemistry.Nimh });
        Assert.Equal(1.2, pack.LastingResistanceOhm / pack.ShortResistanceOhm, 1e-12);
    }

    [Fact]
    public void Cold_cells_are_more_resistive_by_the_exponential()
    {
        var pack = Parts.Battery(ThreeCells with { TemperatureC = 0 });
        // exp[2400·(1/273.15 − 1/298.15)] = exp(0.73676) = 2.0891.
        Assert.Equal(2.0891, pack.ShortResistanceOhm / 0.012, 1e-3);
        Assert.True(
            Parts.Battery(ThreeCells with { TemperatureC = 45 }).ShortResistanceOhm < 0.012
        );
    }

    [Fact]
    public void A_pack_of_unsaid_temperature_is_as_warm_as_the_air() =>
        Assert.Equal(
            Parts.Battery(ThreeCells with { TemperatureC = 5 }).ShortResistanceOhm,
            Parts.Battery(ThreeCells with { TemperatureC = null }, 5).ShortResistanceOhm
        );

    [Fact]
    public void An_endless_pack_has_no_resistance_left()
    {
        var pack = Parts.Battery(
            ThreeCells with
            {
                CellResistanceOhm = null,
                CapacityCoulomb = 1e15,
            }
        );
        Assert.Equal(0, pack.ShortResistanceOhm, 1e-9);
    }

    [Theory]
    [InlineData(Chemistry.Lipo, 15)]
    [InlineData(Chemistry.Lihv, 15)]
    [InlineData(Chemistry.Liion, 60)]
    [InlineData(Chemistry.Lifepo4, 20)]
    [InlineData(Chemistry.Nimh, 22)]
    public void Typical_resistance_goes_with_the_inverse_of_a_cells_capacity(
        Chemistry chemistry,
        double milliohmAh
    )
    {
        var label = ThreeCells with { Chemistry = chemistry, CellResistanceOhm = null };
        Assert.Equal(milliohmAh / 3 / 1000, Parts.Battery(label).CellResistanceOhm, 1e-12);
        // Two in parallel: half the capacity each, twice the resistance each, the same for the pack.
        Assert.Equal(
            Parts.Battery(label).ShortResistanceOhm,
            Parts.Battery(label with { ParallelCells = 2 }).ShortResistanceOhm,
            1e-12
        );
    }

    [Theory]
    [InlineData(PackCondition.New, 1, 1)]
    [InlineData(PackCondition.Used, 1.5, 0.9)]
    [InlineData(PackCondition.Worn, 2.5, 0.75)]
    public void Wear_grows_a_typical_resistance_and_takes_capacity(
        PackCondition condition,
        double resistance,
        double capacity
    )
    {
        var pack = Parts.Battery(
            ThreeCells with
            {
                CellResistanceOhm = null,
                Condition = condition,
            }
        );
        Assert.Equal(0.005 * resistance, pack.CellResistanceOhm, 1e-12);
        Assert.Equal(3 * 3600 * capacity, pack.CapacityCoulomb, 1e-9);
    }

    [Fact]
    public void A_measured_resistance_has_its_wear_in_it() =>
        Assert.Equal(
            0.004,
            Parts.Battery(ThreeCells with { Condition = PackCondition.Worn }).CellResistanceOhm
        );

    [Theory]
    [InlineData(Chemistry.Lipo, 24)]
    [InlineData(Chemistry.Liion, 17)]
    [InlineData(Chemistry.Lifepo4, 30)]
    [InlineData(Chemistry.Nimh, 15)]
    public void Heat_capacity_comes_from_a_typical_mass(
        Chemistry chemistry,
        double gramPerCellAh
    ) =>
        Assert.Equal(
            gramPerCellAh * 3 * 3 / 1000 * 1000,
            Parts.Battery(ThreeCells with { Chemistry = chemistry }).HeatJPerK,
            1e-9
        );

    [Fact]
    public void A_pack_sheds_ten_watts_a_square_metre_and_kelvin_from_its_brick()
    {
        var pack = Parts.Battery(ThreeCells with { MassKg = 0.24 });
        // 0.24 kg at 2000 kg/m³: 120 cm³ = 4a·1.5a·a, a = 2.7144 cm; surface 23·a² = 0.016946 m².
        Assert.Equal(0.016946, BatteryDefaults.SurfaceM2(0.24), 1e-6);
        Assert.Equal(1 / (10 * 0.016946), pack.PackToAmbientKPerW, 1e-3);
    }

    [Fact]
    public void An_exponent_of_one_is_charge_over_current() =>
        Assert.Equal(
            3 * 3600 / 7.0,
            Parts.Battery(ThreeCells with { PeukertExponent = 1 }).DischargeS(7),
            1e-9
        );

    [Fact]
    public void Series_cells_add_voltage_and_nothing_else()
    {
        var pack = Parts.Battery(ThreeCells);
        Assert.Equal((12.6, 11.1), (Math.Round(pack.FullV, 9), Math.Round(pack.NominalV, 9)));
        Assert.Equal(3 * OpenCircuit.CellV(Chemistry.Lipo, 0.4), pack.OpenCircuitV(0.4), 1e-12);
        Assert.Equal(3, pack.OneCurrentA, 1e-12);
    }

    [Fact]
    public void What_cannot_be_assumed_is_listed_as_not_known()
    {
        var ledger = new Ledger();
        var pack = BatteryDefaults.Complete(new(), 25, ledger);
        Assert.True(double.IsNaN(pack.SeriesCells) && double.IsNaN(pack.ShortResistanceOhm));
        Assert.Equal(
            ["battery.capacityMah", "battery.seriesCells"],
            ledger.Unknowns.Select(unknown => unknown.Path).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
    }
}
