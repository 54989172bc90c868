namespace PowerCheck.Api.Tests.Host;

/// <summary>Where the repository is, seen from the tests' own files.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "PowerCheck.sln"))
            ? folder
            : Find(
                Path.GetDirectoryName(folder)
                    ?? throw new InvalidOperationException(
                        "The tests run outside of the repository."
                    )
            );
}
