using System.Text;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>What every member of a rig is called on the page.</summary>
internal static class Labels
{
    private static readonly Dictionary<string, Label> All = new(
        [.. RigLabels.All, .. MotorLabels.All, .. SupplyLabels.All, .. CourseLabels.All],
        StringComparer.Ordinal
    );

    private const string Tolerances = "tolerances.";

    private static readonly Dictionary<string, string> Parts = new(StringComparer.Ordinal)
    {
        ["motor"] = "Motor",
        ["controller"] = "Controller",
        ["battery"] = "Pack",
        ["vehicle"] = "Rig",
        ["course"] = "Course",
        ["wiring"] = "Wiring",
        ["accessories"] = "Accessory",
    };

    private static readonly Dictionary<string, string> WordTexts = new(StringComparer.Ordinal)
    {
        ["lipo"] = "LiPo",
        ["lihv"] = "LiHV",
        ["liion"] = "Li-ion",
        ["lifepo4"] = "LiFePO₄",
        ["nimh"] = "NiMH",
        ["ndfeb"] = "neodymium",
        ["inner"] = "inside the can",
        ["outer"] = "can turns (outrunner)",
        ["synchronous"] = "other switch",
        ["dragBrake"] = "drag brake",
        ["active"] = "holds actively",
        ["jammed"] = "wheel wedged",
        ["hold"] = "stands on a slope",
        ["linear"] = "linear (burns the difference)",
        ["receiver"] = "receiver supply",
        ["true"] = "yes",
        ["false"] = "no",
    };

    /// <summary>The label of a path; of one that has none, its last name in words.</summary>
    public static Label Of(string path) =>
        All.TryGetValue(First(path), out var label)
            ? label
            : new(Spaced(path[(path.LastIndexOf('.') + 1)..]));

    /// <summary>A label that stands by itself, such as "Motor: Kv".</summary>
    public static string Whole(string path)
    {
        if (path.StartsWith(Tolerances, StringComparison.Ordinal))
        {
            return $"Spread of {Whole(path[Tolerances.Length..])}";
        }

        var part = Parts.GetValueOrDefault(path.Split('.')[0], "Rig");
        var name = Of(path).Name.TrimStart('…', ' ');
        return string.Equals(part, name, StringComparison.Ordinal) ? name : $"{part}: {name}";
    }

    /// <summary>A word of the model in plain words.</summary>
    public static string Word(string word) =>
        WordTexts.TryGetValue(word, out var text) ? text
        : word.Length == 1 ? word
        : string.Join(" or ", word.Split(',').Select(Spaced));

    /// <summary>Whether a path has a label of its own.</summary>
    public static bool Has(string path) => All.ContainsKey(First(path));

    /// <summary>The path of the same member in the first item of a list; all items are called the same.</summary>
    public static string First(string path) =>
        string.Join('.', path.Split('.').Select(step => int.TryParse(step, out _) ? "0" : step));

    private static string Spaced(string name)
    {
        var text = new StringBuilder();
        foreach (var letter in name)
        {
            text.Append(char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}");
        }

        return text.ToString().Replace('-', ' ').Trim();
    }
}
