using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;
using PowerCheck.Model.Units;
using static PowerCheck.Model.Findings.FindingCatalogue;

namespace PowerCheck.Model.Findings;

/// <summary>Temperatures of winding, magnet, controller and pack against what they stand (M6, M7, M11).</summary>
internal static class HeatFindings
{
    /// <summary>The findings.</summary>
    /// <param name="it">What was computed.</param>
    public static IEnumerable<Finding> Of(Inspection it)
    {
        var warm = it.Result.Temperatures;
        return
        [
            .. Node(it, MotorWindingTemperature, "Motor winding", warm.MotorWinding),
            .. Node(it, MotorMagnetTemperature, "Motor magnet", warm.MotorMagnet),
            .. Node(it, ControllerHeat, ControllerPart(it.Rig), warm.Controller),
            Course(it, BatteryTemperature, "Cells at the end of the run", warm.Battery),
        ];
    }

    // Whose heat it is, where most of it is not the motor's doing.
    private static string ControllerPart(Rig rig) =>
        rig.ReceiverSupply.MemoryHeatW(rig.Battery.NominalV) > 0.5 * rig.Controller.RatedHeatW
            ? "Controller, heated mostly by its receiver supply,"
            : "Controller";

    // Without a run time the start is the most that it can be.
    private static Finding Sure(Inspection it, Finding finding) =>
        finding with
        {
            Bound = double.IsNaN(it.Result.RunS),
        };

    private static IEnumerable<Finding> Node(
        Inspection it,
        FindingKind kind,
        string part,
        NodeReport node
    ) =>
        [
            Sure(it, Course(it, kind, $"{part} over the course, lap after lap", node)),
            .. node
                .Cases.Where(c => !double.IsNaN(c.JudgedS))
                .Select(c => Sure(it, Case(it, kind, part, node, c))),
        ];

    private static Finding Course(Inspection it, FindingKind kind, string subject, NodeReport node)
    {
        var severeness = Severeness(it, node.PeakC, node.LimitC);
        // When the limit is reached: within the run it fails, on a further pack it is in doubt.
        var when = severeness > 1 ? node.CourseTimeToLimitS : double.PositiveInfinity;
        var within = severeness <= 1 || when <= it.Result.RunS;
        var found = Make.Limit(
            kind,
            "course",
            subject,
            node.PeakC,
            node.LimitC,
            Unit.Celsius,
            severeness,
            double.IsFinite(when) ? when : double.NaN,
            within ? Outcome.Fails : Outcome.Doubtful
        );
        if (!(severeness > 1))
        {
            return found;
        }

        var time = double.IsFinite(when)
            ? $"after about {Say.Time(when)} from cold{(within ? "" : ", later than this run lasts")}"
            : "long after this run";
        return found with
        {
            Sentence = f =>
                $"{subject}: {Peak(node.PeakC)}, and passes {Say.Degrees(node.LimitC)} ({kind.LimitFrom}) {time}"
                + $"{Say.Chance(f)}; {kind.Consequence}.",
        };
    }

    private static Finding Case(
        Inspection it,
        FindingKind kind,
        string part,
        NodeReport node,
        CaseTemperature at
    )
    {
        var settled = double.IsInfinity(at.JudgedS);
        string Subject() =>
            $"{part} {Say.Case(at.Case)}, "
            + (settled ? "settled" : $"after {Say.Time(at.JudgedS)}, warm from the course");
        var found = Make.Limit(
            kind,
            Say.Word(at.Case),
            Subject,
            at.JudgedC,
            node.LimitC,
            Unit.Celsius,
            Severeness(it, at.JudgedC, node.LimitC),
            settled ? double.NaN : at.JudgedS
        );
        return at.Case == LoadCaseName.Slip && kind == MotorWindingTemperature
            ? Slipping(found, at)
            : found;
    }

    // Whether the tires let go before the motor is in danger.
    private static Finding Slipping(Finding found, CaseTemperature at) =>
        found with
        {
            Sentence = it =>
                it.Outcome != Outcome.Holds || it.Caution ? found.Sentence(it)
                : double.IsInfinity(at.FromWarmS)
                    ? $"{found.Sentence(it)} The tires let go before the motor is in danger."
                : $"{found.Sentence(it)} The tires let go first, but spinning them on and on cooks the motor.",
        };

    private static string Peak(double peakC) =>
        double.IsInfinity(peakC) ? "never settles" : $"would reach {Say.Degrees(peakC)}";

    // On the scale of the rise over the air.
    private static double Severeness(Inspection it, double temperatureC, double limitC)
    {
        var ambient = it.Rig.Road.AmbientC;
        return limitC <= ambient
            ? double.PositiveInfinity
            : (temperatureC - ambient) / (limitC - ambient);
    }
}
