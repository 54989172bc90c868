using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>A rig a row of a table.</summary>
public class TableTests
{
    private const string AsLines = Fleet.Quick + "&form=ndjson";

    private const string Header =
        "id,motor.kind,motor.kvRpmPerVolt,motor.resistanceMilliohm,motor.massG,controller.motorKinds,controller.maxCells,controller.continuousCurrentA,battery.seriesCells,battery.capacityMah,vehicle.massKg,vehicle.drivetrain.overallRatio";

    private const string Row = "rig,brushed,1500,80,160,brushed,3,60,2,2200,2.5,45";

    public static TheoryData<string> Samples => SampleRigs.Names;

    [Theory]
    [MemberData(nameof(Samples))]
    public async Task A_row_with_every_value_of_a_rig_is_answered_as_the_rig(string name)
    {
        var rig = SampleRigs.Of(name);
        var cells = Fleet.Cells(rig).ToList();
        // A part without a figure is there as soon as a column of it is.
        cells.AddRange(
            new[] { "motor", "controller", "battery" }
                .Where(part => rig[part] is JsonObject { Count: 0 })
                .Select(part => ($"{part}.name", ""))
        );
        var table =
            string.Join(',', cells.Select(cell => cell.Path))
            + "\r\n"
            + string.Join(',', cells.Select(cell => Quoted(cell.Value)));

        var outcome = (await Fleet.Send(table, Fleet.Table, AsLines)).Outcomes()[0];
        var alone = (await Fleet.Send(rig.ToJsonString(), Fleet.Lines, AsLines)).Outcomes()[0];

        Assert.Equal(2, outcome.GetProperty("line").GetInt32());
        Assert.Equal(
            alone.GetProperty("check").GetRawText(),
            outcome.GetProperty("check").GetRawText()
        );
    }

    // As spreadsheets write them: a byte order mark, a line that names the separator, empty rows before the header, capitals for
    // true and false, columns without a name, quotes around anything, empty rows in between.
    [Theory]
    [InlineData("\uFEFF{H}\r\n{R}\r\n", 2)]
    [InlineData("sep=,\r\n{H}\r\n{R}\r\n", 3)]
    [InlineData("\r\n,,,\r\n{H}\n{R}", 4)]
    [InlineData("{H},motor.sensored\n{R},FALSE", 2)]
    [InlineData("{H},controller.currentLimitA,,\n{R},,,", 2)]
    [InlineData("{H},\"motor.fan\"\n{R},\"true\"", 2)]
    [InlineData("{H}\n,,,,,,,,,,,\n{R}", 3)]
    public async Task Habits_of_spreadsheets_are_understood(string table, int line)
    {
        var body = table
            .Replace("{H}", Header, StringComparison.Ordinal)
            .Replace("{R}", Row, StringComparison.Ordinal);

        var outcomes = (await Fleet.Send(body, Fleet.Table, AsLines)).Outcomes();

        Assert.Equal([$"check {line}"], outcomes.Kinds());
        Assert.Equal("rig", outcomes[0].Text("id"));
    }

    [Theory]
    [InlineData(';', "2,5")]
    [InlineData(';', "2.5")]
    [InlineData('\t', "2.5")]
    public async Task Another_separator_changes_nothing_but_the_decimal_mark(
        char separator,
        string mass
    )
    {
        var body = $"{Header}\n{Row}"
            .Replace(',', separator)
            .Replace("2.5", mass, StringComparison.Ordinal);

        var outcomes = (await Fleet.Send(body, Fleet.Table, AsLines)).Outcomes();
        var plain = (await Fleet.Send($"{Header}\n{Row}", Fleet.Table, AsLines)).Outcomes();

        Assert.Equal(
            plain[0].GetProperty("check").GetRawText(),
            outcomes[0].GetProperty("check").GetRawText()
        );
    }

    [Fact]
    public async Task A_table_is_answered_with_a_table_written_as_the_request_was()
    {
        var body =
            "\uFEFF"
            + $"{Header}\n{Row}".Replace(',', ';').Replace("2.5", "4,5", StringComparison.Ordinal);

        var answer = await Fleet.Send(
            body,
            Fleet.Table,
            Fleet.Quick + "&fields=verdict,endurance.minutes"
        );
        var minutes = (await Fleet.Send(body, Fleet.Table, AsLines + "&fields=endurance.minutes"))
            .Outcomes()[0]
            .GetProperty("fields")
            .GetProperty("endurance.minutes")
            .GetDouble();

        Assert.Equal("text/csv", answer.MediaType);
        Assert.Equal(
            minutes.ToString(CultureInfo.InvariantCulture).Replace('.', ','),
            answer.Rows(";")[0]["endurance.minutes"]
        );
        Assert.Equal(
            ["kind", "line", "id", "verdict", "endurance.minutes", "problem"],
            answer.Rows(";")[0].Keys
        );
    }

