namespace PowerCheck.Circuit.Rigs;

/// <summary>
/// A rig as plain figures in the units of the trade. Every figure that the check takes is there, so that neither side of a
/// comparison has to assume one.
/// </summary>
public sealed record PlainRig
{
    /// <summary>The number from which the rig was drawn.</summary>
    public required int Number { get; init; }

    /// <summary>The motor.</summary>
    public required PlainMotor Motor { get; init; }

    /// <summary>The speed controller.</summary>
    public required PlainController Controller { get; init; }

    /// <summary>The pack.</summary>
    public required PlainBattery Battery { get; init; }

    /// <summary>The leads.</summary>
    public required PlainWiring Wiring { get; init; }

    /// <summary>The vehicle.</summary>
    public required PlainVehicle Vehicle { get; init; }

    /// <summary>What else draws current.</summary>
    public required IReadOnlyList<PlainAccessory> Accessories { get; init; }

    /// <summary>The course and the day.</summary>
    public required PlainCourse Course { get; init; }
}
