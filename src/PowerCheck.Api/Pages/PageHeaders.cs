namespace PowerCheck.Api.Pages;

/// <summary>What browsers are told about the pages: nothing is fetched from elsewhere, nothing leaves.</summary>
internal static class PageHeaders
{
    private const string Own =
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'";

    /// <summary>Sets them.</summary>
    /// <param name="headers">The answer's headers.</param>
    /// <param name="ancestors">Who may put the page into a frame, as a policy lists them.</param>
    public static void Set(IHeaderDictionary headers, string ancestors = "'none'")
    {
        headers.ContentSecurityPolicy = $"{Own}; frame-ancestors {ancestors}";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "geolocation=(), camera=(), microphone=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
    }
}
