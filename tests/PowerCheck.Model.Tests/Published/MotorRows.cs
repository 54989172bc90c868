using MathNet.Numerics;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about the motor as a machine.</summary>
internal static class MotorRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["MotorDefaults.Complete"] = Constant,
            ["MotorDefaults.Complete/inductance"] = Inductance,
            ["MotorDefaults.Complete/resistance"] = FromMass,
            ["Motor.SpeedConstantRadPerSPerV"] = check =>
                Of(("kv", Machine(check).SpeedConstantRadPerSPerV)),
            ["Motor.CounterVoltage"] = check =>
                Of(("counter", Machine(check).CounterVoltage(check.Si("speed")))),
            ["Bus.AtDuty"] = check => Of(("stallCurrent", StallA(check))),
            ["Motor.TorqueOf"] = check =>
                check.Has("current")
                    ? Of(("torque", Machine(check).TorqueOf(check.Si("current"), 0)))
                    : Of(("stallTorque", Machine(check).TorqueOf(StallA(check), 0))),
            ["MotorDefaults.NoLoadSpeed"] = check =>
                Of(
                    (
                        "speed",
                        MotorDefaults.NoLoadSpeed(
                            check.Si("voltage"),
                            check.Si("noLoadCurrent"),
                            Kt(check),
                            Resistance(check),
                            0
                        )
                    )
                ),
            ["Motor.CurrentFor"] = check =>
                Of(("current", Machine(check).CurrentFor(check.Si("torque"), 0))),
            ["Motor.SpeedAt"] = Loaded,
            ["Motor.SpeedAt/gradient"] = Gradient,
            ["Motor.CurrentFor/best"] = Best,
            ["Motor.SpinHeatW/balance"] = Balance,
        };

    // From KV or volts by speed through the defaults, as a rig's motor is made.
    private static double Kt(PublishedCheck check) =>
        check.Has("torqueConstant") ? check.Si("torqueConstant")
        : check.Has("fieldConstant") ? check.Si("fieldConstant") * check.Si("fieldCurrent")
        : check.Has("backEmf") ? Complete(1 / check.Si("backEmf"))
        : Complete(check.Si("kv"));

    private static double Complete(double kv) =>
        Filled(new() { SpeedConstantRadPerSPerV = kv }).TorqueConstantNmPerA;

    private static Motor Filled(MotorLabel label, bool slowSwitching = false) =>
        MotorDefaults.Complete(label, 11.1, slowSwitching, new Ledger());

    // A book's phase is half of what is between two terminals.
    private static double Resistance(PublishedCheck check) =>
        check.Has("phaseResistance") ? 2 * check.Si("phaseResistance") : check.Si("resistance", 1);

    private static Motor Machine(PublishedCheck check) =>
        Parts.Motor(Kt(check), Resistance(check), check.Si("noLoadCurrent", 0));

    private static IReadOnlyDictionary<string, double> Constant(PublishedCheck check)
    {
        var kt = Kt(check);
        return Of(("torqueConstant", kt), ("kvBack", Parts.Motor(kt).SpeedConstantRadPerSPerV));
    }

    private static IReadOnlyDictionary<string, double> Inductance(PublishedCheck check)
    {
        var motor = Filled(
            new() { SpeedConstantRadPerSPerV = 100, ResistanceOhm = check.Si("resistance") },
            slowSwitching: true
        );
        return Of(("timeConstant", motor.InductanceH / motor.ResistanceOhm));
    }

    private static IReadOnlyDictionary<string, double> FromMass(PublishedCheck check) =>
        Of(
            (
                "resistance",
                Filled(
                    new()
                    {
                        Kind = Enum.Parse<MotorKind>(check.Word("kind"), ignoreCase: true),
                        SpeedConstantRadPerSPerV = check.Si("kv"),
                        MassKg = check.Si("mass"),
                    }
                ).ResistanceOhm
            )
        );

    private static double StallA(PublishedCheck check) =>
        Bus.AtDuty(
            new Source(check.Si("voltage"), 0),
            Parts.Nothing,
            1,
            1,
            Resistance(check),
            check.Si("counter", 0)
        ).MotorA;

    private static IReadOnlyDictionary<string, double> Loaded(PublishedCheck check)
    {
        var (volt, torque) = (check.Si("voltage"), check.Si("torque"));
        var speed = Machine(check).SpeedAt(volt, Resistance(check), torque);
        var output = torque * speed;
        return Of(
            ("speed", speed),
            ("output", output),
            ("efficiency", output / (volt * check.Si("drawn", double.NaN)))
        );
    }

    private static IReadOnlyDictionary<string, double> Gradient(PublishedCheck check)
    {
        var (motor, volt, r) = (Machine(check), check.Si("voltage"), Resistance(check));
        var lost = motor.SpeedAt(volt, r, 0) - motor.SpeedAt(volt, r, 1);
        return Of(("gradient", lost), ("timeConstant", check.Si("inertia", 0) * lost));
    }

    private static IReadOnlyDictionary<string, double> Best(PublishedCheck check)
    {
        var (motor, volt, r) = (Machine(check), check.Si("voltage"), Resistance(check));
        double Efficiency(double torque) =>
            torque * motor.SpeedAt(volt, r, torque) / (volt * motor.CurrentFor(torque, 0));
        var best = FindMinimum.OfScalarFunctionConstrained(
            torque => -Efficiency(torque),
            1e-3,
            motor.TorqueOf(volt / r, 0),
            1e-9
        );
        return Of(("bestEfficiency", Efficiency(best)), ("bestCurrent", motor.CurrentFor(best, 0)));
    }

    // Iron, stray and friction loss together are the no-load current's, at the document's inner voltage.
    private static IReadOnlyDictionary<string, double> Balance(PublishedCheck check)
    {
        var (volt, current, r, brush) = (
            check.Si("voltage"),
            check.Si("current"),
            check.Si("resistance"),
            check.Si("brushDrop")
        );
        var spin = check.Si("core") + check.Si("stray") + check.Si("friction");
        var motor = Parts.Motor(Kt(check), r, spin / (volt - (current * r) - brush), brushV: brush);
        var torque = motor.TorqueOf(current, 0);
        var speed = motor.SpeedAt(volt, r, torque);
        var output = torque * speed;
        var copper = current * current * motor.ResistanceAt(20);
        return Of(
            ("copper", copper),
            ("brush", current * motor.BrushDropV),
            ("inner", motor.CounterVoltage(speed) - motor.BrushDropV),
            ("speed", speed),
            ("torque", torque),
            ("output", output),
            ("efficiency", output / (volt * current)),
            ("input", output + copper + (brush * current) + motor.SpinHeatW(speed))
        );
    }
}
