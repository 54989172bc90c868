namespace PowerCheck.Circuit.Rigs;

/// <summary>A speed controller as plain figures.</summary>
public sealed record PlainController
{
    /// <summary>Whether it reads the rotor's position.</summary>
    public required bool SensorInput { get; init; }

    /// <summary>Whether it starts and holds a sensorless motor under control.</summary>
    public required bool LowSpeedStart { get; init; }

    /// <summary>Back-EMF under which it loses a sensorless motor.</summary>
    public required double LowSpeedBackEmfV { get; init; }

    /// <summary>Most cells in series.</summary>
    public required int MaxCells { get; init; }

    /// <summary>Highest supply voltage.</summary>
    public required double MaxVoltageV { get; init; }

    /// <summary>Continuous motor current.</summary>
    public required double ContinuousCurrentA { get; init; }

    /// <summary>Burst motor current.</summary>
    public required double BurstCurrentA { get; init; }

    /// <summary>For how long the burst is allowed.</summary>
    public required double BurstSeconds { get; init; }

    /// <summary>Motor current to which it limits itself; null when it has no limit.</summary>
    public required double? CurrentLimitA { get; init; }

    /// <summary>Resistance of both switches in the path, cold.</summary>
    public required double OnResistanceMilliohm { get; init; }

    /// <summary>Growth of that resistance when hot.</summary>
    public required double HotResistanceFactor { get; init; }

    /// <summary>Whether the current freewheels through a diode; else through the other switch.</summary>
    public required bool DiodeFreewheel { get; init; }

    /// <summary>Switching frequency.</summary>
    public required double PwmFrequencyKhz { get; init; }

    /// <summary>Rise and fall of one switching, together.</summary>
    public required double EdgeTimeNs { get; init; }

    /// <summary>What it does at neutral on a slope.</summary>
    public required PlainHold Hold { get; init; }

    /// <summary>Voltage a cell under load at which it shuts the motor off.</summary>
    public required double CutoffVPerCell { get; init; }

    /// <summary>Highest temperature of the switches.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Time constant of the thermal memory.</summary>
    public required double ThermalTimeConstantS { get; init; }

    /// <summary>Share of the rating left at standstill with a brushless motor.</summary>
    public required double StandstillRatingShare { get; init; }

    /// <summary>Current that it draws itself.</summary>
    public required double QuiescentCurrentA { get; init; }

    /// <summary>Its receiver supply.</summary>
    public required PlainReceiverSupply ReceiverSupply { get; init; }
}

/// <summary>What a controller does at neutral on a slope.</summary>
public enum PlainHold
{
    /// <summary>Shorts the winding.</summary>
    DragBrake,

    /// <summary>Feeds current to stand still.</summary>
    Active,

    /// <summary>Nothing.</summary>
    None,
}

/// <summary>A receiver supply as plain figures.</summary>
public sealed record PlainReceiverSupply
{
    /// <summary>Whether it burns the difference; else it converts.</summary>
    public required bool Linear { get; init; }

    /// <summary>Output voltage.</summary>
    public required double VoltageV { get; init; }

    /// <summary>Continuous output current.</summary>
    public required double ContinuousCurrentA { get; init; }

    /// <summary>Peak output current.</summary>
    public required double PeakCurrentA { get; init; }

    /// <summary>Voltage that it needs above its output.</summary>
    public required double DropoutV { get; init; }

    /// <summary>Heat that a linear one can shed.</summary>
    public required double MaxHeatW { get; init; }

    /// <summary>Efficiency of a switching one.</summary>
    public required double Efficiency { get; init; }

    /// <summary>Voltage under which the receiver resets.</summary>
    public required double ReceiverResetV { get; init; }
}
