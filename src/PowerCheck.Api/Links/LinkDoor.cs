using Microsoft.Extensions.Primitives;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Links;

/// <summary>Reads everything that a link says, as strictly as a body.</summary>
internal sealed class LinkDoor(QueryDoor queries)
{
    /// <summary>The rig and how it is checked.</summary>
    /// <param name="query">The query.</param>
    /// <param name="others">Names of the options that are read elsewhere.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public CheckCall Read(IQueryCollection query, IReadOnlyList<string> others, Faults faults)
    {
        string[] options = [.. CheckOptions.Names, .. others];
        QueryDoor.RefuseDoubled(query, options, faults);
        var body = LinkReader.Read(Members(query, options), options, faults);
        var (call, _) = CheckDoor.Read(body.Span, CheckOptions.Of(query, faults), faults);
        Forgive(faults);
        return call;
    }

    /// <summary>The parameters that say something of the rig.</summary>
    /// <param name="query">The query.</param>
    /// <param name="options">Names of the options.</param>
    public IEnumerable<KeyValuePair<string, StringValues>> Members(
        IQueryCollection query,
        IReadOnlyList<string> options
    ) =>
        query.Where(pair =>
            !options.Contains(pair.Key, StringComparer.Ordinal) && !queries.IsPassed(pair.Key)
        );

    // What could not be read is not missing as well.
    private static void Forgive(Faults faults)
    {
        foreach (
            var path in faults
                .All.Where(fault => fault.Code is not FaultCode.Missing)
                .Select(fault => fault.Path)
                .ToArray()
        )
        {
            faults.Forgive(path);
        }
    }
}
