using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a course's segments together.</summary>
internal static class CourseRules
{
    public static void Apply(CourseRequest? course, Place place)
    {
        var segments = course?.Segments ?? [];
        for (var at = 0; at < segments.Count; at++)
        {
            if (segments[at].Kind is { } kind)
            {
                Segment(segments[at], kind, place.In("segments", at));
            }
        }
    }

    private static void Segment(SegmentRequest segment, string kind, Place place)
    {
        Belongs(place, "slopeDegrees", segment.SlopeDegrees, kind, kind is "creep" or "hold");
        Belongs(place, "speedMPerS", segment.SpeedMPerS, kind, kind is "creep");
        Belongs(place, "throttle", segment.Throttle, kind, kind is "jammed");
        if (kind is "jammed" && segment.Throttle is null && !place.Broken("throttle"))
        {
            place.Conflict(
                "throttle",
                $"{place.Path("throttle")} is needed when kind is jammed. Give it from 0 to 1.",
                "kind"
            );
        }
    }

    private static void Belongs(
        Place place,
        string member,
        double? value,
        string kind,
        bool belongs
    )
    {
        if (value is not null && !belongs)
        {
            place.Conflict(
                member,
                $"{place.Path(member)} does not belong to a segment of kind {kind}. Leave it out or change the kind.",
                "kind"
            );
        }
    }
}
