using System.Buffers;
using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Pipeline;
using PowerCheck.Model.Checks;

namespace PowerCheck.Bench;

/// <summary>
/// How many rigs a core does through one request, against the floor: the serializer alone reading into and writing from the same
/// types. Lines per second of processor time, of all threads; the client runs in the same process and is counted in.
/// </summary>
internal static class FleetThroughput
{
    private const int Rigs = 1000;
    private const int Lines = 30_000;

    /// <summary>Measures everything twice, the first time to warm up, and prints the second.</summary>
    public static async Task Run()
    {
        var lines = Enumerable.Range(0, Rigs).Select(Line).ToArray();
        var reports = lines.Select(Report).ToArray();
        using var service = new Service();
        for (var round = 0; round < 2; round++)
        {
            var print = round == 1;
            var all = Floor(lines, (n, line) => All(n, line, reports[n % Rigs]));
            var verdict = Floor(lines, (n, line) => Verdict(n, line, reports[n % Rigs].Verdict));
            var checking = Floor(lines, (n, line) => All(n, line, Report(lines[n % Rigs])));
            Print(print, "reading and writing alone, full answers", all, all);
            Print(print, "reading and writing alone, verdicts", verdict, all);
            Print(print, "reading, checking and writing alone, full answers", checking, all);
            Print(print, "service, full answers", await service.Send(lines, ""), all);
            Print(
                print,
                "service, fields=verdict",
                await service.Send(lines, "&fields=verdict"),
                all
            );
        }
    }

    private static byte[] Line(int n)
    {
        var dice = new Random(n);
        var rig = JsonNode.Parse(ExampleRig.Json)!;
        rig["id"] = $"rig-{n}";
        rig["vehicle"]!["massKg"] = Math.Round(1.5 + (5 * dice.NextDouble()), 2);
        rig["motor"]!["kvRpmPerVolt"] = dice.Next(900, 4500);
        return Encoding.UTF8.GetBytes(rig.ToJsonString());
    }

    private static CheckReport Report(byte[] line)
    {
        var request = JsonSerializer.Deserialize<CheckRequest>(line, JsonForm.Options)!;
        return AnswerWriter.Report(request.Id, Check.Run(RigMapper.Map(request)), false);
    }

    private static void All(int n, CheckRequest request, CheckReport report) =>
        Write(
            new OutcomeAnswer
            {
                Kind = "check",
                Line = n,
                Id = request.Id,
                Check = report,
            }
        );

    private static void Verdict(int n, CheckRequest request, string verdict) =>
        Write(
            new OutcomeAnswer
            {
                Kind = "check",
                Line = n,
                Id = request.Id,
                Fields = new Dictionary<string, object> { ["verdict"] = verdict },
            }
        );

    private static readonly ArrayBufferWriter<byte> Written = new(100_000);

    private static void Write(OutcomeAnswer outcome)
    {
        Written.ResetWrittenCount();
        using var json = new Utf8JsonWriter(Written);
        JsonSerializer.Serialize(json, outcome, JsonForm.Options);
    }

    /// <summary>Lines a second of processor time.</summary>
    private static double Floor(byte[][] lines, Action<int, CheckRequest> write)
    {
        var before = Processor();
        for (var n = 0; n < Lines; n++)
        {
            write(n, JsonSerializer.Deserialize<CheckRequest>(lines[n % Rigs], JsonForm.Options)!);
        }

        return Lines / (Processor() - before);
    }

    private static double Processor() =>
        Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static void Print(bool isWanted, string what, double rate, double floor)
    {
        if (isWanted)
        {
            Console.WriteLine(
                $"{what, -52} {rate, 8:F0} lines a core and second, {rate / floor:F2}"
            );
        }
    }

    /// <summary>The service on a socket, and a client that only counts lines.</summary>
    private sealed class Service : IDisposable
    {
        private readonly WebApplicationFactory<PowerCheck.Api.Limits.ServiceLimits> host =
            new WebApplicationFactory<PowerCheck.Api.Limits.ServiceLimits>().WithWebHostBuilder(
                builder =>
                {
                    builder.UseSetting("urls", "http://127.0.0.1:0");
                    builder.UseSetting("Serilog:MinimumLevel:Default", "Fatal");
                }
            );
        private readonly HttpClient client = new();

        public Service()
        {
            host.UseKestrel();
            host.StartServer();
            client.BaseAddress = new(
                host.Services.GetRequiredService<IServer>()
                    .Features.Get<IServerAddressesFeature>()!
                    .Addresses.First()
            );
        }

        public async Task<double> Send(byte[][] lines, string query)
        {
            using var body = new MemoryStream();
            for (var n = 0; n < Lines; n++)
            {
                body.Write(lines[n % Rigs]);
                body.WriteByte((byte)'\n');
            }

            body.Position = 0;
            var before = Processor();
            using var request = new HttpRequestMessage(
                HttpMethod.Post,
                $"/v1/checks/batch?spread=none&remedies=none{query}"
            )
            {
                Content = new StreamContent(body)
                {
                    Headers = { ContentType = new MediaTypeHeaderValue(LineOutcomes.Type) },
                },
            };
            using var response = await client.SendAsync(
                request,
                HttpCompletionOption.ResponseHeadersRead
            );
            await using var answer = await response.Content.ReadAsStreamAsync();
            var buffer = new byte[256 * 1024];
            var count = 0;
            for (int read; (read = await answer.ReadAsync(buffer)) > 0; )
            {
                count += buffer.AsSpan(0, read).Count((byte)'\n');
            }

            return count == Lines + 1
                ? Lines / (Processor() - before)
                : throw new InvalidOperationException($"{count} lines came back");
        }

        public void Dispose()
        {
            client.Dispose();
            host.Dispose();
        }
    }
}
