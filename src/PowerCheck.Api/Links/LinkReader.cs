using System.Buffers;
using System.Text.Json;
using Microsoft.Extensions.Primitives;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Links;

/// <summary>
/// Turns the parameters of a link into the JSON of the rig that they say, so that links and bodies pass the same door. The parts
/// that a rig must have are there in every link, empty where nothing is said of them.
/// </summary>
internal static class LinkReader
{
    /// <summary>The word for a list or an object that is there with nothing in it.</summary>
    public const string Empty = "empty";

    private static readonly Shape Root = MemberTable.Of(typeof(CheckRequest));

    /// <summary>Whether a member of a rig is there in every link.</summary>
    public static bool IsPart(string name) => Root.Of(name) is { Required: true, Inner: not null };

    /// <summary>Writes the rig, and notes what of the parameters says nothing of one.</summary>
    /// <param name="parameters">The parameters, without options.</param>
    /// <param name="options">Names of the options beside them, for what is misspelt.</param>
    /// <param name="faults">Where to note it.</param>
    public static ReadOnlyMemory<byte> Read(
        IEnumerable<KeyValuePair<string, StringValues>> parameters,
        IReadOnlyList<string> options,
        Faults faults
    )
    {
        var rig = Parts();
        var texts = new List<string>();
        foreach (var (name, values) in parameters)
        {
            if (
                values.Where(value => !string.IsNullOrWhiteSpace(value)).ToArray() is
                { Length: > 0 } given
            )
            {
                Add(rig, name, given, texts, options, faults);
            }
            // An empty value is a member left out: a form sends all its fields. Its name is to be right all the same.
            else if (RigPath.Walk(Parts(), RigPath.Split(name).Path) is null)
            {
                faults.Add(LinkFaults.Unknown(RigPath.Split(name).Path, options));
            }
        }

        RefuseGaps(rig, faults);
        var text = new ArrayBufferWriter<byte>(1024);
        using (var json = new Utf8JsonWriter(text))
        {
            rig.Write(json, new(texts), faults);
        }

        return text.WrittenMemory;
    }

    private static Branch Parts()
    {
        var rig = new Branch { Path = "" };
        foreach (var name in Root.Names.Where(IsPart))
        {
            rig.In(name, isList: false, isPart: true);
        }

        return rig;
    }

    private static void Add(
        Branch rig,
        string name,
        string?[] given,
        List<string> texts,
        IReadOnlyList<string> options,
        Faults faults
    )
    {
        if (faults.Full)
        {
            faults.Truncate();
            return;
        }

        var (path, symbol) = RigPath.Split(name);
        if (RigPath.Walk(rig, path) is not { } named)
        {
            faults.Add(LinkFaults.Unknown(path, options));
        }
        else if (named.Branch.Leaf is not null || (given.Length > 1 && !IsWords(named)))
        {
            faults.Add(LinkFaults.Doubled(path));
        }
        else if (IsEmptyObject(named, given[0]!))
        {
            named.Branch.IsPart = true;
        }
        else if (FormOf(named, given[0]!) is { } form)
        {
            named.Branch.Leaf = new LinkValue(path, texts.Count, form, symbol);
            texts.Add(string.Join(',', given));
        }
        else
        {
            faults.Add(LinkFaults.NoValue(path, given[0]!, named.IsList));
        }
    }

    // Words of a list may come one by one.
    private static bool IsWords(Named named) => named is { IsList: true, Form: not null };

    // That it is there says nothing against members within, which a form may add.
    private static bool IsEmptyObject(Named named, string given) =>
        given is Empty && named is { IsList: false, Form: null };

    private static TextForm? FormOf(Named named, string given) =>
        given is Empty && named.IsList ? TextForm.NoItems : named.Form;

    private static void RefuseGaps(Branch branch, Faults faults)
    {
        if (branch is { Leaf: not null } && branch.Parts.Any())
        {
            faults.Add(LinkFaults.Both(branch.Path));
        }

        foreach (var (at, (name, part)) in branch.Parts.Index())
        {
            if (branch.IsList && !string.Equals(name, $"{at}", StringComparison.Ordinal))
            {
                faults.Add(LinkFaults.Gap(part.Path, $"{branch.Path}.{at}"));
                return;
            }

            RefuseGaps(part, faults);
        }
    }
}
