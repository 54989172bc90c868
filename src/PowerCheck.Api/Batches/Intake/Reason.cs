using PowerCheck.Api.Limits;

namespace PowerCheck.Api.Batches.Intake;

/// <summary>Why a batch ends before its request does, or is not whole.</summary>
/// <param name="Word">The reason as the tally gives it; more may come.</param>
/// <param name="Message">The reason in plain words, and what to do.</param>
internal sealed record Reason(string Word, string Message)
{
    private const string Resume = "Send the lines from nextLine on in another request.";

    public static readonly Reason CutOff = new(
        "cut-off",
        "The request broke off, or its list is not closed. Send the lines from nextLine on again."
    );

    public static readonly Reason AfterList = new(
        "after-list",
        "Text follows the end of the list and was not read. Put all rigs into one list."
    );

    public static readonly Reason Shutdown = new(
        "shutdown",
        $"The service is being stopped. {Resume}"
    );

    public static Reason Lines(long most) =>
        new("line-limit", $"One request may have {most} lines answered in this form. {Resume}");

    public static Reason Bytes(BatchLimits limits) =>
        new("byte-limit", $"One request may have {limits.Bytes} bytes. {Resume}");

    public static Reason Time(BatchLimits limits) =>
        new("time-limit", $"One request may take {limits.Seconds} s. {Resume}");

    public static Reason Idle(BatchLimits limits) =>
        new("idle", $"Nothing of the request arrived for {limits.IdleSeconds} s. {Resume}");

    public static Reason Aside(BatchLimits limits) =>
        new(
            "aside-limit",
            $"The answer was not read while the request was sent, and no more of it could be put aside: {limits.AsideBytes} bytes at most, and what the disk has room for. {Resume}"
        );
}
