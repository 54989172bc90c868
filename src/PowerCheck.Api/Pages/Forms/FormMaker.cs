using PowerCheck.Api.Display;
using PowerCheck.Api.Paths;

namespace PowerCheck.Api.Pages.Forms;

/// <summary>Makes the form: every member of a rig has a field, in the group in which a builder looks for it.</summary>
internal sealed class FormMaker
{
    private const string Tolerances = "tolerances";

    /// <summary>Figures whose tolerance is most worth saying.</summary>
    private static readonly string[] Common =
    [
        "vehicle.massKg",
        "motor.kvRpmPerVolt",
        "motor.resistanceMilliohm",
        "battery.cellResistanceMilliohm",
        "battery.capacityMah",
        "controller.continuousCurrentA",
        "course.frictionCoefficient",
    ];

    private readonly FormValues values;
    private readonly Assumed assumed;
    private readonly FieldMaker fields;

    private FormMaker(FormValues values, Assumed assumed, FieldMaker fields) =>
        (this.values, this.assumed, this.fields) = (values, assumed, fields);

    /// <summary>Makes the form.</summary>
    /// <param name="values">What is typed.</param>
    /// <param name="assumed">What is assumed.</param>
    /// <param name="mistakes">What is wrong.</param>
    /// <param name="units">The units shown.</param>
    public static FormView Make(
        FormValues values,
        Assumed assumed,
        FieldMistakes mistakes,
        DisplayUnits units
    )
    {
        var makes = new FieldMaker(values, assumed, mistakes, units);
        var maker = new FormMaker(values, assumed, makes);
        GroupView[] groups = [.. GroupPlan.All.Select(maker.Group)];
        return new(groups, [.. makes.Left]);
    }

    private GroupView Group(GroupPlan plan)
    {
        var sections = plan
            .Parts.Select(part => (part, FormMember.Rig.Single(member => Same(member.Name, part))))
            .SelectMany(pair => Sections(pair.part, pair.Item2))
            .Where(section => section.All.Any())
            .ToArray();
        var byPath = sections
            .SelectMany(section => section.Fields)
            .ToDictionary(one => one.Path, StringComparer.Ordinal);
        FieldView[] open = [.. plan.Open.Select(path => byPath[path])];
        return new(
            plan,
            open,
            [
                .. sections
                    .Select(section => section with { Fields = [.. section.Fields.Except(open)] })
                    .Where(section => section.All.Any()),
            ]
        );
    }

    private IEnumerable<SectionView> Sections(string path, FormMember member)
    {
        if (member.IsMap)
        {
            return [new(path, "", null, [.. ToleranceFields()], [])];
        }

        if (member.IsRows)
        {
            return [Rows(path, member)];
        }

        return member.Inner.Count == 0
            ? [new("", "", null, [fields.Make(path, member)], [])]
            : Parts(path, member);
    }

    // The values of an object first, then the objects and lists within it.
    private IEnumerable<SectionView> Parts(string path, FormMember member)
    {
        var isGroup = !path.Contains('.', StringComparison.Ordinal);
        var direct = member.Inner.Where(inner => inner.Inner.Count == 0 && !inner.IsRows);
        yield return new(
            path,
            isGroup ? "" : Labels.Of(path).Name,
            isGroup ? null : Labels.Of(path).Help,
            [.. direct.Select(inner => fields.Make($"{path}.{inner.Name}", inner))],
            []
        );
        foreach (var inner in member.Inner.Where(inner => inner.Inner.Count > 0 || inner.IsRows))
        {
            foreach (var section in Sections($"{path}.{inner.Name}", inner))
            {
                yield return section;
            }
        }
    }

    private SectionView Rows(string path, FormMember member)
    {
        var given = values.Items(path);
        var count = Math.Min(given + 1, member.MostItems!.Value);
        var label = Labels.Of(path);
        var instead = assumed.OfList(path);
        return new(
            path,
            label.Name,
            instead.Length == 0
                ? label.Help
                : $"{label.Help} Assumed while empty: {instead}.".Trim(),
            path is FieldMaker.Accessories ? [fields.MakeNothing(path)] : [],
            [.. Enumerable.Range(0, count).Select(at => Row($"{path}.{at}", member, at < given))]
        );
    }

    private FieldView[] Row(string path, FormMember member, bool isGiven) =>
        member.Inner.Count == 0
            ? [Plain(fields.Make(path, member), isGiven)]
            :
            [
                .. member.Inner.Select(inner =>
                    Plain(fields.Make($"{path}.{inner.Name}", inner), isGiven)
                ),
            ];

    // A blank row stands for nothing, so that nothing is assumed for it either.
    private static FieldView Plain(FieldView field, bool isGiven) =>
        isGiven ? field : field with { Assumed = null, IsRequired = false };

    private IEnumerable<FieldView> ToleranceFields() =>
        Common
            .Select(path => $"{Tolerances}.{path}")
            .Concat(
                values.Paths.Where(path =>
                    path.StartsWith($"{Tolerances}.", StringComparison.Ordinal)
                )
            )
            .Distinct(StringComparer.Ordinal)
            .Select(path => ToleranceField(path, path[(Tolerances.Length + 1)..]));

    private FieldView ToleranceField(string path, string of)
    {
        var end = of.LastIndexOf('.');
        return RigPath.Names(of) || end < 0
            ? fields.MakeTolerance(path, of, "")
            : fields.MakeTolerance(path, of[..end], of[(end + 1)..]);
    }

    private static bool Same(string one, string other) =>
        string.Equals(one, other, StringComparison.Ordinal);
}
