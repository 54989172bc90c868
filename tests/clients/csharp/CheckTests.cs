using PowerCheck.Clients.Generated.Models;

namespace PowerCheck.Clients;

public class CheckTests
{
    [Fact]
    public async Task A_check_answers_with_a_verdict_and_with_figures_of_its_load_cases()
    {
        var answer = await Service.Client.V1.Checks.PostAsync(Rig.Crawler());

        Assert.NotNull(answer);
        Assert.Equal(CheckAnswer_verdict.Suitable, answer.Verdict);
        Assert.Equal("crawler", answer.Id);
        var climb = answer.LoadCases?.Climb;
        Assert.NotNull(climb);
        Assert.InRange(climb.MotorCurrentA ?? double.NaN, 10, 30);
        Assert.True(climb.BatteryCurrentA < climb.MotorCurrentA);
        Assert.Single(answer.Findings!, finding => finding.Decides is true);
    }
}
