namespace PowerCheck.Model.Tests.Published;

/// <summary>The motor as a machine.</summary>
public sealed class PublishedMotorTests : PublishedTopic<PublishedMotorTests>, ITopic
{
    public static string File => "motors";
}

/// <summary>Copper and magnets.</summary>
public sealed class PublishedMaterialTests : PublishedTopic<PublishedMaterialTests>, ITopic
{
    public static string File => "materials";
}

/// <summary>Insulation classes and duty cycles.</summary>
public sealed class PublishedDutyTests : PublishedTopic<PublishedDutyTests>, ITopic
{
    public static string File => "duty";
}

/// <summary>The two-node heat network of a motor.</summary>
public sealed class PublishedThermalTests : PublishedTopic<PublishedThermalTests>, ITopic
{
    public static string File => "thermal";
}

/// <summary>Averaged drive, controller losses, receiver supply.</summary>
public sealed class PublishedDriveTests : PublishedTopic<PublishedDriveTests>, ITopic
{
    public static string File => "drive";
}

/// <summary>Cells and packs.</summary>
public sealed class PublishedBatteryTests : PublishedTopic<PublishedBatteryTests>, ITopic
{
    public static string File => "batteries";
}

/// <summary>Round copper wire.</summary>
public sealed class PublishedWireTests : PublishedTopic<PublishedWireTests>, ITopic
{
    public static string File => "wire";
}

/// <summary>Gears.</summary>
public sealed class PublishedGearTests : PublishedTopic<PublishedGearTests>, ITopic
{
    public static string File => "gears";
}

/// <summary>Slope, rolling and grip.</summary>
public sealed class PublishedRoadTests : PublishedTopic<PublishedRoadTests>, ITopic
{
    public static string File => "road";
}

/// <summary>Surfaces, films, heat capacities, touch.</summary>
public sealed class PublishedSurfaceTests : PublishedTopic<PublishedSurfaceTests>, ITopic
{
    public static string File => "surfaces";
}

/// <summary>Propagation of uncertainty and the probability of being past a limit.</summary>
public sealed class PublishedUncertaintyTests : PublishedTopic<PublishedUncertaintyTests>, ITopic
{
    public static string File => "uncertainty";
}
