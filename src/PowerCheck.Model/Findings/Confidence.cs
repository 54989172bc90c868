namespace PowerCheck.Model.Findings;

/// <summary>How sure the verdict is, in rising order.</summary>
public enum Confidence
{
    /// <summary>The deciding limit is in doubt, mostly for what was assumed: measuring would tell.</summary>
    Low,

    /// <summary>The deciding limit may be on either side, for the spread of what was given.</summary>
    Medium,

    /// <summary>The deciding limit is surely on its side.</summary>
    High,
}
