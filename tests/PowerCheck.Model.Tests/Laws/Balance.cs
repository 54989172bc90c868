using PowerCheck.Model.Drivetrain;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>The power that a pack's cells give in a load case, and where it goes.</summary>
internal sealed class Balance(Rig rig, LoadCase load, Source source)
{
    private readonly double motors = load.DutyRatio > 0 ? rig.Vehicle.MotorCount : 0;
    private readonly double current = load.MotorCurrentA;
    private readonly double busV = load.BusVoltageV;
    private readonly double duty = load.DutyRatio;

    /// <summary>Open-circuit voltage times mean battery current [W].</summary>
    public double GivenW => source.OpenCircuitV * load.BatteryCurrentA;

    /// <summary>Work and heat [W].</summary>
    public double TakenW =>
        SourceW + BusW + (motors > 0 ? motors * (ShaftW + MotorW + BridgeW) : 0);

    /// <summary>Whether the pack cannot carry what the accessories ask for: then they get what is left.</summary>
    public bool Starved
    {
        get
        {
            var left = load.BatteryCurrentA - rig.Auxiliary.CurrentA - (motors * duty * current);
            return duty is 0 or 1 && left < (rig.Auxiliary.PowerW / busV * (1 - 1e-9)) - 1e-9;
        }
    }

    // The rms current through cells, connector and battery leads.
    private double SourceW
    {
        get
        {
            var pack = source.ResistanceOhm - rig.Leads.BatteryOhm;
            return load.BatteryHeatW / pack * source.ResistanceOhm;
        }
    }

    // The accessories. A bus that nothing smooths stands higher while the bridge is off.
    private double BusW
    {
        get
        {
            var others = rig.Auxiliary.CurrentA + (rig.Auxiliary.PowerW / busV);
            var offV = source.OpenCircuitV - (source.ResistanceOhm * others);
            var smoothed = rig.Controller.PwmFrequencyHz >= 4000 || duty is <= 0 or >= 1;
            return others * (smoothed ? busV : (duty * busV) + ((1 - duty) * offV));
        }
    }

    private double ShaftW =>
        rig.Motor.TorqueOf(current, load.MotorSpeedRadPerS) * load.MotorSpeedRadPerS;

    private double MotorW =>
        load.MotorHeatW + (load.MotorRmsCurrentA * load.MotorRmsCurrentA * rig.Leads.MotorOhm);

    // Switches, their edges and diodes, without the receiver supply, whose heat is in what the accessories take.
    private double BridgeW =>
        load.ControllerHeatW - rig.ReceiverSupply.HeatW(busV, rig.ReceiverSupply.MeanOutputA);
}
