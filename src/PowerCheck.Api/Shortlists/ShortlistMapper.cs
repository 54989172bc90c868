using System.Globalization;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Shortlists;

namespace PowerCheck.Api.Shortlists;

/// <summary>Turns a search that passed the door into rigs of the model.</summary>
internal static class ShortlistMapper
{
    /// <summary>The rig without the part that is sought.</summary>
    /// <param name="request">The search.</param>
    /// <param name="seek">The part that is sought.</param>
    public static RigLabel Open(ShortlistRequest request, SoughtPart seek)
    {
        var rig = RigMapper.Map(request.Check ?? new());
        // The door put some teeth there, so that the rest of the drivetrain could be looked at.
        return seek == SoughtPart.Pinion ? WithPinion(rig, null) : rig;
    }

    /// <summary>The rig with a part in the open place.</summary>
    /// <param name="open">The rig without it.</param>
    /// <param name="part">The part.</param>
    public static RigLabel With(RigLabel open, CandidateRequest part) =>
        part switch
        {
            { Motor: { } motor } => WithoutIntervals(open, "motor.") with
            {
                Motor = MotorMapper.Map(motor),
            },
            { Controller: { } controller } => WithoutIntervals(open, "controller.") with
            {
                Controller = ControllerMapper.Map(controller),
            },
            { Battery: { } battery } => WithoutIntervals(open, "battery.") with
            {
                Battery = BatteryMapper.Map(battery),
            },
            _ => WithPinion(open, part.PinionTeeth),
        };

    // A tolerance between two ends is of the part that the check says, and says nothing of another.
    private static RigLabel WithoutIntervals(RigLabel rig, string part) =>
        rig with
        {
            Tolerances = rig
                .Tolerances.Where(tolerance =>
                    tolerance.Value.Kind != SpreadKind.Interval
                    || !tolerance.Key.StartsWith(part, StringComparison.Ordinal)
                )
                .ToDictionary(StringComparer.Ordinal),
        };

    private static RigLabel WithPinion(RigLabel rig, int? teeth) =>
        rig with
        {
            Vehicle = rig.Vehicle with
            {
                Drivetrain = rig.Vehicle.Drivetrain with { PinionTeeth = teeth },
            },
        };

    /// <summary>What a candidate is called: as its caller does, else by its place.</summary>
    /// <param name="part">The candidate.</param>
    /// <param name="place">Its place, from 0.</param>
    public static string Id(CandidateRequest part, int place) =>
        part.Id ?? place.ToString(CultureInfo.InvariantCulture);

    /// <summary>The rigs with each candidate.</summary>
    /// <param name="request">The search.</param>
    /// <param name="open">The rig without the part.</param>
    public static IReadOnlyList<Candidate> Candidates(ShortlistRequest request, RigLabel open) =>
        [
            .. (request.Candidates ?? []).Select(
                (part, n) => new Candidate(Id(part, n), With(open, part))
            ),
        ];
}
