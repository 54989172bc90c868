namespace PowerCheck.Model.Accessories;

/// <summary>What is known of a servo, a winch, a light, in SI; null is what is not.</summary>
public sealed record AccessoryLabel
{
    /// <summary>What it is.</summary>
    public AccessoryKind? Kind { get; init; }

    /// <summary>What feeds it.</summary>
    public AccessorySupply? Supply { get; init; }

    /// <summary>Current at rest [A].</summary>
    public double? IdleCurrentA { get; init; }

    /// <summary>Current at work [A].</summary>
    public double? WorkingCurrentA { get; init; }

    /// <summary>Current when jammed [A].</summary>
    public double? JammedCurrentA { get; init; }
}

/// <summary>What an accessory is.</summary>
public enum AccessoryKind
{
    /// <summary>Steering or other servo.</summary>
    Servo,

    /// <summary>Winch, or a servo turned into one.</summary>
    Winch,

    /// <summary>Lights.</summary>
    Light,

    /// <summary>Fan.</summary>
    Fan,

    /// <summary>Receiver or other radio.</summary>
    Radio,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>What feeds an accessory.</summary>
public enum AccessorySupply
{
    /// <summary>The controller's receiver supply.</summary>
    Receiver,

    /// <summary>The pack itself.</summary>
    Battery,
}
