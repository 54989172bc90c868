using PowerCheck.Model.Controllers;

namespace PowerCheck.Model.Drivetrain;

/// <summary>The load case of standing on the slope (M5).</summary>
public static class HoldCase
{
    /// <summary>Standing on the slope, by what the controller does at neutral.</summary>
    /// <param name="rig">The rig.</param>
    public static LoadCase Of(Rig rig)
    {
        var torque = WheelLoad.HoldingNm(rig, rig.ClimbSlopeRad);
        var wheel = WheelLoad.HoldingWheelNm(rig, rig.ClimbSlopeRad);
        var motor = rig.Motor;
        var source = rig.SourceAt(CaseRunner.HalfCharge, true);
        var current = torque / motor.TorqueConstantNmPerA;
        if (double.IsNaN(torque))
        {
            return Standing(rig, source, torque, torque, wheel, null);
        }

        if (torque <= 0)
        {
            return Standing(rig, source, 0, 0, wheel, true);
        }

        switch (rig.Controller.Hold)
        {
            case HoldMode.None:
                return Standing(rig, source, 0, double.NaN, wheel, false);
            case HoldMode.DragBrake:
                var (braking, speed) = DragBrake(rig, torque);
                return Standing(rig, source, braking, speed, wheel, true) with
                {
                    UpperBound = double.IsNaN(speed),
                };
            default:
                var point = OperatingPoint.Feeding(rig, source, current, 0);
                var hold = CaseFigures.Of(rig, LoadCaseName.Hold, source, point, torque, 0) with
                {
                    WheelTorqueNm = wheel,
                };
                return CaseFigures.Obstructed(rig, hold, point, rig.CannotStart);
        }
    }

    /// <summary>
    /// Current and speed at which a drag brake lets the rig creep back: the winding is shorted, back-EMF drives the current
    /// against resistance and brushes, and the friction that grows with speed helps:
    /// kt·i + kt·s·ω = q with kt·ω = i·R_loop + v_b.
    /// </summary>
    /// <remarks>Where the motor's resistance is not known, the current is the most that it can be: q/kt.</remarks>
    /// <param name="rig">The rig.</param>
    /// <param name="holdingNm">Holding torque, friction at standstill taken off [N·m].</param>
    public static (double MotorA, double SpeedRadPerS) DragBrake(Rig rig, double holdingNm)
    {
        var motor = rig.Motor;
        var kt = motor.TorqueConstantNmPerA;
        var loop = motor.ResistanceOhm + rig.LoopOhm;
        var slope = motor.NoLoad.SlopeAPerRadPerS;
        var current = (holdingNm - (slope * motor.BrushDropV)) / (kt + (slope * loop));
        return double.IsNaN(loop) ? (holdingNm / kt, double.NaN)
            : current > 0 ? (current, ((current * loop) + motor.BrushDropV) / kt)
            : (0, holdingNm / (kt * slope));
    }

    private static LoadCase Standing(
        Rig rig,
        Source source,
        double motorA,
        double speedRadPerS,
        double wheelNm,
        bool? attainable
    )
    {
        var motor = rig.Motor;
        var bus = Bus.Feeding(source, rig.Auxiliary, rig.Vehicle.MotorCount, 0, 0);
        return new LoadCase
        {
            Name = LoadCaseName.Hold,
            MotorCurrentA = motorA,
            MotorRmsCurrentA = motorA,
            BatteryCurrentA = bus.BatteryA,
            BatteryRmsCurrentA = bus.BatteryA,
            BusVoltageV = bus.BusV,
            MotorVoltageV = motorA * rig.LoopOhm,
            DutyRatio = 0,
            MotorSpeedRadPerS = speedRadPerS,
            RoadSpeedMPerS = 0,
            WheelTorqueNm = wheelNm,
            MotorHeatW =
                (motorA * motorA * motor.ResistanceOhm)
                + (motor.BrushDropV * motorA)
                + motor.SpinHeatW(speedRadPerS),
            ControllerHeatW =
                (motorA * motorA * rig.Controller.OnResistanceOhm)
                + rig.ReceiverSupply.HeatW(bus.BusV, rig.ReceiverSupply.MeanOutputA),
            BatteryHeatW = bus.BatteryA * bus.BatteryA * rig.Battery.LastingResistanceOhm,
            Attainable = attainable,
            CreepBackMPerS = CaseFigures.RoadMPerS(rig, speedRadPerS),
        };
    }
}
