using CsCheck;
using Microsoft.AspNetCore.WebUtilities;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Display;
using PowerCheck.Api.Door;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pages.Forms;
using PowerCheck.Api.Tests.Door;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Tests.Pages;

/// <summary>The form holds every member of a rig, and loses nothing of what it holds.</summary>
public class FormTests
{
    private static readonly CheckOptions Options = new(false, SpreadMethod.None, false);

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 100)];

    public static TheoryData<string> Members =>
        [.. RequestMembers.All.Select(member => Listed(member.Path)).Distinct()];

    [Theory]
    [MemberData(nameof(Members))]
    public async Task Every_member_has_a_field_with_a_label_of_its_own(string path)
    {
        var page = (await Service.Get("/")).Text;

        Assert.Contains(path, PageText.Sent(page).Select(field => field.Name));
        Assert.Contains($"<label for=\"f-{path.Replace('.', '-')}\">", page);
        Assert.True(Labels.Has(path), path);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public async Task The_form_of_a_link_sends_the_same_rig_and_leads_back_to_the_link(int number)
    {
        var posted = await Service.Check(
            AnyBody.Of(number).ToJsonString(),
            "?spread=none&remedies=none"
        );
        var link = posted.Json.GetProperty("links").GetProperty("page").GetString()!;
        var address = link["http://localhost".Length..];
        var units = number % 2 == 0 ? "&units=imperial" : "";

        var page = await Service.Get(address + units);
        var sent = PageText.Sent(page.Text);
        var again = await Service.Get($"/?{PageText.Query(sent)}{units}");

        Assert.Equal(address + units, PageText.Canonical(page.Text));
        Assert.Equal(System.Net.HttpStatusCode.Found, again.Status);
        Assert.Equal(address + units, again.Headers["Location"]);
        Assert.Equal("no-store", again.Headers["Cache-Control"]);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Nothing_of_any_rig_is_lost_in_any_units(bool imperial) =>
        DrawnBody.Members.Sample(
            members =>
            {
                var body = System.Text.Encoding.UTF8.GetBytes(DrawnBody.Of(members).ToJsonString());
                var request = RequestReader.Read<CheckRequest>(body, new()).Request!;
                var call = new CheckCall(request, Options);
                var query = RigLink.Query(call);

                Assert.Equal(query, RigLink.Query(new(Sent(call, new(imperial)), Options)));
            },
            iter: 300
        );

    [Fact]
    public async Task A_list_has_a_row_for_each_item_and_a_blank_one()
    {
        var page = (
            await Service.Get(
                "/?vehicle.massKg=3&accessories.0.kind=servo&accessories.1.kind=light&spread=none"
            )
        ).Text;
        var names = PageText.Sent(page).Select(field => field.Name).ToArray();

        Assert.Contains("accessories.1.kind", names);
        Assert.Contains("accessories.2.kind", names);
        Assert.DoesNotContain("accessories.3.kind", names);
    }

    [Fact]
    public async Task What_has_no_field_is_kept()
    {
        var page = (
            await Service.Get("/?vehicle.massKg=3&motor.noLoadPoints=empty&spread=none")
        ).Text;

        Assert.Contains(("motor.noLoadPoints", "empty"), PageText.Sent(page));
    }

    [Fact]
    public void Every_section_has_a_title_of_its_own() =>
        Assert.All(
            FormMaker
                .Make(
                    FormValues.None,
                    Assumed.OfTypical(DisplayUnits.Metric),
                    FieldMistakes.None,
                    DisplayUnits.Metric
                )
                .Groups.SelectMany(group => group.More)
                .Where(section => section.Title.Length > 0),
            section => Assert.True(Labels.Has(section.Path), section.Path)
        );

    private static CheckRequest Sent(CheckCall call, DisplayUnits units)
    {
        var form = FormMaker.Make(
            FormValues.Of(call),
            Assumed.OfTypical(units),
            FieldMistakes.None,
            units
        );
        var query = PageText.Query([
            .. form.Fields.Select(field => (field.Name, field.Value)),
            .. form.Hidden.Select(pair => (pair.Key, pair.Value)),
        ]);
        var faults = new Faults();
        var body = LinkReader.Read(QueryHelpers.ParseQuery(query), CheckOptions.Names, faults);
        Assert.True(faults.None, query);
        return RequestReader.Read<CheckRequest>(body.Span, faults).Request!;
    }

    // The words of a list are one value.
    private static string Listed(string path) =>
        path.EndsWith("motorKinds.0", StringComparison.Ordinal) ? path[..^2] : path;
}
