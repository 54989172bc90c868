using PowerCheck.Api.Display;

namespace PowerCheck.Api.Pages;

/// <summary>Addresses of states of the page.</summary>
internal static class PageAddress
{
    /// <summary>The address of a rig in units.</summary>
    /// <param name="start">What stands before every address of the service.</param>
    /// <param name="query">The parameters of the rig; may be empty.</param>
    /// <param name="units">The units shown.</param>
    public static string Of(string start, string query, DisplayUnits units)
    {
        string[] all = [.. new[] { query, UnitsOption.Said(units) }.Where(part => part.Length > 0)];
        return all.Length == 0 ? $"{start}/" : $"{start}/?{string.Join('&', all)}";
    }
}
