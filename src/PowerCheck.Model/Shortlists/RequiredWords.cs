using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Shortlists;

/// <summary>What the box of a sought part must say in words or counts so that it matches the other parts at all.</summary>
internal static class RequiredWords
{
    /// <summary>The words and counts, each with the match that sets it.</summary>
    /// <param name="label">The rig without the part.</param>
    /// <param name="part">The part.</param>
    public static IEnumerable<Requirement> Of(RigLabel label, SoughtPart part) =>
        part switch
        {
            SoughtPart.Controller => Controller(label),
            SoughtPart.Motor => Motor(label),
            _ => [],
        };

    private static IEnumerable<Requirement> Controller(RigLabel label)
    {
        if (label.Motor.Kind is { } kind)
        {
            yield return Said(
                "controller.motorKinds",
                FindingCatalogue.ControllerMotorKind,
                Words.Of(kind)
            );
        }

        if (label.Motor is { Kind: MotorKind.Brushless, Sensored: true })
        {
            yield return Said(
                "controller.sensorInput",
                FindingCatalogue.ControllerRotorSensing,
                Words.Of(true)
            );
        }

        if (label.Battery.SeriesCells is { } cells)
        {
            yield return Counted("controller.minCells", double.NaN, cells);
            yield return Counted("controller.maxCells", cells, double.NaN);
        }
    }

    private static IEnumerable<Requirement> Motor(RigLabel label)
    {
        if (label.Controller.MotorKinds is { Count: > 0 } kinds)
        {
            yield return Said(
                "motor.kind",
                FindingCatalogue.ControllerMotorKind,
                [.. kinds.Select(Words.Of)]
            );
        }
    }

    private static Requirement Said(string path, FindingKind setBy, params string[] words) =>
        new(path, Unit.One, double.NaN, double.NaN, words, setBy.Code, null);

    private static Requirement Counted(string path, double minimum, double maximum) =>
        new(
            path,
            Unit.Cells,
            minimum,
            maximum,
            [],
            FindingCatalogue.ControllerCellCount.Code,
            null
        );
}
