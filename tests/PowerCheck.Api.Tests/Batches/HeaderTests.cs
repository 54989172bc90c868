using System.Text;
using System.Text.Json;
using PowerCheck.Api.Paths;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Units;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>The header of a table.</summary>
public class HeaderTests
{
    private static readonly Dictionary<string, Unit> Units = new()
    {
        ["kg"] = Unit.Kilogram,
        ["g"] = Unit.Gram,
        ["mm"] = Unit.Millimetre,
        ["°C"] = Unit.Celsius,
        ["m/s"] = Unit.MetrePerSecond,
        ["N·m"] = Unit.NewtonMetre,
        ["mΩ"] = Unit.Milliohm,
        ["mAh"] = Unit.MilliampereHour,
        ["µH"] = Unit.Microhenry,
        ["°"] = Unit.Degree,
        [""] = Unit.One,
    };

    // The factors are those of NIST SP 811 (2008), Appendix B.8, from memory; the International System's prefixes otherwise.
    [Theory]
    [InlineData("kg", 1, "lb", 0.45359237)]
    [InlineData("g", 1, "oz", 28.349523125)]
    [InlineData("mm", 1, "in", 25.4)]
    [InlineData("mm", 1, "inch", 25.4)]
    [InlineData("mm", 1, "cm", 10)]
    [InlineData("°C", 95, "°F", 35)]
    [InlineData("°C", 95, "degF", 35)]
    [InlineData("°C", 300, "K", 26.85)]
    [InlineData("m/s", 1, "mph", 0.44704)]
    [InlineData("m/s", 36, "km/h", 10)]
    [InlineData("N·m", 1, "lbf·in", 0.1129848)]
    [InlineData("N·m", 1, "kgf·cm", 0.0980665)]
    [InlineData("mΩ", 0.022, "Ω", 22)]
    [InlineData("mΩ", 0.022, "Ohm", 22)]
    [InlineData("mΩ", 22, "mOhm", 22)]
    [InlineData("mAh", 2.2, "Ah", 2200)]
    [InlineData("µH", 12, "uH", 12)]
    [InlineData("°", 1, "rad", 57.29577951)]
    [InlineData("", 80, "%", 0.8)]
    public void A_unit_in_brackets_is_turned_into_that_of_the_member(
        string own,
        double given,
        string symbol,
        double expected
    ) => Assert.Equal(expected, OtherUnits.From(Units[own], symbol)!(given), 1e-6 * expected);

    [Theory]
    [InlineData("mΩ", "m\u2126")]
    [InlineData("µH", "\u03BCH")]
    public void Letters_that_look_the_same_are_the_same(string own, string symbol) =>
        Assert.Equal(3, OtherUnits.From(Units[own], symbol)!(3));

    [Theory]
    [InlineData("kg", "A")]
    [InlineData("kg", "stones of old")]
    [InlineData("kg", "KG")]
    [InlineData("mΩ", "MOhm")]
    [InlineData("°", "mm")]
    public void A_unit_of_another_kind_is_none(string own, string symbol) =>
        Assert.Null(OtherUnits.From(Units[own], symbol));

    [Fact]
    public async Task A_figure_in_another_unit_is_answered_as_in_its_own()
    {
        var kilograms = await Massed("vehicle.massKg", "3.6287389600000");
        var pounds = await Massed("vehicle.massKg [lb]", "8");

        Assert.Equal(kilograms, pounds);
    }

    [Theory]
    [InlineData("vehicle.massKg,vehicle.masKg", "unknown-member", "vehicle.massKg")]
    [InlineData("massKg", "unknown-member", "vehicle.massKg")]
    [InlineData("vehicle", "unknown-member", null)]
    [InlineData("accessories.kind", "unknown-member", "accessories.0.kind")]
    [InlineData("accessories.00.kind", "unknown-member", "accessories.0.kind")]
    [InlineData("vehicle.massKg,vehicle.massKg[g]", "doubled", null)]
    [InlineData("controller.motorKinds,controller.motorKinds.0", "doubled", null)]
    [InlineData("vehicle.massKg[A]", "out-of-range", null)]
    [InlineData("motor.kind[kg]", "out-of-range", null)]
    [InlineData("motor.kvRpmPerVolt[Hz]", "out-of-range", null)]
    [InlineData("tolerances.vehicle.massKg.absolute[%]", "out-of-range", null)]
    [InlineData("accessories.1.kind", "missing", null)]
    public async Task A_header_that_names_no_rig_is_refused_whole(
        string header,
        string code,
        string? nearest
    )
    {
        var error = (await Fleet.Send(header + "\n1\n", Fleet.Table)).OnlyError();

        Assert.Equal(code, error.Text("code"));
        Assert.Equal(
            nearest,
            error.TryGetProperty("nearest", out var near) ? near.GetString() : null
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("sep=;\n")]
    public async Task A_table_without_a_header_is_refused_whole(string body)
    {
        var answer = await Fleet.Send(body, Fleet.Table);

        Assert.Equal(System.Net.HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("first row", answer.Json.Text("detail"));
    }

    [Fact]
    public async Task A_table_in_UTF_16_is_refused_and_told_how_to_save()
    {
        byte[] body = [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("vehicle.massKg\n3")];

        var answer = await Fleet.Send(body, Fleet.Table);

        Assert.Contains("Save the table as CSV in UTF-8", answer.Json.Text("detail"));
    }

    [Fact]
    public async Task How_far_off_a_figure_is_has_a_column_too()
    {
        var rig = Rigs.Example().With("vehicle.massKg", 4.4);
        rig["tolerances"] = new System.Text.Json.Nodes.JsonObject
        {
            ["vehicle.massKg"] = 0.2,
            ["motor.resistanceMilliohm"] = new System.Text.Json.Nodes.JsonObject
            {
                ["absolute"] = 3,
            },
        };
        var cells = Fleet.Cells(rig).ToArray();
        var table =
            string.Join(',', cells.Select(cell => cell.Path))
            + "\n"
            + string.Join(',', cells.Select(cell => cell.Value));
        const string Linear = "?remedies=none&form=ndjson&fields=tolerances";

        var row = (await Fleet.Send(table, Fleet.Table, Linear)).Outcomes()[0];
        var line = (await Fleet.Send(rig.ToJsonString(), Fleet.Lines, Linear)).Outcomes()[0];

        Assert.Equal(Fields(line), Fields(row));
        Assert.Contains("\"absolute\":3", Fields(row));
    }

    private static string Fields(JsonElement outcome) => outcome.GetProperty("fields").GetRawText();

    private static async Task<string> Massed(string heading, string mass)
    {
        var rig = Rigs.Example();
        Assert.True(rig["vehicle"]!.AsObject().Remove("massKg"));
        var cells = Fleet.Cells(rig).Append((Path: heading, Value: mass)).ToArray();
        var table =
            string.Join(',', cells.Select(cell => cell.Path))
            + "\n"
            + string.Join(',', cells.Select(cell => cell.Value));
        var outcome = (
            await Fleet.Send(table, Fleet.Table, Fleet.Quick + "&form=ndjson")
        ).Outcomes()[0];
        return outcome.GetProperty("check").GetRawText();
    }
}
