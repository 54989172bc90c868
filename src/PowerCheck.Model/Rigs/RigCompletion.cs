using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Rigs;

/// <summary>A rig and its course with every figure filled in, and the book of what was filled.</summary>
/// <param name="Rig">The rig.</param>
/// <param name="Course">The course.</param>
/// <param name="Ledger">The book.</param>
public sealed record RigCompletion(Rig Rig, Course Course, Ledger Ledger)
{
    /// <summary>Fills in what the caller left out.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    public static RigCompletion Of(RigLabel label)
    {
        var ledger = new Ledger();
        var road = CourseDefaults.Road(label.Course, ledger);
        var battery = BatteryDefaults.Complete(label.Battery, road.AmbientC, ledger);
        var motor = MotorDefaults.Complete(
            label.Motor,
            battery.NominalV,
            ControllerDefaults.PwmFrequencyHz(label.Controller, true)
                < ControllerDefaults.SmoothFromHz,
            ledger,
            label.Controller.MotorKinds is [var only] ? only : null
        );
        var brushless = motor.Kind == MotorKind.Brushless;
        var controller = ControllerDefaults.Complete(
            label.Controller,
            brushless,
            battery.Chemistry,
            ledger
        );
        var rig = new Rig(
            PolePairs(motor, controller, brushless, label.Motor.Rotor, ledger),
            controller,
            battery,
            LeadDefaults.Complete(label.Wiring, road.AmbientC, ledger),
            VehicleDefaults.Complete(label.Vehicle, ledger),
            AccessoryDefaults.Complete(
                label.Controller.ReceiverSupply,
                label.Accessories,
                label.Course.AccessoryDuty,
                ledger
            ),
            road
        );
        return new(rig, CourseDefaults.Course(label.Course, road, ledger), ledger);
    }

    /// <summary>Everything that is computed of it.</summary>
    public Inspection Inspect() => Inspection.Of(Rig, Course);

    // Pole pairs count only where the controller's box tells an electrical speed.
    private static Motor PolePairs(
        Motor motor,
        Controller controller,
        bool brushless,
        RotorLayout? rotor,
        Ledger ledger
    ) =>
        !brushless
        || !double.IsNaN(motor.PolePairs)
        || double.IsNaN(controller.MaxElectricalSpeedRadPerS)
            ? motor
            : motor with
            {
                PolePairs = ledger.Figure(
                    null,
                    "motor.polePairs",
                    Unit.One,
                    rotor == RotorLayout.Outer ? 7 : 2,
                    Spread.Interval(1, rotor == RotorLayout.Outer ? 11 : 3),
                    "assumed: two pole pairs inside, seven outside"
                ),
            };
}
