using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>What else there is to say of the controller.</summary>
internal static class ControllerFindings
{
    private static readonly LoadCaseName[] Bursts =
    [
        LoadCaseName.Slip,
        LoadCaseName.Punch,
        LoadCaseName.Jam,
    ];

    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) =>
        [.. Burst(it), .. MassClass(it), .. Frequency(it), .. Diode(it)];

    private static IEnumerable<Finding> Burst(Inspection it)
    {
        var burst = it.Rig.Controller.BurstCurrentA;
        if (double.IsNaN(burst) || it.Rig.Controller.CurrentLimitA <= burst)
        {
            yield break;
        }

        var worst = Bursts
            .Select(name => it.Cases[name])
            .MaxBy(load =>
                double.IsNaN(load.MotorCurrentA) ? double.MaxValue : load.MotorCurrentA
            )!;
        yield return Make.Limit(
            ControllerBurstCurrent,
            Say.Word(worst.Name),
            $"Motor current {Say.Case(worst.Name)}",
            worst.MotorCurrentA,
            burst,
            Unit.Ampere
        );
    }

    private static IEnumerable<Finding> MassClass(Inspection it)
    {
        var limit = it.Rig.Controller.VehicleMassLimitKg;
        var mass = it.Rig.Vehicle.MassKg;
        if (mass > limit)
        {
            yield return Make.Caution(
                ControllerMassClass,
                null,
                $"The controller's label is for vehicles up to {Say.Figure(limit, Unit.Kilogram)} and the rig has "
                    + $"{Say.Figure(mass, Unit.Kilogram)}; {ControllerMassClass.Consequence}.",
                mass,
                limit,
                Unit.Kilogram
            );
        }
    }

    private static IEnumerable<Finding> Frequency(Inspection it)
    {
        var controller = it.Rig.Controller;
        if (it.Rig.Motor.Kind == MotorKind.Brushed && !controller.PwmKnown)
        {
            yield return Make.Caution(
                ControllerSwitchingFrequency,
                null,
                $"The switching frequency is not given and {Say.Figure(controller.PwmFrequencyHz, Unit.Hertz)} is assumed; "
                    + $"{ControllerSwitchingFrequency.Consequence}.",
                controller.PwmFrequencyHz,
                double.NaN,
                Unit.Hertz
            );
        }
    }

    private static IEnumerable<Finding> Diode(Inspection it)
    {
        var rig = it.Rig;
        if (rig.Motor.Kind != MotorKind.Brushed || rig.Controller.FreewheelKnown)
        {
            yield break;
        }

        var level = it.Cases[LoadCaseName.Level];
        var diode =
            Controller.DiodeDropV
            * level.MotorCurrentA
            * (1 - level.DutyRatio)
            / rig.Controller.RatedHeatW;
        var k = CaseHeat.ControllerLoad(rig, level) + diode;
        var temperature = rig.Road.AmbientC + (k * (rig.Controller.LimitC - 25));
        if (temperature > rig.Controller.LimitC)
        {
            yield return Make.Caution(
                ControllerFreewheel,
                "level",
                $"If its freewheel current flows through a diode, the controller settles at {Say.Degrees(temperature)} "
                    + $"creeping on the level, against {Say.Degrees(rig.Controller.LimitC)}; ask the maker.",
                temperature,
                rig.Controller.LimitC,
                Unit.Celsius
            );
        }
    }
}
