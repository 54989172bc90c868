using System.Text.RegularExpressions;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Tests.Findings;

/// <summary>Every figure in a message stands in one of the finding's members.</summary>
public sealed partial class MessageTests
{
    [Fact]
    [Trait("speed", "slow")]
    public void Every_figure_of_a_message_is_a_member_of_its_finding()
    {
        var wrong = Enumerable
            .Range(1, 160)
            .AsParallel()
            .SelectMany(n =>
                Check
                    .Run(n % 4 == 0 ? Sparse(RandomRig.Of(n)) : RandomRig.Of(n))
                    .Findings.SelectMany(f =>
                        Figures(f.Message)
                            .Where(text => !Members(f).Contains(text, StringComparer.Ordinal))
                            .Select(text => $"{f.Kind.Code}: {text} in '{f.Message}'")
                    )
            )
            .DistinctBy(
                line => line[..line.IndexOf(':', StringComparison.Ordinal)],
                StringComparer.Ordinal
            )
            .ToArray();
        Assert.True(wrong.Length == 0, string.Join(Environment.NewLine, wrong));
    }

    [Fact]
    [Trait("speed", "slow")]
    public void Every_message_is_a_sentence_in_plain_words()
    {
        var messages = Enumerable
            .Range(1, 100)
            .SelectMany(n => Check.Run(RandomRig.Of(n)).Findings)
            .Select(f => f.Message)
            .Distinct(StringComparer.Ordinal);
        Assert.All(
            messages,
            message =>
            {
                Assert.True(char.IsUpper(message[0]), message);
                Assert.EndsWith(".", message, StringComparison.Ordinal);
                Assert.DoesNotContain("NaN", message, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", message, StringComparison.Ordinal);
                Assert.DoesNotContain("  ", message, StringComparison.Ordinal);
            }
        );
    }

    private static RigLabel Sparse(RigLabel label) =>
        label with
        {
            Motor = label.Motor with { ResistanceOhm = null, MassKg = null, CanDiameterM = null },
        };

    private static IEnumerable<string> Figures(string message) =>
        Figure().Matches(message).Select(match => match.Value);

    // As the message writes them: three digits, whole degrees, seconds or minutes.
    private static HashSet<string> Members(Finding finding) =>
        new[]
        {
            Say.Figure(finding.Estimate, finding.Unit),
            Say.Figure(finding.Limit, finding.Unit),
            Say.Degrees(finding.Estimate),
            Say.Degrees(finding.Limit),
            Say.Time(finding.DurationS),
        }
            .Concat(finding.Needs.Select(need => Say.Figure(need.Threshold, need.Unit)))
            .SelectMany(Figures)
            .ToHashSet(StringComparer.Ordinal);

    [GeneratedRegex(@"(?<![\w-])[−-]?\d+(\.\d+)?(?![\w-])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Figure();

    [Theory]
    [InlineData(123.46, "123 A")]
    [InlineData(12.346, "12.3 A")]
    [InlineData(1.2346, "1.23 A")]
    [InlineData(0.12346, "0.123 A")]
    [InlineData(double.NaN, "not known")]
    [InlineData(double.PositiveInfinity, "rising without end")]
    public void A_figure_has_three_digits(double ampere, string text) =>
        Assert.Equal(text, Say.Figure(ampere, Unit.Ampere));

    [Theory]
    [InlineData(119, "119 s")]
    [InlineData(120, "2 min")]
    [InlineData(2.04, "2.04 s")]
    public void A_time_is_in_seconds_or_minutes(double seconds, string text) =>
        Assert.Equal(text, Say.Time(seconds));
}
