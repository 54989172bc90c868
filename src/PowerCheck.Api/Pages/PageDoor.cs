using PowerCheck.Api.Checks;
using PowerCheck.Api.Display;
using PowerCheck.Api.Door;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Links;
using PowerCheck.Api.Paths;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Pages;

/// <summary>Reads what an address of a page says.</summary>
internal sealed class PageDoor(LinkDoor links)
{
    private static readonly string[] Others = [UnitsOption.Name, FormOption.Name];
    private static readonly string[] Forms = ["html"];

    /// <summary>Whether the address says something of a rig.</summary>
    public bool IsFilled(IQueryCollection query) => Members(query).Any(pair => pair.IsGiven);

    /// <summary>Whether it was made by a form, which sends empty fields and units behind names.</summary>
    public bool IsSubmitted(IQueryCollection query) =>
        query.Any(pair => string.IsNullOrWhiteSpace(pair.Value))
        || Members(query).Any(pair => RigPath.Split(pair.Name).Symbol is not null);

    /// <summary>The rig, how it is checked, and the units.</summary>
    /// <param name="query">The query.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public (CheckCall Call, DisplayUnits Units) Read(IQueryCollection query, Faults faults)
    {
        var units = UnitsOption.Of(query, faults);
        QueryDoor.Word(query, FormOption.Name, Forms, faults);
        return (links.Read(query, Others, faults), units);
    }

    /// <summary>The units, and what is wrong with the options, where nothing is said of a rig.</summary>
    /// <param name="query">The query.</param>
    /// <param name="faults">Where to note what is wrong.</param>
    public static DisplayUnits ReadEmpty(IQueryCollection query, Faults faults)
    {
        QueryDoor.RefuseDoubled(query, [.. CheckOptions.Names, .. Others], faults);
        CheckOptions.Of(query, faults);
        QueryDoor.Word(query, FormOption.Name, Forms, faults);
        return UnitsOption.Of(query, faults);
    }

    /// <summary>Sets the tag of an answer.</summary>
    /// <param name="context">The request.</param>
    /// <param name="call">What is asked.</param>
    /// <param name="form">What shapes the answer beside it.</param>
    /// <returns>Whether the caller has it already.</returns>
    public static bool IsKnown(HttpContext context, CheckCall call, string form)
    {
        var tag = CheckTag.Of(call, form);
        context.Response.GetTypedHeaders().ETag = tag;
        return CheckTag.IsKnown(context.Request, tag);
    }

    private IEnumerable<(string Name, bool IsGiven)> Members(IQueryCollection query) =>
        links
            .Members(query, [.. CheckOptions.Names, .. Others])
            .Select(pair => (pair.Key, pair.Value.Any(value => !string.IsNullOrWhiteSpace(value))));
}
