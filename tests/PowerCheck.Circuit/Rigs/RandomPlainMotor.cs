namespace PowerCheck.Circuit.Rigs;

/// <summary>Invented motors.</summary>
internal static class RandomPlainMotor
{
    /// <summary>A motor that somebody might put into a rig of this mass.</summary>
    public static PlainMotor Of(Dice dice, double vehicleKg)
    {
        var brushed = dice.Chance(0.45);
        var outer = !brushed && dice.Chance(0.3);
        var massG = dice.Between(100, 170) * Math.Clamp(Math.Sqrt(vehicleKg / 2.5), 0.7, 1.8);
        var kv =
            brushed ? dice.Scaled(650, 2600)
            : outer ? dice.Scaled(700, 2400)
            : dice.Scaled(1200, 4500);
        var milliohm = ResistanceMilliohm(dice, brushed, outer, massG, kv);
        var windingJPerK = massG * (brushed ? dice.Between(0.12, 0.18) : dice.Between(0.06, 0.1));
        var diameterMm = 27 * Math.Cbrt(massG / 90) * dice.Between(0.95, 1.1);
        return new()
        {
            Brushed = brushed,
            OuterRotor = outer,
            KvRpmPerVolt = kv,
            ResistanceMilliohm = milliohm,
            MassG = massG,
            WindingJPerK = windingJPerK,
            CanDiameterMm = diameterMm,
            NoLoadStandstillShare = dice.Between(0.3, 0.8),
            CanLengthMm = diameterMm * dice.Between(1.2, 1.6),
            InsulationC = dice.OneOf(105.0, 120, 130, 155, 180),
            HotSpotAllowanceK = dice.Between(5, 15),
            MagnetMaxC = dice.Between(110, 200),
            MagnetCoefficientPerK = -dice.Between(0.0008, 0.0021),
            LockedHeatFactor = dice.Between(1, 2.2),
            WindingToCaseKPerW = (brushed ? 75 : 20) / windingJPerK * dice.Scaled(0.6, 1.6),
            CaseToAmbientKPerW = 4.5 * Math.Pow(massG / 120, -0.7) * dice.Scaled(0.6, 1.6),
            CaseJPerK = massG * dice.Between(0.25, 0.4),
            CopperJPerK = windingJPerK * (brushed ? dice.Between(0.25, 0.45) : 1),
            Sensored = !brushed && dice.Chance(0.75),
            Neodymium = !brushed || dice.Chance(0.2),
            ResistanceTemperatureC = dice.OneOf(20.0, 20, 25, 35),
            InductanceMicrohenry = milliohm * dice.Scaled(0.3, 1.5),
            BrushDropV = brushed ? dice.Between(0.1, 0.6) : 0,
            NoLoadPoints = NoLoad(dice, milliohm),
            PolePairs = outer ? dice.Whole(5, 11) : dice.Whole(1, 3),
        };
    }

    // A constant of the motor grows with its mass; the resistance goes with the square of torque constant over it.
    private static double ResistanceMilliohm(
        Dice dice,
        bool brushed,
        bool outer,
        double massG,
        double kv
    )
    {
        var atKilogram =
            brushed ? 0.06
            : outer ? 0.2
            : 0.1;
        var motorConstant = atKilogram * Math.Pow(massG / 1000, 0.8) * dice.Scaled(0.75, 1.33);
        var torqueConstant = 30 / (Math.PI * kv);
        return 1000 * Math.Pow(torqueConstant / motorConstant, 2);
    }

    // A few per cent of what the motor would draw locked, and a little more at a higher voltage.
    private static PlainNoLoadPoint[] NoLoad(Dice dice, double milliohm)
    {
        var voltageV = dice.Between(4, 8);
        var lockedA = voltageV / (milliohm / 1000);
        var first = new PlainNoLoadPoint(
            voltageV,
            Math.Min(dice.Scaled(0.01, 0.06) * lockedA, dice.Between(0.5, 3))
        );
        return dice.Chance(0.5)
            ? [first]
            :
            [
                first,
                new(voltageV * dice.Between(1.4, 2), first.CurrentA * dice.Between(1.05, 1.35)),
            ];
    }
}
