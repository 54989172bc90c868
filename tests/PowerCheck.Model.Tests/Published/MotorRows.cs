using MathNet.Numerics;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about the motor as a machine.</summary>
internal static class MotorRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["MotorDefaults.Complete"] = Constant,
            ["Motor.SpeedConstantRadPerSPerV"] = check =>
                Of(
                    (
                        "kvRpmPerVolt",
                        Unit.RpmPerVolt.FromSi(Machine(check).SpeedConstantRadPerSPerV)
                    )
                ),
            ["Bus.AtDuty"] = check => Of(("stallCurrentA", StallA(check))),
            ["Motor.TorqueOf"] = check =>
                check.Has("currentA")
                    ? Of(("torqueNm", Machine(check).TorqueOf(check.Number("currentA"), 0)))
                    : Of(("stallTorqueNm", Machine(check).TorqueOf(StallA(check), 0))),
            ["MotorDefaults.NoLoadSpeed"] = check =>
                Of(
                    (
                        "speedRpm",
                        Unit.Rpm.FromSi(
                            MotorDefaults.NoLoadSpeed(
                                check.Number("voltageV"),
                                check.Number("noLoadCurrentA"),
                                Kt(check),
                                check.Number("resistanceOhm"),
                                0
                            )
                        )
                    )
                ),
            ["Motor.CurrentFor"] = check =>
                Of(("currentA", Machine(check).CurrentFor(check.Number("torqueNm"), 0))),
            ["Motor.SpeedAt"] = Loaded,
            ["Motor.SpeedAt/gradient"] = Gradient,
            ["Motor.CurrentFor/best"] = Best,
            ["Motor.SpinHeatW/balance"] = Balance,
        };

    private static double Kt(PublishedCheck check) =>
        check.Has("torqueConstantNmPerA") ? check.Number("torqueConstantNmPerA")
        : check.Has("backEmfVPerKrpm")
            ? Complete(1 / Unit.Rpm.ToSi(1 / (check.Number("backEmfVPerKrpm") / 1000)))
        : Complete(1 / Unit.RpmPerVolt.ToSi(check.Number("kvRpmPerVolt")));

    // Through the defaults, as a rig's motor is made.
    private static double Complete(double ktNmPerA) =>
        MotorDefaults
            .Complete(
                new MotorLabel { SpeedConstantRadPerSPerV = 1 / ktNmPerA },
                11.1,
                false,
                new Ledger()
            )
            .TorqueConstantNmPerA;

    private static Motor Machine(PublishedCheck check) =>
        Parts.Motor(Kt(check), check.Number("resistanceOhm", 1), check.Number("noLoadCurrentA", 0));

    private static IReadOnlyDictionary<string, double> Constant(PublishedCheck check)
    {
        var kt = Kt(check);
        return Of(
            ("torqueConstantNmPerA", kt),
            ("kvBackRpmPerVolt", Unit.RpmPerVolt.FromSi(Parts.Motor(kt).SpeedConstantRadPerSPerV))
        );
    }

    private static double StallA(PublishedCheck check) =>
        Bus.AtDuty(
            new Source(check.Number("voltageV"), 0),
            Parts.Nothing,
            1,
            1,
            check.Number("resistanceOhm"),
            check.Number("counterV", 0)
        ).MotorA;

    private static IReadOnlyDictionary<string, double> Loaded(PublishedCheck check)
    {
        var (volt, torque) = (check.Number("voltageV"), check.Number("torqueNm"));
        var speed = Machine(check).SpeedAt(volt, check.Number("resistanceOhm"), torque);
        var output = torque * speed;
        return Of(
            ("speedRpm", Unit.Rpm.FromSi(speed)),
            ("outputW", output),
            ("efficiency", output / (volt * check.Number("drawnA", double.NaN)))
        );
    }

    private static IReadOnlyDictionary<string, double> Gradient(PublishedCheck check)
    {
        var (motor, volt, r) = (
            Machine(check),
            check.Number("voltageV"),
            check.Number("resistanceOhm")
        );
        var lost = motor.SpeedAt(volt, r, 0) - motor.SpeedAt(volt, r, 1);
        return Of(
            ("gradientRpmPerMilliNm", Unit.Rpm.FromSi(lost) / 1000),
            ("timeConstantMs", check.Number("inertiaGramCm2", 0) * 1e-7 * lost * 1000)
        );
    }

    private static IReadOnlyDictionary<string, double> Best(PublishedCheck check)
    {
        var (motor, volt, r) = (
            Machine(check),
            check.Number("voltageV"),
            check.Number("resistanceOhm")
        );
        double Efficiency(double torque) =>
            torque * motor.SpeedAt(volt, r, torque) / (volt * motor.CurrentFor(torque, 0));
        var best = FindMinimum.OfScalarFunctionConstrained(
            torque => -Efficiency(torque),
            1e-3,
            motor.TorqueOf(volt / r, 0),
            1e-9
        );
        return Of(
            ("bestEfficiency", Efficiency(best)),
            ("bestCurrentA", motor.CurrentFor(best, 0))
        );
    }

    // Iron, stray and friction loss together are the no-load current's.
    private static IReadOnlyDictionary<string, double> Balance(PublishedCheck check)
    {
        var (volt, current, r, brush) = (
            check.Number("voltageV"),
            check.Number("currentA"),
            check.Number("resistanceOhm"),
            check.Number("brushDropV")
        );
        var inner = volt - (current * r) - brush;
        var spin = check.Number("coreW") + check.Number("strayW") + check.Number("frictionW");
        var motor = Parts.Motor(
            inner / Unit.Rpm.ToSi(check.Number("speedRpm")),
            r,
            spin / inner,
            brushV: brush
        );
        var torque = motor.TorqueOf(current, 0);
        var speed = motor.SpeedAt(volt, r, torque);
        var output = torque * speed;
        return Of(
            ("speedRpm", Unit.Rpm.FromSi(speed)),
            ("torqueNm", torque),
            ("outputW", output),
            ("efficiency", output / (volt * current)),
            (
                "inputW",
                output + (current * current * r) + (brush * current) + motor.SpinHeatW(speed)
            )
        );
    }
}
