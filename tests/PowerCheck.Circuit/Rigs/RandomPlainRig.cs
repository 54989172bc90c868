namespace PowerCheck.Circuit.Rigs;

/// <summary>
/// Invented rigs such as builders combine, well matched and badly: about one in three is asked for too much by a steep
/// slope, a tall gear, a tired pack or a low current limit.
/// </summary>
public static class RandomPlainRig
{
    /// <summary>The rig of a number: the same at every call.</summary>
    /// <param name="number">The number, 0 or more.</param>
    public static PlainRig Of(int number)
    {
        var dice = new Dice(number);
        var trouble = dice.Chance(0.35) ? dice.Whole(1, 4) : 0;
        var vehicle = Vehicle(dice, trouble == 1);
        var motor = RandomPlainMotor.Of(dice, vehicle.MassKg);
        var battery = Battery(dice, trouble == 2);
        var course = RandomPlainCourse.Of(dice, trouble == 3);
        return new()
        {
            Number = number,
            Motor = motor,
            Controller = RandomPlainController.Of(
                dice,
                motor,
                vehicle,
                battery.Chemistry,
                trouble == 4
            ),
            Battery = battery with
            {
                TemperatureC = dice.Chance(0.7)
                    ? course.AmbientC
                    : course.AmbientC + dice.Between(-8, 12),
            },
            Wiring = Wiring(dice),
            Vehicle = vehicle,
            Accessories = Accessories(dice),
            Course = course,
        };
    }

    private static PlainVehicle Vehicle(Dice dice, bool tall)
    {
        var printed = dice.Chance(0.25);
        return new()
        {
            MassKg = dice.Scaled(1.2, 7),
            TireDiameterMm = dice.Between(85, 160),
            TireDiameterPrinted = printed,
            LoadedTireShare = printed ? dice.Between(0.9, 0.99) : 1,
            DrivenWeightShare = dice.Chance(0.7) ? 1 : dice.Between(0.55, 1),
            MotorCount = dice.Chance(0.25) ? 2 : 1,
            PinionTeeth = tall ? dice.Whole(18, 26) : dice.Whole(9, 16),
            SpurTeeth = dice.Whole(44, 64),
            TransmissionRatios = dice.Chance(0.2)
                ? [dice.Between(1.3, 1.8), dice.Between(2.5, 3.6)]
                : [tall ? dice.Between(1, 1.6) : dice.Between(1.6, 3.4)],
            AxleRatio = tall ? dice.Between(2, 2.8) : dice.Between(2.6, 4.5),
            Efficiency = dice.Chance(0.15) ? dice.Between(0.4, 0.55) : dice.Between(0.6, 0.92),
        };
    }

    private static PlainBattery Battery(Dice dice, bool tired)
    {
        var chemistry = (PlainChemistry)dice.Whole(0, 4);
        var hydride = chemistry == PlainChemistry.Nimh;
        var parallel = dice.Chance(0.2) ? 2 : 1;
        var capacityMah = dice.Scaled(800, 6000);
        var milliohmAh = chemistry switch
        {
            PlainChemistry.Liion => dice.Scaled(40, 90),
            PlainChemistry.Lifepo4 or PlainChemistry.Nimh => dice.Scaled(15, 35),
            _ => dice.Scaled(8, 25),
        };
        return new()
        {
            Chemistry = chemistry,
            SeriesCells = hydride ? dice.Whole(6, 9) : dice.Whole(2, 4),
            ParallelCells = parallel,
            CapacityMah = capacityMah,
            ContinuousC = dice.Between(8, 60),
            CellResistanceMilliohm =
                milliohmAh * parallel * 1000 / capacityMah * (tired ? dice.Scaled(3, 12) : 1),
            LastingResistanceFactor = dice.Between(1, 1.8),
            ResistanceTemperatureConstantK = dice.Between(1200, 3600),
            ConnectorMilliohm = dice.Scaled(0.2, 2),
            // The day decides.
            TemperatureC = 25,
            MassG = capacityMah / 1000 * (hydride ? 15 : 24) * dice.Between(2, 8),
            PackToAmbientKPerW = dice.Scaled(3, 15),
            MaxTemperatureC = dice.Between(50, 65),
            ReserveShare = 0.2,
            PeukertExponent = dice.Between(1, 1.1),
            RatedHours = dice.OneOf(1.0, 5, 10),
        };
    }

    private static PlainWiring Wiring(Dice dice) =>
        new()
        {
            BatteryLeadAwg = dice.Whole(10, 18),
            BatteryLeadMm = dice.Between(60, 300),
            MotorLeadAwg = dice.Whole(10, 18),
            MotorLeadMm = dice.Between(50, 250),
            InsulationC = dice.OneOf(105.0, 150, 200),
        };

    private static List<PlainAccessory> Accessories(Dice dice) =>
        [.. Enumerable.Range(0, dice.Whole(0, 3)).Select(_ => Accessory(dice))];

    private static PlainAccessory Accessory(Dice dice)
    {
        var idleA = dice.Between(0.02, 0.2);
        var workingA = idleA + dice.Between(0, 1.5);
        return new()
        {
            OnPack = dice.Chance(0.25),
            IdleCurrentA = idleA,
            WorkingCurrentA = workingA,
            JammedCurrentA = workingA + dice.Between(0, 2),
        };
    }
}
