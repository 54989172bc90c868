namespace PowerCheck.Circuit.Switching;

/// <summary>
/// A real chopper: a pack behind its resistance, a switch that opens and closes, a freewheel path and the motor's loop of
/// resistance, inductance and counter voltage. Nothing in it is averaged.
/// </summary>
public sealed record Chopper
{
    /// <summary>Open-circuit voltage of the pack [V].</summary>
    public required double SourceV { get; init; }

    /// <summary>Resistance of pack and battery leads [Ω].</summary>
    public required double SourceOhm { get; init; }

    /// <summary>Resistance of the motor's loop, the switches in the path included [Ω].</summary>
    public required double LoopOhm { get; init; }

    /// <summary>Of that, the resistance of the switches in the path [Ω].</summary>
    public required double SwitchOhm { get; init; }

    /// <summary>Inductance of the loop [H].</summary>
    public required double InductanceH { get; init; }

    /// <summary>Counter voltage of the turning motor [V].</summary>
    public required double CounterV { get; init; }

    /// <summary>Switching frequency [Hz].</summary>
    public required double FrequencyHz { get; init; }

    /// <summary>Share of the time that the switch is closed, over 0 and under 1.</summary>
    public required double Duty { get; init; }

    /// <summary>Drop of the freewheel diode [V]; null for a second switch in its place.</summary>
    public double? DiodeV { get; init; }

    /// <summary>Whether a capacitor, large against the switching period, holds the bus.</summary>
    public required bool Smoothed { get; init; }

    /// <summary>Time of one switching [s].</summary>
    public double PeriodS => 1 / FrequencyHz;

    /// <summary>Time constant of the loop [s].</summary>
    public double LoopS => InductanceH / LoopOhm;
}

/// <summary>A chopper in the state that repeats itself.</summary>
/// <param name="MotorA">Mean motor current [A].</param>
/// <param name="RippleMeanSquareA2">Mean square of the motor current less the square of its mean [A²].</param>
/// <param name="BatteryA">Mean battery current [A].</param>
/// <param name="BatteryRmsA">Root mean square battery current [A].</param>
/// <param name="LeastMotorA">Lowest motor current [A]: nothing where the conduction is discontinuous.</param>
public sealed record ChopperFigures(
    double MotorA,
    double RippleMeanSquareA2,
    double BatteryA,
    double BatteryRmsA,
    double LeastMotorA
);
