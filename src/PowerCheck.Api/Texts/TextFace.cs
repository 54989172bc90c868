using System.Globalization;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Texts;

/// <summary>A check as a few lines of text.</summary>
internal sealed class TextFace : ICheckFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Text;

    /// <inheritdoc/>
    public Task Write(HttpContext context, CheckView view) =>
        PlainText.Write(context, CheckText.Lines(view.Answer));
}

/// <summary>A problem as lines of text.</summary>
internal sealed class ProblemTextFace : IProblemFace
{
    /// <inheritdoc/>
    public string MediaType => CheckForms.Text;

    /// <inheritdoc/>
    public bool OnlyAsked => false;

    /// <inheritdoc/>
    public Task Write(HttpContext context, Problem problem) =>
        PlainText.Write(context, Lines(problem));

    private static IEnumerable<string> Lines(Problem problem) =>
        [
            $"{problem.Status} {problem.Title}. {problem.Detail}",
            .. (problem.Errors ?? []).Select(error => $"- {error.Message}"),
            $"Battery: {problem.BatterySafety.Leading}",
            $"{problem.Type}, trace {problem.TraceId}",
        ];
}

/// <summary>Ways to use them.</summary>
internal static class TextsSetup
{
    public static void AddTexts(this IServiceCollection services)
    {
        services.AddSingleton<ICheckFace, TextFace>();
        services.AddSingleton<IProblemFace, ProblemTextFace>();
    }
}

/// <summary>Lines as an answer.</summary>
internal static class PlainText
{
    // What a caller wrote must not make lines of its own, or turn their direction.
    private static string Plain(string line) =>
        string.Concat(line.Select(letter => IsHidden(letter) ? ' ' : letter));

    private static bool IsHidden(char letter) =>
        char.IsControl(letter)
        || char.GetUnicodeCategory(letter)
            is UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator;

    public static Task Write(HttpContext context, IEnumerable<string> lines)
    {
        context.Response.ContentType = $"{CheckForms.Text}; charset=utf-8";
        return context.Response.WriteAsync(
            string.Concat(lines.Select(line => $"{Plain(line)}\n")),
            // Of a request whose time is up the token is cancelled, and it is still to be told.
            CancellationToken.None
        );
    }
}
