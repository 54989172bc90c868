using System.Text.Json;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Shortlists;

/// <summary>Where the whole check of the rig with a candidate can be had by a link.</summary>
internal static class CandidateLinks
{
    /// <summary>The links; null when they would be too long.</summary>
    /// <param name="request">The request, by whose address the caller knows the service.</param>
    /// <param name="call">The search.</param>
    /// <param name="id">What the candidate is called.</param>
    public static LinksAnswer? Of(HttpRequest request, ShortlistCall call, string id)
    {
        var part = call
            .Request.Candidates!.Where(
                (one, at) =>
                    string.Equals(ShortlistMapper.Id(one, at), id, StringComparison.Ordinal)
            )
            .First();
        var rig = With(call.Request.Check!, part);
        rig.Id = id;
        return CheckLinks.Of(
            request,
            new(rig, new(AllFindings: false, call.Spread, Remedies: true))
        );
    }

    private static CheckRequest With(CheckRequest check, CandidateRequest part)
    {
        var rig = Copy(check);
        switch (part)
        {
            case { Motor: { } motor }:
                rig.Motor = motor;
                LeaveIntervals(rig, "motor.");
                break;
            case { Controller: { } controller }:
                rig.Controller = controller;
                LeaveIntervals(rig, "controller.");
                break;
            case { Battery: { } battery }:
                rig.Battery = battery;
                LeaveIntervals(rig, "battery.");
                break;
            default:
                rig.Vehicle!.Drivetrain!.PinionTeeth = part.PinionTeeth;
                break;
        }

        return rig;
    }

    // As in the search: a tolerance between two ends is of the part that the check says, and says nothing of another.
    private static void LeaveIntervals(CheckRequest rig, string part)
    {
        var kept = rig
            .Tolerances?.Where(pair =>
                pair.Value.Low is null || !pair.Key.StartsWith(part, StringComparison.Ordinal)
            )
            .ToDictionary(StringComparer.Ordinal);
        rig.Tolerances = kept is { Count: > 0 } ? kept : null;
    }

    private static CheckRequest Copy(CheckRequest check) =>
        JsonSerializer.Deserialize<CheckRequest>(
            JsonSerializer.SerializeToUtf8Bytes(check, JsonForm.Options),
            JsonForm.Options
        )!;
}
