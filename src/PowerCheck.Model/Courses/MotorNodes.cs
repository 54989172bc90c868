using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;

namespace PowerCheck.Model.Courses;

/// <summary>The motor's three temperatures over the course and in each load case.</summary>
/// <param name="Winding">Mean winding temperature.</param>
/// <param name="Magnet">Magnet temperature; a locked motor's copper is too quick for it.</param>
/// <param name="Case">Case temperature.</param>
public sealed record MotorNodes(NodeReport Winding, NodeReport Magnet, NodeReport Case)
{
    /// <summary>Case temperature from which on touching it may burn [°C]. Source: iso13732.</summary>
    public const double TouchLimitC = 60;

    /// <summary>The three nodes.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="course">The course.</param>
    /// <param name="cases">The load cases.</param>
    /// <param name="motor">The motor over the course.</param>
    public static MotorNodes Of(Rig rig, Course course, LoadCases cases, MotorCourse motor)
    {
        var heat = rig.Motor.Heat;
        var weight = motor.Warmth.MagnetWeight;
        var winding = new List<CaseTemperature>(cases.All.Count);
        var magnet = new List<CaseTemperature>(cases.All.Count);
        var housing = new List<CaseTemperature>(cases.All.Count);
        foreach (var load in cases.All)
        {
            var judged = CaseHeat.JudgedS(load.Name, course.Judging);
            if (CaseHeat.Turning(rig, load) is { } drive)
            {
                var turning = TurningCase.Of(motor, drive, judged);
                winding.Add(turning.Node(load.Name, judged, 1, t => t.WindingS));
                magnet.Add(turning.Node(load.Name, judged, weight, t => t.MagnetS));
                housing.Add(turning.Node(load.Name, judged, 0, _ => double.NaN));
            }
            else
            {
                winding.Add(Locked(motor, CaseHeat.Locked(rig, load, motor.Warmth), load, judged));
            }
        }

        var lap = motor.Lap;
        return new(
            Report(motor.End.WindingC, lap.PeakWindingC, heat.WindingLimitC, winding) with
            {
                CourseTime = new(() => motor.WindingLimit.Seconds),
            },
            Report(motor.Warmth.MagnetC(motor.End), lap.PeakMagnetC, heat.MagnetLimitC, magnet) with
            {
                CourseTime = new(() => motor.MagnetLimit.Seconds),
            },
            Report(motor.End.CaseC, lap.PeakCaseC, TouchLimitC, housing)
        );
    }

    private static NodeReport Report(
        double endC,
        double peakC,
        double limitC,
        List<CaseTemperature> cases
    ) =>
        new()
        {
            CourseEndC = endC,
            PeakC = peakC,
            LimitC = limitC,
            Cases = cases,
        };

    private static CaseTemperature Locked(
        MotorCourse motor,
        LockedWinding winding,
        LoadCase load,
        double judged
    ) =>
        new(
            load.Name,
            double.NaN,
            new(() => winding.TimeToLimit(motor.Warmth.Cold)),
            new(() => winding.TimeToLimit(motor.Warm)),
            judged,
            double.IsFinite(judged) ? winding.AfterC(motor.Warm, judged) : double.NaN
        );

    /// <summary>A case in which the motor turns, computed once for its three nodes.</summary>
    private readonly record struct TurningCase(
        MotorTemperature Settled,
        Lazy<(double WindingS, double MagnetS)> Cold,
        Lazy<(double WindingS, double MagnetS)> Warm,
        MotorTemperature Judged
    )
    {
        public static TurningCase Of(MotorCourse motor, Drive drive, double judged)
        {
            var warmth = motor.Warmth;
            var settled = warmth.Settled(drive);
            return new(
                settled,
                new(() => warmth.TimesToLimits(drive, warmth.Cold, settled)),
                new(() => warmth.TimesToLimits(drive, motor.Warm, settled)),
                double.IsNaN(judged) ? MotorTemperature.At(double.NaN)
                    : double.IsInfinity(judged) ? settled
                    : warmth.After(drive, motor.Warm, judged)
            );
        }

        public CaseTemperature Node(
            LoadCaseName name,
            double judged,
            double windingWeight,
            Func<(double WindingS, double MagnetS), double> time
        )
        {
            var (cold, warm) = (Cold, Warm);
            return new(
                name,
                Settled.Weighted(windingWeight),
                new(() => time(cold.Value)),
                new(() => time(warm.Value)),
                judged,
                Judged.Weighted(windingWeight)
            );
        }
    }
}
