namespace PowerCheck.Model.Tests.Published;

/// <summary>What a row's function answers, by the names of the row's expected figures.</summary>
internal delegate IReadOnlyDictionary<string, double> Answer(PublishedCheck check);

/// <summary>The model's functions, fed with a row's inputs in SI; answers in SI.</summary>
internal static class PublishedFunctions
{
    public static IReadOnlyDictionary<string, Answer> All { get; } =
        new[]
        {
            MotorRows.All,
            MaterialRows.All,
            HeatRows.All,
            DriveRows.All,
            BatteryRows.All,
            LeadRows.All,
            RoadRows.All,
            DefaultRows.All,
            UncertaintyRows.All,
        }
            .SelectMany(rows => rows)
            .ToDictionary(row => row.Key, row => row.Value, StringComparer.Ordinal);

    public static Dictionary<string, double> Of(params (string Name, double Value)[] figures) =>
        figures.ToDictionary(f => f.Name, f => f.Value, StringComparer.Ordinal);
}
