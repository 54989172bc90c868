using System.Text.Json.Nodes;
using CsCheck;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Bodies with some members drawn within their ranges.</summary>
internal static class DrawnBody
{
    /// <summary>Some members, and where in its range each lies.</summary>
    public static Gen<(string Path, double Share)[]> Members { get; } =
        Gen.Select(
            Gen.OneOf([.. RequestMembers.All.Select(member => Gen.Const(member.Path))]),
            Gen.Double[0, 1]
        ).Array[1, 12];

    /// <summary>A small or a usual rig with these members.</summary>
    public static JsonObject Of((string Path, double Share)[] members)
    {
        var body = members.Length % 2 == 0 ? Rigs.Example() : Rigs.Smallest();
        foreach (var (path, share) in members)
        {
            body.With(path, InRange(RequestMembers.Of(path), share));
        }

        return body;
    }

    private static JsonNode InRange(RequestMember member, double share)
    {
        if (member.Figure is not { } figure)
        {
            return member.Words is { } words
                ? words.Allowed[(int)(share * 0.999 * words.Allowed.Count)]
                : member.Example;
        }

        var value =
            figure.Minimum > 0
                ? figure.Minimum * Math.Pow(figure.Maximum / figure.Minimum, share)
                : figure.Minimum + share * (figure.Maximum - figure.Minimum);
        return Math.Clamp(member.Whole ? Math.Round(value) : value, figure.Minimum, figure.Maximum);
    }
}
