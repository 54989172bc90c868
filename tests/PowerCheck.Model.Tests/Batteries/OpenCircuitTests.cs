using PowerCheck.Model.Batteries;

namespace PowerCheck.Model.Tests.Batteries;

/// <summary>Open-circuit voltage against charge (M2).</summary>
public sealed class OpenCircuitTests
{
    public static TheoryData<Chemistry> Chemistries => [.. Enum.GetValues<Chemistry>()];

    [Theory]
    [MemberData(nameof(Chemistries))]
    public void Voltage_never_rises_as_the_cell_empties(Chemistry chemistry)
    {
        var volts = Enumerable.Range(0, 1001).Select(n => OpenCircuit.CellV(chemistry, n / 1000.0));
        Assert.All(
            volts.Zip(volts.Skip(1)),
            pair => Assert.True(pair.Second >= pair.First - 1e-12)
        );
    }

    [Theory]
    [InlineData(Chemistry.Lipo, 4.20, 3.20)]
    [InlineData(Chemistry.Lihv, 4.35, 3.20)]
    [InlineData(Chemistry.Liion, 4.20, 2.80)]
    [InlineData(Chemistry.Lifepo4, 3.598, 2.50)]
    [InlineData(Chemistry.Nimh, 1.40, 0.90)]
    public void A_full_cell_has_its_full_charge_voltage(
        Chemistry chemistry,
        double fullV,
        double cutoffV
    )
    {
        Assert.Equal(fullV, OpenCircuit.CellV(chemistry, 1), 1e-12);
        Assert.InRange(fullV, CellData.For(chemistry).FullV - 0.06, CellData.For(chemistry).FullV);
        Assert.Equal(cutoffV, CellData.For(chemistry).CutoffV);
    }

    [Theory]
    [MemberData(nameof(Chemistries))]
    public void Charge_beyond_full_or_empty_is_taken_as_full_or_empty(Chemistry chemistry)
    {
        Assert.Equal(OpenCircuit.CellV(chemistry, 1), OpenCircuit.CellV(chemistry, 1.2));
        Assert.Equal(OpenCircuit.CellV(chemistry, 0), OpenCircuit.CellV(chemistry, -0.2));
    }

    [Theory]
    [MemberData(nameof(Chemistries))]
    public void Half_charged_a_cell_is_well_above_its_cut_off(Chemistry chemistry) =>
        Assert.True(OpenCircuit.CellV(chemistry, 0.5) > CellData.For(chemistry).CutoffV + 0.2);

    [Fact]
    public void A_charge_that_is_not_known_gives_no_voltage() =>
        Assert.True(double.IsNaN(OpenCircuit.CellV(Chemistry.Lipo, double.NaN)));
}
