using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Pictures;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>How much of a limit is taken up, read from the answer alone.</summary>
public sealed class LimitShareTests
{
    [Theory]
    [MemberData(nameof(SampleRigs.Names), MemberType = typeof(SampleRigs))]
    public void A_limit_is_past_when_it_fails_and_never_when_it_holds(string name)
    {
        var content = Pictured.Of(SampleRigs.Of(name).ToJsonString(), SpreadMethod.None, all: true);
        var shares = LimitShare.Of(content);

        Assert.NotEmpty(shares);
        Assert.All(
            shares.Where(share => share.Finding.Outcome is "fails"),
            share => Assert.True(share.At > 1, share.Finding.Code)
        );
        // A word of caution that is no part of the verdict holds past its figure.
        Assert.All(
            shares.Where(share => share.Finding.Outcome is "holds" && !IsWord(share.Finding.Code)),
            share => Assert.True(share.At <= 1, share.Finding.Code)
        );
    }

    [Fact]
    public void So_it_is_in_two_hundred_rigs_and_of_most_limits()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var number in Enumerable.Range(1, 200))
        {
            var body = AnyBody.Of(number).ToJsonString();
            foreach (var share in LimitShare.Of(Pictured.Of(body, SpreadMethod.None, all: true)))
            {
                var finding = share.Finding;
                var told = $"rig {number}, {finding.Code} {finding.LoadCase}: {share.At}";
                Assert.True(finding.Outcome is not "fails" || share.At > 1, told);
                Assert.True(
                    finding.Outcome is not "holds" || IsWord(finding.Code) || share.At <= 1,
                    told
                );
                seen.Add(finding.Code);
            }
        }

        Assert.InRange(seen.Count, 15, 60);
    }

    private static bool IsWord(string code) =>
        PowerCheck.Model.Findings.FindingCatalogue.All.First(kind => kind.Code == code)
            is { Judged: false };

    [Theory]
    [InlineData("battery.cutoff", 12.0, 9.0, "V", 0.75)]
    [InlineData("drivetrain.torque-reserve", 2.0, 1.0, null, 0.5)]
    [InlineData("course.run-time", 20.0, 30.0, "min", 1.5)]
    [InlineData("controller.burst-current", 30.0, 120.0, "A", 0.25)]
    [InlineData("motor.winding-temperature", 100.0, 120.0, "°C", 0.8)]
    public void The_share_is_of_the_most_or_of_the_least(
        string code,
        double estimate,
        double limit,
        string? unit,
        double share
    )
    {
        var found = Assert.Single(
            LimitShare.Of(With(Finding(code, "holds", estimate, limit, unit)))
        );

        Assert.Equal(share, found.At, 12);
    }

    [Fact]
    public void The_interval_turns_where_the_limit_is_the_least()
    {
        var reserve = Finding("drivetrain.torque-reserve", "holds", 2, 1, null, 0.5, 4);
        var current = Finding("controller.burst-current", "holds", 60, 120, "A", 30, 90);

        var shares = LimitShare.Of(With(reserve, current));

        Assert.Equal((0.25, 2.0), (shares[0].From, shares[0].To));
        Assert.Equal((0.25, 0.75), (shares[1].From, shares[1].To));
        Assert.Equal(("at least", "at most"), (shares[0].Bound, shares[1].Bound));
    }

    [Fact]
    public void What_rises_without_end_is_past_everything()
    {
        var found = Assert.Single(
            LimitShare.Of(With(Finding("motor.winding-temperature", "fails", null, 120, "°C")))
        );

        Assert.True(double.IsPositiveInfinity(found.At));
        Assert.Empty(
            LimitShare.Of(With(Finding("motor.winding-temperature", "unknown", null, 120, "°C")))
        );
    }

    private static PictureContent With(params FindingAnswer[] findings)
    {
        var content = Pictured.Of(Rigs.Example().With("course.ambientC", 20).ToJsonString());
        return content with { Answer = content.Answer with { Findings = findings } };
    }

    private static FindingAnswer Finding(
        string code,
        string outcome,
        double? estimate,
        double? limit,
        string? unit,
        double? low = null,
        double? high = null
    ) =>
        new()
        {
            Code = code,
            Outcome = outcome,
            Severity = "notice",
            Effect = "damage",
            Decides = false,
            Part = code.Split('.')[0],
            Estimate = estimate,
            Limit = limit,
            Unit = unit,
            Low = low,
            High = high,
            Message = "",
            Sources = [],
        };
}
