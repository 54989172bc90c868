using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Tests.Rigs;

namespace PowerCheck.Model.Tests.Laws;

/// <summary>Every figure of every load case is that of a search from the parts alone, in any rig.</summary>
public sealed class TwinLaws
{
    public static TheoryData<LoadCaseName> Names => [.. Enum.GetValues<LoadCaseName>()];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_load_case_is_where_a_search_finds_it(LoadCaseName name) =>
        Law.Holds(
            60,
            0.8,
            label =>
            {
                var rig = SampleRig.Of(label);
                var load = CaseRunner.Run(rig)[name];
                return double.IsNaN(load.BusVoltageV) || new TwinCases(rig).Of(name) is not { } twin
                    ? null
                    : string.Concat(twin.Figures.Select(figure => Compare(load, figure)))
                        + (
                            Nullable.Equals(load.Obstacle, twin.Obstacle)
                                ? ""
                                : $"{load.Obstacle} and {twin.Obstacle}; "
                        );
            }
        );

    private static string Compare(LoadCase load, KeyValuePair<string, double> figure) =>
        // 400 harmonics of a ripple leave out less than this share of it.
        Law.Same(
            figure.Key,
            (double)typeof(LoadCase).GetProperty(figure.Key)!.GetValue(load)!,
            figure.Value,
            1e-5
        );
}
