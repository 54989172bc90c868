using System.Collections.Frozen;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>A tolerance names a figure that the rig has, in one way.</summary>
internal static class ToleranceRules
{
    /// <summary>Notes tolerances that say more than one thing, or nothing.</summary>
    public static void Apply(
        IReadOnlyDictionary<string, ToleranceRequest>? tolerances,
        Place place,
        Faults faults
    )
    {
        foreach (
            var (path, tolerance) in tolerances ?? FrozenDictionary<string, ToleranceRequest>.Empty
        )
        {
            var at = place.Path(path);
            if (!OneWay(tolerance) && !faults.Touch(at))
            {
                faults.Add(
                    Conflict(
                        at,
                        $"{at} must be said in one way: relative, factor, absolute, or low and high together."
                    )
                );
            }
        }
    }

    /// <summary>Notes tolerances of what the rig has not; the request must be right but for that.</summary>
    public static void Apply(
        IReadOnlyDictionary<string, ToleranceRequest>? tolerances,
        RigLabel label,
        Place place,
        Faults faults
    )
    {
        if (tolerances is not { Count: > 0 })
        {
            return;
        }

        var filled = RigFill.Of(label, RigCompletion.Of(label));
        var figures = ToleranceMapper.Figures(filled);
        foreach (var (path, tolerance) in tolerances)
        {
            var at = place.Path(path);
            if (!figures.TryGetValue(path, out var figure))
            {
                faults.Add(Unknown(at, path, figures.Keys));
            }
            else if (figure.Read(filled) is not { } si)
            {
                faults.Add(
                    Conflict(
                        at,
                        $"{at} says nothing without {path}, which is neither given nor assumed. Give {path} too, or leave this out.",
                        path
                    )
                );
            }
            else if (Beside(tolerance, figure.Unit.FromSi(si)))
            {
                faults.Add(
                    Conflict(
                        at,
                        $"{at} is from {tolerance.Low} to {tolerance.High} and must hold {path}, which is {figure.Unit.FromSi(si):G6}.",
                        path
                    )
                );
            }
        }
    }

    private static Fault Unknown(string at, string path, IEnumerable<string> known)
    {
        var nearest = Nearest.Of(path, known);
        var cure = nearest is null
            ? "Name a figure of this rig by its path, such as motor.resistanceMilliohm; words and counts have no tolerance."
            : $"Did you mean {nearest}?";
        return new(at, FaultCode.UnknownMember, $"{at} is not known. {cure}") { Nearest = nearest };
    }

    private static Fault Conflict(string at, string message, params string[] related) =>
        new(at, FaultCode.Conflict, message) { Related = related.Length == 0 ? null : related };

    private static bool OneWay(ToleranceRequest tolerance)
    {
        var ends = (tolerance.Low is null, tolerance.High is null);
        double?[] alone = [tolerance.Relative, tolerance.Factor, tolerance.Absolute];
        return (alone.Count(way => way is not null), ends)
            is
                (1, (true, true))
                or
                (0, (false, false));
    }

    private static bool Beside(ToleranceRequest tolerance, double value) =>
        tolerance.Low > value || tolerance.High < value;
}
