using PowerCheck.Model.Courses;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>What else there is to say of the motor.</summary>
internal static class MotorFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it)
    {
        var ratings = it.Rig.Motor.Ratings;
        if (!double.IsNaN(ratings.ContinuousCurrentA))
        {
            yield return Make.Limit(
                MotorContinuousCurrent,
                "course",
                "Motor current over the course, root mean square",
                it.Result.Endurance.RmsMotorCurrentA,
                ratings.ContinuousCurrentA,
                Unit.Ampere
            );
        }

        foreach (var finding in Burst(it))
        {
            yield return finding;
        }

        var housing = it.Result.Temperatures.MotorCase;
        if (housing.PeakC > housing.LimitC)
        {
            yield return Make.Caution(
                MotorTouchTemperature,
                "course",
                double.IsFinite(housing.PeakC)
                    ? $"The motor's case reaches {Say.Degrees(housing.PeakC)} over the course, and touching metal burns "
                        + $"from {Say.Degrees(housing.LimitC)} on; {MotorTouchTemperature.Consequence}."
                    : $"The motor's case gets hotter and hotter over the course, and touching metal burns from "
                        + $"{Say.Degrees(housing.LimitC)} on; {MotorTouchTemperature.Consequence}.",
                housing.PeakC,
                housing.LimitC,
                Unit.Celsius
            );
        }

        foreach (var finding in BrushesAndMagnet(it))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Burst(Inspection it)
    {
        var ratings = it.Rig.Motor.Ratings;
        if (double.IsNaN(ratings.BurstCurrentA))
        {
            yield break;
        }

        LoadCaseName[] moments = [LoadCaseName.Slip, LoadCaseName.Punch, LoadCaseName.Jam];
        foreach (var name in moments)
        {
            var seconds = CaseHeat.JudgedS(name, it.Course.Judging);
            yield return Make.Limit(
                MotorBurstCurrent,
                Say.Word(name),
                $"Motor current {Say.Case(name)}",
                it.Cases[name].MotorCurrentA,
                BurstRating.AllowedA(
                    ratings.ContinuousCurrentA,
                    ratings.BurstCurrentA,
                    ratings.BurstS,
                    seconds
                ),
                Unit.Ampere,
                durationS: seconds
            );
        }
    }

    private static IEnumerable<Finding> BrushesAndMagnet(Inspection it)
    {
        var motor = it.Rig.Motor;
        var given = motor.Ratings.ContinuousCurrentA;
        var lasting = double.IsNaN(given) ? it.Result.ContinuousMotorA : given;
        var jam = it.Cases[LoadCaseName.Jam].MotorCurrentA;
        var limit = Thresholds.CommutatorFactor * lasting;
        if (motor.Kind == MotorKind.Brushed && jam > limit)
        {
            yield return Make.Caution(
                MotorCommutator,
                "jam",
                $"A wedged wheel drives {Say.Figure(jam, Unit.Ampere)} of motor current through standing brushes, and a "
                    + $"commutator suffers from about {Say.Figure(limit, Unit.Ampere)} on: a moment is nothing, do not lean on the throttle.",
                jam,
                limit,
                Unit.Ampere
            );
        }

        if (motor.Magnet == MagnetMaterial.Ferrite && it.Rig.Road.AmbientC < 0)
        {
            yield return Make.Caution(
                MotorColdMagnet,
                "stall",
                $"At {Say.Degrees(it.Rig.Road.AmbientC)}, under {Say.Degrees(0)}, {MotorColdMagnet.Consequence}.",
                it.Rig.Road.AmbientC,
                0,
                Unit.Celsius
            );
        }
    }
}
