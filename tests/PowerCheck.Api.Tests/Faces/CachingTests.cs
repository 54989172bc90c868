using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Faces;

/// <summary>An answer to a link may be kept, and is not computed again for one who has it (RFC 9110, 13.1.2; RFC 9111).</summary>
public class CachingTests
{
    private const string Rig = "/v1/checks?vehicle.massKg=3&spread=none&remedies=none";

    [Fact]
    public async Task An_answer_to_a_link_may_be_kept_for_an_hour()
    {
        var answer = await Service.Get(Rig);

        Assert.Equal("public, max-age=3600", answer.Headers["Cache-Control"]);
        Assert.Matches("^W/\"[0-9a-f]{32}\"$", answer.Headers["ETag"]);
    }

    [Theory]
    [InlineData("{0}")]
    [InlineData("\"other\", {0}")]
    [InlineData("*")]
    public async Task One_who_has_it_is_told_so(string known)
    {
        var tag = (await Service.Get(Rig)).Headers["ETag"];

        var again = await Known(Rig, string.Format(null, known, tag));

        Assert.Equal(HttpStatusCode.NotModified, again.Status);
        Assert.Equal("", again.Text);
        Assert.Equal(tag, again.Headers["ETag"]);
        Assert.Equal("public, max-age=3600", again.Headers["Cache-Control"]);
        Assert.Contains("Accept", again.Headers["Vary"]);
        Assert.Equal("</v1/battery-safety>; rel=\"describedby\"", again.Headers["Link"]);
    }

    [Theory]
    [InlineData("&form=text")]
    [InlineData("&findings=all")]
    [InlineData("&vehicle.tireDiameterMm=110")]
    public async Task Another_form_option_or_rig_is_another_answer(string more)
    {
        var tag = (await Service.Get(Rig)).Headers["ETag"];

        Assert.Equal(HttpStatusCode.OK, (await Known(Rig + more, tag)).Status);
    }

    [Theory]
    [InlineData("html", "br")]
    [InlineData("svg", "br")]
    [InlineData("png", null)]
    [InlineData("json", null)]
    public async Task Pages_and_drawings_are_compressed_for_those_who_read_that(
        string form,
        string? coding
    )
    {
        var request = new HttpRequestMessage(HttpMethod.Get, $"{Rig}&form={form}");
        request.Headers.AcceptEncoding.ParseAdd("gzip, br");

        var answer = await Service.Send(request);

        Assert.Equal(coding, answer.Headers.GetValueOrDefault("Content-Encoding"));
        Assert.Contains("Accept", answer.Headers["Vary"]);
    }

    [Theory]
    [InlineData(Rig)]
    [InlineData(Rig + "&form=text")]
    [InlineData(Rig + "&form=svg")]
    [InlineData(Rig + "&form=png")]
    [InlineData(Rig + "&form=html")]
    [InlineData("/?vehicle.massKg=3&spread=none")]
    [InlineData("/embed?vehicle.massKg=3&spread=none")]
    public async Task HEAD_has_the_headers_of_GET(string address)
    {
        var get = await Service.Get(address);
        var head = await Service.Send(new(HttpMethod.Head, address));

        Assert.Equal((HttpStatusCode.OK, ""), (head.Status, head.Text));
        Assert.Equal(get.Headers["ETag"], head.Headers["ETag"]);
        Assert.Equal(get.MediaType, head.MediaType);
    }

    [Fact]
    public async Task A_posted_check_and_a_mistake_are_not_kept()
    {
        var posted = await Service.Check(Rigs.Least);
        var mistake = await Service.Get("/v1/checks?vehicle.massKg=0");

        Assert.Equal("no-store", posted.Headers["Cache-Control"]);
        Assert.Equal("no-store", mistake.Headers["Cache-Control"]);
        Assert.DoesNotContain("ETag", posted.Headers.Keys);
        Assert.DoesNotContain("ETag", mistake.Headers.Keys);
    }

    private static Task<Answer> Known(string address, string tag)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, address);
        Assert.True(request.Headers.TryAddWithoutValidation("If-None-Match", tag));
        return Service.Send(request);
    }
}
