using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Motors;
using PowerCheck.Model.Rigs;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Checks;

/// <summary>Defaults that rest on another part (M1, M3).</summary>
public sealed class RigCompletionTests
{
    private static (double PolePairs, Assumption? Listed) PolePairs(
        MotorKind kind,
        RotorLayout? rotor,
        double? electricalSpeed,
        int? given = null
    )
    {
        var complete = RigCompletion.Of(
            SampleRig.Brushless with
            {
                Motor = SampleRig.Brushless.Motor with
                {
                    Kind = kind,
                    Rotor = rotor,
                    PolePairs = given,
                },
                Controller = SampleRig.Brushless.Controller with
                {
                    MaxElectricalSpeedRadPerS = electricalSpeed,
                },
            }
        );
        return (
            complete.Rig.Motor.PolePairs,
            complete.Ledger.Assumptions.SingleOrDefault(a => a.Path == "motor.polePairs")
        );
    }

    [Theory]
    [InlineData(RotorLayout.Inner, 2, 3)]
    [InlineData(RotorLayout.Outer, 7, 11)]
    [InlineData(null, 2, 3)]
    public void Unsaid_pole_pairs_are_two_inside_and_seven_outside(
        RotorLayout? rotor,
        double pairs,
        double most
    )
    {
        var (found, listed) = PolePairs(MotorKind.Brushless, rotor, 9000);

        Assert.Equal((pairs, pairs), (found, listed!.Value));
        Assert.Equal(Spread.Interval(1, most), listed.Spread);
    }

    [Fact]
    public void Pole_pairs_are_assumed_only_where_they_count_and_are_not_given()
    {
        Assert.Null(PolePairs(MotorKind.Brushless, RotorLayout.Inner, null).Listed);
        Assert.Null(PolePairs(MotorKind.Brushed, null, 9000).Listed);
        Assert.True(double.IsNaN(PolePairs(MotorKind.Brushed, null, 9000).PolePairs));
        Assert.Equal(5, PolePairs(MotorKind.Brushless, RotorLayout.Outer, 9000, 5).PolePairs);
    }

    [Theory]
    [InlineData(7999.0, true)]
    [InlineData(8000.0, false)]
    [InlineData(null, false)]
    public void Inductance_counts_where_switching_is_given_below_8_kHz(double? hertz, bool counts)
    {
        var motor = SampleRig
            .Of(
                SampleRig.Brushed with
                {
                    Controller = SampleRig.Brushed.Controller with { PwmFrequencyHz = hertz },
                }
            )
            .Motor;

        Assert.Equal(counts, double.IsFinite(motor.InductanceH));
    }
}
