using PowerCheck.Model.Accessories;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Vehicles;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Model.Drivetrain;

/// <summary>A rig with every figure filled in: the parts together, and the road. NaN is not known.</summary>
/// <param name="Motor">One of the motors.</param>
/// <param name="Controller">Its controller.</param>
/// <param name="Battery">The pack.</param>
/// <param name="Leads">Leads, connector and fuse.</param>
/// <param name="Vehicle">The chassis.</param>
/// <param name="ReceiverSupply">The receiver supply and what hangs on it.</param>
/// <param name="Road">What it stands on and is asked to do.</param>
public sealed record Rig(
    Motor Motor,
    Controller Controller,
    Battery Battery,
    Leads Leads,
    Vehicle Vehicle,
    ReceiverSupply ReceiverSupply,
    Road Road
)
{
    /// <summary>Resistance of one motor loop without the motor: switches cold and motor leads [Ω].</summary>
    public double LoopOhm => Controller.OnResistanceOhm + Leads.MotorOhm;

    /// <summary>Whether the ripple of switching counts: the inductance is given, or assumed where switching is slow (M3).</summary>
    public bool Ripples => !double.IsNaN(Motor.InductanceH);

    /// <summary>Steepest slope that the tires allow, the asked one at most [rad].</summary>
    public double ClimbSlopeRad => Math.Min(Road.SlopeRad, SlipSlopeRad);

    /// <summary>Slope at which the tires let go [rad].</summary>
    public double SlipSlopeRad => Road.SlipSlopeRad(Road.Friction, Vehicle.DrivenWeightShare);

    /// <summary>Whether a brushless motor runs without a sensor that the controller reads; null when not said.</summary>
    public bool? Sensorless =>
        Motor.Kind == MotorKind.Brushed ? false
        : Motor.Sensored == false || Controller.SensorInput == false ? true
        : Motor.Sensored is null || Controller.SensorInput is null ? null
        : false;

    /// <summary>What stops a sensorless motor from being started or held under control on a slope; null when nothing does.</summary>
    public Obstacle? CannotStart =>
        Sensorless == true && !Controller.LowSpeedStart ? Obstacle.NoSensor : null;

    /// <summary>Whether a sensorless controller no longer knows where the rotor stands: too little back-EMF.</summary>
    /// <param name="speedRadPerS">Motor speed [rad/s].</param>
    public Obstacle? LosesRotor(double speedRadPerS) =>
        Sensorless == true
        && Motor.TorqueConstantNmPerA * speedRadPerS < Controller.LowSpeedBackEmfV
            ? Obstacle.NoSensor
            : null;

    /// <summary>Voltage of the bus at which the controller shuts the motor off [V].</summary>
    public double CutoffV => Controller.CutoffVPerCell * Battery.SeriesCells;

    /// <summary>The source that the controllers see.</summary>
    /// <param name="charge">Charge, 0 to 1.</param>
    /// <param name="lasting">Whether the load lasts longer than a second.</param>
    public Source SourceAt(double charge, bool lasting) =>
        new(
            Battery.OpenCircuitV(charge),
            (lasting ? Battery.LastingResistanceOhm : Battery.ShortResistanceOhm) + Leads.BatteryOhm
        );

    /// <summary>What else than the motors draws from the bus, the controllers' own need included.</summary>
    public AuxiliaryLoad Auxiliary =>
        ReceiverSupply.Load with
        {
            CurrentA =
                ReceiverSupply.Load.CurrentA + (Vehicle.MotorCount * Controller.QuiescentCurrentA),
        };
}
