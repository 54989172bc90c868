using PowerCheck.Circuit.Switching;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Referee.Tests.Switching;

/// <summary>
/// A rig stripped to a chopper: no friction, no brushes, no leads, nothing else on the pack. Its climb needs a given motor
/// current against a given counter voltage.
/// </summary>
/// <param name="FrequencyHz">Switching frequency [Hz].</param>
/// <param name="LoopS">L/R of the motor's loop [s].</param>
/// <param name="Duty">About which duty the climb is to have, before sag and losses.</param>
/// <param name="Diode">Whether a diode takes the freewheeling current.</param>
internal sealed record ChopperRig(double FrequencyHz, double LoopS, double Duty, bool Diode)
{
    // Three round lithium-ion cells, half charged: 10.521 V (published). The charger's and the lasting resistance are the
    // same, and at 25 °C the temperature counts for nothing.
    private const double SourceV = 3 * 0.835 * 4.2;
    private const double SourceOhm = 0.05;
    private const double WindingOhm = 0.11;
    private const double SwitchOhm = 0.01;
    private const double CurrentA = 12;
    private const double DiodeV = 0.8;
    private const double SpeedConstant = 100;
    private const double TireM = 0.1;
    private const double Ratio = 40;
    private const double Gravity = 9.80665;

    private double CounterV =>
        Duty * SourceV
        - (1 - Duty) * (Diode ? DiodeV : 0)
        - CurrentA * (WindingOhm + SwitchOhm + Duty * SourceOhm);

    /// <summary>What the check says of the climb.</summary>
    public LoadCase Climb() => Check.Run(Label()).LoadCases[LoadCaseName.Climb];

    /// <summary>Whether the check is told the inductance.</summary>
    public bool InductanceTold { get; init; } = true;

    /// <summary>The same point in a circuit that switches, at the check's duty.</summary>
    /// <param name="duty">The duty.</param>
    /// <param name="smoothed">Whether a large capacitor holds the bus.</param>
    public Chopper Circuit(double duty, bool smoothed) =>
        new()
        {
            SourceV = SourceV,
            SourceOhm = SourceOhm,
            LoopOhm = WindingOhm + SwitchOhm,
            SwitchOhm = SwitchOhm,
            InductanceH = LoopS * (WindingOhm + SwitchOhm),
            CounterV = CounterV,
            FrequencyHz = FrequencyHz,
            Duty = duty,
            DiodeV = Diode ? DiodeV : null,
            Smoothed = smoothed,
        };

    public override string ToString() =>
        FormattableString.Invariant(
            $"{FrequencyHz / 1000} kHz, L/R {LoopS * 1e3} ms, duty about {Duty}{(Diode ? ", diode" : "")}"
        );

    // A slope of 30 degrees takes half the weight: m·g/2·(tire/2)/ratio = kt·current.
    private RigLabel Label() =>
        new()
        {
            Motor = new()
            {
                Kind = MotorKind.Brushed,
                SpeedConstantRadPerSPerV = SpeedConstant,
                ResistanceOhm = WindingOhm,
                ResistanceTemperatureC = 20,
                InductanceH = InductanceTold ? LoopS * (WindingOhm + SwitchOhm) : null,
                BrushDropV = 0,
                NoLoadPoints = [new(8, 1e-9)],
                NoLoadStandstillShare = 1,
                MassKg = 0.2,
            },
            Controller = new()
            {
                OnResistanceOhm = SwitchOhm,
                Freewheel = Diode ? Freewheel.Diode : Freewheel.Synchronous,
                PwmFrequencyHz = FrequencyHz,
                EdgeTimeS = 0,
                QuiescentCurrentA = 0,
                ContinuousCurrentA = 60,
            },
            Battery = new()
            {
                Chemistry = Chemistry.Liion,
                SeriesCells = 3,
                CapacityCoulomb = 18_000,
                CellResistanceOhm = SourceOhm / 3,
                ConnectorOhm = 0,
                LastingResistanceFactor = 1,
                TemperatureC = 25,
            },
            Vehicle = new()
            {
                MassKg = CurrentA / SpeedConstant * Ratio * 4 / (TireM * Gravity),
                TireDiameterM = TireM,
                Drivetrain = new() { OverallRatio = Ratio, Efficiency = 1 },
            },
            Course = new()
            {
                AmbientC = 25,
                ClimbSlopeRad = Math.PI / 6,
                CreepSpeedMPerS = CounterV * SpeedConstant / Ratio * (TireM / 2),
                RollingResistanceCoefficient = 0,
                FrictionCoefficient = 2,
            },
            Accessories = [],
            Wiring = new() { BatteryLeadM = 0, MotorLeadM = 0 },
        };
}
