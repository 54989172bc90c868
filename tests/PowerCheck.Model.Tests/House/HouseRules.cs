using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using PowerCheck.Model.Findings;
using PowerCheck.Model.Sources;
using Assembly = System.Reflection.Assembly;
using ModelVersion = PowerCheck.Model.Checks.ModelVersion;
using Type = System.Type;

namespace PowerCheck.Model.Tests.House;

/// <summary>Rules of the house, kept by looking at the built model.</summary>
public sealed partial class HouseRules
{
    private static readonly Assembly Model = typeof(Source).Assembly;

    private static readonly Architecture Built = new ArchLoader().LoadAssembly(Model).Build();

    // A tool that measures the tests puts types of its own, in a namespace of its own, into the assembly.
    private static readonly Type[] Own =
    [
        .. Model.GetTypes().Where(type => IsOwn(type.FullName ?? "")),
    ];

    /// <summary>Rooms in order: a room uses its own step's rooms and those before.</summary>
    private static readonly string[][] Steps =
    [
        ["Units"],
        ["Materials"],
        ["Sources"],
        ["Assumptions", "Uncertainty"],
        ["Motors", "Batteries", "Controllers", "Wiring", "Vehicles", "Accessories"],
        ["Drivetrain"],
        ["Thermal"],
        ["Courses"],
        ["Findings"],
        ["Rigs"],
        ["Spreads"],
        ["Curves"],
        ["Remedies"],
        ["Checks"],
        ["Shortlists"],
    ];

    public static TheoryData<Type> Types =>
        [
            .. Own.Where(type => type.IsDefined(typeof(CompilerGeneratedAttribute), false) is false)
                .Where(type => type is { IsEnum: false } && !type.IsSubclassOf(typeof(Delegate))),
        ];

    [Theory]
    [MemberData(nameof(Types))]
    public void Nothing_of_the_model_can_be_changed_once_made(Type type)
    {
        const BindingFlags All =
            BindingFlags.Instance
            | BindingFlags.Static
            | BindingFlags.Public
            | BindingFlags.NonPublic
            | BindingFlags.DeclaredOnly;
        Assert.All(
            type.GetFields(All),
            field =>
                Assert.True(
                    field.IsInitOnly || field.IsLiteral || IsPrivateOf(field),
                    $"{type}.{field.Name}"
                )
        );
        Assert.All(
            type.GetProperties(All).Select(property => property.SetMethod).OfType<MethodInfo>(),
            setter =>
                Assert.Contains(
                    typeof(IsExternalInit),
                    setter.ReturnParameter.GetRequiredCustomModifiers()
                )
        );
    }

    // The fields of a record are written by its init properties only; the compiler leaves them writable.
    private static bool IsPrivateOf(FieldInfo field) =>
        field.IsPrivate && field.IsDefined(typeof(CompilerGeneratedAttribute), false);

    [Fact]
    [Trait("needs", "plain-build")]
    public void The_model_references_the_runtime_and_its_numerics_alone()
    {
        var foreign = Model
            .GetReferencedAssemblies()
            .Select(name => name.Name ?? "")
            .Where(name =>
                !name.StartsWith("System.", StringComparison.Ordinal)
                && !string.Equals(name, "MathNet.Numerics", StringComparison.Ordinal)
            );
        Assert.Empty(foreign);
        string[] forbidden =
        [
            "Json",
            "Http",
            "Data",
            "Net",
            "Console",
            "Diagnostics",
            "IO",
            "Xml",
            "Web",
        ];
        Assert.All(
            Model.GetReferencedAssemblies().Select(name => name.Name ?? ""),
            name =>
                Assert.DoesNotContain(
                    name.Split('.'),
                    part => forbidden.Contains(part, StringComparer.Ordinal)
                )
        );
    }

    [Fact]
    public void A_room_uses_only_rooms_before_it()
    {
        var place = Steps
            .SelectMany((rooms, step) => rooms.Select(room => (room, step)))
            .ToDictionary(x => x.room, x => x.step, StringComparer.Ordinal);
        var wrong =
            from type in Built.Types
            let room = Room(type.FullName)
            where room is not null
            from target in type
                .Dependencies.Select(d => d.Target.FullName)
                .Distinct(StringComparer.Ordinal)
            let other = Room(target)
            where other is not null && !string.Equals(other, room, StringComparison.Ordinal)
            where
                place[other] > place[room]
                || (place[other] == place[room] && !Neighbours(room, other))
            select $"{type.FullName} uses {target}";
        Assert.Empty(wrong.Distinct(StringComparer.Ordinal));
    }

