using System.Collections.Frozen;
using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Rigs;

/// <summary>A rig as the caller knows it, in SI: what was read at the door, before anything is assumed.</summary>
public sealed record RigLabel
{
    /// <summary>The motor.</summary>
    public MotorLabel Motor { get; init; } = new();

    /// <summary>The speed controller.</summary>
    public ControllerLabel Controller { get; init; } = new();

    /// <summary>The pack.</summary>
    public BatteryLabel Battery { get; init; } = new();

    /// <summary>The vehicle.</summary>
    public required VehicleLabel Vehicle { get; init; }

    /// <summary>The course and the day.</summary>
    public CourseLabel Course { get; init; } = new();

    /// <summary>What else draws current; null when not said, empty when there is nothing.</summary>
    public IReadOnlyList<AccessoryLabel>? Accessories { get; init; }

    /// <summary>Leads, connector and fuse.</summary>
    public WiringLabel Wiring { get; init; } = new();

    /// <summary>How far off the caller says that figures may be, 95 %, by path.</summary>
    public IReadOnlyDictionary<string, Spread> Tolerances { get; init; } =
        FrozenDictionary<string, Spread>.Empty;
}
