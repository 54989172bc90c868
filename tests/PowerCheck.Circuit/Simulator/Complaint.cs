using System.Text.RegularExpressions;

namespace PowerCheck.Circuit.Simulator;

/// <summary>
/// What the simulator complains of. Its exit code is 0 even for a deck that it could not use, so that its words decide.
/// </summary>
internal static partial class Complaint
{
    // The first line that says that something is wrong; null when there is none.
    public static string? In(string output) =>
        output.Split('\n').Select(line => line.Trim()).FirstOrDefault(line => Trouble(line));

    // Whether a complaint is of a search for a solution that found none, and not of the deck.
    public static bool OfSearch(string complaint) => Unsolved().IsMatch(complaint);

    // A search for the operating point that starts again by another way is not yet a failure: where the last way fails
    // too, the simulator says so in a line of its own ('Error', 'aborted').
    private static bool Trouble(string line) =>
        Words().IsMatch(line) && (Final().IsMatch(line) || !Search().IsMatch(line));

    [GeneratedRegex(
        "error|warning|singular|no convergence|aborted|interrupted|can't|cannot|failed|too small|not available",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Words();

    [GeneratedRegex(
        "error|singular|aborted",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Final();

    [GeneratedRegex(
        "no convergence|time ?step too small",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Unsolved();

    [GeneratedRegex(
        "gmin (increment|step)|source stepping|iterations? limit",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Search();
}
