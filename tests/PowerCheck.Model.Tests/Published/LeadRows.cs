using PowerCheck.Model.Wiring;
using static PowerCheck.Model.Tests.Published.PublishedFunctions;

namespace PowerCheck.Model.Tests.Published;

/// <summary>Rows about round copper wire.</summary>
internal static class LeadRows
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new Dictionary<string, Answer>(StringComparer.Ordinal)
        {
            ["Wire.ResistanceOhm"] = check => Of(("perLength", PerMetre(check))),
            ["Wire.ResistanceOhm/length"] = Length,
            ["Wire.AreaM2"] = check =>
                Of(
                    ("diameter", Wire.DiameterM(check.Si("awg"))),
                    ("area", Wire.AreaM2(check.Si("awg"))),
                    ("perLength", PerMetre(check))
                ),
            ["Wire.AdiabaticA"] = check => Of(("current", Adiabatic(check, check.Si("awg")))),
            ["Wire.AdiabaticA/constant"] = Constant,
            ["Wire.MeltingA"] = check => Of(("current", Wire.MeltingA(check.Si("diameter")))),
            ["Wire.MeltingA/gauge"] = check =>
                Of(("current", Wire.MeltingA(Wire.DiameterM(check.Si("awg"))))),
            ["Wire.FreeAirA"] = check =>
                Of(
                    (
                        "current",
                        Wire.FreeAirA(check.Si("awg"), check.Si("insulation"), check.Si("ambient"))
                    )
                ),
            ["Wire.FreeAirA/column"] = check =>
                Of(
                    (
                        "current",
                        32 * Wire.FreeAirA(check.Si("awg"), 200, 25) / Wire.FreeAirA(14, 200, 25)
                    )
                ),
        };

    private static double PerMetre(PublishedCheck check) =>
        Wire.ResistanceOhm(check.Si("awg"), 1, check.Si("temperature"));

    private static double Adiabatic(PublishedCheck check, double awg) =>
        Wire.AdiabaticA(awg, check.Si("from"), check.Si("to"), check.Si("time"));

    // (I/A)²·t over log₁₀((T2 + 234)/(T1 + 234)), A in circular mils.
    private static IReadOnlyDictionary<string, double> Constant(PublishedCheck check)
    {
        var mils = PrintedUnit.Of("cmil").FromSi(Wire.AreaM2(14));
        var log = Math.Log10((check.Si("to") + 234) / (check.Si("from") + 234));
        return Of(("constant", Math.Pow(Adiabatic(check, 14) / mils, 2) * check.Si("time") / log));
    }

    private static IReadOnlyDictionary<string, double> Length(PublishedCheck check) =>
        Of(
            (
                "length",
                check.Si("length") * Wire.ResistanceOhm(check.Si("awg"), 1, 20) / PerMetre(check)
            )
        );
}
