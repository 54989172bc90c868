using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Requests;

/// <summary>A rig to be checked. What is left out is assumed and listed in the answer; an explicit null counts as left out.</summary>
public sealed class CheckRequest
{
    /// <summary>A name of the caller's choosing, echoed in the answer.</summary>
    [Text(120, "rig-7")]
    public string? Id { get; set; }

    /// <summary>The motor. May be empty; what needs its figures is then unknown.</summary>
    [Must]
    public MotorRequest? Motor { get; set; }

    /// <summary>The speed controller. May be empty; what needs its figures is then unknown.</summary>
    [Must]
    public ControllerRequest? Controller { get; set; }

    /// <summary>The battery pack. May be empty; what needs its figures is then unknown.</summary>
    [Must]
    public BatteryRequest? Battery { get; set; }

    /// <summary>The vehicle with its drivetrain.</summary>
    [Must]
    public VehicleRequest? Vehicle { get; set; }

    /// <summary>The course and the day.</summary>
    public CourseRequest? Course { get; set; }

    /// <summary>What else draws current: servos, a winch, lights. An empty list means nothing does.</summary>
    [Items(32)]
    public IReadOnlyList<AccessoryRequest>? Accessories { get; set; }

    /// <summary>Leads, connector and fuse.</summary>
    public WiringRequest? Wiring { get; set; }

    /// <summary>
    /// How far off figures may be, 95 %, by path: a number is a share of the value either side, an object says it otherwise.
    /// What is not named here is taken to be as far off as its label or default usually is.
    /// </summary>
    [Map(200, "motor.resistanceMilliohm")]
    public IReadOnlyDictionary<string, ToleranceRequest>? Tolerances { get; set; }
}
