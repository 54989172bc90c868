using PowerCheck.Model.Checks;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>A receiver supply has to live with the lowest bus of punch at the reserve, jam and climb (M9).</summary>
public sealed class LowestBusTests
{
    [Theory]
    [InlineData(0.2, null, null, LoadCaseName.Punch)]
    [InlineData(0.9, null, null, LoadCaseName.Climb)]
    [InlineData(0.9, 50.0, 30.0, LoadCaseName.Jam)]
    public void Whichever_of_the_three_is_lowest_counts(
        double reserve,
        double? jamSlipFactor,
        double? slopeDegree,
        LoadCaseName lowest
    )
    {
        var result = Check.Run(
            SampleRig.Brushless with
            {
                Battery = SampleRig.Brushless.Battery with { ReserveShare = reserve },
                Course = new()
                {
                    JamSlipFactor = jamSlipFactor,
                    ClimbSlopeRad = slopeDegree * Math.PI / 180,
                },
            }
        );
        var cases = result.LoadCases;
        var (by, volt) = new[]
        {
            (LoadCaseName.Punch, cases.PunchAtReserve.BusVoltageV),
            (LoadCaseName.Jam, cases[LoadCaseName.Jam].BusVoltageV),
            (LoadCaseName.Climb, cases[LoadCaseName.Climb].BusVoltageV),
        }.MinBy(x => x.Item2);

        Assert.Equal(lowest, by);
        Assert.Equal(volt, result.ReceiverSupply.LowestBusV);
    }
}