    // Parts know of each other only by the words on their boxes: a controller's box names motor kinds and chemistries, a
    // receiver supply is part of the controller's box.
    private static bool Neighbours(string room, string other) =>
        (room, other)
            is
                ("Controllers", "Motors")
                or
                ("Controllers", "Batteries")
                or
                ("Accessories", "Controllers");

    [Fact]
    public void Every_type_stands_in_a_room()
    {
        var rooms = Steps.SelectMany(step => step).ToHashSet(StringComparer.Ordinal);
        Assert.All(
            Own.Where(type => type.IsPublic),
            type => Assert.Contains(Room(type.FullName ?? "") ?? "", rooms)
        );
    }

    [Fact]
    public void What_is_read_from_a_box_is_completed_once_and_judged_no_more()
    {
        var labels = Built
            .Types.Where(type => Room(type.FullName) is "Drivetrain" or "Thermal" or "Findings")
            .SelectMany(type =>
                type.Dependencies.Select(d => (type.FullName, Target: d.Target.FullName))
            )
            .Where(d => d.Target.EndsWith("Label", StringComparison.Ordinal));
        Assert.Empty(labels);
    }

    [Fact]
    public void Every_finding_code_is_unique_and_names_part_and_limit()
    {
        Assert.Distinct(FindingCatalogue.All.Select(kind => kind.Code), StringComparer.Ordinal);
        Assert.All(
            FindingCatalogue.All,
            kind =>
            {
                Assert.Matches(Code(), kind.Code);
                Assert.StartsWith(kind.Part + ".", kind.Code, StringComparison.Ordinal);
                Assert.EndsWith(".", kind.Meaning, StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void The_catalogue_lists_every_kind_that_it_declares()
    {
        var declared = typeof(FindingCatalogue)
            .GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(field => field.GetValue(null))
            .OfType<FindingKind>()
            .ToArray();
        Assert.Equal(declared.Length, FindingCatalogue.All.Count);
        Assert.All(declared, kind => Assert.Contains(kind, FindingCatalogue.All));
    }

    [Fact]
    public void Every_findings_source_is_in_the_list_and_its_version_is_known()
    {
        var keys = SourceList.All.Select(source => source.Key).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(SourceList.All.Count, keys.Count);
        Assert.All(
            FindingCatalogue.All,
            kind =>
            {
                Assert.NotEmpty(kind.Sources);
                Assert.All(kind.Sources, key => Assert.Contains(key, keys));
                Assert.True(Version.Parse(kind.Since) <= Version.Parse(ModelVersion.Current));
            }
        );
    }

    [Fact]
    public void Every_source_says_how_it_was_seen() =>
        Assert.All(
            SourceList.All,
            source =>
                Assert.Contains(
                    source.Seen,
                    new[] { "document", "secondary", "memory", "own" },
                    StringComparer.Ordinal
                )
        );

    [Fact]
    [Trait("speed", "slow")]
    public void Every_assumptions_source_is_in_the_list()
    {
        var keys = SourceList.All.Select(source => source.Key).ToHashSet(StringComparer.Ordinal);
        var assumptions = Enumerable
            .Range(1, 300)
            .Select(Rigs.RandomRig.Of)
            .Append(new() { Vehicle = new() { MassKg = 3 } })
            .SelectMany(label => PowerCheck.Model.Rigs.RigCompletion.Of(label).Ledger.Assumptions)
            .ToArray();
        Assert.All(assumptions, assumption => Assert.Contains(assumption.Source, keys));
        Assert.All(assumptions, assumption => Assert.NotEmpty(assumption.Basis));
        Assert.All(
            assumptions,
            assumption =>
                Assert.True(
                    double.IsNaN(assumption.Value) == assumption.Word is not null,
                    assumption.Path
                )
        );
    }

    private static bool IsOwn(string fullName) =>
        fullName.StartsWith("PowerCheck.Model.", StringComparison.Ordinal);

    private static string? Room(string fullName)
    {
        var parts = fullName.Split('.');
        return IsOwn(fullName) && parts.Length > 3 ? parts[2] : null;
    }

    [GeneratedRegex("^[a-z]+(-[a-z]+)*\\.[a-z]+(-[a-z]+)*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Code();
}
