using System.Diagnostics;
using System.Net.Sockets;
using System.Text.Json;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Readme;

/// <summary>The README's own commands, run from its text.</summary>
public sealed class ReadmeTests
{
    private const string Address = "http://localhost:5080";

    [Fact]
    public void The_readme_shows_the_two_commands_a_request_and_a_link()
    {
        Assert.Equal("dotnet run --project src/PowerCheck.Api", ReadmeText.Commands[0]);
        Assert.Equal("tests/run", ReadmeText.Commands[1]);
        Assert.StartsWith(
            $"curl -s {Address}/v1/checks",
            ReadmeText.Commands[2],
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            $"curl -s '{Address}/v1/checks?",
            ReadmeText.Commands[3],
            StringComparison.Ordinal
        );
        Assert.Single(ReadmeText.Answers);
        Assert.Single(ReadmeText.Texts);
    }

    [Fact]
    public async Task The_test_command_is_there_and_can_be_run()
    {
        var parsed = await Run(
            $"test -x {ReadmeText.Commands[1]} && bash -n {ReadmeText.Commands[1]}"
        );

        Assert.Equal("", parsed);
    }

    [Fact]
    public async Task The_first_command_serves_and_request_and_link_get_the_answers_that_are_shown()
    {
        // The readme's port may be taken here: the service is asked to listen on a free one.
        var address = $"http://127.0.0.1:{FreePort()}";
        using var service = Start($"exec {ReadmeText.Commands[0]} --no-build -- --urls {address}");
        try
        {
            await Until(address + "/health/ready", service);

            var answer = await Asked(ReadmeText.Commands[2]);
            var lines = await Asked(ReadmeText.Commands[3]);

            var differences = Shortened.Differences(
                JsonDocument.Parse(ReadmeText.Answers[0]).RootElement,
                JsonDocument.Parse(answer).RootElement
            );
            Assert.Equal([], differences);
            Assert.Equal(
                ReadmeText.Texts[0],
                lines.TrimEnd().Replace(address, Address, StringComparison.Ordinal)
            );
        }
        finally
        {
            service.Kill(entireProcessTree: true);
            await service.WaitForExitAsync();
        }

        Task<string> Asked(string command) =>
            Run(command.Replace(Address, address, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"a":1,"…":"…"}""", """{"a":1,"b":2}""", 0)]
    [InlineData("""{"a":1}""", """{"a":1,"b":2}""", 1)]
    [InlineData("""{"a":1,"…":"…"}""", """{"a":2}""", 1)]
    [InlineData("""{"c":1,"…":"…"}""", """{"a":2}""", 1)]
    [InlineData("""[2,"…"]""", """[1,2,3]""", 0)]
    [InlineData("""[4,"…"]""", """[1,2,3]""", 1)]
    [InlineData("""[1,2]""", """[1,2,3]""", 1)]
    public void A_shortened_answer_differs_where_no_mark_stands(
        string shown,
        string real,
        int differences
    ) =>
        Assert.Equal(
            differences,
            Shortened
                .Differences(
                    JsonDocument.Parse(shown).RootElement,
                    JsonDocument.Parse(real).RootElement
                )
                .Count()
        );

    private static Process Start(string command) =>
        Process.Start(
            new ProcessStartInfo("bash", ["-c", command])
            {
                WorkingDirectory = Repository.Root,
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;

    private static async Task<string> Run(string command)
    {
        using var process = Start(command);
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        return text;
    }

    private static async Task Until(string address, Process service)
    {
        // Nobody reads what the service says; a full pipe would stop it.
        service.BeginOutputReadLine();
        service.BeginErrorReadLine();
        using var client = new HttpClient();
        for (var tries = 0; tries < 600 && !service.HasExited; tries++)
        {
            try
            {
                if ((await client.GetAsync(address)).IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // Not yet listening.
            }

            await Task.Delay(100);
        }

        Assert.Fail("The service did not start.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        return ((System.Net.IPEndPoint)listener.LocalEndpoint).Port;
    }
}
