using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace PowerCheck.Api.Tests.Host;

/// <summary>The real host on a real socket, for what an in-memory one does not show: streams, slow callers, hang-ups.</summary>
internal sealed class Listening : IDisposable
{
    private readonly WebApplicationFactory<Program> host;

    public Listening(params (string Name, string Value)[] settings)
    {
        host = Service
            .Own()
            .WithWebHostBuilder(builder =>
            {
                builder.UseSetting("urls", "http://127.0.0.1:0");
                foreach (var (name, value) in settings)
                {
                    builder.UseSetting(name, value);
                }
            });
        host.UseKestrel();
        host.StartServer();
        Address = new(
            host.Services.GetRequiredService<IServer>()
                .Features.Get<IServerAddressesFeature>()!
                .Addresses.First()
        );
        Client = new() { BaseAddress = Address, Timeout = TimeSpan.FromMinutes(2) };
    }

    public Uri Address { get; }

    public HttpClient Client { get; }

    /// <summary>A connection on which a request for many checks has begun, in chunks of the caller's choosing.</summary>
    public async Task<Caller> Call(string query = Fleet.Quick, string type = Fleet.Lines)
    {
        var caller = new Caller(Address);
        await caller.Begin(query, type);
        return caller;
    }

    /// <summary>Stops the service as an operator would.</summary>
    public Task Stop() => host.Services.GetRequiredService<IHost>().StopAsync();

    public void Dispose()
    {
        Client.Dispose();
        host.Dispose();
    }
}
