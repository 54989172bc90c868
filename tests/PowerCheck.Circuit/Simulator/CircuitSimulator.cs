using System.Globalization;
using System.Text;

namespace PowerCheck.Circuit.Simulator;

/// <summary>
/// Runs decks through the circuit simulator ngspice and reads what it answers. Whatever the simulator complains of is an
/// exception: its exit code says nothing.
/// </summary>
public static class CircuitSimulator
{
    /// <summary>Tolerances: tight, for the referee is to be exact where the model claims to be.</summary>
    private const string Options =
        "abstol=1e-13 vntol=1e-11 chgtol=1e-20 gmin=1e-15 trtol=1 itl1=2000 itl2=2000 itl4=500 method=trap";

    private const double Exactness = 1e-8;

    private const string Table = "table.txt";

    /// <summary>Whether the simulator is there.</summary>
    public static bool Available => SimulatorProgram.File is not null;

    /// <summary>The operating point of a deck.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="expressions">What to tell: <c>v(bus)</c>, <c>i(vpack)</c>, <c>v(a)-v(b)</c> and the like.</param>
    /// <returns>Each expression's value.</returns>
    public static IReadOnlyDictionary<string, double> OperatingPoint(
        Deck deck,
        params string[] expressions
    )
    {
        var control = new StringBuilder("op\n");
        foreach (var (index, expression) in expressions.Index())
        {
            control.Append(
                CultureInfo.InvariantCulture,
                $"let y{index} = {expression}\nprint y{index}\n"
            );
        }
        return Run(
            deck,
            Exactness,
            control.ToString(),
            (text, output, _) => Printed(expressions, text, output)
        );
    }

    /// <summary>A transient analysis.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="span">How long, how finely and from where.</param>
    /// <param name="expressions">What to tell.</param>
    /// <returns>Each expression at the moments that the simulator chose.</returns>
    public static Waveforms Transient(Deck deck, TransientSpan span, params string[] expressions)
    {
        var control = FormattableString.Invariant(
            $"""
            tran {span.StepS:R} {span.StopS:R} {span.RecordFromS:R} {span.StepS:R}{(
                span.FromInitial ? " uic" : ""
            )}
            wrdata {Table} {string.Join(' ', expressions)}

            """
        );
        return Run(
            deck,
            span.RelativeTolerance,
            control,
            (text, output, folder) => Written(expressions, span, text, output, folder)
        );
    }

    private static T Run<T>(
        Deck deck,
        double exactness,
        string control,
        Func<string, string, string, T> read
    )
    {
        var text =
            $"{deck.Text}.options reltol={exactness:R} {Options}\n.control\nset numdgt=15\nset wr_singlescale\n{control}quit 0\n.endc\n.end\n";
        var folder = Directory.CreateTempSubdirectory("circuit-");
        try
        {
            var output = SimulatorProgram.Run(text, folder.FullName);
            if (Complaint.In(output) is { } complaint)
            {
                throw new SimulatorException(complaint, text, output);
            }
            return read(text, output, folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Dictionary<string, double> Printed(
        string[] expressions,
        string text,
        string output
    )
    {
        var lines = output.Split('\n');
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (index, expression) in expressions.Index())
        {
            var start = FormattableString.Invariant($"y{index} = ");
            var line = Array.Find(lines, line => line.StartsWith(start, StringComparison.Ordinal));
            values[expression] =
                Number(line?[start.Length..])
                ?? throw new SimulatorException($"No figure for {expression}.", text, output);
        }
        return values;
    }

    private static Waveforms Written(
        string[] expressions,
        TransientSpan span,
        string text,
        string output,
        string folder
    )
    {
        var file = Path.Combine(folder, Table);
        var rows = File.Exists(file) ? File.ReadLines(file).Select(Row).ToArray() : [];
        if (rows.Length < 2 || Array.Exists(rows, row => row.Length != expressions.Length + 1))
        {
            throw new SimulatorException(
                "No complete table of the transient analysis.",
                text,
                output
            );
        }
        if (Math.Abs(rows[^1][0] - span.StopS) > 1e-6 * span.StopS)
        {
            throw new SimulatorException("The transient analysis ended too early.", text, output);
        }
        var columns = expressions
            .Index()
            .ToDictionary(
                item => item.Item,
                item => Array.ConvertAll(rows, row => row[item.Index + 1]),
                StringComparer.Ordinal
            );
        return new(Array.ConvertAll(rows, row => row[0]), columns);
    }

    private static double[] Row(string line) =>
        [
            .. line.Split(
                    ' ',
                    StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
                )
                .Select(word => Number(word) ?? double.NaN)
                .Where(double.IsFinite),
        ];

    private static double? Number(string? word) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
        && double.IsFinite(value)
            ? value
            : null;
}
