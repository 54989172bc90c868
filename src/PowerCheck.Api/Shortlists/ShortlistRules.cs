using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Rules;
using PowerCheck.Api.Door;
using PowerCheck.Model.Shortlists;

namespace PowerCheck.Api.Shortlists;

/// <summary>What ties the members of a search together, beyond the range of each.</summary>
internal static class ShortlistRules
{
    private const string Check = "check";

    /// <summary>Teeth that stand for a pinion that is not known yet, while the rest is looked at.</summary>
    private const int SomeTeeth = 12;

    /// <summary>Notes every rule that the request breaks.</summary>
    /// <param name="request">The request.</param>
    /// <param name="seek">The part that is sought; null when that is wrong.</param>
    /// <param name="faults">Where to note it.</param>
    public static void Apply(ShortlistRequest request, SoughtPart? seek, Faults faults)
    {
        if (seek is not { } part || request.Check is not { } check)
        {
            return;
        }

        faults.Forgive($"{Check}.{Member(part)}");
        if (part == SoughtPart.Pinion)
        {
            Pinion(check, new(faults, $"{Check}.vehicle.drivetrain"));
        }

        CheckRules.Apply(check, faults, Check);
        if (request.Fitted is { } fitted)
        {
            Candidate(fitted, part, new(faults, "fitted"), faults);
        }

        var root = new Place(faults, "");
        var candidates = request.Candidates ?? [];
        for (var n = 0; n < candidates.Count; n++)
        {
            Candidate(candidates[n], part, root.In("candidates", n), faults);
        }

        Named(candidates, root);
    }

    // What two candidates are both called would tell neither.
    private static void Named(IReadOnlyList<CandidateRequest> candidates, Place root)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var n = 0; n < candidates.Count; n++)
        {
            var id = ShortlistMapper.Id(candidates[n], n);
            if (root.In("candidates", n).Broken("id") || places.TryAdd(id, n))
            {
                continue;
            }

            var (one, other) = ($"candidates.{n}.id", $"candidates.{places[id]}.id");
            root.Conflict(
                one,
                $"{one} is {id}, as {other} is. Give each candidate an id of its own; one without is called by its place, from 0.",
                other
            );
        }
    }

    // Which pinion is sought is only of account where it makes the ratio.
    private static void Pinion(CheckRequest check, Place place)
    {
        if (check.Vehicle?.Drivetrain is not { SpurTeeth: not null } drivetrain)
        {
            place.Conflict(
                "spurTeeth",
                $"{place.Path("spurTeeth")} must be given where a pinion is sought, and the ratios of transmission and axle with it."
            );
            return;
        }

        if (drivetrain.OverallRatio is not null)
        {
            place.Conflict(
                "overallRatio",
                $"{place.Path("overallRatio")} leaves nothing for a pinion to change. Give spurTeeth, transmissionRatio and axleRatio in its place.",
                "spurTeeth"
            );
        }

        if (drivetrain.PinionTeeth is not null)
        {
            place.Conflict(
                "pinionTeeth",
                $"{place.Path("pinionTeeth")} is what is sought. Leave it out, or give it as fitted."
            );
        }

        drivetrain.PinionTeeth = SomeTeeth;
    }

    private static void Candidate(
        CandidateRequest candidate,
        SoughtPart part,
        Place place,
        Faults faults
    )
    {
        (SoughtPart Part, bool Given)[] parts =
        [
            (SoughtPart.Motor, candidate.Motor is not null),
            (SoughtPart.Controller, candidate.Controller is not null),
            (SoughtPart.Battery, candidate.Battery is not null),
            (SoughtPart.Pinion, candidate.PinionTeeth is not null),
        ];
        foreach (var (other, given) in parts)
        {
            var path = place.Path(other == SoughtPart.Pinion ? "pinionTeeth" : Member(other));
            if (other == part && !given && !faults.Touch(path))
            {
                faults.Add(
                    new(
                        path,
                        FaultCode.Missing,
                        $"{path} is missing: it is the part that is sought."
                    )
                );
            }
            else if (other != part && given)
            {
                faults.Add(
                    new(
                        path,
                        FaultCode.Conflict,
                        $"{path} is not the part that is sought. Leave it out, or seek it."
                    )
                );
            }
        }

        MotorRules.Apply(candidate.Motor, place.In("motor"));
        ControllerRules.Apply(candidate.Controller, place.In("controller"));
        BatteryRules.Apply(candidate.Battery, place.In("battery"));
    }

    private static string Member(SoughtPart part) =>
        part switch
        {
            SoughtPart.Motor => "motor",
            SoughtPart.Controller => "controller",
            SoughtPart.Battery => "battery",
            _ => "pinion",
        };
}
