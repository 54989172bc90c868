using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Links;

/// <summary>What can be wrong with a link as such.</summary>
internal static class LinkFaults
{
    /// <summary>A parameter that names nothing of a rig.</summary>
    public static Fault Unknown(string path, IReadOnlyList<string> options)
    {
        var nearest = RigPath.Nearest(path) ?? Nearest.Of(path, options);
        var cure = nearest is null
            ? "The document at /openapi/v1.json has the members of a rig; a parameter is their names joined by dots."
            : $"Did you mean {nearest}?";
        return new(
            Walk.Cut(path),
            FaultCode.UnknownMember,
            $"{Walk.Cut(path)} is no value of a rig and no option. {cure}"
        )
        {
            Nearest = nearest,
        };
    }

    /// <summary>A parameter that is there more than once, perhaps with another unit.</summary>
    public static Fault Doubled(string path) =>
        new(
            Walk.Cut(path),
            FaultCode.Doubled,
            $"{Walk.Cut(path)} is given more than once. Give it once."
        );

    /// <summary>A text for what holds members or items.</summary>
    public static Fault NoValue(string path, string given, bool isList) =>
        new(
            path,
            FaultCode.WrongType,
            isList
                ? $"{path} is a list. Give its items, from {path}.0 on, or {LinkReader.Empty} where there are none."
                : $"{path} holds members. Give them as {path}. and their names, or {LinkReader.Empty} where nothing is known."
        )
        {
            Given = Walk.Cut(given),
        };

    /// <summary>Something that is empty and not.</summary>
    public static Fault Both(string path) =>
        new(
            path,
            FaultCode.Doubled,
            $"{path} is given and also what is within it. Give one or the other."
        );

    /// <summary>A list with items left out.</summary>
    public static Fault Gap(string path, string left) =>
        new(
            path,
            FaultCode.Conflict,
            $"{path} is given and {left} is not. Number the items of a list from 0 on."
        )
        {
            Related = [left],
        };
}
