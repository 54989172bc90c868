namespace PowerCheck.Api.Safety;

/// <summary>The cautions about batteries: the one place from which every answer takes them.</summary>
internal static class Cautions
{
    public const string Heat = "heat";
    public const string Discharge = "deep-discharge";
    public const string Charger = "charger-setting";
    public const string ShortCircuit = "short-circuit";

    /// <summary>All cautions in the order that suits a reader with no finding at hand.</summary>
    public static readonly IReadOnlyList<SafetyCaution> All =
    [
        Warning(
            Heat,
            "Stop using a pack that smells, leaks, makes an odd noise, changes color or shape, or gets too hot. Unplug it if you safely can, move away from it, and keep it away from everything that burns.",
            "usfa"
        ),
        Warning(
            Charger,
            "Charge only with a charger made for the pack, set to its chemistry and its number of cells, with the balance lead connected. Stop when the pack is full.",
            "usfa",
            "practice"
        ),
        Warning(
            "charging-place",
            "Never leave a charging pack alone or let it charge while you sleep. Charge on a surface that does not burn, never on a bed, on a couch or under a pillow.",
            "usfa",
            "practice"
        ),
        Warning(
            "charging-temperature",
            "Do not charge a lithium pack that is colder than 0 °C or warmer than 40 °C. Let it come to room temperature first.",
            "usfa"
        ),
        Warning(
            "damage",
            "Do not charge or use a pack that is swollen, dented, cut or otherwise damaged.",
            "usfa",
            "practice"
        ),
        Warning(
            Discharge,
            "Do not drain a pack under its cut-off voltage or ask more current of it than it is rated for. It can be damaged inside without a sign and fail when it is next charged.",
            "cells",
            "practice"
        ),
        Warning(
            ShortCircuit,
            "Keep the terminals from touching each other or metal. Leads, connector and fuse must stand what the pack can give.",
            "practice"
        ),
        Warning(
            "storage",
            "Store packs at room temperature, out of the sun, out of a hot car and away from everything that burns.",
            "usfa"
        ),
        Warning(
            "disposal",
            "Packs do not belong in household waste. Take them to a collection point for batteries.",
            "usfa"
        ),
        Warning(
            "travel",
            "By air, spare lithium packs travel in the cabin only, their terminals covered, up to 100 Wh each (nominal volts times amp-hours). From 101 to 160 Wh the airline must agree and two spares are the most; larger ones do not fly. Rules change: ask the airline.",
            "tsa"
        ),
    ];

    /// <summary>What the cautions defer to.</summary>
    public static readonly IReadOnlyList<string> DefersTo =
    [
        "The instructions of the makers of pack, charger, controller and motor.",
        "Local rules for storing, charging, carrying and discarding batteries.",
        "The advice of people licensed to work with batteries and electricity.",
    ];

    /// <summary>The caution with a key.</summary>
    public static SafetyCaution Of(string key) =>
        All.First(caution => string.Equals(caution.Key, key, StringComparison.Ordinal));

    private static SafetyCaution Warning(string key, string text, params string[] sources) =>
        new()
        {
            Key = key,
            Severity = "warning",
            Text = text,
            Sources = sources,
        };
}
