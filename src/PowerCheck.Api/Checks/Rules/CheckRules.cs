using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a check together, beyond the range of each.</summary>
internal static class CheckRules
{
    /// <summary>Notes every rule that the request breaks.</summary>
    /// <param name="request">The request.</param>
    /// <param name="faults">Where to note it.</param>
    /// <param name="at">Where the request stands; empty where it is the whole body.</param>
    public static void Apply(CheckRequest request, Faults faults, string at = "")
    {
        var root = new Place(faults, at);
        MotorRules.Apply(request.Motor, root.In("motor"));
        ControllerRules.Apply(request.Controller, root.In("controller"));
        BatteryRules.Apply(request.Battery, root.In("battery"));
        VehicleRules.Apply(request.Vehicle, root.In("vehicle"));
        CourseRules.Apply(request.Course, root.In("course"));
        AccessoryRules.Apply(request.Accessories ?? [], root);
        var tolerances = root.In("tolerances");
        ToleranceRules.Apply(request.Tolerances, tolerances, faults);
        if (faults.None)
        {
            ToleranceRules.Apply(request.Tolerances, RigMapper.Untold(request), tolerances, faults);
        }
    }
}
