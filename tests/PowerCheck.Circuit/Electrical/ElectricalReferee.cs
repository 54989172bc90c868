using PowerCheck.Circuit.Rigs;

namespace PowerCheck.Circuit.Electrical;

/// <summary>
/// The load cases of a rig by the circuit simulator: first what each case asks for and full throttle gives, then what the
/// pack makes of it, then the bridge at its duty.
/// </summary>
public sealed class ElectricalReferee
{
    private const int MostRounds = 60;

    private readonly RigPhysics rig;
    private readonly CellVoltages cell;
    private readonly Dictionary<PlainCase, CasePoint> points = [];
    private readonly Dictionary<PlainCase, Feed> feeds = [];

    private double prospectiveA;

    private ElectricalReferee(PlainRig plain)
    {
        rig = new(plain);
        cell = plain.Battery.Cell;
    }

    private double HalfV => rig.OpenV(cell.HalfV);

    private double FullV => rig.OpenV(cell.FullV);

    private double LimitA => rig.Rig.Controller.CurrentLimitA ?? double.PositiveInfinity;

    /// <summary>Every load case of a rig.</summary>
    /// <param name="plain">The rig.</param>
    public static IReadOnlyDictionary<PlainCase, CasePoint> Run(PlainRig plain)
    {
        var referee = new ElectricalReferee(plain);
        referee.Ask();
        referee.FeedAll();
        referee.points[PlainCase.Stall] = referee.points[PlainCase.Stall] with
        {
            ProspectiveA = referee.prospectiveA,
        };
        return referee.points;
    }

    private void Ask()
    {
        var bench = new Bench($"what rig {rig.Rig.Number} asks for");
        var level = Creep(bench, "lv", rig.CreepN(0));
        var climb = Creep(bench, "cl", rig.CreepN(rig.ClimbSlopeRad));
        var slip = Creep(bench, "sl", rig.SlipN);
        var hold = new HoldCircuit("ho", rig, HalfV).AddTo(bench);
        var punch = Full(bench, "pu", HalfV, false, rig.SlipN, LimitA);
        var reserve = Full(bench, "re", rig.OpenV(cell.ReserveV), false, rig.SlipN, LimitA);
        var stall = Full(bench, "st", FullV, false, null, double.PositiveInfinity);
        var top = Full(bench, "to", FullV, true, rig.CreepN(0), double.PositiveInfinity);
        bench.Run();
        feeds[PlainCase.Level] = level.Read(bench, HalfV);
        feeds[PlainCase.Climb] = climb.Read(bench, HalfV);
        feeds[PlainCase.Slip] = slip.Read(bench, HalfV);
        points[PlainCase.Top] = top.Read(bench);
        points[PlainCase.Punch] = punch.Read(bench);
        points[PlainCase.PunchAtReserve] = reserve.Read(bench);
        Hold(hold, bench);
        Wedge(stall.Read(bench));
    }

    private AskedCircuit Creep(Bench bench, string at, double forceN) =>
        new AskedCircuit(at, rig, rig.CreepRadPerS, forceN).AddTo(bench);

    private FullThrottleCircuit Full(
        Bench bench,
        string at,
        double openV,
        bool lasting,
        double? forceN,
        double limitA
    ) => new FullThrottleCircuit(at, rig, openV, lasting, forceN, limitA).AddTo(bench);

    private void Hold(HoldCircuit hold, Bench bench)
    {
        if (rig.Rig.Controller.Hold == PlainHold.Active && !hold.HeldByFriction)
        {
            feeds[PlainCase.Hold] = Feed.Standing("ho", rig, hold.ActiveA, HalfV, true) with
            {
                WheelNm = rig.RollBackN * rig.RadiusM,
            };
        }
        else
        {
            points[PlainCase.Hold] = hold.Read(bench);
        }
    }

