using MathNet.Numerics.LinearAlgebra;

namespace PowerCheck.Model.Uncertainty;

/// <summary>
/// How one quantity answers to its inputs, with what its main inputs do jointly: the response to each input alone, and a
/// full quadratic in the main ones on top.
/// </summary>
/// <param name="Each">The response to each input alone.</param>
/// <param name="Main">Which inputs are the main ones.</param>
/// <param name="Shift">What is added to the value.</param>
/// <param name="Slopes">What is added to the slope of each main input.</param>
/// <param name="Bends">What is added in products of main inputs, a symmetric matrix.</param>
public sealed record JointResponse(
    Response Each,
    IReadOnlyList<int> Main,
    double Shift,
    Vector<double> Slopes,
    Matrix<double> Bends
)
{
    /// <summary>The quantity where the inputs lie at these deviates.</summary>
    /// <param name="deviates">A deviate an input.</param>
    public double At(double[] deviates) => At(deviates, Each.At(deviates));

    /// <summary>The quantity where the inputs lie at these deviates.</summary>
    /// <param name="deviates">A deviate an input.</param>
    /// <param name="each">What the response to each input alone says that it is there.</param>
    public double At(double[] deviates, double each)
    {
        var sum = each + Shift;
        for (var i = 0; i < Main.Count; i++)
        {
            var bend = Slopes[i];
            for (var j = 0; j < Main.Count; j++)
            {
                bend += Bends[i, j] * deviates[Main[j]];
            }

            sum += bend * deviates[Main[i]];
        }

        return sum;
    }

    /// <summary>
    /// A response to each input alone with the same distribution: along the principal axes of the main inputs, which are as
    /// normal and independent as those are.
    /// </summary>
    public Response AlongAxes()
    {
        var (slopes, bends) = (Each.Slopes.ToArray(), Each.Curvatures.ToArray());
        var block = Bends.Clone();
        for (var i = 0; i < Main.Count; i++)
        {
            block[i, i] += bends[Main[i]];
        }

        var axes = block.Evd(Symmetricity.Symmetric);
        var along = axes.EigenVectors.TransposeThisAndMultiply(
            Slopes + Vector<double>.Build.Dense([.. Main.Select(n => slopes[n])])
        );
        for (var i = 0; i < Main.Count; i++)
        {
            (slopes[Main[i]], bends[Main[i]]) = (along[i], axes.EigenValues[i].Real);
        }

        return new(Each.Value + Shift, slopes, bends);
    }
}
