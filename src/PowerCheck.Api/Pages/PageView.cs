using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Display;
using PowerCheck.Api.Pages.Answers;
using PowerCheck.Api.Pages.Forms;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>Everything that the page shows.</summary>
public sealed record PageView
{
    /// <summary>What stands before every address of the service; empty at the root of a host.</summary>
    public required string Base { get; init; }

    /// <summary>The units shown.</summary>
    public required DisplayUnits Units { get; init; }

    /// <summary>The form.</summary>
    public required FormView Form { get; init; }

    /// <summary>The options as chosen, name and word.</summary>
    public required IReadOnlyDictionary<string, string> Options { get; init; }

    /// <summary>What was found; null where nothing was checked.</summary>
    public AnswerView? Answer { get; init; }

    /// <summary>Why nothing was checked; null where nothing is wrong.</summary>
    public Problem? Problem { get; init; }

    /// <summary>The mistakes, each with the path of its field; null where there is none.</summary>
    public IReadOnlyList<(ProblemError Error, string? Path)> Mistakes { get; init; } = [];

    /// <summary>The address of this state; null where it would be too long for one.</summary>
    public required string? Address { get; init; }

    /// <summary>The title, which says the verdict.</summary>
    public string Title =>
        Answer is { } answer ? $"{VerdictText.Title(answer.Report.Verdict)} – PowerCheck"
        : Problem is { } problem
            ? problem.Errors is { Count: > 0 } ? $"{Counted(problem)} to correct – PowerCheck"
                : $"{problem.Title} – PowerCheck"
        : "PowerCheck: will this motor, controller and pack move my crawler?";

    /// <summary>How many mistakes there are, in words.</summary>
    public static string Counted(Problem problem) =>
        problem switch
        {
            { Errors: not { Count: > 0 } } => "Nothing",
            { Errors.Count: 1 } => "1 figure",
            { ErrorsTruncated: true } => $"More than {problem.Errors.Count} figures",
            _ => $"{problem.Errors.Count} figures",
        };
}

/// <summary>What was found, with what the page needs to show it.</summary>
/// <param name="Report">What was found.</param>
/// <param name="Changes">Links to the page with one change made.</param>
/// <param name="Pictures">Pictures of it; null where none are shown.</param>
/// <param name="Units">The units shown.</param>
/// <param name="Form">The form beside it.</param>
public sealed record AnswerView(
    CheckAnswer Report,
    ChangeLinks Changes,
    PagePictures? Pictures,
    DisplayUnits Units,
    FormView Form
)
{
    private readonly HashSet<string> paths = new(
        Form.Fields.Select(one => one.Path),
        StringComparer.Ordinal
    );

    /// <summary>The anchor of the field of a path; of an assumed item of a list, the row in which to give it.</summary>
    public string Anchor(string path) =>
        "#" + FieldView.IdOf(paths.Contains(path) ? path : Labels.First(path));
}
