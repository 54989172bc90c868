using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Pipeline;

namespace PowerCheck.Api.Links;

/// <summary>Where a check can be had by a link.</summary>
internal static class CheckLinks
{
    /// <summary>Address of checks.</summary>
    public const string Checks = "/v1/checks";

    /// <summary>Longest link that is given; longer ones do not pass every server and program on their way.</summary>
    public const int Longest = 8000;

    /// <summary>The links; null when they would be too long, or the caller named no host.</summary>
    /// <param name="request">The request, by whose address the caller knows the service.</param>
    /// <param name="call">What is asked.</param>
    public static LinksAnswer? Of(HttpRequest request, CheckCall call)
    {
        if (ServiceAddress.Of(request) is not { } service)
        {
            return null;
        }

        var query = RigLink.Query(call);
        var self = $"{service}{Checks}?{query}";
        var links = new LinksAnswer
        {
            Self = self,
            Page = $"{service}/?{query}",
            Text = In("text"),
            Svg = In("svg"),
            Png = In("png"),
        };
        return links.Text.Length > Longest ? null : links;

        string In(string form) => $"{self}&{FormOption.Name}={form}";
    }
}
