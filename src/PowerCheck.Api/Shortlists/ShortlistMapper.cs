using System.Globalization;
using PowerCheck.Api.Checks.Mapping;
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
            { Motor: { } motor } => open with { Motor = MotorMapper.Map(motor) },
            { Controller: { } controller } => open with
            {
                Controller = ControllerMapper.Map(controller),
            },
            { Battery: { } battery } => open with { Battery = BatteryMapper.Map(battery) },
            _ => WithPinion(open, part.PinionTeeth),
        };

    private static RigLabel WithPinion(RigLabel rig, int? teeth) =>
        rig with
        {
            Vehicle = rig.Vehicle with
            {
                Drivetrain = rig.Vehicle.Drivetrain with { PinionTeeth = teeth },
            },
        };

    /// <summary>The rigs with each candidate.</summary>
    /// <param name="request">The search.</param>
    /// <param name="open">The rig without the part.</param>
    public static IReadOnlyList<Candidate> Candidates(ShortlistRequest request, RigLabel open) =>
        [
            .. (request.Candidates ?? []).Select(
                (part, n) =>
                    new Candidate(
                        part.Id ?? n.ToString(CultureInfo.InvariantCulture),
                        With(open, part)
                    )
            ),
        ];
}
