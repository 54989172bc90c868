using System.Globalization;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Display;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pages.Forms;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>Every state of the page is a link: these lead to the same rig with one thing changed.</summary>
public sealed class ChangeLinks
{
    private readonly string start;
    private readonly CheckCall call;
    private readonly DisplayUnits units;

    internal ChangeLinks(string start, CheckCall call, DisplayUnits units) =>
        (this.start, this.call, this.units) = (start, call, units);

    /// <summary>The address of the page with a change made; null where it would be too long for one.</summary>
    /// <param name="path">What changes.</param>
    /// <param name="to">Its new value, in the unit of its name.</param>
    public string? To(string path, double to)
    {
        var text = to.ToString("R", CultureInfo.InvariantCulture);
        var parameters = RigLink.Parameters(call).ToList();
        var at = parameters.FindIndex(pair =>
            string.Equals(pair.Path, path, StringComparison.Ordinal)
        );
        if (at < 0)
        {
            parameters.Insert(0, (path, text));
        }
        else
        {
            parameters[at] = (path, text);
        }

        var address = PageAddress.Of(start, RigLink.Joined(parameters), units);
        return address.Length > CheckLinks.Longest ? null : $"{address}#answer";
    }

    /// <summary>What a change is, in a few words.</summary>
    public string Say(RemedyAnswer remedy) =>
        $"{Labels.Whole(remedy.Path)} {units.Show(remedy.From, remedy.Unit)} → {units.Show(remedy.To, remedy.Unit)}";

    /// <summary>What a change leads to.</summary>
    /// <param name="remedy">The change.</param>
    /// <param name="now">The verdict without it.</param>
    public static string Then(RemedyAnswer remedy, string now) =>
        string.Equals(remedy.Verdict, now, StringComparison.Ordinal)
            ? "then this limit holds, but others do not"
            : $"then {remedy.Verdict}";
}
