using PowerCheck.Circuit.Electrical;
using PowerCheck.Circuit.Rigs;
using PowerCheck.Circuit.Simulator;
using PowerCheck.Circuit.Thermal;
using PowerCheck.Model.Checks;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Thermal;
using PowerCheck.Referee.Tests.Electrical;
using PowerCheck.Referee.Tests.Rigs;

namespace PowerCheck.Referee.Tests.Thermal;

/// <summary>
/// Jam and climb of a rig from cold, by the check and by circuits. The check is asked with a course of nothing but a short
/// rest, so that its cases start cold, and with the seconds of judging that a circuit is read at.
/// </summary>
/// <param name="Rig">The rig.</param>
/// <param name="Compared">Every figure that both have.</param>
/// <param name="Unsolved">Whether the simulator found no solution for jam or climb.</param>
/// <param name="Unrippled">Whether it found one for the jam only without an inductance.</param>
internal sealed record RefereedHeat(
    PlainRig Rig,
    IReadOnlyList<ComparedHeat> Compared,
    bool Unsolved,
    bool Unrippled
)
{
    /// <summary>For how long a locked winding is followed, and how long another [s].</summary>
    private const double JamHorizonS = 900;
    private const double HorizonS = 3600;

    /// <summary>From here on no ripple counts where no inductance is told [kHz].</summary>
    private const double SmoothFromKhz = 8;

    private static readonly double[] JamMomentsS = [1.2, 5, 30];
    private static readonly double[] ClimbMomentsS = [20, 120, 900];

    private static readonly Lazy<IReadOnlyList<RefereedHeat>> Heats = new(() =>
        [.. RefereedCases.All.AsParallel().AsOrdered().Select(Of)]
    );

    /// <summary>All rigs, run once for all tests.</summary>
    public static IReadOnlyList<RefereedHeat> All => Heats.Value;

    private static RefereedHeat Of(RefereedCases cases)
    {
        var checks = Checks(cases.Rig);
        var rippling = Solved(() => Jam(cases, checks));
        var jam = rippling ?? WithoutRipple(cases.Rig);
        var climb = Solved(() => Climb(cases.Rig, checks));
        return new(
            cases.Rig,
            [.. jam ?? [], .. climb ?? [], .. Parts(cases, checks)],
            jam is null || climb is null,
            rippling is null && jam is not null
        );
    }

    private static List<TemperatureReport> Checks(PlainRig rig) =>
        JamMomentsS
            .Zip(ClimbMomentsS, (jam, climb) => Check(rig, jam, climb).Temperatures)
            .ToList();

    // A jam that is not solved with its ripple: where switching is fast, both are asked without an inductance, and so ripple.
    private static List<ComparedHeat>? WithoutRipple(PlainRig rig)
    {
        if (rig.Controller.PwmFrequencyKhz < SmoothFromKhz)
        {
            return null;
        }

        var untold = rig with { Motor = rig.Motor with { InductanceMicrohenry = null } };
        return Solved(() => Jam(RefereedCases.Of(untold), Checks(untold)));
    }

    // Where bus, duty and ripple hang on each other the simulator's search does not always end; those are counted.
    private static List<ComparedHeat>? Solved(Func<IEnumerable<ComparedHeat>> compare)
    {
        try
        {
            return [.. compare()];
        }
        catch (SimulatorException found) when (found.Unsolved)
        {
            return null;
        }
    }

    private static CheckResult Check(PlainRig rig, double jamS, double climbS) =>
        Refereed.Check(
            rig with
            {
                Course = rig.Course with
                {
                    Segments = [new() { Kind = PlainSegmentKind.Rest, Seconds = 1 }],
                    WantedMinutes = 1e-7,
                    JamSeconds = jamS,
                    ClimbSeconds = climbS,
                },
            }
        );

    private static IEnumerable<ComparedHeat> Jam(
        RefereedCases cases,
        List<TemperatureReport> checks
    )
    {
        var winding = checks[0].MotorWinding;
        var limitS = Of(winding, LoadCaseName.Jam).FromColdS;
        var endS = double.IsFinite(limitS) ? limitS : JamHorizonS;
        var deck = new JamHeat(new(cases.Rig), cases.Circuits[PlainCase.Jam]);
        var (read, highest) = deck.Run([.. JamMomentsS, endS]);
        for (var index = 0; index < JamMomentsS.Length; index++)
        {
            var judged = Of(checks[index].MotorWinding, LoadCaseName.Jam).JudgedC;
            yield return new("winding in a jam", judged, read[index]);
        }

        yield return Limit(
            "winding's limit in a jam",
            WindingLimitC(cases.Rig.Motor),
            limitS,
            read[^1],
            highest
        );
    }

    private static IEnumerable<ComparedHeat> Climb(PlainRig rig, List<TemperatureReport> checks)
    {
        var (winding, motor) = (checks[0].MotorWinding, rig.Motor);
        var one = Of(winding, LoadCaseName.Climb);
        var endS = double.IsFinite(one.FromColdS) ? one.FromColdS : HorizonS;
        var settledS = 60 * (motor.WindingJPerK + motor.CaseJPerK) * motor.CaseToAmbientKPerW;
        var run = ClimbHeat.Run(new(rig), Math.Max(HorizonS, settledS), [.. ClimbMomentsS, endS]);
        for (var index = 0; index < ClimbMomentsS.Length; index++)
        {
            var (check, at) = (checks[index], ClimbMomentsS[index]);
            yield return new(
                "winding in a climb",
                Of(check.MotorWinding, LoadCaseName.Climb).JudgedC,
                run.WindingC(at)
            );
            yield return new(
                "case in a climb",
                Of(check.MotorCase, LoadCaseName.Climb).JudgedC,
                run.CaseC(at)
            )
            {
                RanAway = run.WindingC(at) > ComparedHeat.RunawayC,
            };
            yield return new(
                "magnet in a climb",
                Of(check.MotorMagnet, LoadCaseName.Climb).JudgedC,
                run.MagnetC(at)
            )
            {
                RanAway = run.WindingC(at) > ComparedHeat.RunawayC,
            };
        }

        yield return Limit(
            "winding's limit in a climb",
            WindingLimitC(motor),
            one.FromColdS,
            run.WindingC(endS),
            run.WindingC(endS)
        );
        yield return new("settled winding of a climb", one.SettledC, run.SettledC);
    }

    private static IEnumerable<ComparedHeat> Parts(
        RefereedCases cases,
        List<TemperatureReport> checks
    )
    {
        var controller = checks[0].Controller;
        var jamS = Of(controller, LoadCaseName.Jam).FromColdS;
        var climbS = Of(controller, LoadCaseName.Climb).FromColdS;
        double[] ends = [Finite(jamS), Finite(climbS)];
        var deck = new PartHeat(
            new(cases.Rig),
            cases.Circuits[PlainCase.Jam],
            cases.Circuits[PlainCase.Climb]
        ).Run([.. JamMomentsS, .. ClimbMomentsS, .. ends]);
        for (var index = 0; index < checks.Count; index++)
        {
            var check = checks[index];
            var (jam, climb) = (JamMomentsS[index], ClimbMomentsS[index]);
            yield return new(
                "controller in a jam",
                Of(check.Controller, LoadCaseName.Jam).JudgedC,
                deck.JamC(jam)
            );
            yield return new(
                "controller in a climb",
                Of(check.Controller, LoadCaseName.Climb).JudgedC,
                deck.ClimbC(climb)
            );
            yield return new(
                "pack in a climb",
                Of(check.Battery, LoadCaseName.Climb).JudgedC,
                deck.PackC(climb)
            );
        }

        yield return Limit(
            "controller's limit in a jam",
            cases.Rig.Controller.MaxTemperatureC,
            jamS,
            deck.JamC(ends[0]),
            deck.JamC(ends[0])
        );
        yield return Limit(
            "controller's limit in a climb",
            cases.Rig.Controller.MaxTemperatureC,
            climbS,
            deck.ClimbC(ends[1]),
            deck.ClimbC(ends[1])
        );
    }

    private static double Finite(double limitS) => double.IsFinite(limitS) ? limitS : HorizonS;

    // At the check's time to the limit the circuit must be at the limit; where the check says never, the circuit's highest
    // must be under it. A limit under the air's temperature is passed from the start on.
    private static ComparedHeat Limit(
        string quantity,
        double limitC,
        double limitS,
        double circuitC,
        double highestC
    ) =>
        limitS switch
        {
            0 => new(quantity, Math.Max(limitC, circuitC), circuitC),
            double.PositiveInfinity => new(quantity, Math.Max(limitC, highestC), limitC),
            _ => new(quantity, limitC, circuitC),
        };

    // The class of the insulation less what the hottest spot is warmer than the mean.
    private static double WindingLimitC(PlainMotor motor) =>
        motor.InsulationC - motor.HotSpotAllowanceK;

    private static CaseTemperature Of(NodeReport node, LoadCaseName name) =>
        node.Cases.Single(one => one.Case == name);
}

/// <summary>A temperature by the check and by a circuit [°C].</summary>
/// <param name="Quantity">What it is.</param>
/// <param name="CheckC">By the check.</param>
/// <param name="CircuitC">By the circuit.</param>
internal sealed record ComparedHeat(string Quantity, double CheckC, double CircuitC)
{
    /// <summary>How far both may be apart [K].</summary>
    public const double ToleranceK = 0.2;

    /// <summary>Past this both say 'runaway', and how far past does not matter [°C].</summary>
    public const double RunawayC = 400;

    /// <summary>Whether the circuit's winding has passed that, in which case the check tells no node any more.</summary>
    public bool RanAway { get; init; } = CircuitC > RunawayC;

    /// <summary>How far both are apart [K].</summary>
    public double DeviationK => CheckC > RunawayC && RanAway ? 0 : Math.Abs(CheckC - CircuitC);
}
