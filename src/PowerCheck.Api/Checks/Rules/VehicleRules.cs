using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a vehicle together.</summary>
internal static class VehicleRules
{
    public static void Apply(VehicleRequest? vehicle, Place place)
    {
        if (vehicle is null)
        {
            return;
        }

        place.Needs(
            "tireDiameterPrinted",
            vehicle.TireDiameterPrinted is not null,
            "tireDiameterMm",
            vehicle.TireDiameterMm is not null
        );
        if (vehicle.Drivetrain is { } drivetrain)
        {
            var inner = place.In("drivetrain");
            RatioRules.Apply(drivetrain, inner);
            Efficiency(drivetrain, inner);
            Mesh(drivetrain, inner);
        }
    }

    private static void Efficiency(DrivetrainRequest drivetrain, Place place)
    {
        var stages = drivetrain.SpurStages is not null;
        var axle = drivetrain.AxleGear is not null;
        place.Needs("spurStages", stages, "axleGear", axle);
        place.Needs("axleGear", axle, "spurStages", stages);
    }

    private static void Mesh(DrivetrainRequest drivetrain, Place place)
    {
        Pitch(drivetrain.PinionPitch, place, "pinionPitch");
        Pitch(drivetrain.SpurPitch, place, "spurPitch");
        var (low, high) = (drivetrain.MeshCenterMinMm, drivetrain.MeshCenterMaxMm);
        place.Needs("meshCenterMinMm", low is not null, "meshCenterMaxMm", high is not null);
        place.Needs("meshCenterMaxMm", high is not null, "meshCenterMinMm", low is not null);
        place.Ordered("meshCenterMinMm", low, "meshCenterMaxMm", high);
    }

    private static void Pitch(PitchRequest? pitch, Place place, string member)
    {
        var inner = place.In(member);
        if (pitch is { Diametral: not null, ModuleMm: not null })
        {
            inner.Conflict(
                $"{place.Path(member)} is given in two ways. Give either diametral or moduleMm.",
                ["diametral", "moduleMm"]
            );
        }
        else if (pitch is { Diametral: null, ModuleMm: null } && !place.Broken(member))
        {
            inner.Conflict(
                $"{place.Path(member)} is empty. Give either diametral or moduleMm.",
                ["diametral", "moduleMm"]
            );
        }
    }
}
