using BenchmarkDotNet.Attributes;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Spreads;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Bench;

/// <summary>What a check costs with the spread of its figures, and with remedies, as a ratio to the best estimates alone.</summary>
[ShortRunJob]
public class SpreadCost
{
    private RigLabel label = SampleRig.Brushless;

    /// <summary>Mass of the rig [kg]: one that stays cool, one in doubt, one that burns.</summary>
    [Params(2.5, 4.5, 9)]
    public double MassKg { get; set; }

    /// <summary>Loads the sample rig.</summary>
    [GlobalSetup]
    public void Load() =>
        label = SampleRig.Brushless with
        {
            Vehicle = SampleRig.Brushless.Vehicle with { MassKg = MassKg },
        };

    /// <summary>The best estimates alone.</summary>
    [Benchmark(Baseline = true)]
    public CheckResult Alone() => Check.Run(label);

    /// <summary>Each input by itself, or Monte Carlo where that would mislead.</summary>
    [Benchmark]
    public CheckResult Linear() => Check.Run(label, SpreadMethod.Linear);

    /// <summary>Monte Carlo.</summary>
    [Benchmark]
    public CheckResult Montecarlo() => Check.Run(label, SpreadMethod.Montecarlo);

    /// <summary>As a request without options is answered.</summary>
    [Benchmark]
    public CheckResult LinearWithRemedies() => Check.Run(label, SpreadMethod.Linear, true);
}
