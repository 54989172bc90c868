using PowerCheck.Model.Batteries;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>What the pack has to give (M2, M5).</summary>
internal static class BatteryFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) =>
        [
            Sag(it, it.Cases[LoadCaseName.Climb], CaseRunner.HalfCharge, true),
            Sag(it, it.Cases.PunchAtReserve, it.Rig.Battery.ReserveShare, false),
            .. Rates(it),
            .. Label(it.Rig.Battery),
        ];

    // On the scale of the sag that the cut-off leaves: open-circuit voltage less bus over open-circuit voltage less cut-off.
    private static Finding Sag(Inspection it, LoadCase load, double charge, bool climb)
    {
        var open = it.Rig.Battery.OpenCircuitV(charge);
        var cutoff = it.Rig.CutoffV;
        var room = open - cutoff;
        var lowest = double.IsNaN(load.BusVoltageV)
            ? open
                - (
                    it.Rig.SourceAt(charge, climb).ResistanceOhm
                    * it.MostBatteryA(load.MotorRmsCurrentA)
                )
            : load.BusVoltageV;
        var sag = room <= 0 ? double.PositiveInfinity : (open - lowest) / room;
        if (double.IsNaN(load.BusVoltageV) && room > 0 && Thresholds.Outcome(sag) != Outcome.Holds)
        {
            // The most that it can be is no more than that: past the limit nothing is known.
            (lowest, sag) = (double.NaN, double.NaN);
        }

        return Make.Limit(
            BatteryCutoff,
            Say.Word(load.Name),
            climb
                ? "Voltage at the controller creeping up the slope, half charged"
                : "Voltage at the controller in a full-throttle punch, at the reserve",
            lowest,
            cutoff,
            Unit.Volt,
            sag,
            climb ? double.NaN : it.Course.Judging.PunchS,
            atLeast: true
        );
    }

    private static IEnumerable<Finding> Rates(Inspection it)
    {
        var battery = it.Rig.Battery;
        if (!double.IsNaN(battery.ContinuousC))
        {
            yield return Make.Limit(
                BatteryContinuousRate,
                "course",
                "Battery current over the course, root mean square",
                it.BatteryA(
                    it.Result.Endurance.RmsBatteryCurrentA,
                    it.Result.Endurance.RmsMotorCurrentA,
                    battery.ContinuousC * battery.OneCurrentA
                ),
                battery.ContinuousC * battery.OneCurrentA,
                Unit.Ampere
            );
        }

        var seconds = it.Course.Judging.PunchS;
        var burst = BurstRating.AllowedA(
            battery.ContinuousC,
            battery.BurstC,
            battery.BurstS,
            seconds
        );
        if (!double.IsNaN(burst))
        {
            yield return Make.Limit(
                BatteryBurstRate,
                "punch",
                "Battery current in a full-throttle punch",
                it.Cases[LoadCaseName.Punch].BatteryCurrentA,
                burst * battery.OneCurrentA,
                Unit.Ampere,
                durationS: seconds,
                // A lasting rate stands in for a burst that is not printed: past it nothing is sure.
                worst: double.IsNaN(battery.BurstC) ? Outcome.Doubtful : Outcome.Fails
            );
        }
    }

    /// <summary>Plausibility of the rate on the label (M2): a notice, never part of the verdict.</summary>
    private static IEnumerable<Finding> Label(Battery battery)
    {
        if (double.IsNaN(battery.ContinuousC) || double.IsNaN(battery.LabelCapacityCoulomb))
        {
            yield break;
        }

        var current = battery.ContinuousC * battery.OneCurrentA / battery.ParallelCells;
        var sag = OpenCircuit.CellV(battery.Chemistry, 0.5) - battery.Cell.CutoffV;
        var bySag = sag / current;
        // A rate that lasts meets the lasting resistance; what a charger reads is the short one.
        var needed = Math.Min(bySag, ByHeat(battery, current)) / battery.LastingFactor;
        if (!battery.CellResistanceGiven)
        {
            yield return Make.Caution(
                BatteryLabelResistance,
                null,
                "For the rate on the label each cell must read "
                    + $"{Say.Figure(needed, Unit.Milliohm)} or less; {BatteryLabelResistance.Consequence}.",
                battery.CellResistanceOhm,
                needed,
                Unit.Milliohm
            );
        }
        else if (battery.CellResistanceOhm > needed)
        {
            yield return Make.Caution(
                BatteryLabelRate,
                null,
                $"The rate on the label would need cells of {Say.Figure(needed, Unit.Milliohm)} and these have "
                    + $"{Say.Figure(battery.CellResistanceOhm, Unit.Milliohm)}; {BatteryLabelRate.Consequence}.",
                battery.CellResistanceOhm,
                needed,
                Unit.Milliohm
            );
        }
    }

    // Resistance at which a full discharge at the rate, from 25 °C in air of 25 °C, just ends at the cells' limit.
    private static double ByHeat(Battery battery, double cellA)
    {
        var pack = new PackWarmth(battery, 25);
        var perWatt = pack.AfterC(25, 1, 3600 / battery.ContinuousC) - 25;
        var allowedW = (battery.LimitC - 25) / perWatt;
        return allowedW / (cellA * cellA * battery.SeriesCells * battery.ParallelCells);
    }
}
