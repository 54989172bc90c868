using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Drivetrain;

/// <summary>The bus behind a bridge with diode and edges, where it does not switch (M3); two motors.</summary>
public sealed class FedBusTests
{
    private const double MotorOhm = 0.03;

    private static readonly Rig Lossy = SampleRig.Of(
        SampleRig.Brushless with
        {
            Accessories = [],
            Controller = SampleRig.Brushless.Controller with
            {
                Freewheel = Freewheel.Diode,
                EdgeTimeS = 1e-6,
                QuiescentCurrentA = 0.5,
            },
            Vehicle = SampleRig.Brushless.Vehicle with { MotorCount = 2 },
        }
    );

    private static FedBus Fed(Source source, double motorA, double neededV) =>
        FedBus.Of(Lossy, source, motorA, neededV, MotorOhm);

    [Theory]
    [InlineData(-5, 3)]
    [InlineData(5, -1)]
    [InlineData(5, 0)]
    [InlineData(0, 3)]
    public void A_motor_that_does_not_drive_is_not_switched(double motorA, double neededV)
    {
        var fed = Fed(new(11, 0.01), motorA, neededV);

        // Each controller draws its own 0.5 A.
        Assert.Equal((0, 1, true), (fed.Bus.Duty, fed.Bus.BatteryA, fed.Bus.Reached));
        Assert.Equal(10.99, fed.Bus.BusV, 1e-12);
    }

    [Theory]
    [InlineData(double.NaN, 0.01)]
    [InlineData(11, double.NaN)]
    public void A_source_that_is_not_known_leaves_the_whole_bus_unknown(double openV, double ohm)
    {
        var bus = Fed(new(openV, ohm), 5, 3).Bus;

        Assert.True(double.IsNaN(bus.BusV) && double.IsNaN(bus.Duty) && double.IsNaN(bus.BatteryA));
    }

    [Fact]
    public void Out_of_reach_the_bridge_is_fully_on_and_loses_nothing_by_switching()
    {
        // 12 V at 10 A each from 11 V behind 10 mΩ, which leave 11 − 0.01·(20 + 1).
        var fed = Fed(new(11, 0.01), 10, 12);

        Assert.Equal((false, false, 1), (fed.Bus.Reached, fed.Bus.PowerExceeded, fed.Bus.Duty));
        Assert.Equal(10.79, fed.Bus.BusV, 1e-9);
        Assert.Equal(21, fed.Bus.BatteryA, 1e-9);
        Assert.Equal(default, fed.Loss);
    }

    [Fact]
    public void What_the_losses_leave_too_little_for_is_out_of_reach()
    {
        // Edges of ½·1 µs·16 kHz·V·100 A draw 0.8 A for each motor, which is 16 mV behind 10 mΩ.
        var source = new Source(11, 0.01);
        var justV = 11 - (0.01 * 201);

        Assert.True(Bus.Feeding(source, Lossy.Auxiliary, 2, 100, justV - 0.001).Reached);
        Assert.False(Fed(source, 100, justV - 0.001).Bus.Reached);
        Assert.True(Fed(source, 100, justV - 0.02).Bus.Reached);
    }

    [Fact]
    public void The_open_circuit_itself_is_reached_where_nothing_sags()
    {
        var bus = Fed(new(11, 0), 5, 11).Bus;

        Assert.Equal((true, 1, 11), (bus.Reached, bus.Duty, bus.BusV));
    }
}
