using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Vehicles;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about what the model takes where nothing is given.</summary>
internal static class DefaultRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["MotorHeatDefaults.ClassC"] = check =>
                Of(("temperature", MotorHeatDefaults.ClassC(Class(check)))),
            ["MotorHeatDefaults.Complete/rise"] = check =>
                Of(
                    (
                        "rise",
                        Heat(new() { Insulation = Class(check) }).WindingLimitC
                            - check.Si("ambient")
                    )
                ),
            ["MotorHeatDefaults.Complete/magnet"] = Magnet,
            ["MotorHeatDefaults.Complete/surface"] = Surface,
            ["MotorHeatDefaults.Complete/heat"] = HeatCapacity,
            ["MotorNodes.TouchLimitC"] = _ => Of(("limit", MotorNodes.TouchLimitC)),
            ["MotorCan.SurfaceM2"] = check => Of(("surface", Can(check).SurfaceM2)),
            ["Controller.HotResistanceOhm"] = Switches,
            ["VehicleDefaults.Complete/stage"] = Stage,
            ["BatteryDefaults.Complete/resistance"] = check =>
                Of(
                    (
                        "resistance",
                        BatteryRows
                            .Pack(check, new() { CapacityCoulomb = check.Si("capacity") })
                            .CellResistanceOhm
                    )
                ),
            ["BatteryDefaults.Complete/limit"] = check =>
                Of(
                    ("limit", BatteryRows.Pack(check, new()).LimitC),
                    ("exponent", BatteryRows.Pack(check, new()).PeukertExponent)
                ),
            ["BatteryDefaults.Complete/film"] = Film,
        };

    private static InsulationClass Class(PublishedCheck check) =>
        Enum.Parse<InsulationClass>(check.Word("class"));

    private static MotorCan Can(PublishedCheck check) =>
        new(check.Si("mass", 1), check.Si("diameter", 0.036), check.Si("length", 0.05));

    private static MotorHeat Heat(
        MotorLabel label,
        MagnetMaterial magnet = MagnetMaterial.Ndfeb,
        MotorCan? can = null
    ) =>
        MotorHeatDefaults.Complete(
            label,
            MotorKind.Brushless,
            magnet,
            can ?? new(0.1, 0.036, 0.05),
            new Ledger()
        );

    private static IReadOnlyDictionary<string, double> Magnet(PublishedCheck check)
    {
        var heat = Heat(new(), Enum.Parse<MagnetMaterial>(check.Word("magnet"), ignoreCase: true));
        return Of(("coefficient", heat.MagnetCoefficientPerK), ("limit", heat.MagnetLimitC));
    }

    private static IReadOnlyDictionary<string, double> Surface(PublishedCheck check)
    {
        var can = Can(check);
        var outward = Heat(new(), can: can).CaseToAmbientKPerW;
        return Of(("caseToAmbient", outward), ("film", 1 / (outward * can.SurfaceM2)));
    }

    // The winding of a brushless motor is a fifth of its mass, the rest is the case's.
    private static IReadOnlyDictionary<string, double> HeatCapacity(PublishedCheck check)
    {
        var can = Can(check);
        var heat = Heat(new(), can: can);
        return Of(
            ("copper", heat.WindingJPerK / (0.2 * can.MassKg)),
            ("rest", heat.CaseJPerK / (0.8 * can.MassKg))
        );
    }

    private static IReadOnlyDictionary<string, double> Switches(PublishedCheck check)
    {
        var controller = Parts.Controller(new() { ContinuousCurrentA = check.Si("current") });
        return Of(("factor", controller.HotResistanceOhm / controller.OnResistanceOhm));
    }

    // A spur stage is what one more of them leaves; an axle stands alone.
    private static IReadOnlyDictionary<string, double> Stage(PublishedCheck check)
    {
        if (check.Has("spurStages"))
        {
            var stages = (int)check.Si("spurStages");
            return Of(
                ("efficiency", Gears(stages, AxleGear.Bevel) / Gears(stages - 1, AxleGear.Bevel))
            );
        }

        var axle = Enum.Parse<AxleGear>(check.Word("axle"), ignoreCase: true);
        return Of(("efficiency", Gears(0, axle)));
    }

    private static double Gears(int spurStages, AxleGear axle) =>
        VehicleDefaults
            .Complete(
                new()
                {
                    MassKg = 3,
                    Drivetrain = new() { SpurStages = spurStages, AxleGear = axle },
                },
                new Ledger()
            )
            .Gearing.Efficiency;

    private static IReadOnlyDictionary<string, double> Film(PublishedCheck check)
    {
        var mass = check.Si("mass");
        var pack = Parts.Battery(new() { MassKg = mass });
        return Of(
            ("film", 1 / (pack.PackToAmbientKPerW * BatteryDefaults.SurfaceM2(mass))),
            ("heat", pack.HeatJPerK / mass)
        );
    }
}
