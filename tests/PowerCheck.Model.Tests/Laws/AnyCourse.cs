using PowerCheck.Model.Courses;
using PowerCheck.Model.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>A random lap for a rig: creeping up and down, holding, jamming, resting. The same rig gets the same lap.</summary>
internal static class AnyCourse
{
    public static CourseLabel Of(RigLabel label)
    {
        var dice = new Random((int)(1e6 * label.Vehicle.MassKg));
        double Between(double low, double high) => low + ((high - low) * dice.NextDouble());
        SegmentLabel One() =>
            dice.Next(6) switch
            {
                0 => new() { Kind = SegmentKind.Rest, DurationS = Between(5, 90) },
                1 => new()
                {
                    Kind = SegmentKind.Hold,
                    DurationS = Between(3, 40),
                    SlopeRad = Between(-0.9, 0.9),
                },
                2 => new()
                {
                    Kind = SegmentKind.Jammed,
                    DurationS = Between(0.2, 3),
                    Throttle = Between(0.03, 0.3),
                },
                _ => new()
                {
                    Kind = SegmentKind.Creep,
                    DurationS = Between(3, 90),
                    SlopeRad = Between(-0.4, 0.8),
                    SpeedMPerS = Between(0.1, 0.6),
                },
            };
        return label.Course with
        {
            Segments =
            [
                .. Enumerable.Range(0, dice.Next(1, 6)).Select(_ => One()),
                new() { Kind = SegmentKind.Rest, DurationS = Between(5, 60) },
            ],
            WantedS = Between(300, 3000),
        };
    }
}
