using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Dependencies;
using ArchUnitNET.Loader;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Courses;
using PowerCheck.Model.Sources;

namespace PowerCheck.Model.Tests.Published;

/// <summary>A row asks a function that a check runs through, not one that is there for the row.</summary>
public sealed class CalledByCheckTests
{
    /// <summary>Constants: the compiler writes their figure where they are used, no call is left.</summary>
    private static readonly string[] Constants =
    [
        $"{nameof(MotorNodes)}.{nameof(MotorNodes.TouchLimitC)}",
    ];

    private static readonly Architecture Built = new ArchLoader()
        .LoadAssembly(typeof(Check).Assembly)
        .Build();

    private static readonly HashSet<string> Called = CalledFrom(
        $"{typeof(Check).FullName}.{nameof(Check.Run)}"
    );

    public static TheoryData<string> Functions =>
        [
            .. PublishedRows
                .All.Select(row => row.Function.Split('/')[0])
                .Distinct(StringComparer.Ordinal)
                .Except(Constants),
        ];

    [Theory]
    [MemberData(nameof(Functions))]
    public void A_check_runs_through_the_function(string function) =>
        Assert.Contains(function, Called);

    [Fact]
    public void What_a_check_does_not_call_is_seen_as_such() =>
        Assert.DoesNotContain($"{nameof(SourceList)}.{nameof(SourceList.All)}", Called);

    // Everything that can be reached from a member, as Type.Member, the getter of a property by the property's name.
    private static HashSet<string> CalledFrom(string start)
    {
        var members = Built.Types.SelectMany(type => type.Members).ToList();
        var open = new Queue<IMember>(
            members.Where(member =>
                Name(member, full: true).Equals(start, StringComparison.Ordinal)
            )
        );
        Assert.NotEmpty(open);
        var seen = new HashSet<IMember>(open);
        while (open.TryDequeue(out var member))
        {
            var next = member
                .Dependencies.OfType<MethodCallDependency>()
                .Select(call => call.TargetMember)
                .Where(seen.Add);
            foreach (var target in next)
            {
                open.Enqueue(target);
            }
        }

        return [.. seen.Select(member => Name(member, full: false))];
    }

    private static string Name(IMember member, bool full)
    {
        var name = member.Name.Split('(')[0].Replace("get_", "", StringComparison.Ordinal);
        return $"{(full ? member.DeclaringType.FullName : member.DeclaringType.Name)}.{name}";
    }
}
