using System.Collections.Concurrent;
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
            .. Motor,
            .. NoLoadPoints.First(label.Motor.NoLoadPoints.Count),
            .. Parts,
            .. Course,
            .. Segments.First(label.Course.Segments.Count),
            .. Accessories.First(label.Accessories?.Count ?? 0),
        ];

    /// <summary>The rig with one figure put in.</summary>
    /// <param name="label">The rig.</param>
    /// <param name="path">The member.</param>
    /// <param name="value">The figure, SI.</param>
    public static RigLabel With(RigLabel label, string path, double value) =>
        Of(label)
            .Single(figure => string.Equals(figure.Path, path, StringComparison.Ordinal))
            .Write(label, value);

    private static readonly LabelFigure<RigLabel>[] Motor = [.. MotorFigures.All.Select(InMotor)];

    private static readonly Listed NoLoadPoints = new(n =>
        MotorFigures.NoLoadPoint(n).Select(InMotor)
    );

    private static readonly LabelFigure<RigLabel>[] Parts =
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

    private static readonly LabelFigure<RigLabel>[] Course =
    [
        .. CourseFigures.All.Select(InCourse),
    ];

    private static readonly Listed Segments = new(n => CourseFigures.Segment(n).Select(InCourse));

    private static readonly Listed Accessories = new(n =>
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
            )
    );

    private static LabelFigure<RigLabel> InMotor(LabelFigure<MotorLabel> figure) =>
        figure.In<RigLabel>(rig => rig.Motor, (rig, motor) => rig with { Motor = motor });

    private static LabelFigure<RigLabel> InCourse(LabelFigure<CourseLabel> figure) =>
        figure.In<RigLabel>(rig => rig.Course, (rig, course) => rig with { Course = course });

    /// <summary>The figures of things that stand in a list, made once for each place in it.</summary>
    /// <param name="make">The figures of the thing at a place, from 0.</param>
    private sealed class Listed(Func<int, IEnumerable<LabelFigure<RigLabel>>> make)
    {
        private readonly ConcurrentDictionary<int, LabelFigure<RigLabel>[]> known = new();

        /// <summary>The figures of the first things of a list.</summary>
        /// <param name="count">How many.</param>
        public IEnumerable<LabelFigure<RigLabel>> First(int count) =>
            Enumerable.Range(0, count).SelectMany(n => known.GetOrAdd(n, at => [.. make(at)]));
    }
}
