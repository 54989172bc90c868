using PowerCheck.Model.Units;

namespace PowerCheck.Model.Findings;

/// <summary>Makes findings: outcome, figures and the sentence.</summary>
internal static class Make
{
    /// <summary>A figure that must stay under a limit.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="loadCase">The load case, "course", or null.</param>
    /// <param name="subject">What was computed, as the start of a sentence.</param>
    /// <param name="estimate">The figure, SI.</param>
    /// <param name="limit">The limit, SI.</param>
    /// <param name="unit">The unit of both.</param>
    /// <param name="severeness">How close; figure over limit when null.</param>
    /// <param name="durationS">For how long it is judged [s].</param>
    /// <param name="worst">The worst outcome that it can have.</param>
    /// <param name="atLeast">Whether the limit is the least that is needed and not the most that is allowed.</param>
    /// <param name="reach">How far it has come towards the limit, without a step; the severeness when null.</param>
    public static Finding Limit(
        FindingKind kind,
        string? loadCase,
        string subject,
        double estimate,
        double limit,
        Unit unit,
        double? severeness = null,
        double durationS = double.NaN,
        Outcome worst = Outcome.Fails,
        bool atLeast = false,
        double? reach = null
    ) =>
        Limit(
            kind,
            loadCase,
            () => subject,
            estimate,
            limit,
            unit,
            severeness,
            durationS,
            worst,
            atLeast,
            reach
        );

    /// <summary>A figure that must stay under a limit, its subject made when the message is read.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="loadCase">The load case, "course", or null.</param>
    /// <param name="subject">What was computed, as the start of a sentence.</param>
    /// <param name="estimate">The figure, SI.</param>
    /// <param name="limit">The limit, SI.</param>
    /// <param name="unit">The unit of both.</param>
    /// <param name="severeness">How close; figure over limit when null.</param>
    /// <param name="durationS">For how long it is judged [s].</param>
    /// <param name="worst">The worst outcome that it can have.</param>
    /// <param name="atLeast">Whether the limit is the least that is needed and not the most that is allowed.</param>
    /// <param name="reach">How far it has come towards the limit, without a step; the severeness when null.</param>
    public static Finding Limit(
        FindingKind kind,
        string? loadCase,
        Func<string> subject,
        double estimate,
        double limit,
        Unit unit,
        double? severeness = null,
        double durationS = double.NaN,
        Outcome worst = Outcome.Fails,
        bool atLeast = false,
        double? reach = null
    )
    {
        var close = severeness ?? (estimate / limit);
        var outcome = Thresholds.Outcome(close);
        if (outcome == Outcome.Fails)
        {
            outcome = worst;
        }

        return new Finding
        {
            Kind = kind,
            Outcome = outcome,
            LoadCase = loadCase,
            Estimate = estimate,
            Limit = limit,
            Unit = unit,
            DurationS = durationS,
            Severeness = close,
            Reach = reach ?? close,
            Worst = worst,
            Sentence = it => Compose(it, subject(), Figures(it.Estimate, it.Limit, unit, atLeast)),
        };
    }

    /// <summary>A finding of which it turns out that nothing can be told.</summary>
    /// <param name="finding">The finding.</param>
    public static Finding Unknown(Finding finding) =>
        finding with
        {
            Outcome = Outcome.Unknown,
            Estimate = double.NaN,
            DurationS = double.NaN,
            Severeness = double.NaN,
            Reach = double.NaN,
            Chance = null,
            Sentence = _ => $"{finding.Kind.Meaning} Not to be told from what was given.",
        };

    /// <summary>A word of caution beside figures that hold: never part of the verdict.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="loadCase">The load case, "course", or null.</param>
    /// <param name="message">The sentence.</param>
    /// <param name="estimate">The figure, SI.</param>
    /// <param name="limit">The limit, SI.</param>
    /// <param name="unit">The unit of both.</param>
    /// <param name="durationS">The time that the sentence speaks of [s].</param>
    public static Finding Caution(
        FindingKind kind,
        string? loadCase,
        string message,
        double estimate = double.NaN,
        double limit = double.NaN,
        Unit? unit = null,
        double durationS = double.NaN
    ) =>
        new()
        {
            Kind = kind,
            Outcome = Outcome.Holds,
            Caution = true,
            LoadCase = loadCase,
            Estimate = estimate,
            Limit = limit,
            Unit = unit ?? Unit.One,
            DurationS = durationS,
            Sentence = _ => message,
        };

    /// <summary>A match of words: it fits or it does not.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="fits">Whether it fits; null when it cannot be told.</param>
    /// <param name="holds">The sentence when it fits.</param>
    /// <param name="fails">The sentence when it does not.</param>
    /// <param name="needs">The members that would tell.</param>
    public static Finding Match(
        FindingKind kind,
        bool? fits,
        string holds,
        string fails,
        params string[] needs
    ) =>
        new()
        {
            Kind = kind,
            Outcome =
                fits is null ? Outcome.Unknown
                : fits.Value ? Outcome.Holds
                : Outcome.Fails,
            Severeness =
                fits is null ? double.NaN
                : fits.Value ? 0
                : double.PositiveInfinity,
            Reach =
                fits is null ? double.NaN
                : fits.Value ? 0
                : double.PositiveInfinity,
            Sentence = it =>
                fits is null
                    ? $"{kind.Meaning} Not to be told without {string.Join(" and ", needs)}."
                : !fits.Value ? $"{fails}{Say.Chance(it)}; {kind.Consequence}."
                : it.Outcome == Outcome.Holds && !it.Caution ? holds
                : $"{holds[..^1]}{Say.Chance(it)}; not sure, or else {kind.Consequence}.",
            NeedsAll = true,
            Needs = fits is null
                ? [.. needs.Select(path => new Need(path, Unit.One, double.NaN, false))]
                : [],
        };

    private static string Figures(double estimate, double limit, Unit unit, bool atLeast)
    {
        string Show(double si) => unit == Unit.Celsius ? Say.Degrees(si) : Say.Figure(si, unit);
        return atLeast
            ? $"{Show(estimate)}, at least {Show(limit)} needed"
            : $"{Show(estimate)}, at most {Show(limit)} allowed";
    }

    private static string Compose(Finding it, string subject, string figures)
    {
        if (it.Outcome == Outcome.Unknown)
        {
            return $"{subject}: not to be told from what was given.";
        }

        var end = it.Outcome switch
        {
            Outcome.Holds when !it.Caution => ".",
            Outcome.Fails => $"; {it.Kind.Consequence}.",
            _ when it.Severeness > 1 => $"; {it.Kind.Consequence}.",
            _ when it.Chance is null => $"; too close to be sure, or else {it.Kind.Consequence}.",
            _ => $"; not sure, or else {it.Kind.Consequence}.",
        };
        return $"{subject}: {figures} ({it.Kind.LimitFrom}){Say.Chance(it)}{end}";
    }
}
