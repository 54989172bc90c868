using PowerCheck.Clients.Generated.Models;

namespace PowerCheck.Clients;

public class ProblemTests
{
    [Fact]
    public async Task A_figure_out_of_range_is_thrown_as_a_problem_that_names_its_member()
    {
        var rig = Rig.Crawler();
        rig.Vehicle!.MassKg = 500;

        var problem = await Assert.ThrowsAsync<Problem>(() =>
            Service.Client.V1.Checks.PostAsync(rig)
        );

        Assert.Equal(422, problem.ResponseStatusCode);
        Assert.Equal(422, problem.Status);
        var error = Assert.Single(problem.Errors!);
        Assert.Equal("vehicle.massKg", error.Path);
        Assert.Equal("out-of-range", error.Code);
        Assert.Equal(50, error.Maximum);
    }

    [Fact]
    public async Task The_kind_of_a_problem_can_be_looked_up()
    {
        var kind = await Service.Client.Problems["invalid"].GetAsync();

        Assert.Equal("/problems/invalid", kind?.Kind?.Type);
    }
}
