using PowerCheck.Api.Batches.Intake;

namespace PowerCheck.Api.Tests.Batches;

/// <summary>Bytes put aside.</summary>
public class AsideFileTests
{
    [Fact]
    public async Task Bytes_come_back_in_order_round_after_round()
    {
        using var file = new AsideFile(1000);
        var dice = new Random(1);
        var sent = new byte[50_000];
        dice.NextBytes(sent);

        var got = await Task.WhenAll(Write(file, sent, dice), Read(file, new Random(2)));

        Assert.Equal(sent, got[1]);
    }

    [Fact]
    public async Task No_more_is_put_aside_than_there_is_room_for()
    {
        using var file = new AsideFile(1000);

        Assert.Equal(1000, await file.Write(new byte[1500], CancellationToken.None));
        Assert.Equal(0, await file.Write(new byte[1], CancellationToken.None));
        Assert.False(await file.Freed(TimeSpan.Zero, CancellationToken.None));

        Assert.Equal(300, await file.Read(new byte[300], CancellationToken.None));

        Assert.True(await file.Freed(TimeSpan.Zero, CancellationToken.None));
        Assert.Equal(300, await file.Write(new byte[500], CancellationToken.None));
    }

    [Fact]
    public async Task What_is_put_aside_is_taken_to_its_end_after_nothing_more_comes()
    {
        using var file = new AsideFile(1000);
        await file.Write(new byte[700], CancellationToken.None);
        file.End();

        Assert.Equal(700, await file.Read(new byte[1000], CancellationToken.None));
        Assert.Equal(0, await file.Read(new byte[1000], CancellationToken.None));
    }

    private static async Task<byte[]> Write(AsideFile file, byte[] bytes, Random dice)
    {
        for (var at = 0; at < bytes.Length; )
        {
            var piece = bytes.AsMemory(at, Math.Min(dice.Next(1, 700), bytes.Length - at));
            var count = await file.Write(piece, CancellationToken.None);
            at += count;
            if (count == 0)
            {
                await file.Freed(Timeout.InfiniteTimeSpan, CancellationToken.None);
            }
        }

        file.End();
        return bytes;
    }

    private static async Task<byte[]> Read(AsideFile file, Random dice)
    {
        var all = new List<byte>();
        var piece = new byte[900];
        while (true)
        {
            var into = piece.AsMemory(0, dice.Next(1, 900));
            if (await file.Read(into, CancellationToken.None) is not (var count and > 0))
            {
                return [.. all];
            }

            all.AddRange(piece[..count]);
        }
    }
}
