namespace PowerCheck.Circuit.Simulator;

/// <summary>The simulator did not give what the deck asks for, whatever its exit code says.</summary>
/// <param name="reason">What went wrong, in the simulator's own words where it has any.</param>
/// <param name="deck">The deck.</param>
/// <param name="output">All that the simulator printed.</param>
public sealed class SimulatorException(string reason, string deck, string output)
    : Exception($"{reason}\n--- deck ---\n{deck}\n--- output ---\n{output}")
{
    /// <summary>What went wrong, in one line.</summary>
    public string Reason { get; } = reason;

    /// <summary>Whether the deck was understood, and no solution of it was found.</summary>
    public bool Unsolved => Complaint.OfSearch(Reason);
}
