using MathNet.Numerics.Interpolation;

namespace PowerCheck.Model.Batteries;

/// <summary>Open-circuit voltage of a cell against its charge (M2).</summary>
/// <remarks>
/// Tables of eleven points or more, joined by a shape-preserving cubic, so that voltage never rises as the cell empties
/// and the table's own points come out exactly. Hysteresis and relaxation are left out.
/// </remarks>
public static class OpenCircuit
{
    // Lithium-cobalt pouch cell, computed from the half-cell fits of pybamm Marquis2019 between 4.20 and 3.00 V.
    private static readonly double[] Pouch =
    [
        3.000,
        3.685,
        3.693,
        3.700,
        3.734,
        3.756,
        3.787,
        3.841,
        3.902,
        4.107,
        4.200,
    ];

    private static readonly double[] Tenths = [0, .1, .2, .3, .4, .5, .6, .7, .8, .9, 1];

    // Round lithium-ion cell: msl, Batteries/ParameterRecords/ExampleData, ratio to 4.2 V.
    private static readonly (double[] Charge, double[] Ratio) Round = (
        [
            0,
            .01,
            .02,
            .03,
            .04,
            .05,
            .06,
            .07,
            .08,
            .09,
            .10,
            .15,
            .20,
            .25,
            .30,
            .35,
            .40,
            .45,
            .50,
            .55,
            .60,
            .65,
            .70,
            .75,
            .80,
            .85,
            .90,
            .95,
            1.0,
        ],
        [
            .595,
            .656,
            .688,
            .714,
            .737,
            .744,
            .750,
            .754,
            .756,
            .758,
            .761,
            .774,
            .786,
            .795,
            .804,
            .811,
            .818,
            .826,
            .835,
            .843,
            .855,
            .871,
            .888,
            .905,
            .926,
            .943,
            .964,
            .980,
            1.0,
        ]
    );

    // Iron-phosphate cell, computed from the half-cell fits of pybamm Prada2013.
    private static readonly (double[] Charge, double[] Volt) Phosphate = (
        [0, .02, .05, .1, .2, .3, .4, .5, .6, .7, .8, .9, .95, 1],
        [
            2.000,
            2.460,
            2.785,
            2.978,
            3.169,
            3.206,
            3.253,
            3.266,
            3.269,
            3.274,
            3.310,
            3.314,
            3.316,
            3.598,
        ]
    );

    // Nickel-metal hydride: assumed, drawn through 1.25 to 1.40 V open circuit of a cell maker's data book (cells).
    private static readonly double[] Hydride =
    [
        1.00,
        1.20,
        1.24,
        1.26,
        1.27,
        1.28,
        1.29,
        1.30,
        1.32,
        1.35,
        1.40,
    ];

    private static readonly CubicSpline[] Curves =
    [
        CubicSpline.InterpolatePchip(Tenths, Pouch),
        // High-voltage lithium polymer: assumed, the pouch cell's curve stretched to 4.35 V.
        CubicSpline.InterpolatePchip(Tenths, [.. Pouch.Select(v => v * 4.35 / 4.20)]),
        CubicSpline.InterpolatePchip(Round.Charge, [.. Round.Ratio.Select(r => r * 4.2)]),
        CubicSpline.InterpolatePchip(Phosphate.Charge, Phosphate.Volt),
        CubicSpline.InterpolatePchip(Tenths, Hydride),
    ];

    /// <summary>Open-circuit voltage of one cell [V].</summary>
    /// <param name="chemistry">The chemistry.</param>
    /// <param name="charge">Charge, 0 to 1 of the capacity; clamped.</param>
    public static double CellV(Chemistry chemistry, double charge) =>
        Curves[(int)chemistry].Interpolate(Math.Clamp(charge, 0, 1));
}
