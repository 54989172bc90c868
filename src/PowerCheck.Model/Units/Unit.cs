namespace PowerCheck.Model.Units;

/// <summary>
/// A unit as the trade prints it, and its size in SI.
/// Everything inside the model is an SI double (temperatures in °C); a unit is used where a figure comes in
/// and where it is shown.
/// </summary>
/// <param name="Symbol">The printed symbol, such as "mΩ". Empty for a plain number.</param>
/// <param name="Si">The size of one unit in SI, such as 1e-3 for "mΩ".</param>
public sealed record Unit(string Symbol, double Si)
{
    /// <summary>A plain number, without a unit.</summary>
    public static readonly Unit One = new("", 1);

    /// <summary>Electric current, ampere [A].</summary>
    public static readonly Unit Ampere = new("A", 1);

    /// <summary>Electric potential, volt [V].</summary>
    public static readonly Unit Volt = new("V", 1);

    /// <summary>Power, watt [W].</summary>
    public static readonly Unit Watt = new("W", 1);

    /// <summary>Energy, watt-hour [3600 J].</summary>
    public static readonly Unit WattHour = new("Wh", 3600);

    /// <summary>Resistance, milliohm [1e-3 Ω].</summary>
    public static readonly Unit Milliohm = new("mΩ", 1e-3);

    /// <summary>Inductance, microhenry [1e-6 H].</summary>
    public static readonly Unit Microhenry = new("µH", 1e-6);

    /// <summary>Charge, milliampere-hour [3.6 C].</summary>
    public static readonly Unit MilliampereHour = new("mAh", 3.6);

    /// <summary>Speed per volt, revolutions per minute and volt [2π/60 rad/(s·V)].</summary>
    public static readonly Unit RpmPerVolt = new("rpm/V", Math.Tau / 60);

    /// <summary>Rotational speed, revolutions per minute [2π/60 rad/s].</summary>
    public static readonly Unit Rpm = new("rpm", Math.Tau / 60);

    /// <summary>Frequency, hertz [1/s].</summary>
    public static readonly Unit Hertz = new("Hz", 1);

    /// <summary>Time, second [s].</summary>
    public static readonly Unit Second = new("s", 1);

    /// <summary>Time, minute [60 s].</summary>
    public static readonly Unit Minute = new("min", 60);

    /// <summary>Time, hour [3600 s].</summary>
    public static readonly Unit Hour = new("h", 3600);

    /// <summary>Time, nanosecond [1e-9 s].</summary>
    public static readonly Unit Nanosecond = new("ns", 1e-9);

    /// <summary>Temperature, degree Celsius; kept as such inside the model.</summary>
    public static readonly Unit Celsius = new("°C", 1);

    /// <summary>Temperature difference, kelvin [K].</summary>
    public static readonly Unit Kelvin = new("K", 1);

    /// <summary>Temperature coefficient, per kelvin [1/K].</summary>
    public static readonly Unit PerKelvin = new("1/K", 1);

    /// <summary>Thermal resistance, kelvin per watt [K/W].</summary>
    public static readonly Unit KelvinPerWatt = new("K/W", 1);

    /// <summary>Heat capacity, joule per kelvin [J/K].</summary>
    public static readonly Unit JoulePerKelvin = new("J/K", 1);

    /// <summary>Mass, gram [1e-3 kg].</summary>
    public static readonly Unit Gram = new("g", 1e-3);

    /// <summary>Mass, kilogram [kg].</summary>
    public static readonly Unit Kilogram = new("kg", 1);

    /// <summary>Length, millimetre [1e-3 m].</summary>
    public static readonly Unit Millimetre = new("mm", 1e-3);

    /// <summary>Plane angle, degree [π/180 rad].</summary>
    public static readonly Unit Degree = new("°", Math.PI / 180);

    /// <summary>Speed, metre per second [m/s].</summary>
    public static readonly Unit MetrePerSecond = new("m/s", 1);

    /// <summary>Torque, newton-metre [N·m].</summary>
    public static readonly Unit NewtonMetre = new("N·m", 1);

    /// <summary>Wire size, American wire gauge number (ASTM B258); not a linear unit, kept as the number.</summary>
    public static readonly Unit Awg = new("AWG", 1);

    /// <summary>Teeth of a gear.</summary>
    public static readonly Unit Teeth = new("teeth", 1);

    /// <summary>Cells in series or in parallel.</summary>
    public static readonly Unit Cells = new("cells", 1);

    /// <summary>Turns of wire on an armature or a stator tooth.</summary>
    public static readonly Unit Turns = new("turns", 1);

    /// <summary>Discharge rate, multiples of the capacity in one hour [1/h].</summary>
    public static readonly Unit CRate = new("C", 1);

    /// <summary>Turns a figure in this unit into SI.</summary>
    /// <param name="figure">A figure in this unit; NaN stays NaN.</param>
    public double ToSi(double figure) => figure * Si;

    /// <summary>Turns an SI figure into this unit.</summary>
    /// <param name="si">A figure in SI; NaN stays NaN.</param>
    public double FromSi(double si) => si / Si;
}
