using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>The gear ratio is given whole, in one way.</summary>
internal static class RatioRules
{
    private const string Pinion = "pinionTeeth";
    private const string Spur = "spurTeeth";
    private const string Transmission = "transmissionRatio";
    private const string Ratios = "ratios";
    private const string Axle = "axleRatio";
    private const string Overall = "overallRatio";

    public static void Apply(DrivetrainRequest drivetrain, Place place)
    {
        var given = Given(drivetrain);
        if (given.Contains(Overall))
        {
            Beside(given, place);
        }
        else if (!place.Broken(Overall))
        {
            Parts(given, place);
        }
    }

    private static List<string> Given(DrivetrainRequest drivetrain)
    {
        var given = new List<string>();
        Note(given, Pinion, drivetrain.PinionTeeth is not null);
        Note(given, Spur, drivetrain.SpurTeeth is not null);
        Note(given, Transmission, drivetrain.TransmissionRatio is not null);
        Note(given, Ratios, drivetrain.Ratios is { Count: > 0 });
        Note(given, Axle, drivetrain.AxleRatio is not null);
        Note(given, Overall, drivetrain.OverallRatio is not null);
        return given;
    }

    private static void Note(List<string> given, string member, bool there)
    {
        if (there)
        {
            given.Add(member);
        }
    }

    /// <summary>Teeth may stand beside an overall ratio, both of them, for the mesh; the other parts may not.</summary>
    private static void Beside(List<string> given, Place place)
    {
        var twice = given.Intersect([Transmission, Ratios, Axle], StringComparer.Ordinal).ToArray();
        if (twice.Length > 0)
        {
            place.Conflict(
                Overall,
                $"The ratio is given twice. Give either overallRatio, or the parts ({string.Join(", ", twice)}) without it.",
                twice
            );
        }

        place.Needs(Pinion, given.Contains(Pinion), Spur, given.Contains(Spur));
        place.Needs(Spur, given.Contains(Spur), Pinion, given.Contains(Pinion));
    }

    private static void Parts(List<string> given, Place place)
    {
        if (given.Contains(Transmission) && given.Contains(Ratios))
        {
            place.NotBoth(Ratios, given: true, Transmission, otherGiven: true);
        }

        var missing = Missing(given, place);
        if (given.Count > 0 && missing.Count > 0)
        {
            place.Conflict(
                $"{place.Here} has the ratio in part: {string.Join(", ", missing)} missing beside {string.Join(", ", given)}. Give all parts, or overallRatio alone.",
                missing.Concat(given)
            );
        }
    }

    private static List<string> Missing(List<string> given, Place place)
    {
        var missing = new List<string>();
        Note(missing, Pinion, !given.Contains(Pinion) && !place.Broken(Pinion));
        Note(missing, Spur, !given.Contains(Spur) && !place.Broken(Spur));
        var gearbox = given.Contains(Transmission) || given.Contains(Ratios);
        Note(
            missing,
            Transmission,
            !gearbox && !place.Broken(Transmission) && !place.Broken(Ratios)
        );
        Note(missing, Axle, !given.Contains(Axle) && !place.Broken(Axle));
        return missing;
    }
}
