using PowerCheck.Model.Courses;
using PowerCheck.Model.Materials;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Wiring;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about copper, magnets and duty cycles.</summary>
internal static class MaterialRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Motor.ResistanceAt"] = check =>
                Of(("resistance", Warm(check.Si("resistance"), check.Si("to")))),
            ["Motor.ResistanceAt/resistivity"] = check =>
                Of(("resistivity", Warm(check.Si("resistivity"), check.Si("to")))),
            ["Copper.AtReference"] = check =>
                Of(
                    (
                        "resistance",
                        Warm(
                            Copper.AtReference(check.Si("resistance"), check.Si("from")),
                            check.Si("to", 20)
                        )
                    )
                ),
            ["Copper.Growth/coefficient"] = check =>
                Of(
                    (
                        "coefficient",
                        (Copper.Growth(check.Si("at") + 1) / Copper.Growth(check.Si("at"))) - 1
                    )
                ),
            ["Copper.Growth/zero"] = _ =>
                Of(("temperature", -Copper.Growth(0) / (Copper.Growth(1) - Copper.Growth(0)))),
            ["Wire.ResistanceOhm/resistivity"] = check =>
                Of(("resistivity", Wire.ResistanceOhm(14, 1, check.Si("at")) * Wire.AreaM2(14))),
            ["Motor.TorqueConstantAt"] = Magnet,
            ["DutyCycle.Rms"] = Duty,
            ["ThermalMemory.TimeToLimit"] = check =>
                Of(
                    (
                        "timeOverTimeConstant",
                        new ThermalMemory(1, 1).TimeToLimit(0, check.Si("loadFactor"))
                    )
                ),
        };

    private static double Warm(double at20, double temperatureC) =>
        Parts.Motor(resistanceOhm: at20).ResistanceAt(temperatureC);

    private static IReadOnlyDictionary<string, double> Duty(PublishedCheck check)
    {
        var pieces = check.Pieces("pieces");
        var rms = DutyCycle.Rms(pieces);
        return Of(("rms", rms), ("peakOverContinuous", pieces.Max(piece => piece.Value) / rms));
    }

    private static IReadOnlyDictionary<string, double> Magnet(PublishedCheck check)
    {
        var motor = Parts.Motor(heat: Parts.Heat(beta: check.Si("coefficient")));
        var hot = motor.TorqueConstantAt(check.Si("to"));
        double Speed(double kt) => MotorDefaults.NoLoadSpeed(1, 0, kt, 0, 0);
        var cold = motor.TorqueConstantAt(20);
        return Of(
            ("torqueFactor", hot / cold),
            ("speedFactor", Speed(hot) / Speed(cold)),
            ("remanence", check.Si("remanence") * hot / cold)
        );
    }
}
