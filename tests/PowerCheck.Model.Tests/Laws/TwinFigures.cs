using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>Currents, voltages, torque and heat of a load case, from the point on the bus that a search found.</summary>
internal static class TwinFigures
{
    public static Dictionary<string, double> Of(
        Rig rig,
        Source source,
        TwinPoint at,
        double radPerS,
        double roadMPerS,
        double wheelNm
    )
    {
        double motors = rig.Vehicle.MotorCount;
        var square = (at.MotorA * at.MotorA) + at.RippleA2;
        var counter =
            (rig.Motor.TorqueConstantNmPerA * radPerS) + (at.MotorA > 0 ? rig.Motor.BrushDropV : 0);
        var supply = rig.ReceiverSupply;
        var pulses =
            (at.Duty * ((at.OnA * at.OnA) + (motors * motors * at.RippleA2)))
            + ((1 - at.Duty) * at.OthersA * at.OthersA);
        var bare = rig.Controller.PwmFrequencyHz < 4000 && at.Duty is > 0 and < 1;
        var rms = bare ? Math.Sqrt(pulses) : at.BatteryA;
        var spin = radPerS == 0 ? 0 : FrictionNm(rig.Motor, radPerS) * radPerS;
        return new()
        {
            [nameof(LoadCase.MotorCurrentA)] = at.MotorA,
            [nameof(LoadCase.MotorRmsCurrentA)] = Math.Sqrt(square),
            [nameof(LoadCase.BatteryCurrentA)] = at.BatteryA,
            [nameof(LoadCase.BatteryRmsCurrentA)] = rms,
            [nameof(LoadCase.BusVoltageV)] = at.BusV,
            [nameof(LoadCase.MotorVoltageV)] =
                at.Reached && at.Duty < 1
                    ? (at.MotorA * rig.Motor.ResistanceOhm) + counter
                    : Math.Max(0, at.BusV - (at.MotorA * rig.LoopOhm)),
            [nameof(LoadCase.DutyRatio)] = at.Duty,
            [nameof(LoadCase.MotorSpeedRadPerS)] = radPerS,
            [nameof(LoadCase.RoadSpeedMPerS)] = roadMPerS,
            [nameof(LoadCase.WheelTorqueNm)] = wheelNm,
            [nameof(LoadCase.MotorHeatW)] =
                (square * rig.Motor.ResistanceOhm)
                + (rig.Motor.BrushDropV * Math.Abs(at.MotorA))
                + spin,
            [nameof(LoadCase.ControllerHeatW)] =
                (square * rig.Controller.OnResistanceOhm)
                + at.BridgeW
                + supply.HeatW(at.BusV, supply.MeanOutputA),
            [nameof(LoadCase.BatteryHeatW)] =
                rms * rms * (source.ResistanceOhm - rig.Leads.BatteryOhm),
        };
    }

    private static double FrictionNm(Motor motor, double radPerS) =>
        motor.TorqueConstantNmPerA
        * (motor.NoLoad.StandstillA + (motor.NoLoad.SlopeAPerRadPerS * radPerS));
}
