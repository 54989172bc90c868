using System.Text.Json;

namespace PowerCheck.Model.Tests.Published;

/// <summary>The published rows as they stand on disk, a file a topic.</summary>
internal static class PublishedRows
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>Rows by topic, then by identifier.</summary>
    public static IReadOnlyDictionary<
        string,
        IReadOnlyDictionary<string, PublishedCheck>
    > ByTopic { get; } =
        Directory
            .EnumerateFiles(Folder, "*.json")
            .Where(path => !path.EndsWith("documents.json", StringComparison.Ordinal))
            .ToDictionary(
                path => Path.GetFileNameWithoutExtension(path),
                Read,
                StringComparer.Ordinal
            );

    /// <summary>Every row of every topic.</summary>
    public static IEnumerable<PublishedCheck> All => ByTopic.Values.SelectMany(rows => rows.Values);

    /// <summary>Documents that only the rows cite, by key.</summary>
    public static IReadOnlyDictionary<string, string> Documents { get; } =
        JsonSerializer.Deserialize<Dictionary<string, string>>(
            File.ReadAllText(Path.Combine(Folder, "documents.json"))
        ) ?? [];

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "published");

    private static IReadOnlyDictionary<string, PublishedCheck> Read(string path) =>
        (
            JsonSerializer.Deserialize<PublishedCheck[]>(File.ReadAllText(path), Options) ?? []
        ).ToDictionary(check => check.Id, StringComparer.Ordinal);
}
