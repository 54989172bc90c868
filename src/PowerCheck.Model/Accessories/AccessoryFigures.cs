using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Units;
using Figure = PowerCheck.Model.Assumptions.LabelFigure<PowerCheck.Model.Accessories.AccessoryLabel>;

namespace PowerCheck.Model.Accessories;

/// <summary>Every measured or printed figure of a servo, a winch, a light (M9, M12).</summary>
public static class AccessoryFigures
{
    /// <summary>The figures of one accessory.</summary>
    /// <param name="n">Its place in the list, from 0.</param>
    public static IEnumerable<LabelFigure<AccessoryLabel>> Of(int n) =>
        Currents($"accessories.{n}.");

    private static IEnumerable<Figure> Currents(string path) =>
        [
            new(
                $"{path}idleCurrentA",
                Unit.Ampere,
                accessory => accessory.IdleCurrentA,
                (accessory, value) => accessory with { IdleCurrentA = value },
                LabelSpreads.Label
            ),
            new(
                $"{path}workingCurrentA",
                Unit.Ampere,
                accessory => accessory.WorkingCurrentA,
                (accessory, value) => accessory with { WorkingCurrentA = value },
                LabelSpreads.Label
            ),
            new(
                $"{path}jammedCurrentA",
                Unit.Ampere,
                accessory => accessory.JammedCurrentA,
                (accessory, value) => accessory with { JammedCurrentA = value },
                LabelSpreads.Label
            ),
        ];
}
