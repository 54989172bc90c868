using PowerCheck.Api.Checks.Answers;
using PowerCheck.Api.Display;
using PowerCheck.Api.Pages.Forms;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>The figures of an answer as tables.</summary>
internal sealed class Tables(CheckAnswer answer, DisplayUnits units)
{
    /// <summary>All tables.</summary>
    public IEnumerable<Table> All => [Cases(), Warmth(), .. Gears(), Supply(), Leads()];

    private Table Cases() =>
        new(
            "Currents and speeds, case by case",
            [
                "Case",
                "Motor current",
                "Battery current",
                "Throttle",
                "Motor speed",
                "Road speed",
                "Wheel torque",
                "Motor heat",
                "Gets there",
            ],
            [
                Case("Level, creeping", answer.LoadCases.Level),
                Case("Climb, creeping", answer.LoadCases.Climb),
                Case("Standing on the slope", answer.LoadCases.Hold),
                Case("Tires slipping", answer.LoadCases.Slip),
                Case("Full throttle, slipping", answer.LoadCases.Punch),
                Case("Wheel wedged", answer.LoadCases.Jam),
                Case("Wedged at full throttle", answer.LoadCases.Stall),
                Case("Top speed, level", answer.LoadCases.Top),
            ]
        );

    private string[] Case(string name, LoadCaseAnswer load) =>
        [
            name,
            units.Show(load.MotorCurrentA, "A"),
            units.Show(load.BatteryCurrentA, "A"),
            load.DutyRatio is { } duty ? SpreadText.Percent(duty) : DisplayUnits.Nothing,
            units.Show(load.MotorSpeedRpm, "rpm"),
            units.Show(load.RoadSpeedMPerS, "m/s"),
            units.Show(load.WheelTorqueNm, "N·m"),
            units.Show(load.MotorHeatW, "W"),
            load.Obstacle is { } obstacle ? $"no: {Labels.Word(obstacle)}"
            : load.Attainable is true ? "yes"
            : DisplayUnits.Nothing,
        ];

    private Table Warmth() =>
        new(
            "Temperatures",
            ["Part", "End of the run", "If driven on for ever", "Stands", "Reaches it after"],
            [
                Warm("Winding", answer.Temperatures.MotorWinding),
                Warm("Magnets", answer.Temperatures.MotorMagnet),
                Warm("Motor case", answer.Temperatures.MotorCase),
                Warm("Controller", answer.Temperatures.Controller),
                Warm("Pack", answer.Temperatures.Battery),
            ]
        );

    private string[] Warm(string name, TemperatureAnswer part) =>
        [
            name,
            units.Show(part.CourseEndC, "°C"),
            part.Runaway is true ? "never settles" : units.Show(part.PeakC, "°C"),
            units.Show(part.LimitC, "°C"),
            part.CourseSecondsToLimit is { } seconds
                ? units.Show(seconds / 60, "min")
                : DisplayUnits.Nothing,
        ];

    private IEnumerable<Table> Gears() =>
        answer.Drivetrain.Gears.Count < 2
            ? []
            :
            [
                new(
                    "Speeds of the gearbox",
                    ["Gear", "Overall ratio", "Top speed", "Motor current, climbing", "Reserve"],
                    [
                        .. answer.Drivetrain.Gears.Select(
                            (gear, at) =>
                                new[]
                                {
                                    $"{at + 1}",
                                    units.Show(gear.OverallRatio, null),
                                    units.Show(gear.TopSpeedMPerS, "m/s"),
                                    units.Show(gear.ClimbCurrentA, "A"),
                                    units.Show(gear.TorqueReserve, null),
                                }
                        ),
                    ]
                ),
            ];

    private Table Supply()
    {
        var supply = answer.ReceiverSupply;
        return Pairs(
            "Receiver and servo supply",
            ("Draws at rest", supply.IdleCurrentA, "A"),
            ("Draws at work", supply.WorkingCurrentA, "A"),
            ("Draws with all jammed", supply.JammedCurrentA, "A"),
            ("Gives lastingly", supply.ContinuousCurrentA, "A"),
            ("Gives for moments", supply.PeakCurrentA, "A"),
            ("Heat at work", supply.HeatW, "W"),
            ("Lowest pack voltage", supply.LowestBusV, "V"),
            ("Output left then", supply.LowestOutputV, "V")
        );
    }

    private Table Leads()
    {
        var wiring = answer.Wiring;
        return Pairs(
            "Leads and gearing",
            ("Overall ratio", answer.Drivetrain.OverallRatio, null),
            ("Top speed", answer.Drivetrain.TopSpeedMPerS, "m/s"),
            ("Tires let go at", answer.Drivetrain.SlipSlopeDegrees, "°"),
            ("Distance of pinion and spur shafts", answer.Drivetrain.MeshCenterMm, "mm"),
            ("Battery leads, both", wiring.BatteryLeadMilliohm, "mΩ"),
            ("Battery lead stands lastingly", wiring.BatteryLeadLimitA, "A"),
            ("Motor lead stands lastingly", wiring.MotorLeadLimitA, "A"),
            ("A short with a full pack", wiring.FaultCurrentA, "A"),
            ("Insulation gone in five seconds at", wiring.LeadDamageCurrentA, "A")
        );
    }

    private Table Pairs(string title, params (string Name, double? Figure, string? Unit)[] rows) =>
        new(
            title,
            ["What", "Figure"],
            [.. rows.Select(row => new[] { row.Name, units.Show(row.Figure, row.Unit) })]
        );
}
