namespace PowerCheck.Api.Pages.Answers;

/// <summary>A table of figures.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Heads">Headings of the columns, the first for the names of the rows.</param>
/// <param name="Rows">The rows, each with its name first.</param>
public sealed record Table(
    string Title,
    IReadOnlyList<string> Heads,
    IReadOnlyList<IReadOnlyList<string>> Rows
);
