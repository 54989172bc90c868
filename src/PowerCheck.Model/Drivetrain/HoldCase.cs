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
                // The winding is shorted: back-EMF drives the current against resistance and brushes.
                var drop = (current * (motor.ResistanceOhm + rig.LoopOhm)) + motor.BrushDropV;
                var speed = drop / motor.TorqueConstantNmPerA;
                return Standing(rig, source, current, speed, wheel, true);
            default:
                var point = OperatingPoint.Feeding(rig, source, current, 0);
                var hold = CaseFigures.Of(rig, LoadCaseName.Hold, source, point, torque, 0) with
                {
                    WheelTorqueNm = wheel,
                };
                return CaseFigures.Obstructed(rig, hold, point, rig.CannotStart);
        }
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
                + (speedRadPerS > 0 ? motor.SpinHeatW(speedRadPerS) : 0 * speedRadPerS),
            ControllerHeatW =
                (motorA * motorA * rig.Controller.OnResistanceOhm)
                + rig.ReceiverSupply.HeatW(bus.BusV, rig.ReceiverSupply.MeanOutputA),
            BatteryHeatW = bus.BatteryA * bus.BatteryA * rig.Battery.LastingResistanceOhm,
            Attainable = attainable,
            CreepBackMPerS = CaseFigures.RoadMPerS(rig, speedRadPerS),
        };
    }
}
