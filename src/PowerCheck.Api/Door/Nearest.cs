namespace PowerCheck.Api.Door;

/// <summary>Finds the known word that a misspelt one was probably meant to be.</summary>
internal static class Nearest
{
    /// <summary>The closest of the known words, or null when none is close.</summary>
    /// <param name="given">The word as written.</param>
    /// <param name="known">The words that exist.</param>
    public static string? Of(string given, IEnumerable<string> known)
    {
        // A longer name has not been mistyped but made up; do not spend time on it.
        if (given.Length > 60)
        {
            return null;
        }

        var best = known
            .Select(word => (word, distance: Distance(given, word)))
            .OrderBy(pair => pair.distance)
            .FirstOrDefault();
        return best.word is not null && best.distance <= Reach(given, best.word) ? best.word : null;
    }

    private static int Reach(string given, string word) =>
        Math.Max(1, Math.Min(given.Length, word.Length) / 3);

    /// <summary>Insertions, deletions and replacements between two words; a letter's case counts for nothing.</summary>
    private static int Distance(string a, string b)
    {
        Span<int> row = stackalloc int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 0; i < a.Length; i++)
        {
            NextRow(row, a[i], b, i);
        }

        return row[b.Length];
    }

    private static void NextRow(Span<int> row, char letter, string b, int i)
    {
        var diagonal = row[0];
        row[0] = i + 1;
        for (var j = 0; j < b.Length; j++)
        {
            var same = char.ToLowerInvariant(letter) == char.ToLowerInvariant(b[j]);
            var replaced = diagonal + (same ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = Math.Min(replaced, 1 + Math.Min(row[j], row[j + 1]));
        }
    }
}
