using System.Text;
using Microsoft.AspNetCore.Http;
using PowerCheck.Api.Door;

namespace PowerCheck.Api.Tests.Door;

/// <summary>A caller who hangs up.</summary>
public class HangUpTests
{
    [Fact]
    public async Task What_answers_learns_that_nobody_waits_any_more()
    {
        using var hangUp = new CancellationTokenSource();
        var context = new DefaultHttpContext
        {
            RequestAborted = hangUp.Token,
            Request =
            {
                ContentType = "application/json",
                Body = new MemoryStream(Encoding.UTF8.GetBytes("{}")),
            },
        };
        var heard = CancellationToken.None;

        await PostedBody.Answer<string, string>(
            context,
            (_, _) => ("call", null),
            (call, stop) =>
            {
                heard = stop;
                return call;
            }
        );
        await hangUp.CancelAsync();

        Assert.True(heard.IsCancellationRequested);
    }
}
