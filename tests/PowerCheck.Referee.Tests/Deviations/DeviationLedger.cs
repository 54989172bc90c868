using System.Collections.Concurrent;
using System.Globalization;
using System.Text;

namespace PowerCheck.Referee.Tests.Deviations;

/// <summary>
/// The largest deviation of each quantity between the check and a referee, gathered by all tests of this run.
/// </summary>
internal static class DeviationLedger
{
    /// <summary>Names the file to which the table is written, as Markdown; without it nothing is written.</summary>
    public const string PathVariable = "POWERCHECK_REFEREE_REPORT";

    private static readonly ConcurrentDictionary<
        (string Quantity, string Referee),
        Deviation
    > Largest = new();
    private static readonly ConcurrentDictionary<string, bool> Rigs = new(StringComparer.Ordinal);
    private static readonly Lock Writing = new();

    /// <summary>Takes note of one comparison.</summary>
    /// <param name="quantity">What was compared.</param>
    /// <param name="referee">Where the other figure comes from.</param>
    /// <param name="deviation">How far the figures are apart, in the tolerance's unit, 0 or more.</param>
    /// <param name="tolerance">How far apart they may be.</param>
    /// <param name="unit">The unit of both: %, K, …</param>
    /// <param name="where">The rig, the case or the row.</param>
    /// <returns>Whether the deviation is within the tolerance.</returns>
    public static bool Record(
        string quantity,
        string referee,
        double deviation,
        double tolerance,
        string unit,
        string where
    )
    {
        if (where.StartsWith("rig ", StringComparison.Ordinal))
        {
            Rigs[where.Split(',')[0]] = true;
        }

        var one = new Deviation(1, tolerance, unit, deviation, where);
        Largest.AddOrUpdate((quantity, referee), one, (_, sum) => sum.With(one));
        return one.Holds;
    }

    /// <summary>The table of this run so far, as Markdown, in the order of the quantities' names.</summary>
    public static string Table()
    {
        var table = new StringBuilder(
            $"Rigs refereed: {Rigs.Count}. Figures compared: {Largest.Values.Sum(sum => sum.Count)}.\n\n"
                + "| quantity | referee | count | tolerance | largest deviation | where |\n"
                + "| --- | --- | --- | --- | --- | --- |\n"
        );
        foreach (
            var (key, sum) in Largest
                .OrderBy(entry => entry.Key.Referee, StringComparer.Ordinal)
                .ThenBy(entry => entry.Key.Quantity, StringComparer.Ordinal)
        )
        {
            table.Append(
                CultureInfo.InvariantCulture,
                $"| {key.Quantity} | {key.Referee} | {sum.Count} | {sum.Tolerance:0.####} {sum.Unit} | {sum.Largest:0.##e+0} {sum.Unit} | {sum.Where} |\n"
            );
        }

        return table.ToString();
    }

    /// <summary>Writes the table of this run so far to the file that the environment names.</summary>
    public static void Write()
    {
        if (Environment.GetEnvironmentVariable(PathVariable) is { Length: > 0 } path)
        {
            lock (Writing)
            {
                File.WriteAllText(path, Table());
            }
        }
    }
}

/// <summary>The largest deviation of one quantity.</summary>
/// <param name="Count">How many figures were compared.</param>
/// <param name="Tolerance">How far apart they may be.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Largest">The largest deviation.</param>
/// <param name="Where">Where it occurred.</param>
internal sealed record Deviation(
    int Count,
    double Tolerance,
    string Unit,
    double Largest,
    string Where
)
{
    /// <summary>Whether it is within the tolerance.</summary>
    public bool Holds => Largest <= Tolerance;

    /// <summary>This and one more; a deviation that is not a number is the largest of all.</summary>
    public Deviation With(Deviation one) =>
        double.IsNaN(Largest) || one.Largest <= Largest
            ? this with
            {
                Count = Count + 1,
            }
            : one with
            {
                Count = Count + 1,
            };
}

/// <summary>Writes the table when the tests of a class have run: each class that records asks for it.</summary>
public sealed class DeviationReport : IDisposable
{
    public void Dispose() => DeviationLedger.Write();
}
