namespace PowerCheck.Model.Checks;

/// <summary>The version of the model.</summary>
public static class ModelVersion
{
    /// <summary>Raised whenever the same request could get another figure or verdict; see specs/model.md.</summary>
    public const string Current = "1.7.0";
}
