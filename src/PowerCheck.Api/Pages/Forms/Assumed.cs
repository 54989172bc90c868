using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Display;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>What is assumed for what is not given, by path.</summary>
internal sealed class Assumed(IReadOnlyList<AssumptionAnswer> assumptions, DisplayUnits units)
{
    /// <summary>Mass of the rig whose assumptions an empty form shows [kg], assumed.</summary>
    private const double TypicalMassKg = 3;

    private static readonly Lazy<IReadOnlyList<AssumptionAnswer>> Typical = new(OfTypicalRig);

    private readonly Dictionary<string, AssumptionAnswer> byPath = assumptions.ToDictionary(
        assumption => assumption.Path,
        StringComparer.Ordinal
    );

    /// <summary>What is assumed of a rig of common mass of which nothing else is known; may change with the rig.</summary>
    public static Assumed OfTypical(DisplayUnits units) => new(Typical.Value, units);

    /// <summary>What is assumed for a path; null for nothing.</summary>
    public AssumedView? Of(string path) =>
        byPath.TryGetValue(path, out var assumption) ? View(assumption, units) : null;

    /// <summary>What is assumed for each item of a list, one after the other; empty where nothing is.</summary>
    /// <param name="path">The list.</param>
    public string OfList(string path) =>
        string.Join(
            "; ",
            assumptions
                .Where(one => one.Path.StartsWith($"{path}.", StringComparison.Ordinal))
                .GroupBy(one => one.Path[(path.Length + 1)..].Split('.')[0], StringComparer.Ordinal)
                .Select(item => string.Join(", ", item.Select(one => View(one, units).Figure)))
        );

    /// <summary>An assumption as it is shown.</summary>
    public static AssumedView View(AssumptionAnswer assumption, DisplayUnits units) =>
        new(
            assumption.Word is { } word
                ? Labels.Word(word)
                : units.Show(assumption.Value, assumption.Unit),
            SpreadText.Of(assumption.Spread, assumption.Unit, units),
            assumption.Basis
        );

    private static IReadOnlyList<AssumptionAnswer> OfTypicalRig()
    {
        var call = new CheckCall(
            new()
            {
                Motor = new MotorRequest(),
                Controller = new ControllerRequest(),
                Battery = new BatteryRequest(),
                Vehicle = new VehicleRequest { MassKg = TypicalMassKg },
            },
            new(AllFindings: false, SpreadMethod.None, Remedies: false)
        );
        return AnswerWriter.Write(call, call.Run(CancellationToken.None), links: null).Assumptions;
    }
}
