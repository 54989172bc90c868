using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns a request that passed the door into the model's label of a rig.</summary>
internal static class RigMapper
{
    /// <summary>The label of a rig.</summary>
    public static RigLabel Map(CheckRequest request) =>
        ToleranceMapper.Map(Untold(request), request.Tolerances);

    /// <summary>The label of a rig without what the caller says of how far off its figures may be.</summary>
    public static RigLabel Untold(CheckRequest request) =>
        new()
        {
            Motor = MotorMapper.Map(request.Motor ?? new()),
            Controller = ControllerMapper.Map(request.Controller ?? new()),
            Battery = BatteryMapper.Map(request.Battery ?? new()),
            Vehicle = VehicleMapper.Map(request.Vehicle ?? new()),
            Course = CourseMapper.Map(request.Course ?? new()),
            Accessories = request.Accessories?.Select(AccessoryMapper.Map).ToArray(),
            Wiring = WiringMapper.Map(request.Wiring ?? new()),
        };
}
