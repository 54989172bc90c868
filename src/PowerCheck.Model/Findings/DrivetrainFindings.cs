using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;
using PowerCheck.Model.Vehicles;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>Whether it climbs, creeps, holds and grips (M4, M5).</summary>
internal static class DrivetrainFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it) =>
        [
            .. MeshFindings.Of(it),
            Reserve(it),
            Creep(it),
            Hold(it),
            Traction(it),
            .. WheelTorque(it),
            .. Ratio(it),
            .. Gears(it),
        ];

    private static Finding Reserve(Inspection it)
    {
        var reserve = it.Drivetrain.TorqueReserve;
        return Make.Limit(
            DrivetrainTorqueReserve,
            "climb",
            "Wheel torque at creep speed over the climb's, tired pack and hot winding",
            reserve,
            Thresholds.ReserveFails,
            Unit.One,
            double.IsNaN(reserve) ? double.NaN
                : reserve < Thresholds.ReserveFails
                    ? Thresholds.ReserveFails / Math.Max(0.01, reserve)
                : reserve < Thresholds.ReserveDoubtful ? Thresholds.InDoubt
                : Math.Min(Thresholds.DoubtFrom, Thresholds.ReserveDoubtful / reserve),
            atLeast: true,
            reach: Thresholds.ReserveFails / reserve
        ) with
        {
            InDoubt = reserve < Thresholds.ReserveDoubtful,
        };
    }

    private static Finding Creep(Inspection it)
    {
        var duty = it.Cases[LoadCaseName.Level].DutyRatio;
        var found = Make.Limit(
            DrivetrainCreepControl,
            "level",
            "Duty at level creep",
            duty,
            Thresholds.DutyDoubtful,
            Unit.One,
            double.IsNaN(duty) ? double.NaN
                : duty < Thresholds.DutyDoubtful ? Thresholds.PastLimit
                : 0,
            worst: Outcome.Doubtful,
            atLeast: true,
            reach: Thresholds.DutyDoubtful / duty
        );
        return duty >= Thresholds.DutyDoubtful && duty < Thresholds.DutyCaution
            ? found with
            {
                Caution = true,
                Sentence = it =>
                    $"Duty at level creep: {Say.Figure(duty, Unit.One)}, not far over the "
                    + $"{Say.Figure(Thresholds.DutyDoubtful, Unit.One)} that a throttle needs{Say.Chance(it)}: it is coarse; "
                    + $"{DrivetrainCreepControl.Consequence}.",
            }
            : found;
    }

    private static Finding Hold(Inspection it)
    {
        var hold = it.Cases[LoadCaseName.Hold];
        if (it.Rig.Controller.Hold == HoldMode.Active)
        {
            var active = Make.Match(
                DrivetrainHold,
                hold.Attainable,
                "The controller feeds the motor to stand on the slope.",
                "The controller cannot feed the motor so that it stands on the slope"
            ) with
            {
                LoadCase = "hold",
            };
            return hold.Attainable is null ? Make.Unknown(active) : active;
        }

        if (it.Rig.Controller.Hold == HoldMode.None && hold.Attainable == false)
        {
            return Make.Match(
                DrivetrainHold,
                false,
                "",
                "At neutral nothing holds the rig and it rolls"
            ) with
            {
                LoadCase = "hold",
            };
        }

        var speed = hold.CreepBackMPerS;
        var limit = it.Rig.Road.HoldCreepMPerS;
        return Make.Limit(
            DrivetrainHold,
            "hold",
            "Creeping back on the slope at neutral",
            speed,
            limit,
            Unit.MetrePerSecond,
            durationS: it.Course.Judging.HoldS,
            // Slower than it creeps up, it can still be driven: a doubt.
            worst: speed > it.Rig.Road.CreepMPerS ? Outcome.Fails : Outcome.Doubtful
        );
    }

    private static Finding Traction(Inspection it)
    {
        var slope = it.Rig.Road.SlopeRad;
        var slip = it.Drivetrain.SlipSlopeRad;
        var found = Make.Limit(
            DrivetrainTraction,
            "climb",
            "Slope to climb",
            slope,
            slip,
            Unit.Degree,
            // Close to slipping is how crawlers are driven: a caution.
            worst: slope <= slip ? Outcome.Holds : Outcome.Doubtful
        );
        return slope <= slip
            ? found with
            {
                Outcome = Outcome.Holds,
                Caution = found.Outcome == Outcome.Doubtful,
                Sentence = it =>
                    it.Caution
                        ? $"At {Say.Figure(slope, Unit.Degree)} the tires are close to letting go, which they do at "
                            + $"{Say.Figure(slip, Unit.Degree)} (friction assumed or as given){Say.Chance(it)}."
                        : found.Sentence(it),
            }
            : found with
            {
                Sentence = it =>
                    it.Outcome == Outcome.Unknown
                        ? found.Sentence(it)
                        : $"The tires let go at {Say.Figure(slip, Unit.Degree)} (friction assumed or as given), before the "
                            + $"{Say.Figure(slope, Unit.Degree)} asked for{Say.Chance(it)}: {DrivetrainTraction.Consequence}, "
                            + "and the climb is judged there.",
            };
    }

    private static IEnumerable<Finding> WheelTorque(Inspection it)
    {
        var limit = it.Rig.Vehicle.Gearing.MaxWheelTorqueNm;
        if (!double.IsNaN(limit))
        {
            yield return Make.Limit(
                DrivetrainWheelTorque,
                "jam",
                "Wheel torque with a wedged wheel",
                it.Cases[LoadCaseName.Jam].WheelTorqueNm,
                limit,
                Unit.NewtonMetre
            );
        }
    }

    private static IEnumerable<Finding> Ratio(Inspection it)
    {
        var ratio = it.Drivetrain.OverallRatio;
        if (ratio is >= Thresholds.RatioLowest and <= Thresholds.RatioHighest)
        {
            yield break;
        }

        var limit =
            ratio < Thresholds.RatioLowest ? Thresholds.RatioLowest : Thresholds.RatioHighest;
        yield return Make.Caution(
            DrivetrainRatio,
            null,
            $"An overall ratio of {Say.Figure(ratio, Unit.One)} is unusual for crawling, {(ratio < limit ? "under" : "over")} "
                + $"{Say.Figure(limit, Unit.One)}; {DrivetrainRatio.Consequence}.",
            ratio,
            limit
        );
    }

    private static IEnumerable<Finding> Gears(Inspection it) =>
        it
            .Drivetrain.Gears.Skip(1)
            .Where(gear => gear.TorqueReserve < Thresholds.ReserveFails)
            .Select(gear =>
                Make.Caution(
                    DrivetrainGear,
                    "climb",
                    $"A higher gear has only {Say.Figure(gear.TorqueReserve, Unit.One)} of the climb's torque, under "
                        + $"{Say.Figure(Thresholds.ReserveFails, Unit.One)}; {DrivetrainGear.Consequence}.",
                    gear.TorqueReserve,
                    Thresholds.ReserveFails
                )
            );
}

