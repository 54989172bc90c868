using System.Buffers;
using System.Diagnostics;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PowerCheck.Api.Batches.Outcomes;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Checks.Mapping;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Checks.Writing;
using PowerCheck.Api.Limits;
using PowerCheck.Api.Pipeline;
using PowerCheck.Model.Checks;

namespace PowerCheck.Bench;

/// <summary>
/// How many rigs a core does through one request, against the floor: the serializer alone reading into and writing from the same
/// types. Lines per second of processor time, all threads of the service's process counted.
/// </summary>
internal static class FleetThroughput
{
    private const int Rigs = 1000;
    private const int Lines = 30_000;

    /// <summary>Measures everything twice, the first time to warm up, and prints the second.</summary>
    public static async Task Run()
    {
        var lines = Enumerable.Range(0, Rigs).Select(Line).ToArray();
        var reports = lines.Select(line => Report(Read(line))).ToArray();
        using var service = new Service();
        await service.Ready();
        for (var round = 0; round < 2; round++)
        {
            var all = Floor(lines, (n, line) => All(n, line, reports[n % Rigs]));
            var verdict = Floor(lines, (n, line) => Verdict(n, line, reports[n % Rigs].Verdict));
            var checkAll = Floor(lines, (n, line) => All(n, line, Report(line)));
            var checkVerdict = Floor(lines, (n, line) => Verdict(n, line, Report(line).Verdict));
            var serviceAll = await service.Send(lines, "");
            var serviceVerdict = await service.Send(lines, "&fields=verdict");
            if (round == 1)
            {
                Print("full answers", serviceAll, all, checkAll);
                Print("fields=verdict", serviceVerdict, verdict, checkVerdict);
            }
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

    private static CheckReport Report(CheckRequest request) =>
        AnswerWriter.Report(request.Id, Check.Run(RigMapper.Map(request)), false);

    private static CheckRequest Read(byte[] line) =>
        JsonSerializer.Deserialize<CheckRequest>(line, JsonForm.Options)!;

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
            write(n, Read(lines[n % Rigs]));
        }

        return Lines / (Processor() - before);
    }

    private static double Processor() =>
        Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static void Print(string what, double service, double floor, double checking) =>
        Console.WriteLine(
            $"{what}: {service:F0} lines a core and second; {service / floor:F2} of reading and writing alone ({floor:F0}), {service / checking:F2} of reading, checking and writing alone ({checking:F0})"
        );

    /// <summary>The service as a process of its own, and a client that only counts lines.</summary>
    private sealed class Service : IDisposable
    {
        private readonly Process process;
        private readonly HttpClient client = new();

        public Service()
        {
            using var free = new TcpListener(IPAddress.Loopback, 0);
            free.Start();
            var address = $"http://{free.LocalEndpoint}";
            free.Stop();
            client.BaseAddress = new(address);
            string[] arguments =
            [
                typeof(ServiceLimits).Assembly.Location,
                "--urls",
                address,
                "--Serilog:MinimumLevel:Default",
                "Fatal",
            ];
            process = Process.Start("dotnet", arguments);
        }

        public async Task Ready()
        {
            for (var wait = 0; ; wait++)
            {
                try
                {
                    using var answer = await client.GetAsync("/health/live");
                    return;
                }
                catch (HttpRequestException) when (wait < 100)
                {
                    await Task.Delay(100);
                }
            }
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
            var before = Busy();
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
                ? Lines / (Busy() - before)
                : throw new InvalidOperationException($"{count} lines came back");
        }

        private double Busy()
        {
            process.Refresh();
            return process.TotalProcessorTime.TotalSeconds;
        }

        public void Dispose()
        {
            client.Dispose();
            process.Kill();
            process.Dispose();
        }
    }
}
