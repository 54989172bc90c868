using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Host;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Api.Tests.Door;

/// <summary>Walks over every member that the door knows.</summary>
public class MemberTableTests
{
    private static readonly JsonSerializerOptions Shown = new()
    {
        NumberHandling = System
            .Text
            .Json
            .Serialization
            .JsonNumberHandling
            .AllowNamedFloatingPointLiterals,
        Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter() },
    };

    public static TheoryData<string> Figures =>
        [
            .. RequestMembers
                .All.Where(member => member.Figure is not null)
                .Select(member => member.Path),
        ];

    public static TheoryData<string> Members =>
        [.. RequestMembers.All.Select(member => member.Path)];

    [Theory]
    [MemberData(nameof(Figures))]
    public void A_figure_is_read_up_to_its_ends_and_refused_past_them(string path)
    {
        var figure = RequestMembers.Of(path).Figure!;
        var step = RequestMembers.Of(path).Whole
            ? 1
            : Math.Max(1e-6, Math.Abs(figure.Maximum) * 1e-6);

        Assert.False(Refused(path, figure.Minimum));
        Assert.False(Refused(path, figure.Maximum));
        Assert.True(Refused(path, figure.Minimum - step));
        Assert.True(Refused(path, figure.Maximum + step));
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void An_example_is_one_that_the_door_reads(string path)
    {
        var faults = new Faults();

        Read(Rigs.Smallest().With(path, RequestMembers.Of(path).Example), faults);

        Assert.DoesNotContain(
            faults.All,
            fault => fault.Path == path && fault.Code != FaultCode.Conflict
        );
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void A_member_reaches_the_model_in_SI(string path)
    {
        var member = RequestMembers.Of(path);
        if (member.Unused)
        {
            return;
        }

        var without = Label(RequestMembers.Frame(path));
        var with = Label(RequestMembers.Frame(path).With(path, member.Example));

        var changed = with.Where(leaf =>
                !without.TryGetValue(leaf.Key, out var old) || old != leaf.Value
            )
            .ToArray();
        Assert.Contains(changed, leaf => Same(leaf.Value, member.Expected));
    }

    private static bool Same(string shown, string expected) =>
        double.TryParse(shown, CultureInfo.InvariantCulture, out var figure)
        && double.TryParse(expected, CultureInfo.InvariantCulture, out var wanted)
            ? Math.Abs(figure - wanted) <= 1e-9 * Math.Abs(wanted)
            : string.Equals(shown, expected, StringComparison.OrdinalIgnoreCase);

    private static Dictionary<string, string> Label(JsonObject body)
    {
        RigLabel label = RigMapper.Map(Read(body, new())!);
        var leaves = new Dictionary<string, string>(StringComparer.Ordinal);
        Collect(JsonSerializer.SerializeToNode(label, Shown), "", leaves);
        return leaves;
    }

    private static void Collect(JsonNode? node, string path, Dictionary<string, string> leaves)
    {
        switch (node)
        {
            case JsonObject parts:
                foreach (var (name, part) in parts)
                {
                    Collect(part, $"{path}.{name}", leaves);
                }

                break;
            case JsonArray items:
                foreach (var (i, item) in items.Index())
                {
                    Collect(item, $"{path}.{i}", leaves);
                }

                break;
            case JsonValue value:
                leaves[path] = value.ToString();
                break;
            default:
                break;
        }
    }

    private static bool Refused(string path, double value)
    {
        var faults = new Faults();
        Read(RequestMembers.Frame(path).With(path, value), faults);
        return faults.All.Any(fault => fault.Path == path && fault.Code == FaultCode.OutOfRange);
    }

    private static CheckRequest? Read(JsonObject body, Faults faults) =>
        RequestReader
            .Read<CheckRequest>(Encoding.UTF8.GetBytes(body.ToJsonString()), faults)
            .Request;
}
