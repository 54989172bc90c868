using System.Text;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Door;

/// <summary>What the door lets pass, and how it reads it.</summary>
public class LenienceTests
{
    [Fact]
    public void A_whole_number_may_be_written_with_a_point_or_an_exponent()
    {
        Assert.Equal(3, Read("""{"battery":{"seriesCells":3.0}}""").Battery!.SeriesCells);
        Assert.Equal(10, Read("""{"battery":{"seriesCells":1e1}}""").Battery!.SeriesCells);
    }

    [Fact]
    public void An_explicit_null_counts_as_left_out()
    {
        var request = Read(
            """{"id":null,"course":null,"accessories":null,"motor":{"kind":null}}"""
        );

        Assert.Null(request.Id);
        Assert.Null(request.Course);
        Assert.Null(request.Accessories);
        Assert.Null(request.Motor!.Kind);
    }

    [Fact]
    public void Names_and_words_may_be_written_with_escapes()
    {
        var request = Read("""{"motor":{"\u006bind":"brush\u0065d"}}""");

        Assert.Equal("brushed", request.Motor!.Kind);
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over() =>
        Assert.Equal("x", Read("\uFEFF{\"id\":\"x\"}").Id);

    [Fact]
    public void The_example_passes_without_a_fault()
    {
        var faults = new Faults();

        var reading = RequestReader.Read<CheckRequest>(
            Encoding.UTF8.GetBytes(Rigs.Example().ToJsonString()),
            faults
        );

        Assert.True(faults.None);
        Assert.Equal(3300, reading.Request!.Motor!.KvRpmPerVolt);
        Assert.Equal("servo", reading.Request.Accessories!.Single().Kind);
    }

    [Fact]
    public void What_is_right_is_read_though_something_else_is_wrong()
    {
        var request = Read("""{"motor":{"kvRpmPerVolt":"x","massG":100}}""");

        Assert.Null(request.Motor!.KvRpmPerVolt);
        Assert.Equal(100, request.Motor.MassG);
    }

    [Fact]
    public void A_list_in_the_middle_of_an_unknown_member_is_passed_over()
    {
        var request = Read("""{"strange":[1,{"a":[2]},"b"],"id":"x"}""");

        Assert.Equal("x", request.Id);
    }

    private static CheckRequest Read(string body) =>
        RequestReader.Read<CheckRequest>(Encoding.UTF8.GetBytes(body), new()).Request!;
}
