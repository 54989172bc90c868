namespace PowerCheck.Model.Spreads;

/// <summary>How the spread of the inputs is carried to the limits (M12).</summary>
public enum SpreadMethod
{
    /// <summary>Not at all: the best estimates alone are judged.</summary>
    None,

    /// <summary>Each input by itself, with the bend of what it does.</summary>
    Linear,

    /// <summary>All inputs drawn together, many times.</summary>
    Montecarlo,
}
