namespace PowerCheck.Circuit.Rigs;

/// <summary>Invented courses.</summary>
internal static class RandomPlainCourse
{
    /// <summary>A course; steep or slippery where asked.</summary>
    public static PlainCourse Of(Dice dice, bool steep)
    {
        var slope = steep ? dice.Between(50, 75) : dice.Between(20, 50);
        var speed = dice.Scaled(0.1, 0.8);
        return new()
        {
            AmbientC = dice.Between(-5, 42),
            ClimbSlopeDegrees = slope,
            CreepSpeedMPerS = speed,
            RollingResistanceCoefficient = dice.Scaled(0.02, 0.15),
            FrictionCoefficient = steep ? dice.Between(0.5, 1.3) : dice.Between(0.8, 1.5),
            WantedMinutes = dice.Scaled(4, 90),
            JamSlipFactor = dice.Between(1.2, 4),
            AccessoryDuty = dice.Between(0, 0.8),
            HoldCreepMPerS = dice.Between(0.02, 0.2),
            Segments = Segments(dice, slope, speed),
            ClimbSeconds = dice.Scaled(15, 300),
            HoldSeconds = dice.Between(5, 60),
            SlipSeconds = dice.Between(1, 6),
            PunchSeconds = dice.Between(1, 6),
            JamSeconds = dice.Between(0.5, 6),
        };
    }

    private static List<PlainSegment> Segments(Dice dice, double slope, double speed)
    {
        List<PlainSegment> lap = [Creep(dice, 0, speed), Creep(dice, slope * 0.6, speed)];
        if (dice.Chance(0.5))
        {
            lap.Add(Creep(dice, -slope * 0.5, speed));
        }

        if (dice.Chance(0.5))
        {
            lap.Add(
                new()
                {
                    Kind = PlainSegmentKind.Hold,
                    Seconds = dice.Between(2, 15),
                    SlopeDegrees = slope * dice.Between(0.3, 0.8),
                }
            );
        }

        if (dice.Chance(0.3))
        {
            lap.Add(
                new()
                {
                    Kind = PlainSegmentKind.Jammed,
                    Seconds = dice.Between(0.3, 2),
                    Throttle = dice.Between(0.05, 0.5),
                }
            );
        }

        lap.Add(new() { Kind = PlainSegmentKind.Rest, Seconds = dice.Between(5, 60) });
        return lap;
    }

    private static PlainSegment Creep(Dice dice, double slope, double speed) =>
        new()
        {
            Kind = PlainSegmentKind.Creep,
            Seconds = dice.Between(4, 40),
            SlopeDegrees = slope,
            SpeedMPerS = speed * dice.Between(0.5, 1.5),
        };
}
