namespace PowerCheck.Model.Findings;

/// <summary>What the check says of a rig as a whole.</summary>
public enum Verdict
{
    /// <summary>Every judged limit holds.</summary>
    Suitable,

    /// <summary>At least one judged limit is in doubt, none fails.</summary>
    Limited,

    /// <summary>Parts do not match, or a judged limit fails.</summary>
    Unsuitable,

    /// <summary>Nothing fails, but a judged limit could not be computed.</summary>
    Undetermined,
}
