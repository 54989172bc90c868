namespace PowerCheck.Api.Problems;

/// <summary>The kinds of problem that the service has.</summary>
internal static class ProblemKinds
{
    public static readonly ProblemKind Malformed = Kind(
        "malformed",
        400,
        "The request cannot be read",
        "The body is empty or not JSON text. Line and column say where reading stopped. Comments, trailing commas and text after the end are not JSON."
    );

    public static readonly ProblemKind NotFound = Kind(
        "not-found",
        404,
        "Nothing is there",
        "The address is not one of this service. The document at /openapi/v1.json lists them."
    );

    public static readonly ProblemKind MethodNotAllowed = Kind(
        "method-not-allowed",
        405,
        "The address does not answer this method",
        "The Allow header lists the methods that the address answers."
    );

    public static readonly ProblemKind NotAcceptable = Kind(
        "not-acceptable",
        406,
        "The wanted form is not offered",
        "The Accept header rules out every form in which the address answers. They are listed in forms."
    );

    public static readonly ProblemKind TooLarge = Kind(
        "too-large",
        413,
        "The body or line is too large",
        "The body, or a line of many, has more bytes than the service reads. Leave out what is not needed."
    );

    public static readonly ProblemKind UnsupportedMediaType = Kind(
        "unsupported-media-type",
        415,
        "The body's form is not read",
        "The Content-Type header names a form that the address does not read. Those it reads are listed in forms."
    );

    public static readonly ProblemKind Invalid = Kind(
        "invalid",
        422,
        "The request is not right",
        "The request could be read, but members or query parameters are unknown, missing, doubled, of the wrong type, out of range or in conflict. Each is listed in errors."
    );

    public static readonly ProblemKind Internal = Kind(
        "internal",
        500,
        "The service failed",
        "The fault is on the service's side. Report it with the trace id."
    );

    public static readonly ProblemKind NotReady = Kind(
        "not-ready",
        503,
        "The service is not ready",
        "The service cannot answer checks at the moment. Try again after the seconds in Retry-After."
    );

    public static readonly ProblemKind Busy = Kind(
        "busy",
        503,
        "The service is busy",
        "The service works on as many requests of this kind as it takes on. Try again after the seconds in Retry-After. The numbers are at /v1/limits."
    );

    public static readonly ProblemKind TookTooLong = Kind(
        "took-too-long",
        503,
        "The answer would take too long",
        "Computing the answer took longer than the service goes on for one request. The time is at /v1/limits. Ask with spread=none, which takes milliseconds, or try again after the seconds in Retry-After, when the service may be less busy."
    );

    /// <summary>All kinds, by status.</summary>
    public static readonly IReadOnlyList<ProblemKind> All =
    [
        Malformed,
        NotFound,
        MethodNotAllowed,
        NotAcceptable,
        TooLarge,
        UnsupportedMediaType,
        Invalid,
        Internal,
        NotReady,
        Busy,
        TookTooLong,
    ];

    /// <summary>The kind that goes with a status.</summary>
    public static ProblemKind Of(int status) =>
        All.FirstOrDefault(kind => kind.Status == status) ?? (status < 500 ? Malformed : Internal);

    private static ProblemKind Kind(string slug, int status, string title, string meaning) =>
        new()
        {
            Slug = slug,
            Status = status,
            Title = title,
            Meaning = meaning,
        };
}
