using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Pictures;

/// <summary>A figure of the request, or the one that was assumed in its place.</summary>
/// <param name="Value">The figure, in the unit of its member's name.</param>
/// <param name="Assumed">Whether it was assumed.</param>
internal readonly record struct Rating(double Value, bool Assumed);

/// <summary>What a request asks for and what its boxes say, as far as pictures show it; null where it is not known.</summary>
/// <param name="ClimbSlopeDegrees">Steepest slope to climb [°].</param>
/// <param name="AmbientC">Air temperature [°C].</param>
/// <param name="ControllerContinuousA">Continuous motor current of the controller [A].</param>
/// <param name="ControllerBurstA">Burst motor current of the controller [A].</param>
/// <param name="ControllerLimitA">Motor current to which the controller limits itself [A].</param>
/// <param name="MotorContinuousA">Continuous current of the motor [A].</param>
internal sealed record Ratings(
    Rating? ClimbSlopeDegrees,
    Rating? AmbientC,
    Rating? ControllerContinuousA,
    Rating? ControllerBurstA,
    Rating? ControllerLimitA,
    Rating? MotorContinuousA
)
{
    /// <summary>Those of a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="assumptions">What was assumed for what it left out.</param>
    public static Ratings Of(CheckRequest request, IReadOnlyList<AssumptionAnswer> assumptions)
    {
        var (course, controller) = (request.Course, request.Controller);
        return new(
            Known(course?.ClimbSlopeDegrees, "course.climbSlopeDegrees"),
            Known(course?.AmbientC, "course.ambientC"),
            Known(controller?.ContinuousCurrentA, "controller.continuousCurrentA"),
            Known(controller?.BurstCurrentA, "controller.burstCurrentA"),
            Known(controller?.CurrentLimitA, "controller.currentLimitA"),
            Known(request.Motor?.ContinuousCurrentA, "motor.continuousCurrentA")
        );

        Rating? Known(double? given, string path) =>
            given is { } value ? new(value, false)
            : assumptions
                .FirstOrDefault(a => string.Equals(a.Path, path, StringComparison.Ordinal))
                ?.Value
                is { } assumed
                ? new(assumed, true)
            : null;
    }
}
