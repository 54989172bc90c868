using PowerCheck.Model.Batteries;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>Whether the parts match at all: kind, cells, voltage, speed, sensor, pitch.</summary>
internal static class MatchFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) =>
        [
            Kind(it),
            .. Cells(it),
            .. Voltage(it),
            .. MotorVoltage(it),
            .. MotorSpeed(it),
            .. ElectricalSpeed(it),
            .. RotorSensing(it),
            .. Turns(it),
        ];

    private static Finding Kind(Inspection it)
    {
        var kinds = it.Rig.Controller.MotorKinds;
        var kind = Assumptions.Words.Of(it.Rig.Motor.Kind);
        return Make.Match(
            ControllerMotorKind,
            !it.Rig.Motor.KindKnown || kinds.Count == 0 ? null : kinds.Contains(it.Rig.Motor.Kind),
            $"The controller drives {kind} motors.",
            $"The motor is {kind}, and the controller does not drive that kind",
            [
                .. it.Rig.Motor.KindKnown ? (string[])[] : ["motor.kind"],
                .. kinds.Count > 0 ? (string[])[] : ["controller.motorKinds"],
            ]
        );
    }

    private static IEnumerable<Finding> Cells(Inspection it)
    {
        var battery = it.Rig.Battery;
        var supply = it.Rig.Controller.Supply;
        var (min, max) = supply.CellsFor(battery.Chemistry);
        if (double.IsNaN(max))
        {
            if (double.IsNaN(supply.MaxVoltageV))
            {
                yield return Make.Limit(
                    ControllerCellCount,
                    null,
                    "Cells in series",
                    battery.SeriesCells,
                    double.NaN,
                    Unit.Cells
                ) with
                {
                    Needs = [new("controller.maxCells", Unit.Cells, battery.SeriesCells, false)],
                };
            }

            yield break;
        }

        var few = battery.SeriesCells < min;
        yield return Make.Limit(
            ControllerCellCount,
            null,
            "Cells in series",
            battery.SeriesCells,
            few ? min : max,
            Unit.Cells,
                // A count is exact: at the limit it holds.
                few ? double.PositiveInfinity
                : battery.SeriesCells > max ? battery.SeriesCells / max
                : battery.SeriesCells * 0,
            atLeast: few
        )
            is var found
        && found.Outcome == Outcome.Fails
            ? found with
            {
                Sentence = _ => CountSentence(found, few),
            }
            : found;
        if (
            battery.Chemistry == Chemistry.Lihv
            && supply.CellLimits.All(limit => limit.Chemistry != Chemistry.Lihv)
            && !(battery.FullV <= supply.MaxVoltageV)
        )
        {
            var meant = max * CellData.For(Chemistry.Lipo).FullV;
            yield return Make.Caution(
                ControllerVoltage,
                null,
                $"High-voltage cells reach {Say.Figure(battery.FullV, Unit.Volt)} full, where a count for usual "
                    + $"lithium cells means {Say.Figure(meant, Unit.Volt)}; ask the maker.",
                battery.FullV,
                meant,
                Unit.Volt
            );
        }
    }

    private static string CountSentence(Finding found, bool few) =>
        few
            ? $"The pack has {Say.Figure(found.Estimate, Unit.Cells)} in series and the controller needs at least "
                + $"{Say.Figure(found.Limit, Unit.Cells)}: it may not start, or cut out at once."
            : $"The pack has {Say.Figure(found.Estimate, Unit.Cells)} in series and the controller takes at most "
                + $"{Say.Figure(found.Limit, Unit.Cells)}: its switches and capacitors can break down and burn.";

    private static IEnumerable<Finding> Voltage(Inspection it)
    {
        var supply = it.Rig.Controller.Supply;
        if (!double.IsNaN(supply.MaxVoltageV))
        {
            yield return Exact(
                ControllerVoltage,
                "Full pack at the controller",
                it.Rig.Battery.FullV,
                supply.MaxVoltageV,
                Unit.Volt
            );
        }

        if (it.Rig.Battery.FullV < supply.MinVoltageV)
        {
            yield return Make.Limit(
                ControllerVoltage,
                null,
                "Full pack at the controller, less than it needs",
                it.Rig.Battery.FullV,
                supply.MinVoltageV,
                Unit.Volt,
                double.PositiveInfinity,
                atLeast: true
            );
        }
        else if (it.Rig.CutoffV < supply.MinVoltageV)
        {
            yield return Make.Caution(
                ControllerVoltage,
                null,
                $"The pack at its cut-off has {Say.Figure(it.Rig.CutoffV, Unit.Volt)}, less than the "
                    + $"{Say.Figure(supply.MinVoltageV, Unit.Volt)} that the controller wants; it may shut down early.",
                it.Rig.CutoffV,
                supply.MinVoltageV,
                Unit.Volt
            );
        }
    }

    private static IEnumerable<Finding> MotorVoltage(Inspection it)
    {
        if (!double.IsNaN(it.Rig.Motor.Ratings.MaxVoltageV))
        {
            yield return Exact(
                FindingCatalogue.MotorVoltage,
                "Full pack at the motor",
                it.Rig.Battery.FullV,
                it.Rig.Motor.Ratings.MaxVoltageV,
                Unit.Volt
            );
        }
    }

    private static IEnumerable<Finding> MotorSpeed(Inspection it)
    {
        if (!double.IsNaN(it.Rig.Motor.Ratings.MaxSpeedRadPerS))
        {
            yield return Exact(
                FindingCatalogue.MotorSpeed,
                "No-load speed on a full pack",
                NoLoadSpeed(it),
                it.Rig.Motor.Ratings.MaxSpeedRadPerS,
                Unit.Rpm
            );
        }
    }

    private static IEnumerable<Finding> ElectricalSpeed(Inspection it)
    {
        var limit = it.Rig.Controller.MaxElectricalSpeedRadPerS;
        if (it.Rig.Motor.Kind == MotorKind.Brushless && !double.IsNaN(limit))
        {
            yield return Exact(
                ControllerElectricalSpeed,
                "Electrical speed without load on a full pack",
                NoLoadSpeed(it) * it.Rig.Motor.PolePairs,
                limit,
                Unit.Rpm
            );
        }
    }

    private static IEnumerable<Finding> RotorSensing(Inspection it)
    {
        var rig = it.Rig;
        if (rig.Motor.Kind == MotorKind.Brushed)
        {
            yield break;
        }

        var backEmf =
            rig.Motor.TorqueConstantNmPerA * it.Cases[LoadCaseName.Level].MotorSpeedRadPerS;
        var needed = rig.Controller.LowSpeedBackEmfV;
        // A controlled low-speed start with enough back-EMF makes do without a sensor, whether there is one or not.
        if (rig.Controller.LowSpeedStart && (rig.Sensorless == true || backEmf >= needed))
        {
            yield return Make.Limit(
                ControllerRotorSensing,
                "level",
                "Back-EMF at creep speed, for a start without a sensor",
                backEmf,
                needed,
                Unit.Volt,
                rig.Sensorless == true ? needed / backEmf : 0,
                atLeast: true
            );
            yield break;
        }

        yield return Make.Match(
            ControllerRotorSensing,
            rig.Sensorless is { } without ? !without : null,
            "The controller reads the motor's rotor position sensor.",
            "Motor and controller do not both have a rotor position sensor, nor has the controller a controlled low-speed start",
            [
                .. rig.Motor.Sensored is null ? (string[])["motor.sensored"] : [],
                .. rig.Controller.SensorInput is null ? (string[])["controller.sensorInput"] : [],
            ]
        ) with
        {
            LoadCase = "level",
        };
    }

    private static IEnumerable<Finding> Turns(Inspection it)
    {
        foreach (var limit in it.Rig.Controller.MinTurns)
        {
            if (limit.Cells == it.Rig.Battery.SeriesCells && it.Rig.Motor.Turns < limit.Turns)
            {
                yield return Make.Caution(
                    ControllerMinimumTurns,
                    null,
                    $"The motor has {Say.Figure(it.Rig.Motor.Turns, Unit.Turns)}, the controller's box asks for "
                        + $"{Say.Figure(limit.Turns, Unit.Turns)} at this cell count; {ControllerMinimumTurns.Consequence}.",
                    it.Rig.Motor.Turns,
                    limit.Turns,
                    Unit.Turns
                );
            }
        }
    }

    private static double NoLoadSpeed(Inspection it) =>
        it.Rig.Motor.SpeedConstantRadPerSPerV * it.Rig.Battery.FullV;

    /// <summary>What rounding may add to a figure that is meant to be at its limit.</summary>
    private const double Rounding = 1 + 1e-9;

    // A rating and a full pack are what they are: at the limit it holds.
    private static Finding Exact(
        FindingKind kind,
        string subject,
        double estimate,
        double limit,
        Unit unit
    ) =>
        Make.Limit(
            kind,
            null,
            subject,
            estimate,
            limit,
            unit,
            estimate > limit * Rounding ? estimate / limit : estimate * 0,
            reach: estimate / (limit * Rounding)
        );
}
