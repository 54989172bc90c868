using PowerCheck.Model.Courses;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about copper, magnets, insulation and duty cycles.</summary>
internal static class MaterialRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Motor.ResistanceAt"] = check =>
                Of(
                    (
                        "resistanceOhm",
                        Parts
                            .Motor(resistanceOhm: check.Number("resistanceOhm"))
                            .ResistanceAt(check.Number("toC"))
                    )
                ),
            ["Copper.AtReference"] = check =>
                Of(
                    (
                        "resistanceOhm",
                        Parts
                            .Motor(
                                resistanceOhm: Copper.AtReference(
                                    check.Number("resistanceOhm"),
                                    check.Number("fromC")
                                )
                            )
                            .ResistanceAt(check.Number("toC", 20))
                    )
                ),
            ["Copper.Growth/coefficient"] = check =>
                Of(
                    (
                        "coefficientPerK",
                        (
                            Copper.Growth(check.Number("atC") + 1)
                            / Copper.Growth(check.Number("atC"))
                        ) - 1
                    )
                ),
            ["Motor.TorqueConstantAt"] = Magnet,
            ["MotorHeatDefaults.ClassC"] = check =>
                Of(
                    (
                        "temperatureC",
                        MotorHeatDefaults.ClassC(Enum.Parse<InsulationClass>(check.Word("class")))
                    )
                ),
            ["DutyCycle.Rms"] = check => Of(("rms", DutyCycle.Rms(check.Pieces("pieces")))),
            ["ThermalMemory.TimeToLimit"] = check =>
                Of(
                    (
                        "timeOverTimeConstant",
                        new ThermalMemory(1, 1).TimeToLimit(0, check.Number("loadFactor"))
                    )
                ),
        };

    private static IReadOnlyDictionary<string, double> Magnet(PublishedCheck check)
    {
        var motor = Parts.Motor(heat: Parts.Heat(beta: check.Number("coefficientPerK")));
        var hot = motor.TorqueConstantAt(check.Number("toC"));
        double Speed(double kt) => MotorDefaults.NoLoadSpeed(1, 0, kt, 0, 0);
        var cold = motor.TorqueConstantAt(20);
        return Of(
            ("torqueFactor", hot / cold),
            ("speedFactor", Speed(hot) / Speed(cold)),
            ("remanenceT", check.Number("remanenceT", double.NaN) * hot / cold)
        );
    }
}
