using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Spreads;

/// <summary>A figure of a rig that may be off, and by how much.</summary>
/// <param name="Figure">Which one.</param>
/// <param name="Value">Its value, SI.</param>
/// <param name="Spread">How far off it may be, 95 %.</param>
/// <param name="Basis">Who says so: caller, label or assumption.</param>
public sealed record Input(
    LabelFigure<RigLabel> Figure,
    double Value,
    Spread Spread,
    SpreadBasis Basis
)
{
    /// <summary>Every figure of a rig that may be off.</summary>
    /// <param name="filled">The rig with what was assumed in its place.</param>
    /// <param name="assumptions">What was assumed.</param>
    public static IReadOnlyList<Input> Of(RigLabel filled, IReadOnlyList<Assumption> assumptions)
    {
        var assumed = assumptions.ToDictionary(a => a.Path, StringComparer.Ordinal);
        return
        [
            .. RigFigures
                .Of(filled)
                .Select(figure => Of(figure, filled, assumed))
                .OfType<Input>()
                .Where(input => input.Spread != Spread.None),
        ];
    }

    /// <summary>The rig with this figure at a standard normal deviate from its value.</summary>
    /// <param name="label">The rig.</param>
    /// <param name="deviate">Standard normal deviate.</param>
    public RigLabel Move(RigLabel label, double deviate) =>
        Figure.Write(label, Math.Clamp(Spread.At(Value, deviate), Figure.Lowest, Figure.Highest));

    /// <summary>A rig with several figures at standard normal deviates from their values.</summary>
    /// <param name="filled">The rig with what was assumed in its place.</param>
    /// <param name="inputs">The figures.</param>
    /// <param name="deviates">A standard normal deviate a figure.</param>
    public static RigLabel Moved(
        RigLabel filled,
        IReadOnlyList<Input> inputs,
        IReadOnlyList<double> deviates
    )
    {
        var label = filled;
        for (var n = 0; n < deviates.Count; n++)
        {
            if (deviates[n] != 0)
            {
                label = inputs[n].Move(label, deviates[n]);
            }
        }

        return label;
    }

    /// <summary>
    /// What its draws start from: by its path, so that a figure is drawn the same in every rig and what differs between two
    /// rigs is what they differ in.
    /// </summary>
    public int Seed =>
        BinaryPrimitives.ReadInt32LittleEndian(
            SHA256.HashData(Encoding.UTF8.GetBytes(Figure.Path))
        );

    private static Input? Of(
        LabelFigure<RigLabel> figure,
        RigLabel filled,
        Dictionary<string, Assumption> assumed
    ) =>
        figure.Read(filled) is not { } value ? null
        : filled.Tolerances.TryGetValue(figure.Path, out var said)
            ? new(figure, value, said, SpreadBasis.Caller)
        : assumed.TryGetValue(figure.Path, out var assumption)
            ? new(figure, value, assumption.Spread, SpreadBasis.Assumed)
        : new(figure, value, figure.Given, SpreadBasis.Label);
}

/// <summary>Who says how far off a figure may be.</summary>
public enum SpreadBasis
{
    /// <summary>The caller.</summary>
    Caller,

    /// <summary>The kind of figure on a box.</summary>
    Label,

    /// <summary>The assumption that stands for a figure left out.</summary>
    Assumed,
}
