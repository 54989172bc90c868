using System.Text.Json;

namespace PowerCheck.Model.Tests.Published;

/// <summary>One published figure that the model has to meet.</summary>
public sealed record PublishedCheck(
    string Id,
    int? Check,
    string What,
    string Function,
    JsonElement Inputs,
    IReadOnlyDictionary<string, double> Expected,
    Tolerance Tolerance,
    Reference Source,
    string Tag,
    string? Note
)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>Every row of every file, by identifier.</summary>
    public static IReadOnlyDictionary<string, PublishedCheck> All { get; } =
        Directory
            .EnumerateFiles(Folder, "*.json")
            .Where(path => !path.EndsWith("documents.json", StringComparison.Ordinal))
            .SelectMany(path =>
                JsonSerializer.Deserialize<PublishedCheck[]>(File.ReadAllText(path), Options) ?? []
            )
            .ToDictionary(check => check.Id, StringComparer.Ordinal);

    /// <summary>Documents that only the rows cite, by key.</summary>
    public static IReadOnlyDictionary<string, string> Documents { get; } =
        JsonSerializer.Deserialize<Dictionary<string, string>>(
            File.ReadAllText(Path.Combine(Folder, "documents.json"))
        ) ?? [];

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "published");

    public double Number(string name) => Inputs.GetProperty(name).GetDouble();

    public double Number(string name, double otherwise) =>
        Inputs.TryGetProperty(name, out var value) ? value.GetDouble() : otherwise;

    public bool Has(string name) => Inputs.TryGetProperty(name, out _);

    public string Word(string name) => Inputs.GetProperty(name).GetString() ?? "";

    public double[] List(string name) =>
        [.. Inputs.GetProperty(name).EnumerateArray().Select(x => x.GetDouble())];

    public (double Value, double Seconds)[] Pieces(string name) =>
        [
            .. Inputs
                .GetProperty(name)
                .EnumerateArray()
                .Select(x => (x[0].GetDouble(), x[1].GetDouble())),
        ];
}

/// <summary>How far off the model may be, and why.</summary>
public sealed record Tolerance(double? Relative, double? Absolute, string Reason)
{
    public double Of(double expected) => Absolute ?? (Relative!.Value * Math.Abs(expected));
}

/// <summary>Where the figure stands.</summary>
public sealed record Reference(string Key, string Place);
