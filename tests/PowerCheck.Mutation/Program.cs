using System.Globalization;
using PowerCheck.Mutation;

// Prints how many small changes of the model the tests notice, by room, and every one that they do not.
if (args is not [var report, var explanations])
{
    await Console.Error.WriteLineAsync("usage: REPORT EXPLANATIONS");
    return 2;
}

const double Wanted = 0.9;
const double MostExplained = 0.03;
var all = Change.Of(await File.ReadAllTextAsync(report)).Where(change => change.Counts).ToArray();
var explained = Explained.Of(await File.ReadAllTextAsync(explanations));
var open = all.Where(change => !change.Noticed).ToArray();
foreach (var change in open)
{
    var known = explained.Contains(change.Name) ? "explained" : change.Status;
    Console.WriteLine(
        $"{change.File}:{change.Line}: `{change.Before}` → `{change.After}` ({known})"
    );
}

Console.WriteLine();
Console.WriteLine("| room | changes | noticed | unnoticed | of these explained | score |");
Console.WriteLine("| --- | --- | --- | --- | --- | --- |");
foreach (var room in all.GroupBy(change => change.Room))
{
    Write(room.Key, [.. room]);
}

Write("all", all);
var stale = explained.Except(all.Select(change => change.Name), StringComparer.Ordinal);
foreach (
    var name in stale.Where(name =>
        all.Any(change => name.StartsWith(change.File, StringComparison.Ordinal))
    )
)
{
    Console.WriteLine($"Explained, but no change of this run: {name}");
}

return
    all.Length > 0
    && Share(all.Count(change => change.Noticed)) >= Wanted
    && Share(open.Count(change => explained.Contains(change.Name))) <= MostExplained
    ? 0
    : 1;

double Share(int count) => (double)count / all.Length;

void Write(string room, Change[] changes)
{
    var noticed = changes.Count(change => change.Noticed);
    var reasons = changes.Count(change => !change.Noticed && explained.Contains(change.Name));
    var score = (100.0 * noticed / changes.Length).ToString("0.0", CultureInfo.InvariantCulture);
    Console.WriteLine(
        $"| {room} | {changes.Length} | {noticed} | {changes.Length - noticed} | {reasons} | {score} % |"
    );
}
