using PowerCheck.Model.Wiring;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about round copper wire.</summary>
internal static class LeadRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Wire.ResistanceOhm"] = check =>
                Of(
                    (
                        "resistanceOhm",
                        Wire.ResistanceOhm(
                            check.Number("awg"),
                            check.Number("lengthM"),
                            check.Number("temperatureC")
                        )
                    )
                ),
            ["Wire.ResistanceOhm/length"] = Length,
            ["Wire.AdiabaticA"] = check =>
                Of(
                    (
                        "currentA",
                        Wire.AdiabaticA(
                            check.Number("awg"),
                            check.Number("fromC"),
                            check.Number("toC"),
                            check.Number("seconds")
                        )
                    )
                ),
            ["Wire.MeltingA"] = check =>
                Of(("currentA", Wire.MeltingA(check.Number("diameterIn") * 0.0254))),
            ["Wire.MeltingA/gauge"] = check =>
                Of(("currentA", Wire.MeltingA(Wire.DiameterM(check.Number("awg"))))),
            ["Wire.FreeAirA"] = check =>
                Of(
                    (
                        "currentA",
                        Wire.FreeAirA(
                            check.Number("awg"),
                            check.Number("insulationC"),
                            check.Number("ambientC")
                        )
                    )
                ),
            ["Wire.FreeAirA/ratio"] = check =>
                Of(
                    (
                        "ratio",
                        Wire.FreeAirA(check.Number("awg"), 200, 25) / Wire.FreeAirA(14, 200, 25)
                    )
                ),
        };

    private static IReadOnlyDictionary<string, double> Length(PublishedCheck check)
    {
        var awg = check.Number("awg");
        return Of(
            (
                "lengthFt",
                check.Number("lengthFt")
                    * Wire.ResistanceOhm(awg, 1, 20)
                    / Wire.ResistanceOhm(awg, 1, check.Number("temperatureC"))
            )
        );
    }
}
