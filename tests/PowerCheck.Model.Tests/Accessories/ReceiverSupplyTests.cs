using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Tests.Accessories;

/// <summary>Receiver supply and what hangs on it (M9).</summary>
public sealed class ReceiverSupplyTests
{
    private static ReceiverSupply Complete(
        ReceiverSupplyLabel label,
        IReadOnlyList<AccessoryLabel>? accessories,
        double? duty = null
    ) => AccessoryDefaults.Complete(label, accessories, duty, new Ledger());

    [Fact]
    public void With_nothing_on_it_a_supply_draws_nothing()
    {
        var supply = Complete(new(), []);
        Assert.Equal(new AuxiliaryLoad(0, 0), supply.Load);
        Assert.Equal(0, supply.HeatW(11.1, supply.MeanOutputA));
    }

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1, 2.0)]
    [InlineData(0.3, 0.67)]
    public void The_mean_lies_between_rest_and_work(double duty, double mean) =>
        Assert.Equal(mean, new Currents(0.1, 2, 4).Mean(duty), 1e-12);

    [Fact]
    public void A_linear_supply_passes_its_current_on_and_a_switching_one_its_power()
    {
        AccessoryLabel[] winch =
        [
            new()
            {
                IdleCurrentA = 1,
                WorkingCurrentA = 1,
                JammedCurrentA = 4,
            },
        ];
        var linear = Complete(new() { Regulator = Regulator.Linear, VoltageV = 6 }, winch);
        Assert.Equal(new AuxiliaryLoad(1, 0), linear.Load);
        var switching = Complete(
            new()
            {
                Regulator = Regulator.Switching,
                VoltageV = 6,
                Efficiency = 0.8,
            },
            winch
        );
        Assert.Equal(0, switching.Load.CurrentA);
        Assert.Equal(7.5, switching.Load.PowerW, 1e-12);
    }

    [Fact]
    public void What_hangs_on_the_pack_draws_its_own_current()
    {
        var supply = Complete(
            new(),
            [
                new()
                {
                    Supply = AccessorySupply.Battery,
                    IdleCurrentA = 0.5,
                    WorkingCurrentA = 0.5,
                    JammedCurrentA = 9,
                },
            ]
        );
        Assert.Equal(new AuxiliaryLoad(0.5, 0), supply.Load);
        Assert.Equal(0, supply.FromReceiver.JammedA);
    }

    [Fact]
    public void A_linear_supply_burns_the_difference_and_nothing_below_it()
    {
        var supply = Complete(new() { Regulator = Regulator.Linear, VoltageV = 6 }, []);
        Assert.Equal(10.2, supply.HeatW(11.1, 2), 1e-12);
        Assert.Equal(0, supply.HeatW(5.5, 2));
        Assert.Equal((8.4 - 6) * 3, supply.MaxHeatW, 1e-12);
    }

    [Theory]
    [InlineData(11.1, 6)]
    [InlineData(6.2, 5.7)]
    [InlineData(0.2, 0)]
    public void The_output_drops_out_with_the_bus(double busV, double outputV) =>
        Assert.Equal(
            outputV,
            Complete(new() { VoltageV = 6, DropoutV = 0.5 }, []).OutputV(busV),
            1e-12
        );

    [Fact]
    public void Unsaid_accessories_are_a_servo_and_a_radio_and_an_empty_list_is_none()
    {
        Assert.Equal(new Currents(0.1, 0.85, 2.55), Rounded(Complete(new(), null).FromReceiver));
        Assert.Equal(default, Complete(new(), []).FromReceiver);
    }

    [Theory]
    [InlineData(AccessoryKind.Servo, 0.05, 0.8, 2.5)]
    [InlineData(AccessoryKind.Winch, 0.05, 2.0, 4.0)]
    [InlineData(AccessoryKind.Light, 0.2, 0.2, 0.2)]
    [InlineData(AccessoryKind.Fan, 0.2, 0.2, 0.4)]
    [InlineData(AccessoryKind.Radio, 0.05, 0.05, 0.05)]
    [InlineData(AccessoryKind.Other, 0.1, 0.2, 0.2)]
    public void Each_kind_of_accessory_has_its_typical_currents(
        AccessoryKind kind,
        double idleA,
        double workingA,
        double jammedA
    ) =>
        Assert.Equal(
            new Currents(idleA, workingA, jammedA),
            Complete(new(), [new() { Kind = kind }]).FromReceiver
        );

    [Fact]
    public void Only_a_linear_supply_heats_the_controllers_memory()
    {
        AccessoryLabel[] servo = [new() { Kind = AccessoryKind.Servo }];
        Assert.Equal(0, Complete(new(), servo).MemoryHeatW(11.1));
        var linear = Complete(new() { Regulator = Regulator.Linear, VoltageV = 6 }, servo);
        Assert.Equal(5.1 * linear.MeanOutputA, linear.MemoryHeatW(11.1), 1e-12);
    }

    private static Currents Rounded(Currents x) =>
        new(Math.Round(x.IdleA, 9), Math.Round(x.WorkingA, 9), Math.Round(x.JammedA, 9));
}
