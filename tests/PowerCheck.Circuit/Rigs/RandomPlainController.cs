namespace PowerCheck.Circuit.Rigs;

/// <summary>Invented controllers.</summary>
internal static class RandomPlainController
{
    /// <summary>A controller that somebody might put beside this motor.</summary>
    public static PlainController Of(
        Dice dice,
        PlainMotor motor,
        PlainVehicle vehicle,
        PlainChemistry chemistry,
        bool small
    )
    {
        var continuousA = small
            ? dice.Scaled(6, 15)
            : dice.Scaled(20, 80) * Math.Clamp(vehicle.MassKg / 4, 0.6, 1.5);
        var burstA = continuousA * dice.Between(1.5, 4);
        var cutoffV = dice.Between(0.8, 1) * (chemistry == PlainChemistry.Nimh ? 1.0 : 3.1);
        return new()
        {
            SensorInput = motor.Sensored || dice.Chance(0.5),
            LowSpeedStart = dice.Chance(0.8),
            LowSpeedBackEmfV = dice.Between(0.05, 0.3),
            MaxCells = 6,
            MaxVoltageV = 26,
            ContinuousCurrentA = continuousA,
            BurstCurrentA = burstA,
            BurstSeconds = dice.Between(1, 15),
            CurrentLimitA =
                small ? dice.Scaled(3, 14) * Math.Clamp(vehicle.MassKg / 4, 0.6, 1.5)
                : dice.Chance(0.35) ? burstA * dice.Between(0.5, 1)
                : null,
            OnResistanceMilliohm = 90 / continuousA * dice.Scaled(0.5, 2),
            HotResistanceFactor = dice.Between(1.1, 1.6),
            DiodeFreewheel = dice.Chance(motor.Brushed ? 0.4 : 0.1),
            PwmFrequencyKhz = motor.Brushed
                ? dice.OneOf(1.0, 1, 2, 2, 4, 4, 8, 16)
                : dice.OneOf(4.0, 8, 16, 16, 32),
            EdgeTimeNs = dice.Chance(0.4) ? 0 : dice.Between(20, 400),
            Hold =
                dice.Chance(0.55) ? PlainHold.DragBrake
                : dice.Chance(0.7) ? PlainHold.Active
                : PlainHold.None,
            CutoffVPerCell = cutoffV,
            MaxTemperatureC = dice.Between(85, 115),
            ThermalTimeConstantS = dice.Scaled(8, 90),
            StandstillRatingShare = dice.Between(0.55, 1),
            QuiescentCurrentA = dice.Between(0.02, 0.15),
            ReceiverSupply = ReceiverSupply(dice),
        };
    }

    private static PlainReceiverSupply ReceiverSupply(Dice dice)
    {
        var voltageV = dice.OneOf(5.0, 6, 6, 7.4);
        var continuousA = dice.Between(1.5, 6);
        return new()
        {
            Linear = dice.Chance(0.3),
            VoltageV = voltageV,
            ContinuousCurrentA = continuousA,
            PeakCurrentA = continuousA * dice.Between(1.2, 2),
            DropoutV = dice.Between(0.2, 1),
            MaxHeatW = dice.Between(2, 8),
            Efficiency = dice.Between(0.75, 0.95),
            ReceiverResetV = dice.Between(3.3, 4.2),
        };
    }
}
