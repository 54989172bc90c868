namespace PowerCheck.Api.Door;

/// <summary>Reads query parameters as strictly as members.</summary>
internal sealed class QueryDoor(IConfiguration configuration)
{
    private const string Campaign = "utm_";

    private readonly HashSet<string> ignored = new(
        configuration.GetSection("Query:Ignored").Get<string[]>() ?? [],
        StringComparer.Ordinal
    );

    /// <summary>Notes every parameter that is not known, and every one that is given twice.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="known">Names of the known ones.</param>
    /// <param name="faults">Where to note it.</param>
    public void RefuseUnknown(IQueryCollection query, IReadOnlyList<string> known, Faults faults)
    {
        foreach (var (name, values) in query)
        {
            if (known.Contains(name, StringComparer.Ordinal))
            {
                RefuseDoubled(name, values.Count, faults);
            }
            else if (!IsPassed(name))
            {
                faults.Add(Unknown(name, known));
            }
        }
    }

    /// <summary>Notes every one of some parameters that is given twice.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="names">Names of those.</param>
    /// <param name="faults">Where to note it.</param>
    public static void RefuseDoubled(
        IQueryCollection query,
        IReadOnlyList<string> names,
        Faults faults
    )
    {
        foreach (var name in names)
        {
            RefuseDoubled(name, query[name].Count, faults);
        }
    }

    /// <summary>The word that a parameter says; null when it is left out or wrong, which is then noted.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="name">Its name.</param>
    /// <param name="allowed">The words that it may say.</param>
    /// <param name="faults">Where to note it.</param>
    public static string? Word(
        IQueryCollection query,
        string name,
        IReadOnlyList<string> allowed,
        Faults faults
    )
    {
        var given = query[name];
        if (given.Count != 1 || given[0] is not { Length: > 0 } word)
        {
            return null;
        }

        if (allowed.Contains(word, StringComparer.Ordinal))
        {
            return word;
        }

        faults.Add(NotAllowed(name, word, allowed));
        return null;
    }

    /// <summary>Whether a parameter is passed over: what others put behind addresses.</summary>
    public bool IsPassed(string name) =>
        name.StartsWith(Campaign, StringComparison.Ordinal) || ignored.Contains(name);

    private static void RefuseDoubled(string name, int count, Faults faults)
    {
        if (count > 1)
        {
            faults.Add(
                new(name, FaultCode.Doubled, $"{name} is given more than once. Give it once.")
            );
        }
    }

    private static Fault Unknown(string name, IReadOnlyList<string> known) =>
        new(
            Walk.Cut(name),
            FaultCode.UnknownMember,
            known.Count == 0
                ? $"{Walk.Cut(name)} is not known: the address takes no query parameters. Leave it out."
                : $"{Walk.Cut(name)} is not a query parameter of the address. It takes {string.Join(", ", known)}."
        )
        {
            Nearest = Nearest.Of(name, known),
            Allowed = known.Count == 0 ? null : known,
        };

    private static Fault NotAllowed(string name, string word, IReadOnlyList<string> allowed) =>
        new(
            name,
            FaultCode.OutOfRange,
            $"{name} is \"{Walk.Cut(word)}\" and must be {string.Join(" or ", allowed)}."
        )
        {
            Given = Walk.Cut(word),
            Allowed = allowed,
            Nearest = Nearest.Of(word, allowed),
        };
}
