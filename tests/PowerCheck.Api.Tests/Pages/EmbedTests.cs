using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>The card may stand in frames of those whom the configuration names, and nowhere else.</summary>
public class EmbedTests
{
    private const string Card = "/embed?vehicle.massKg=3&spread=none";

    [Fact]
    public async Task Nobody_may_frame_it_where_nobody_is_named() =>
        Assert.EndsWith(
            "frame-ancestors 'none'",
            (await Service.Get(Card)).Headers["Content-Security-Policy"]
        );

    [Fact]
    public async Task Those_who_are_named_may_frame_the_card_and_not_the_page()
    {
        using var service = Service
            .Own()
            .WithWebHostBuilder(host =>
                host.UseSetting("Embed:FrameAncestors:0", "https://shop.example")
                    .UseSetting("Embed:FrameAncestors:1", "http://localhost:8080")
            );
        using var client = Service.ClientOf(service);

        var card = await Answer.Of(await client.GetAsync(Card));
        var wrong = await Answer.Of(await client.GetAsync("/embed?vehicle.massKg=x"));
        var page = await Answer.Of(await client.GetAsync("/"));

        const string Named = "frame-ancestors https://shop.example http://localhost:8080";
        Assert.EndsWith(Named, card.Headers["Content-Security-Policy"]);
        Assert.EndsWith(Named, wrong.Headers["Content-Security-Policy"]);
        Assert.EndsWith("frame-ancestors 'none'", page.Headers["Content-Security-Policy"]);
    }

    [Theory]
    [InlineData("shop.example")]
    [InlineData("https://shop.example/path")]
    [InlineData("https://shop.example; script-src *")]
    [InlineData("*")]
    public void What_is_no_origin_stops_the_start(string origin)
    {
        using var service = Service
            .Own()
            .WithWebHostBuilder(host => host.UseSetting("Embed:FrameAncestors:0", origin));

        var stop = Assert.ThrowsAny<InvalidOperationException>(() => service.CreateClient());
        Assert.Contains("Embed:FrameAncestors", stop.Message);
    }

    [Fact]
    public async Task The_card_has_verdict_caution_and_a_way_to_the_page()
    {
        var card = (await Service.Get(Card)).Text;
        var text = PageText.Plain(card);

        Assert.Equal("PowerCheck: Undetermined", PageText.Title(card));
        Assert.Contains("Stop using a pack", text);
        Assert.Contains(
            "<a href=\"/?vehicle.massKg=3&amp;spread=none\" target=\"_blank\" rel=\"noopener\">",
            card
        );
        Assert.DoesNotContain("<form", card);
        Assert.DoesNotContain("<script", card);
    }
}
