using System.Text.RegularExpressions;
using PowerCheck.Api.Tests.Host;

namespace PowerCheck.Api.Tests.Readme;

/// <summary>The fenced blocks of README.md, in order.</summary>
internal static partial class ReadmeText
{
    /// <summary>Commands as a reader would type them.</summary>
    public static IReadOnlyList<string> Commands => Blocks("bash");

    /// <summary>Answers as they are shown.</summary>
    public static IReadOnlyList<string> Answers => Blocks("json");

    /// <summary>Answers in lines as they are shown.</summary>
    public static IReadOnlyList<string> Texts => Blocks("text");

    private static string[] Blocks(string language) =>
        [
            .. Fence()
                .Matches(File.ReadAllText(Path.Combine(Repository.Root, "README.md")))
                .Where(match => match.Groups["language"].Value == language)
                .Select(match => match.Groups["text"].Value.TrimEnd()),
        ];

    [GeneratedRegex(
        "^```(?<language>[a-z]+)\n(?<text>.*?)^```",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        5000
    )]
    private static partial Regex Fence();
}