/// <summary>Whether pinion, spur gear and motor fit the mount (M4).</summary>
internal static class MeshFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it)
    {
        var mesh = it.Rig.Vehicle.Gearing.Mesh;
        return [.. Pitch(mesh), .. Center(mesh), .. Clearance(it, mesh)];
    }

    private static IEnumerable<Finding> Pitch(GearMesh mesh)
    {
        if (double.IsNaN(mesh.PitchMismatch))
        {
            yield break;
        }

        yield return Make.Limit(
            DrivetrainPitch,
            null,
            "Module of the pinion and of the spur gear",
            mesh.PinionModuleM,
            mesh.SpurModuleM,
            Unit.Millimetre,
            Math.Abs(mesh.PitchMismatch) > Thresholds.PitchRounding ? double.PositiveInfinity : 0
        )
            is var found
        && found.Outcome == Outcome.Fails
            ? found with
            {
                Sentence = _ =>
                    $"The pinion has module {Say.Figure(mesh.PinionModuleM, Unit.Millimetre)} and the spur gear "
                    + $"{Say.Figure(mesh.SpurModuleM, Unit.Millimetre)}; {DrivetrainPitch.Consequence}.",
            }
            : found with
            {
                Sentence = _ => "Pinion and spur gear have the same pitch.",
            };
    }

    private static IEnumerable<Finding> Center(GearMesh mesh)
    {
        var center = mesh.CenterM;
        if (double.IsNaN(mesh.CenterMinM) || double.IsNaN(center))
        {
            yield break;
        }

        var low = center < mesh.CenterMinM;
        yield return Make.Limit(
            DrivetrainMeshCenter,
            null,
            low ? "Center distance, less than the mount's smallest" : "Center distance",
            center,
            low ? mesh.CenterMinM : mesh.CenterMaxM,
            Unit.Millimetre,
            low || center > mesh.CenterMaxM ? double.PositiveInfinity : 0
        );
    }

    private static IEnumerable<Finding> Clearance(Inspection it, GearMesh mesh)
    {
        var radius = it.Rig.Motor.CanDiameterM / 2;
        if (!double.IsNaN(mesh.MotorClearanceM))
        {
            yield return Make.Limit(
                DrivetrainMotorClearance,
                null,
                "Can radius of the motor",
                radius,
                mesh.MotorClearanceM,
                Unit.Millimetre,
                radius > mesh.MotorClearanceM ? double.PositiveInfinity : radius * 0,
                reach: radius / mesh.MotorClearanceM
            );
        }
    }
}
