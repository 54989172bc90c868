using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace PowerCheck.Api.Pipeline;

/// <summary>Reads the Accept header. Parameters other than q are ignored.</summary>
internal static class AcceptHeader
{
    private const string Problem = "application/problem+json";

    /// <summary>
    /// The form that suits a caller best; null when all are ruled out. Ruling out problems alone says nothing about answers.
    /// </summary>
    /// <param name="header">The header.</param>
    /// <param name="forms">The media types offered, first the one for callers who do not mind.</param>
    public static string? Best(StringValues header, IReadOnlyList<string> forms)
    {
        if (
            header.Count == 0
            || !MediaTypeHeaderValue.TryParseList(header, out var ranges)
            || ranges.Count == 0
        )
        {
            return forms[0];
        }

        // Sorting keeps the order of equals: of the caller's ranges first, then of the forms.
        return forms
            .Select(form => (Form: form, Wish: Wish.Of(form, ranges)))
            .Where(pair => pair.Wish is { Quality: > 0 })
            .OrderByDescending(pair => pair.Wish!.Value.Quality)
            .ThenBy(pair => pair.Wish!.Value.Distance)
            .ThenBy(pair => pair.Wish!.Value.Place)
            .Select(pair => pair.Form)
            .FirstOrDefault();
    }

    /// <summary>How much a caller wants a form.</summary>
    /// <param name="Quality">The header's q, 0 to 1.</param>
    /// <param name="Distance">How loosely the range covers the form; 0 when it names it.</param>
    /// <param name="Place">Where in the header the range stands.</param>
    private readonly record struct Wish(double Quality, int Distance, int Place)
    {
        public static Wish? Of(string form, IList<MediaTypeHeaderValue> ranges)
        {
            foreach (var (range, distance) in Ranges(form))
            {
                for (var place = 0; place < ranges.Count; place++)
                {
                    if (Same(ranges[place], range) && !RulesOutProblems(ranges[place]))
                    {
                        return new(ranges[place].Quality ?? 1, distance, place);
                    }
                }
            }

            return null;
        }

        /// <summary>What covers a form, the closest first, and how loosely. Who reads problems reads JSON.</summary>
        private static IEnumerable<(string Range, int Distance)> Ranges(string form)
        {
            yield return (form, 0);
            if (form is "application/json")
            {
                yield return (Problem, 1);
            }

            yield return ($"{form[..form.IndexOf('/', StringComparison.Ordinal)]}/*", 2);
            yield return ("*/*", 3);
        }

        private static bool RulesOutProblems(MediaTypeHeaderValue given) =>
            Same(given, Problem) && given.Quality is 0;

        private static bool Same(MediaTypeHeaderValue given, string range) =>
            given.MediaType.Equals(range, StringComparison.OrdinalIgnoreCase);
    }
}
