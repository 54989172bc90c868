namespace PowerCheck.Api.Health;

/// <summary>
/// Asks a running service how it is, so that a container can check its own health without another program in the image.
/// </summary>
internal static class Probe
{
    private const string Option = "--probe";

    /// <summary>The address to ask, when the program was started only to ask.</summary>
    public static Uri? Address(string[] args) =>
        args is [Option, var address] && Uri.TryCreate(address, UriKind.Absolute, out var uri)
            ? uri
            : null;

    /// <summary>Asks; 0 when the service is well, 1 when it is not.</summary>
    public static async Task<int> Run(Uri address)
    {
        using var client = new HttpClient { Timeout = TimeSpan.FromSeconds(5) };
        try
        {
            using var answer = await client.GetAsync(address);
            return answer.IsSuccessStatusCode ? 0 : 1;
        }
        catch (Exception failure) when (failure is HttpRequestException or TaskCanceledException)
        {
            await Console.Error.WriteLineAsync(failure.Message);
            return 1;
        }
    }
}