    [Fact]
    public async Task A_table_says_verdict_sentence_and_deciding_limit_when_nothing_else_is_asked()
    {
        var answer = await Fleet.Send($"{Header}\n{Row}\nrig-2{Row[3..]}x\n", Fleet.Table);
        var rows = answer.Rows();
        var check = (await Fleet.Send($"{Header}\n{Row}", Fleet.Table, AsLines))
            .Outcomes()[0]
            .GetProperty("check");
        var deciding = check.GetProperty("findings")[0];

        Assert.Equal(
            "kind,line,id,verdict,summary,code,loadCase,estimate,limit,unit,exceedanceProbability,problem",
            string.Join(',', rows[0].Keys)
        );
        Assert.Equal("check", rows[0]["kind"]);
        Assert.Equal(check.Text("verdict"), rows[0]["verdict"]);
        Assert.Equal(check.Text("summary"), rows[0]["summary"]);
        Assert.Equal(deciding.Text("code"), rows[0]["code"]);
        Assert.Equal(
            deciding.GetProperty("estimate").GetDouble(),
            double.Parse(rows[0]["estimate"], CultureInfo.InvariantCulture)
        );
        Assert.Equal("rig-2", rows[1]["id"]);
        Assert.StartsWith("vehicle.drivetrain.overallRatio is text", rows[1]["problem"]);
        Assert.Equal(("tally", "2", ""), (rows[2]["kind"], rows[2]["line"], rows[2]["problem"]));
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("-rig", "'-rig")]
    [InlineData("rig=1", "rig=1")]
    public async Task An_id_that_a_spreadsheet_would_compute_is_made_harmless(
        string id,
        string shown
    )
    {
        var answer = await Fleet.Send($"{Header}\n{id}{Row[3..]}", Fleet.Table);

        Assert.Equal(shown, answer.Rows()[0]["id"]);
    }

    [Theory]
    [InlineData("rig,brushed,1500\n", "The row has 3 cells and the header 12")]
    [InlineData("R,17\n", "The row has 13 cells and the header 12")]
    [InlineData("\"rig,brushed,1500\n", "a quote is not closed")]
    [InlineData("\"rig\"x,brushed,1500\n", "a quote is not closed")]
    [InlineData("R\rR\n", "carriage return")]
    public async Task A_row_that_is_no_row_is_a_problem_and_spoils_none_after_it(
        string row,
        string reason
    )
    {
        var bad = row.Replace("R", Row, StringComparison.Ordinal);

        var rows = (await Fleet.Send($"{Header}\n{Row}\n{bad}{Row}\n", Fleet.Table)).Rows();

        Assert.Equal(["check", "problem", "check", "tally"], rows.Select(one => one["kind"]));
        Assert.Equal(["2", "3", "4", "3"], rows.Select(one => one["line"]));
        Assert.Contains(reason, rows[1]["problem"]);
    }

    [Fact]
    public async Task A_cell_in_quotes_may_have_separators_quotes_and_line_ends()
    {
        var rows = (
            await Fleet.Send($"{Header}\n\"a, \"\"b\"\"\nc\"{Row[3..]}\n{Row}", Fleet.Table)
        ).Rows();

        Assert.Equal("a, \"b\"\nc", rows[0]["id"]);
        Assert.Equal("4", rows[1]["line"]);
    }

    [Fact]
    public async Task Stray_quotes_swallow_no_row_between_them()
    {
        var rows = (
            await Fleet.Send($"{Header}\n\"a{Row[3..]}\n{Row}\n{Row}\"\n{Row}", Fleet.Table)
        ).Rows();

        Assert.Equal(["2", "3", "4", "5", "4"], rows.Select(one => one["line"]));
        Assert.Equal(
            ["problem", "check", "problem", "check", "tally"],
            rows.Select(one => one["kind"])
        );
    }

    [Fact]
    public async Task A_quote_that_is_never_closed_costs_one_line_only()
    {
        var table =
            $"{Header}\n\"a{Row[3..]}\n" + string.Concat(Enumerable.Repeat(Row + "\n", 150));

        var tally = (await Fleet.Send(table, Fleet.Table, AsLines + "&fields=verdict")).Outcomes()[
            ^1
        ];

        Assert.Equal(1, tally.GetProperty("problems").GetInt32());
        Assert.Equal(151, tally.GetProperty("lines").GetInt32());
    }

