namespace PowerCheck.Api.Door;

/// <summary>Everything found wrong with one request, up to a number that can still be read.</summary>
internal sealed class Faults
{
    /// <summary>Most faults that one problem lists.</summary>
    public const int Most = 100;

    private List<Fault>? found;

    /// <summary>The faults, in the order in which they were found.</summary>
    public IReadOnlyList<Fault> All => found ?? [];

    /// <summary>Whether nothing is wrong.</summary>
    public bool None => found is null;

    /// <summary>Whether there were more than are kept.</summary>
    public bool Truncated { get; private set; }

    /// <summary>Whether no more are kept; what is costly to tell need not be found out any more.</summary>
    public bool Full => found?.Count >= Most;

    /// <summary>Notes that there was one more than is kept.</summary>
    public void Truncate() => Truncated = true;

    /// <summary>Keeps a fault, or notes that there are too many.</summary>
    public void Add(Fault fault)
    {
        found ??= [];
        if (found.Count < Most)
        {
            found.Add(fault);
        }
        else
        {
            Truncated = true;
        }
    }

    /// <summary>Takes back that a member is missing which need not be there.</summary>
    public void Forgive(string path)
    {
        found?.RemoveAll(fault =>
            string.Equals(fault.Code, FaultCode.Missing, StringComparison.Ordinal)
            && string.Equals(fault.Path, path, StringComparison.Ordinal)
        );
        found = found is { Count: > 0 } ? found : null;
    }

    /// <summary>Whether a member, or anything inside it, is already known to be wrong.</summary>
    public bool Touch(string path) =>
        found is not null && found.Exists(fault => Within(fault, path));

    private static bool Within(Fault fault, string path) =>
        fault.Path.StartsWith(path, StringComparison.Ordinal)
        && (fault.Path.Length == path.Length || fault.Path[path.Length] == '.');
}
