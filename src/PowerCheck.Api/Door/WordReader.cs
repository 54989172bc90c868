using System.Text;
using System.Text.Json;

namespace PowerCheck.Api.Door;

/// <summary>Reads one of a list of words, exactly as written there.</summary>
internal sealed class WordReader(IReadOnlyList<string> allowed)
{
    private readonly byte[][] encoded = [.. allowed.Select(Encoding.UTF8.GetBytes)];

    public string Wanted { get; } =
        allowed.Count == 1
            ? $"the word {allowed[0]}"
            : $"one of the words {string.Join(", ", allowed)}";

    /// <summary>The word in hand, or null after noting what is wrong with it.</summary>
    public string? Read(ref Walk walk)
    {
        if (walk.Token != JsonTokenType.String)
        {
            walk.WrongType(Wanted);
            return null;
        }

        var given = walk.Text(encoded);
        if (given >= 0)
        {
            return allowed[given];
        }

        walk.Faults.Add(Unknown(walk.Path.ToString(), walk.Text()));
        return null;
    }

    private Fault Unknown(string path, string given) =>
        new(path, FaultCode.OutOfRange, $"{path} is \"{Walk.Cut(given)}\" and must be {Wanted}.")
        {
            Given = Walk.Cut(given),
            Allowed = allowed,
            Nearest = Nearest.Of(given, allowed),
        };
}