    [Fact]
    public async Task Where_a_row_goes_on_over_line_ends_the_next_is_counted_from_its_last()
    {
        var rig = Row[3..];
        using var service = new Listening(("Limits:Batch:Lines", "1"));
        using var request = Fleet.Request(
            Encoding.UTF8.GetBytes($"{Header}\n\"a\nb\nc\"{rig}\n{Row}\n"),
            Fleet.Table,
            AsLines
        );

        using var response = await service.Client.SendAsync(request);
        var outcomes = (await Answer.Of(response)).Outcomes();

        Assert.Equal(2, outcomes[0].GetProperty("line").GetInt32());
        Assert.Equal(5, outcomes[^1].GetProperty("nextLine").GetInt32());
    }

    [Fact]
    public async Task A_cell_under_no_heading_is_a_problem()
    {
        var rows = (await Fleet.Send($"{Header},\n{Row},lost\n{Row},\n", Fleet.Table)).Rows();

        Assert.StartsWith("Column 13 says \"lost\" and has no heading", rows[0]["problem"]);
        Assert.Equal("check", rows[1]["kind"]);
    }

    [Theory]
    [InlineData("2.500", false)]
    [InlineData("0.500", true)]
    [InlineData("2.5", true)]
    [InlineData("2,500", true)]
    public async Task A_point_that_may_part_thousands_is_not_guessed_at(string mass, bool isClear)
    {
        var body = $"{Header}\n{Row}"
            .Replace(',', ';')
            .Replace("2.5", mass, StringComparison.Ordinal);

        var row = (await Fleet.Send(body, Fleet.Table)).Rows(";")[0];

        Assert.Equal(isClear ? "check" : "problem", row["kind"]);
        Assert.Equal(!isClear, row["problem"].Contains("thousands", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_problem_that_a_spreadsheet_would_compute_is_made_harmless()
    {
        var answer = await Fleet.Send(
            """{"=HYPERLINK(1)":1,"motor":{},"controller":{},"battery":{},"vehicle":{"massKg":3}}""",
            Fleet.Lines,
            Fleet.Quick + "&form=csv"
        );

        Assert.StartsWith("'=HYPERLINK", answer.Rows()[0]["problem"]);
    }

    [Fact]
    public async Task The_tally_of_a_table_speaks_whatever_members_are_asked_for()
    {
        var tally = (
            await Fleet.Send(
                $"{Header}\n{Row}",
                Fleet.Table,
                Fleet.Quick + "&fields=endurance.minutes"
            )
        ).Rows()[^1];

        Assert.Contains("0 not checked, by model", tally["endurance.minutes"]);
        Assert.Contains("Stop using a pack", tally["endurance.minutes"]);
    }

    [Fact]
    public async Task A_row_that_is_not_UTF_8_is_a_problem_and_says_how_to_save()
    {
        byte[] body =
        [
            .. Encoding.UTF8.GetBytes($"{Header}\n"),
            0xFC,
            .. Encoding.UTF8.GetBytes($"{Row}\n{Row}"),
        ];

        var rows = (await Fleet.Send(body, Fleet.Table)).Rows();

        Assert.Contains("Save the table as CSV in UTF-8", rows[0]["problem"]);
        Assert.Equal("check", rows[1]["kind"]);
    }

    [Fact]
    public async Task A_list_with_a_gap_is_a_problem()
    {
        var rows = (
            await Fleet.Send(
                $"{Header},accessories.0.kind,accessories.1.kind\n{Row},,winch",
                Fleet.Table
            )
        ).Rows();

        Assert.StartsWith("accessories.1 is given and accessories.0 is not", rows[0]["problem"]);
    }

    [Fact]
    public async Task A_figure_too_large_to_be_turned_into_another_unit_is_out_of_range()
    {
        var table = $"{Header}\n{Row}\n"
            .Replace("vehicle.massKg", "vehicle.massKg[t]", StringComparison.Ordinal)
            .Replace(",2.5,", ",1e307,", StringComparison.Ordinal);

        var row = (await Fleet.Send(table, Fleet.Table)).Rows()[0];

        Assert.Contains("must be from 0.05 to 50 kg", row["problem"]);
    }

    [Fact]
    public async Task Words_of_a_list_may_stand_in_one_cell()
    {
        var table =
            $"{Header}\n{Row.Replace(",brushed,3", ",\"brushed, brushless\",3", StringComparison.Ordinal)}";

        var outcome = (await Fleet.Send(table, Fleet.Table, AsLines)).Outcomes()[0];

        Assert.Equal("check", outcome.Text("kind"));
    }

    private static string Quoted(string text) =>
        $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
