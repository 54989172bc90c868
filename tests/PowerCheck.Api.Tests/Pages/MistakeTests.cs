using System.Net;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>What is wrong is told at its field, and above all fields; what was typed is kept.</summary>
public class MistakeTests
{
    private const string Wrong =
        "/?vehicle.massKg=heavy&motor.kvRpmPerVolt=3,3&motor.thermal.caseJPerK=x&motor.kind=";

    [Fact]
    public async Task A_mistake_stands_at_its_field_with_what_was_typed()
    {
        var answer = await Service.Get(Wrong);
        var tag = PageText.Tag(answer.Text, "vehicle.massKg");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal("text/html", answer.MediaType);
        Assert.Equal("no-store", answer.Headers["Cache-Control"]);
        Assert.Contains("value=\"heavy\"", tag);
        Assert.Contains("aria-invalid=\"true\"", tag);
        Assert.Contains("aria-describedby=\"n-vehicle-massKg\"", tag);
        Assert.Contains("from 0.05 to 50 kg", PageText.Notes(answer.Text, "vehicle.massKg"));
        Assert.Contains(
            "Write decimals with a point",
            PageText.Notes(answer.Text, "motor.kvRpmPerVolt")
        );
        Assert.DoesNotContain("aria-invalid", PageText.Tag(answer.Text, "motor.massG"));
    }

    [Fact]
    public async Task A_summary_leads_to_the_fields_and_opens_their_groups()
    {
        var page = (await Service.Get(Wrong)).Text;

        Assert.Contains("<a href=\"#f-vehicle-massKg\">", page);
        Assert.Contains("<a href=\"#f-motor-thermal-caseJPerK\">", page);
        Assert.Contains("<details open id=\"m-motor\">", page);
        Assert.Contains("<details id=\"m-battery\">", page);
        Assert.Equal("3 figures to correct – PowerCheck", PageText.Title(page));
    }

    [Fact]
    public async Task What_is_no_value_of_a_rig_is_told_in_the_summary_alone()
    {
        var page = (await Service.Get("/?vehicle.massKg=3&motor.kvv=3")).Text;

        Assert.Contains("is no value of a rig", PageText.Plain(page));
        Assert.DoesNotContain("motor.kvv", PageText.Sent(page).Select(field => field.Name));
    }

    [Fact]
    public async Task A_mistake_of_a_whole_object_stands_at_its_first_field()
    {
        var page = (await Service.Get("/?vehicle.massKg=3&accessories.1.kind=servo")).Text;

        Assert.Contains("aria-invalid=\"true\"", PageText.Tag(page, "accessories.1.name"));
        Assert.Contains(("accessories.1.kind", "servo"), PageText.Sent(page));
    }

    [Fact]
    public async Task A_mistake_within_a_list_of_words_stands_at_its_field()
    {
        var page = (await Service.Get("/?vehicle.massKg=3&controller.motorKinds=brushed,foo")).Text;

        Assert.Contains("aria-invalid=\"true\"", PageText.Tag(page, "controller.motorKinds"));
    }

    [Theory]
    [InlineData(100, "100 figures to correct")]
    [InlineData(150, "More than 100 figures to correct")]
    public async Task Very_many_mistakes_are_counted_as_far_as_they_are_told(
        int count,
        string title
    )
    {
        var strange = string.Join('&', Enumerable.Range(1, count).Select(n => $"strange{n}=1"));

        var page = (await Service.Get($"/?vehicle.massKg=3&{strange}")).Text;

        Assert.Equal($"{title} – PowerCheck", PageText.Title(page));
    }

    [Fact]
    public async Task An_odd_path_makes_no_odd_anchor()
    {
        var page = (await Service.Get("/?vehicle.massKg=3&tolerances.a+b'=0.1")).Text;

        Assert.All(
            PageText.Find(page, " id=\"([^\"]*)\""),
            id => Assert.Matches("^[A-Za-z][A-Za-z0-9_-]*$", id.Groups[1].Value)
        );
    }

    [Fact]
    public async Task A_mistake_of_a_spread_says_of_what()
    {
        var page = (await Service.Get("/?vehicle.massKg=3&tolerances.motor.kvRpmPerVolt=9")).Text;

        Assert.Contains("Spread of Motor: Kv", page);
    }

    [Fact]
    public async Task Changes_show_both_figures_in_the_units_that_are_chosen()
    {
        var page = (
            await Service.Get(
                "/?motor.kind=brushed&motor.kvRpmPerVolt=1500&motor.resistanceMilliohm=80&motor.massG=160&controller.motorKinds=brushed&controller.continuousCurrentA=60&battery.seriesCells=2&battery.capacityMah=2200&vehicle.massKg=6&vehicle.drivetrain.overallRatio=45&units=imperial&spread=none"
            )
        ).Text;

        // 6 kg / 0.45359237 kg = 13.23 lb (NIST SP 811, 2008, B.8).
        Assert.Matches("Rig: Mass, ready to run 13.23 lb → [0-9.]+ lb,", PageText.Plain(page));
    }

    [Fact]
    public async Task What_was_typed_in_another_unit_keeps_it()
    {
        var page = (
            await Service.Get("/?vehicle.massKg[lb]=300&motor.massG[oz]=5&units=metric")
        ).Text;

        Assert.Contains(("vehicle.massKg", "300 lb"), PageText.Sent(page));
        Assert.Contains(("motor.massG", "5 oz"), PageText.Sent(page));
    }

    [Fact]
    public async Task The_answer_of_a_check_tells_its_mistakes_in_the_form_too()
    {
        var answer = await Service.Get("/v1/checks?form=html&vehicle.massKg=500&units=imperial");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("aria-invalid=\"true\"", PageText.Tag(answer.Text, "vehicle.massKg"));
    }

    [Theory]
    [InlineData("/?units=furlongs")]
    [InlineData("/?vehicle.massKg=3&spread=some")]
    [InlineData("/embed?vehicle.massKg=500")]
    public async Task A_wrong_option_is_a_mistake(string address)
    {
        var answer = await Service.Get(address);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("class=\"mistakes\"", answer.Text);
    }

    [Fact]
    public async Task An_address_without_anything_is_a_page_to_who_reads_pages()
    {
        var answer = await Service.Send(Service.Accepting("/nothing", "text/html"));

        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.Equal("text/html", answer.MediaType);
        Assert.Contains("Nothing is at /nothing.", PageText.Plain(answer.Text));
        Assert.Contains("Stop using a pack", answer.Text);
    }
}
