using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>Receiver supply, leads, fuse and run time (M8 to M10).</summary>
internal static class SupplyFindings
{
    /// <summary>How long everything is jammed at once [s], assumed.</summary>
    private const double JammedS = 2;

    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) =>
        [.. Receiver(it), .. Leads(it), .. Fuse(it), .. RunTime(it)];

    private static IEnumerable<Finding> Receiver(Inspection it)
    {
        var supply = it.ReceiverSupply;
        yield return Make.Limit(
            ReceiverSupplyContinuousCurrent,
            null,
            "Servos and the rest at work",
            supply.WorkingCurrentA,
            supply.ContinuousCurrentA,
            Unit.Ampere
        );
        if (supply.JammedCurrentA > supply.PeakCurrentA)
        {
            yield return Make.Caution(
                ReceiverSupplyPeakCurrent,
                null,
                $"Everything jammed at once draws {Say.Figure(supply.JammedCurrentA, Unit.Ampere)} from the receiver supply, "
                    + $"which gives {Say.Figure(supply.PeakCurrentA, Unit.Ampere)} for moments; {ReceiverSupplyPeakCurrent.Consequence}.",
                supply.JammedCurrentA,
                supply.PeakCurrentA,
                Unit.Ampere,
                JammedS
            );
        }

        if (it.Rig.ReceiverSupply.Regulator == Regulator.Linear)
        {
            yield return Make.Limit(
                ReceiverSupplyHeat,
                null,
                "Heat of the linear receiver supply with everything at work",
                supply.HeatW,
                supply.MaxHeatW,
                Unit.Watt
            );
        }

        yield return Output(it);
    }

    private static Finding Output(Inspection it)
    {
        var left = it.ReceiverSupply.LowestOutputV;
        var reset = it.Rig.ReceiverSupply.ReceiverResetV;
        var found = Make.Limit(
            ReceiverSupplyOutputVoltage,
            null,
            "Voltage left for the receiver at the lowest bus voltage",
            left,
            reset,
            Unit.Volt,
            double.IsNaN(left) ? double.NaN
                : left < reset ? Thresholds.PastLimit
                : 0,
            worst: Outcome.Doubtful,
            atLeast: true,
            reach: left > 0 ? reset / left : (left * 0) + double.PositiveInfinity
        );
        var set = it.Rig.ReceiverSupply.VoltageV;
        return left < set && left >= reset
            ? found with
            {
                Caution = true,
                Sentence = it =>
                    it.Outcome == Outcome.Holds
                        ? $"At the lowest bus voltage the receiver supply gives no more than {Say.Figure(left, Unit.Volt)}: servos "
                            + $"weaken, the receiver stays alive down to {Say.Figure(reset, Unit.Volt)}{Say.Chance(it)}."
                        : found.Sentence(it),
            }
            : found;
    }

    // What leads, connector and fuse carry for long: the larger of course and climb.
    private static (double MotorA, double BatteryA) LastingA(Inspection it)
    {
        var climb = it.Cases[LoadCaseName.Climb];
        return (
            Math.Max(it.Result.Endurance.RmsMotorCurrentA, climb.MotorRmsCurrentA),
            Math.Max(it.Result.Endurance.RmsBatteryCurrentA, climb.BatteryRmsCurrentA)
        );
    }

    private static IEnumerable<Finding> Leads(Inspection it)
    {
        var (motor, battery) = LastingA(it);
        yield return Make.Limit(
            WiringBatteryLead,
            "climb",
            "Battery current of course or climb, the larger, in a battery lead",
            it.BatteryA(battery, motor, it.Wiring.BatteryLeadLimitA),
            it.Wiring.BatteryLeadLimitA,
            Unit.Ampere
        );
        yield return Make.Limit(
            WiringMotorLead,
            "climb",
            "Motor current of course or climb, the larger, in a motor lead",
            motor,
            it.Wiring.MotorLeadLimitA,
            Unit.Ampere
        );
        if (!double.IsNaN(it.Rig.Leads.ConnectorContinuousA))
        {
            yield return Make.Limit(
                WiringConnector,
                "climb",
                "Battery current of course or climb, the larger, in the connector",
                it.BatteryA(battery, motor, it.Rig.Leads.ConnectorContinuousA),
                it.Rig.Leads.ConnectorContinuousA,
                Unit.Ampere
            );
        }
    }

    private static IEnumerable<Finding> Fuse(Inspection it)
    {
        var fuse = it.Rig.Leads.FuseA;
        if (double.IsNaN(fuse))
        {
            yield break;
        }

        var (motor, battery) = LastingA(it);
        yield return Make.Limit(
            WiringFuseCarries,
            "climb",
            "Battery current of course or climb, the larger, in the fuse",
            it.BatteryA(battery, motor, fuse),
            fuse,
            Unit.Ampere
        );
        var punch = it.Cases[LoadCaseName.Punch].BatteryCurrentA;
        yield return Make.Limit(
            WiringFuseCarries,
            "punch",
            "Battery current of a full-throttle punch in the fuse",
            punch,
            Thresholds.FuseMayOpen * fuse,
            Unit.Ampere,
            punch <= Thresholds.FuseCarries * fuse
                    ? Thresholds.DoubtFrom * punch / (Thresholds.FuseCarries * fuse)
                : punch <= Thresholds.FuseMayOpen * fuse ? Thresholds.InDoubt
                : punch / (Thresholds.FuseMayOpen * fuse),
            it.Course.Judging.PunchS,
            reach: punch / (Thresholds.FuseMayOpen * fuse)
        ) with
        {
            // Between what it surely carries and what may open it within a second it is in doubt.
            InDoubt = punch > Thresholds.FuseCarries * fuse,
        };
        yield return Make.Limit(
            WiringFuseProtects,
            null,
            "Current at which the fuse surely opens, in the battery lead",
            Thresholds.FuseOpensAt * fuse,
            it.Wiring.LeadDamageCurrentA,
            Unit.Ampere,
            durationS: Thresholds.FuseOpensS
        );
    }

    private static IEnumerable<Finding> RunTime(Inspection it)
    {
        var run = it.Result.Endurance.RunTimeS;
        var wanted = it.Course.WantedS;
        if (double.IsNaN(wanted))
        {
            yield break;
        }

        yield return Make.Limit(
            CourseRunTime,
            "course",
            "Run time of the pack",
            run,
            wanted,
            Unit.Minute,
            double.IsNaN(run) ? double.NaN
                : run < wanted ? Thresholds.PastLimit
                : 0,
            worst: Outcome.Doubtful,
            atLeast: true,
            reach: wanted / run
        );
    }
}
