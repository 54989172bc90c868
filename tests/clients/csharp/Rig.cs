using PowerCheck.Clients.Generated.Models;

namespace PowerCheck.Clients;

/// <summary>Rigs as a caller writes them.</summary>
internal static class Rig
{
    /// <summary>A crawler of 3.63 kg that climbs 45 degrees on three cells.</summary>
    public static CheckRequest Crawler() =>
        new()
        {
            Id = "crawler",
            Motor = new()
            {
                Kind = MotorRequest_kind.Brushless,
                Sensored = true,
                KvRpmPerVolt = 3300,
                ResistanceMilliohm = 22,
                MassG = 160,
            },
            Controller = new()
            {
                MotorKinds = [ControllerRequest_motorKinds.Brushless],
                SensorInput = true,
                MaxCells = 3,
                ContinuousCurrentA = 40,
            },
            Battery = new()
            {
                Chemistry = BatteryRequest_chemistry.Lipo,
                SeriesCells = 3,
                CapacityMah = 2200,
            },
            Vehicle = new()
            {
                MassKg = 3.63,
                TireDiameterMm = 118,
                Drivetrain = new()
                {
                    PinionTeeth = 12,
                    SpurTeeth = 56,
                    TransmissionRatio = 2.8,
                    AxleRatio = 3.5,
                },
            },
            Course = new() { ClimbSlopeDegrees = 45, WantedMinutes = 30 },
        };
}
