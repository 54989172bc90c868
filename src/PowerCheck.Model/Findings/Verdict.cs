namespace PowerCheck.Model.Findings;

/// <summary>What the check says of a rig as a whole, in rising order of weight.</summary>
public enum Verdict
{
    /// <summary>Every judged limit holds.</summary>
    Suitable,

    /// <summary>At least one judged limit is in doubt, none fails.</summary>
    Limited,

    /// <summary>Nothing fails, but a judged limit could not be computed.</summary>
    Undetermined,

    /// <summary>Parts do not match, or a judged limit fails.</summary>
    Unsuitable,
}
