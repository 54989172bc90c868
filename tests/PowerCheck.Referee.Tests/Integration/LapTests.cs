using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Integration;

/// <summary>The lap that repeats itself and the end of a run, against stepping through every lap from cold (M6, M8).</summary>
public sealed class LapTests : IClassFixture<DeviationReport>
{
    // None is left out of the comparisons.
    [Fact]
    public void Every_rig_has_an_operating_point_in_every_segment() =>
        Assert.Empty(
            Integrated.All.Where(rig => rig.Laps.Starved).Select(rig => rig.Plain.Rig.Number)
        );

    [Fact]
    public void The_lap_that_repeats_itself_is_where_lap_after_lap_leads()
    {
        var said = "";
        var settled = 0;
        foreach (var rig in Integrated.All)
        {
            var check = rig.Check.Temperatures;
            if (rig.Laps.Runaway)
            {
                said += Runaway(rig, check.MotorWinding.PeakC);
                continue;
            }

            settled++;
            said +=
                rig.Kelvin("lap's peak, winding", rig.Laps.WindingPeakC, check.MotorWinding.PeakC)
                + rig.Kelvin("lap's peak, magnet", rig.Laps.MagnetPeakC, check.MotorMagnet.PeakC)
                + rig.Kelvin("lap's peak, case", rig.Laps.CasePeakC, check.MotorCase.PeakC);
        }

        Assert.True(said.Length == 0, said);
        Assert.True(settled >= 60, $"{settled} rigs settle");
    }

    [Fact]
    public void Laps_run_away_where_the_check_says_so()
    {
        var ran = Integrated.All.Where(rig => rig.Laps.Runaway).ToList();
        Assert.True(ran.Count >= 3, $"{ran.Count} rigs run away");
        Assert.All(
            ran,
            rig => Assert.Equal(double.PositiveInfinity, rig.Check.Temperatures.MotorWinding.PeakC)
        );
    }

    [Fact]
    public void A_run_ends_where_every_lap_from_cold_and_a_part_of_the_last_lead()
    {
        var said = "";
        foreach (var rig in Integrated.All)
        {
            var check = rig.Check.Temperatures;
            var end = rig.Laps.After(rig.Plain.Rig.Course.WantedMinutes * 60);
            if (end[0] > 400)
            {
                said += Runaway(rig, check.MotorWinding.CourseEndC);
                continue;
            }

            said +=
                rig.Kelvin("end of the run, winding", end[0], check.MotorWinding.CourseEndC)
                + rig.Kelvin(
                    "end of the run, magnet",
                    rig.Plain.MagnetC(end[0], end[1]),
                    check.MotorMagnet.CourseEndC
                )
                + rig.Kelvin("end of the run, case", end[1], check.MotorCase.CourseEndC);
        }

        Assert.True(said.Length == 0, said);
    }

    private static string Runaway(Integrated rig, double checkC) =>
        double.IsPositiveInfinity(checkC)
            ? ""
            : $"rig {rig.Plain.Rig.Number} runs away, check {checkC:R}\n";
}
