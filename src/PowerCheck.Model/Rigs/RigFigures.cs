using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Rigs;

/// <summary>Every figure of a rig that can be given, by path: what is spread, changed and asked for goes through it.</summary>
public static class RigFigures
{
    /// <summary>The figures of a rig, whether given or not.</summary>
    /// <param name="label">The rig: its lists tell how many there are.</param>
    public static IReadOnlyList<LabelFigure<RigLabel>> Of(RigLabel label) =>
        [
            .. MotorFigures
                .Of(label.Motor)
                .Select(figure =>
                    figure.In<RigLabel>(
                        rig => rig.Motor,
                        (rig, motor) => rig with { Motor = motor }
                    )
                ),
            .. Fixed,
            .. CourseFigures
                .Of(label.Course)
                .Select(figure =>
                    figure.In<RigLabel>(
                        rig => rig.Course,
                        (rig, course) => rig with { Course = course }
                    )
                ),
            .. Enumerable.Range(0, label.Accessories?.Count ?? 0).SelectMany(Accessory),
        ];

    /// <summary>The rig with one figure put in.</summary>
    /// <param name="label">The rig.</param>
    /// <param name="path">The member.</param>
    /// <param name="value">The figure, SI.</param>
    public static RigLabel With(RigLabel label, string path, double value) =>
        Of(label)
            .Single(figure => string.Equals(figure.Path, path, StringComparison.Ordinal))
            .Write(label, value);

    private static readonly LabelFigure<RigLabel>[] Fixed =
    [
        .. ControllerFigures.All.Select(figure =>
            figure.In<RigLabel>(
                rig => rig.Controller,
                (rig, controller) => rig with { Controller = controller }
            )
        ),
        .. BatteryFigures.All.Select(figure =>
            figure.In<RigLabel>(
                rig => rig.Battery,
                (rig, battery) => rig with { Battery = battery }
            )
        ),
        .. VehicleFigures.All.Select(figure =>
            figure.In<RigLabel>(
                rig => rig.Vehicle,
                (rig, vehicle) => rig with { Vehicle = vehicle }
            )
        ),
        .. WiringFigures.All.Select(figure =>
            figure.In<RigLabel>(rig => rig.Wiring, (rig, wiring) => rig with { Wiring = wiring })
        ),
    ];

    private static IEnumerable<LabelFigure<RigLabel>> Accessory(int n) =>
        AccessoryFigures
            .Of(n)
            .Select(figure =>
                figure.In<RigLabel>(
                    rig => rig.Accessories![n],
                    (rig, accessory) =>
                        rig with
                        {
                            Accessories =
                            [
                                .. rig.Accessories!.Select((old, at) => at == n ? accessory : old),
                            ],
                        }
                )
            );
}
