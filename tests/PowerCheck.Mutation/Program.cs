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
var reasons = Explained.Of(await File.ReadAllTextAsync(explanations)).ToList();
var open = all.Where(change => !change.Noticed).ToArray();
var explained = open.Where(change => reasons.Remove(change.Name)).ToHashSet();
foreach (var change in open)
{
    var known = explained.Contains(change) ? "explained" : change.Status;
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
var stale = reasons
    .Where(name => all.Any(change => name.StartsWith(change.File, StringComparison.Ordinal)))
    .ToArray();
foreach (var name in stale)
{
    Console.WriteLine($"Explained, but noticed or not made: {name}");
}

return
    all.Length > 0
    && Share(all.Count(change => change.Noticed)) >= Wanted
    && Share(explained.Count) <= MostExplained
    && stale.Length == 0
    ? 0
    : 1;

double Share(int count) => (double)count / all.Length;

void Write(string room, Change[] changes)
{
    var noticed = changes.Count(change => change.Noticed);
    var known = changes.Count(explained.Contains);
    var score = (100.0 * noticed / changes.Length).ToString("0.0", CultureInfo.InvariantCulture);
    Console.WriteLine(
        $"| {room} | {changes.Length} | {noticed} | {changes.Length - noticed} | {known} | {score} % |"
    );
}
