using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>The page shows what a check answers, and sends nothing elsewhere.</summary>
public class PageTests
{
    private const string Rig =
        "motor.kind=brushed&motor.kvRpmPerVolt=1500&motor.resistanceMilliohm=80&motor.massG=160&controller.motorKinds=brushed"
        + "&controller.maxCells=3&controller.continuousCurrentA=60&battery.seriesCells=2&battery.capacityMah=2200&vehicle.massKg=2.5&vehicle.drivetrain.overallRatio=45";

    private const string Hot =
        "motor.kind=brushless&motor.sensored=true&motor.kvRpmPerVolt=3300&motor.resistanceMilliohm=22&motor.massG=160"
        + "&controller.motorKinds=brushless&controller.sensorInput=true&controller.maxCells=3&controller.continuousCurrentA=40"
        + "&battery.seriesCells=4&battery.capacityMah=2200&vehicle.massKg=3.6&vehicle.drivetrain.overallRatio=42";

    public static TheoryData<string> Pages =>
        [
            "/",
            "/?units=imperial",
            $"/?{Rig}&spread=none",
            $"/?{Hot}&units=imperial",
            "/?vehicle.massKg=x",
            $"/embed?{Rig}&spread=none",
            "/embed",
            $"/v1/checks?{Rig}&spread=none&form=html",
        ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Nothing_is_written_into_the_page_that_runs_or_styles(string address)
    {
        var answer = await Service.Get(address);

        Assert.Equal("text/html", answer.MediaType);
        Assert.False(
            PageText.Has(answer.Text, "<script(?![^>]* src=)|<style|[ \"]style=|[ \"]on[a-z]+=")
        );
        Assert.False(PageText.Has(answer.Text, "(src|href|action)=\"(https?:)?//(?!localhost)"));
        Assert.InRange(answer.Text.Length, 500, 250_000);
        var policy = answer.Headers["Content-Security-Policy"];
        Assert.Contains("default-src 'none'; style-src 'self'; script-src 'self'", policy);
        Assert.EndsWith("frame-ancestors 'none'", policy);
        Assert.Equal("no-referrer", answer.Headers["Referrer-Policy"]);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Anchors_are_unique_and_lead_somewhere(string address)
    {
        var page = (await Service.Get(address)).Text;
        var ids = PageText
            .Find(page, " id=\"([^\"]*)\"")
            .Select(id => id.Groups[1].Value)
            .ToArray();
        var named = PageText
            .Find(page, "(?:href=\"#|aria-describedby=\"| for=\")([^\"]+)\"")
            .Select(one => one.Groups[1].Value);

        Assert.Equal(ids.Distinct(), ids);
        Assert.Empty(named.Except(ids));
    }

    [Fact]
    public async Task An_empty_form_says_what_would_be_assumed_and_no_mistakes()
    {
        var answer = await Service.Get("/");

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.DoesNotContain("aria-invalid", answer.Text);
        Assert.Contains(
            "Assumed 115 mm ± 10 %",
            PageText.Notes(answer.Text, "vehicle.tireDiameterMm")
        );
        Assert.Contains("placeholder=\"assumed 25\"", PageText.Tag(answer.Text, "course.ambientC"));
        Assert.Contains("assumed LiPo", answer.Text);
        Assert.Contains("href=\"/docs/index.html\"", answer.Text);
    }

    [Fact]
    public async Task The_verdict_the_figures_and_the_caution_are_shown()
    {
        var check = (await Service.Get($"/v1/checks?{Rig}&spread=none")).Json;
        var page = (await Service.Get($"/?{Rig}&spread=none")).Text;
        var text = PageText.Plain(page);

        Assert.Equal(
            $"{check.GetProperty("verdict").GetString()} – PowerCheck",
            PageText.Title(page),
            ignoreCase: true
        );
        Assert.Contains("Motor current, climbing", text);
        Assert.Contains(
            check.GetProperty("batterySafety").GetProperty("leading").GetString()!,
            text
        );
        foreach (var assumption in check.GetProperty("assumptions").EnumerateArray())
        {
            Assert.Contains(assumption.GetProperty("basis").GetString()!, text);
        }
    }

    [Fact]
    public async Task A_change_is_a_link_that_leads_to_the_promised_verdict()
    {
        var page = (await Service.Get($"/?{Hot}")).Text;
        var changes = PageText
            .Find(page, "<a class=\"button\" href=\"([^\"]*)#answer\">[^<]*<b>then (\\w+)</b>")
            .Select(link =>
                (WebUtility.HtmlDecode(link.Groups[1].Value), Verdict: link.Groups[2].Value)
            )
            .ToArray();

        Assert.NotEmpty(changes);
        foreach (var (address, verdict) in changes.Take(3))
        {
            Assert.StartsWith(
                verdict,
                PageText.Title((await Service.Get(address)).Text),
                StringComparison.OrdinalIgnoreCase
            );
        }
    }

    [Fact]
    public async Task The_form_html_may_be_asked_for_and_no_other()
    {
        var page = await Service.Get("/?vehicle.massKg=3&spread=none&form=html");
        var other = await Service.Get("/?vehicle.massKg=3&spread=none&form=png");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.DoesNotContain("form=html", PageText.Canonical(page.Text));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, other.Status);
    }

    [Fact]
    public async Task A_rig_that_is_too_long_for_a_link_has_a_page_without_one()
    {
        var body = Rigs.Smallest();
        for (var n = 0; n < 32; n++)
        {
            body.With($"accessories.{n}.name", new string('é', 100))
                .With($"accessories.{n}.kind", "light");
        }

        var page = await Service.Check(body.ToJsonString(), "?spread=none&form=html");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.DoesNotContain("rel=\"canonical\"", page.Text);
        Assert.Contains("too many figures for a link", page.Text);
        Assert.All(
            PageText.Find(page.Text, "href=\"([^\"]*)\""),
            link => Assert.InRange(link.Groups[1].Value.Length, 1, 8000)
        );
    }

    [Fact]
    public async Task The_pictures_stand_in_the_page_each_with_a_name_and_its_words()
    {
        var page = (await Service.Get($"/?{Rig}&spread=none")).Text;

        foreach (var key in new[] { "limits", "slope", "course" })
        {
            Assert.Contains($"aria-labelledby=\"{key}-title {key}-desc\"", page);
            Assert.Single(PageText.Find(page, $"<title id=\"{key}-title\">[^<]+</title>"));
            Assert.Single(PageText.Find(page, $"<desc id=\"{key}-desc\">[^<]+</desc>"));
        }

        Assert.DoesNotContain("<img", page);
    }

    [Fact]
    public async Task Names_are_text_and_nothing_else()
    {
        const string Hostile = "\"><script>alert(1)</script>";
        var page = (
            await Service.Get(
                $"/?vehicle.massKg=3&spread=none&id={Uri.EscapeDataString(Hostile)}&motor.name={Uri.EscapeDataString(Hostile)}"
            )
        ).Text;
        var wrong = (
            await Service.Get(
                $"/?vehicle.massKg={Uri.EscapeDataString(Hostile)}&{Uri.EscapeDataString(Hostile)}=1"
            )
        ).Text;

        Assert.DoesNotContain("<script>", page);
        Assert.DoesNotContain("<script>", wrong);
        Assert.Contains(("motor.name", Hostile), PageText.Sent(page));
        Assert.Contains(("vehicle.massKg", Hostile), PageText.Sent(wrong));
    }

    [Fact]
    public async Task A_stored_page_is_not_sent_again()
    {
        var metric = await Service.Get($"/?{Rig}&spread=none");
        var imperial = await Service.Get($"/?{Rig}&spread=none&units=imperial");
        var request = new HttpRequestMessage(HttpMethod.Get, $"/?{Rig}&spread=none");
        request.Headers.TryAddWithoutValidation("If-None-Match", metric.Headers["ETag"]);
        var again = await Service.Send(request);

        Assert.Equal("public, max-age=3600", metric.Headers["Cache-Control"]);
        Assert.Equal("Accept", metric.Headers["Vary"]);
        Assert.NotEqual(metric.Headers["ETag"], imperial.Headers["ETag"]);
        Assert.Equal(HttpStatusCode.NotModified, again.Status);
        Assert.Equal("", again.Text);
    }

    [Theory]
    [InlineData("/?vehicle.massKg=&motor.kind=", "/")]
    [InlineData("/?vehicle.massKg=&units=imperial", "/?units=imperial")]
    [InlineData(
        "/?vehicle.massKg%5Blb%5D=8&motor.kind=&units=imperial&spread=",
        "/?vehicle.massKg=3.62873896&units=imperial"
    )]
    [InlineData("/?vehicle.massKg%5Blb%5D=8", "/?vehicle.massKg=3.62873896")]
    public async Task A_form_that_was_sent_leads_to_the_short_link(string sent, string link)
    {
        var answer = await Service.Get(sent);

        Assert.Equal(HttpStatusCode.Found, answer.Status);
        Assert.Equal(link, answer.Headers["Location"]);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
    }

    [Fact]
    public async Task A_posted_rig_can_be_answered_with_the_page()
    {
        var answer = await Service.Check(Rigs.Least, "?spread=none&form=html&units=imperial");

        Assert.Equal("text/html", answer.MediaType);
        Assert.Contains(("vehicle.massKg[lb]", "3 kg"), PageText.Sent(answer.Text));
    }

    [Theory]
    [InlineData("/page.css", "text/css", 15_000)]
    [InlineData("/page.js", "text/javascript", 15_000)]
    public async Task Style_and_script_are_small_and_lead_to_the_cautions(
        string address,
        string type,
        int most
    )
    {
        var answer = await Service.Get(address);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal(type, answer.MediaType);
        Assert.InRange(answer.Text.Length, 1000, most);
        Assert.Equal("</v1/battery-safety>; rel=\"describedby\"", answer.Headers["Link"]);
        Assert.False(PageText.Has(answer.Text, "https?://|@import|url\\("));
    }
}
