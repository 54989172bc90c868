using BenchmarkDotNet.Attributes;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Bench;

/// <summary>What a check by the best estimates alone costs, and its rooms one by one.</summary>
[ShortRunJob]
[MemoryDiagnoser]
public class PlainCost
{
    private RigLabel label = SampleRig.Brushless;
    private RigCompletion complete = RigCompletion.Of(SampleRig.Brushless);
    private Inspection inspected = SampleRig.Inspect(SampleRig.Brushless);

    /// <summary>What is said of the rig.</summary>
    public enum Said
    {
        /// <summary>Everything that a builder knows.</summary>
        Usual,

        /// <summary>Three times as heavy: it burns.</summary>
        Heavy,

        /// <summary>A brushed motor switched so slowly that its ripple counts.</summary>
        SlowSwitching,

        /// <summary>Nothing from which the motor's resistance follows.</summary>
        NoResistance,
    }

    /// <summary>What is said of the rig.</summary>
    [ParamsAllValues]
    public Said Rig { get; set; }

    /// <summary>Loads the rig.</summary>
    [GlobalSetup]
    public void Load()
    {
        var (usual, brushed) = (SampleRig.Brushless, SampleRig.Brushed);
        label = Rig switch
        {
            Said.Heavy => usual with { Vehicle = usual.Vehicle with { MassKg = 9 } },
            Said.SlowSwitching => brushed with
            {
                Controller = brushed.Controller with { PwmFrequencyHz = 2000 },
            },
            Said.NoResistance => usual with
            {
                Motor = usual.Motor with
                {
                    ResistanceOhm = null,
                    MassKg = null,
                    CanDiameterM = null,
                    CanLengthM = null,
                },
            },
            _ => usual,
        };
        complete = RigCompletion.Of(label);
        inspected = complete.Inspect();
    }

    /// <summary>All of it.</summary>
    [Benchmark(Baseline = true)]
    public CheckResult Whole() => Check.Run(label);

    /// <summary>What the caller left out, filled in.</summary>
    [Benchmark]
    public RigCompletion Completed() => RigCompletion.Of(label);

    /// <summary>Load cases and course.</summary>
    [Benchmark]
    public Inspection Inspected() => complete.Inspect();

    /// <summary>Every limit held against its figure.</summary>
    [Benchmark]
    public IReadOnlyList<Finding> Limits() => Judgement.Limits(inspected);
}
