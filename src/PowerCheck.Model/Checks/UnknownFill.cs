using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Checks;

/// <summary>Puts a figure that was not known into a rig.</summary>
public static class UnknownFill
{
    /// <summary>The rig with one more figure.</summary>
    /// <param name="label">The rig as the caller knows it.</param>
    /// <param name="path">The member.</param>
    /// <param name="value">The figure, SI.</param>
    /// <exception cref="ArgumentOutOfRangeException">No default is missing for that member.</exception>
    public static RigLabel With(RigLabel label, string path, double value) =>
        path switch
        {
            "motor.kvRpmPerVolt" => label with
            {
                Motor = label.Motor with { SpeedConstantRadPerSPerV = value },
            },
            "motor.resistanceMilliohm" => label with
            {
                Motor = label.Motor with { ResistanceOhm = value },
            },
            "motor.massG" => label with { Motor = label.Motor with { MassKg = value } },
            "battery.seriesCells" => label with
            {
                Battery = label.Battery with { SeriesCells = Math.Max(1, (int)Math.Round(value)) },
            },
            "battery.capacityMah" => label with
            {
                Battery = label.Battery with { CapacityCoulomb = value },
            },
            "controller.continuousCurrentA" => label with
            {
                Controller = label.Controller with { ContinuousCurrentA = value },
            },
            _ => throw new ArgumentOutOfRangeException(nameof(path), path, "no such figure"),
        };
}