    // A driver feeds a wedged wheel a multiple of what slips the tires, as far as full throttle and the limit let him.
    private void Wedge(CasePoint stall)
    {
        prospectiveA = stall.MotorA;
        var wantedA = Math.Min(LimitA, rig.Rig.Course.JamSlipFactor * feeds[PlainCase.Slip].MotorA);
        Wedge(PlainCase.Jam, "ja", wantedA, stall);
        Wedge(
            PlainCase.Stall,
            "sg",
            double.IsFinite(LimitA) ? LimitA : rig.Rig.Controller.BurstCurrentA,
            stall
        );
    }

    private void Wedge(PlainCase name, string at, double wantedA, CasePoint stall)
    {
        if (wantedA < stall.MotorA)
        {
            feeds[name] = Feed.Standing(at, rig, wantedA, FullV, false);
        }
        else
        {
            points[name] = stall;
        }
    }

    private void FeedAll()
    {
        var ripple = feeds.Keys.ToDictionary(name => name, _ => 0.0);
        for (var round = 0; ; round++)
        {
            var fed = feeds.ToDictionary(feed => feed.Key, feed => new FedCircuit(rig, feed.Value));
            var bench = new Bench($"what the pack of rig {rig.Rig.Number} makes of it");
            foreach (var (name, circuit) in fed)
            {
                circuit.AddTo(bench, ripple[name]);
            }

            bench.Run();
            if (Settled(fed, bench, ripple))
            {
                Drive(fed, bench, ripple);
                return;
            }

            if (round == MostRounds)
            {
                throw new InvalidOperationException($"Rig {rig.Rig.Number}: no settled ripple.");
            }
        }
    }

    // Whether the ripple is that of the bus that carries it; else it is found again.
    private bool Settled(
        Dictionary<PlainCase, FedCircuit> fed,
        Bench bench,
        Dictionary<PlainCase, double> ripple
    )
    {
        var controller = rig.Rig.Controller;
        if (rig.Rig.Motor.InductanceMicrohenry is not { } microhenry)
        {
            return true;
        }

        var settled = true;
        foreach (var (name, circuit) in fed)
        {
            var (busV, duty, attained) = circuit.Read(bench);
            var found = attained
                ? Ripple.MeanSquareA2(
                    busV + rig.FreewheelV,
                    duty,
                    rig.LoopOhm,
                    microhenry * 1e-6,
                    controller.PwmFrequencyKhz * 1000
                )
                : 0;
            settled &= Math.Abs(found - ripple[name]) <= 1e-7 * found;
            ripple[name] = found;
        }

        return settled;
    }

    private void Drive(
        Dictionary<PlainCase, FedCircuit> fed,
        Bench packs,
        Dictionary<PlainCase, double> ripple
    )
    {
        var bench = new Bench($"the bridge of rig {rig.Rig.Number} at its duty");
        var driven = new Dictionary<PlainCase, DutyCircuit>();
        foreach (var (name, circuit) in fed)
        {
            var (_, duty, attained) = circuit.Read(packs);
            if (attained)
            {
                driven[name] = new(rig, circuit.Feed, duty, ripple[name]);
                driven[name].AddTo(bench);
            }
            else
            {
                points[name] = FullyOn(circuit, packs);
            }
        }

        if (driven.Count > 0)
        {
            bench.Run();
        }

        foreach (var (name, circuit) in driven)
        {
            points[name] = circuit.Read(bench);
        }
    }

    // The motor's heat is that of the current asked for; at its terminals stands what the bridge, fully on, leaves it.
    private CasePoint FullyOn(FedCircuit circuit, Bench bench)
    {
        var (busV, batteryA) = circuit.ReadFullyOn(bench);
        var feed = circuit.Feed;
        var pathV = feed.MotorA * (rig.SwitchesOhm + rig.MotorLeadsOhm);
        var point = new CasePoint
        {
            MotorA = feed.MotorA,
            MotorV = feed.BridgeV - pathV,
            SpeedRadPerS = feed.SpeedRadPerS,
            BusV = busV,
            BatteryA = batteryA,
            BatteryRmsA = batteryA,
            Duty = 1,
            WheelNm = feed.WheelNm,
            MotorW = 0,
            ControllerW = 0,
            BatteryW = 0,
            Attained = false,
        };
        return CaseHeat.With(rig, pathV, feed.Lasting, point) with { MotorV = busV - pathV };
    }
}
