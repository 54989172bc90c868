using PowerCheck.Model.Accessories;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Sources;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Specs;

/// <summary>The model document names everything that the code names; each test fails with the missing words.</summary>
public sealed class ModelDocumentTests
{
    private static string Text => ModelDocument.Text;

    private static readonly HashSet<string> Words = [.. WordsInBackticks(Text)];

    [Fact]
    public void Every_code_of_a_finding_stands_in_the_document() =>
        Assert.Equal([], Missing(FindingCatalogue.All.Select(kind => kind.Code)));

    [Fact]
    public void Every_key_of_a_source_stands_in_the_document() =>
        Assert.Equal([], Missing(SourceList.All.Select(source => source.Key)));

    [Fact]
    public void Every_block_has_a_section_under_its_tag() =>
        Assert.Equal(
            [],
            Tags.Where(tag => !Text.Contains($"\n## {tag} ", StringComparison.Ordinal))
        );

    [Fact]
    public void The_current_version_has_a_line_under_versions() =>
        Assert.Contains(
            $"\n- {ModelVersion.Current} (",
            Text[Text.IndexOf("\n## Versions\n", StringComparison.Ordinal)..],
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("brushed")]
    [InlineData("brushless")]
    public void Every_assumption_of_a_rig_of_which_little_is_given_stands_in_the_document(
        string rig
    )
    {
        var paths = Check
            .Run(rig == "brushed" ? Brushed : Brushless)
            .Assumptions.Select(assumption => WithoutPositions(assumption.Path))
            .Distinct()
            .ToArray();

        Assert.NotEmpty(paths);
        Assert.Equal([], Missing(paths));
    }

    private static IEnumerable<string> Tags =>
        Enumerable.Range(1, 11).Append(13).Select(n => $"M{n}");

    /// <summary>Turns instead of KV, switched slowly, on tires of a printed size, with a linear receiver supply.</summary>
    private static RigLabel Brushed =>
        new()
        {
            Motor = new()
            {
                Kind = MotorKind.Brushed,
                Turns = 35,
                ResistanceOhm = 0.2,
                MassKg = 0.16,
            },
            Controller = new()
            {
                PwmFrequencyHz = 1000,
                ReceiverSupply = new() { Regulator = Regulator.Linear },
            },
            Vehicle = new()
            {
                MassKg = 2.4,
                TireDiameterM = 0.11,
                TireDiameterPrinted = true,
            },
            Course = new()
            {
                Segments =
                [
                    new() { DurationS = 20, Kind = SegmentKind.Creep },
                    new() { DurationS = 10, Kind = SegmentKind.Hold },
                ],
            },
        };

    /// <summary>KV and mass, an electrical speed that asks for pole pairs, a tire size, a light without figures.</summary>
    private static RigLabel Brushless =>
        new()
        {
            Motor = new()
            {
                Kind = MotorKind.Brushless,
                SpeedConstantRadPerSPerV = Unit.RpmPerVolt.ToSi(2400),
                MassKg = 0.18,
            },
            Controller = new()
            {
                ContinuousCurrentA = 50,
                MaxElectricalSpeedRadPerS = Unit.Rpm.ToSi(150_000),
            },
            Battery = new() { SeriesCells = 3, CapacityCoulomb = 2.2 * 3600 },
            Vehicle = new() { MassKg = 3, TireDiameterM = 0.12 },
            Accessories = [new() { Kind = AccessoryKind.Light }],
        };

    private static IEnumerable<string> Missing(IEnumerable<string> words) =>
        words.Where(word => !Words.Contains(word));

    /// <summary>What the document sets in backticks, outside of code blocks.</summary>
    private static IEnumerable<string> WordsInBackticks(string text) =>
        text.Split("```")
            .Where((_, n) => n % 2 == 0)
            .SelectMany(prose => prose.Split('\n'))
            .SelectMany(line => line.Split('`').Where((_, n) => n % 2 == 1));

    /// <summary>A path with N for each position in a list.</summary>
    private static string WithoutPositions(string path) =>
        string.Join('.', path.Split('.').Select(name => name.All(char.IsAsciiDigit) ? "N" : name));
}
