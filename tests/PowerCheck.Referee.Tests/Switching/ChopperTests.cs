using PowerCheck.Circuit.Switching;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Referee.Tests.Deviations;

namespace PowerCheck.Referee.Tests.Switching;

/// <summary>
/// The averaged bridge and its ripple rule against a circuit that really switches, at the check's own duty. Where the rule
/// claims to be exact (bus held by a capacitor, current that never runs dry) the tolerance is that of the circuit; elsewhere
/// it says how far the rule may be off, and the table of deviations says how far it is.
/// </summary>
public sealed class ChopperTests : IClassFixture<DeviationReport>
{
    private const string Referee = "switched circuit";

    [RefereeTheory]
    [MemberData(nameof(Held))]
    public void On_a_held_bus_means_and_ripple_are_those_of_the_switched_circuit(
        double frequencyHz,
        double loopS,
        double duty,
        bool diode
    )
    {
        var rig = new ChopperRig(frequencyHz, loopS, duty, diode);
        var (check, circuit) = Both(rig, smoothed: true);

        Assert.True(!diode || circuit.LeastMotorA > 0, $"{rig}: runs dry");
        Near("mean motor current", rig, check.MotorCurrentA, circuit.MotorA, 0.1);
        Near("ripple, mean square", rig, RippleA2(check), circuit.RippleMeanSquareA2, 0.2);
        Near("mean battery current", rig, check.BatteryCurrentA, circuit.BatteryA, 0.1);
        Near("rms battery current", rig, check.BatteryRmsCurrentA, circuit.BatteryRmsA, 0.1);
    }

    public static TheoryData<double, double, double, bool> Held()
    {
        var points = new TheoryData<double, double, double, bool>();
        foreach (var duty in new[] { 0.15, 0.3, 0.6, 0.9 })
        {
            foreach (var loopS in new[] { 50e-6, 300e-6, 1500e-6 })
            {
                points.Add(4000, loopS, duty, false);
                points.Add(8000, loopS, duty, false);
                points.Add(16000, loopS, duty, false);
                if (loopS > 100e-6)
                {
                    points.Add(4000, loopS, duty, true);
                }
            }
        }
        return points;
    }

    [RefereeTheory]
    [MemberData(nameof(Bare))]
    public void On_a_bare_bus_the_rule_is_close_where_the_ripple_is_small(
        double frequencyHz,
        double loopS,
        double duty,
        bool diode
    )
    {
        var rig = new ChopperRig(frequencyHz, loopS, duty, diode);
        var (check, circuit) = Both(rig, smoothed: false);

        Assert.InRange(circuit.RippleMeanSquareA2 / (circuit.MotorA * circuit.MotorA), 0, 0.13);
        Near("mean motor current, bare bus", rig, check.MotorCurrentA, circuit.MotorA, 0.1);
        Near("ripple, mean square, bare bus", rig, RippleA2(check), circuit.RippleMeanSquareA2, 1);
        Near("mean battery current, bare bus", rig, check.BatteryCurrentA, circuit.BatteryA, 0.1);
        Near(
            "rms battery current, bare bus",
            rig,
            check.BatteryRmsCurrentA,
            circuit.BatteryRmsA,
            0.1
        );
    }

    public static TheoryData<double, double, double, bool> Bare()
    {
        var points = new TheoryData<double, double, double, bool>();
        foreach (var duty in new[] { 0.15, 0.3, 0.6, 0.9 })
        {
            foreach (var diode in new[] { false, true })
            {
                points.Add(1000, 1500e-6, duty, diode);
                points.Add(2000, 1500e-6, duty, diode);
            }
        }
        return points;
    }

    [RefereeTheory]
    [InlineData(500e-6, 0.3)]
    [InlineData(500e-6, 0.6)]
    [InlineData(500e-6, 0.9)]
    [InlineData(300e-6, 0.3)]
    [InlineData(300e-6, 0.6)]
    [InlineData(300e-6, 0.9)]
    public void On_a_bare_bus_the_rule_takes_more_from_the_pack_where_the_ripple_is_large(
        double loopS,
        double duty
    )
    {
        var rig = new ChopperRig(1000, loopS, duty, false);
        var (check, circuit) = Both(rig, smoothed: false);

        var large = loopS < 400e-6;
        Assert.InRange(circuit.RippleMeanSquareA2 / (circuit.MotorA * circuit.MotorA), 0.1, 1.8);
        Near("mean motor current", check.MotorCurrentA, circuit.MotorA, large ? 0.9 : 0.2);
        Near("ripple, mean square", RippleA2(check), circuit.RippleMeanSquareA2, large ? 9 : 4.2);
        Near("mean battery current", check.BatteryCurrentA, circuit.BatteryA, large ? 2.3 : 0.6);
        Near(
            "rms battery current",
            check.BatteryRmsCurrentA,
            circuit.BatteryRmsA,
            large ? 8.5 : 2.8
        );
        Assert.True(check.BatteryCurrentA > circuit.BatteryA, $"{rig}: {circuit}");
        Assert.True(check.BatteryRmsCurrentA > circuit.BatteryRmsA, $"{rig}: {circuit}");

        void Near(string quantity, double ofCheck, double ofCircuit, double percent) =>
            ChopperTests.Near(
                FormattableString.Invariant($"{quantity}, bare bus, L/R {loopS * 1e3} ms"),
                rig,
                ofCheck,
                ofCircuit,
                percent
            );
    }

    [RefereeTheory]
    [InlineData(8000, 0.3, 4.6, 1.7)]
    [InlineData(8000, 0.6, 4.6, 1.7)]
    [InlineData(16000, 0.3, 1.2, 0.5)]
    [InlineData(16000, 0.6, 1.2, 0.5)]
    [InlineData(16000, 0.9, 1.2, 0.5)]
    public void Where_no_inductance_is_told_the_ripple_left_out_of_fast_switching_is_small(
        double frequencyHz,
        double duty,
        double heatPercent,
        double batteryPercent
    )
    {
        var rig = new ChopperRig(frequencyHz, 300e-6, duty, false) { InductanceTold = false };
        var (check, circuit) = Both(rig, smoothed: true);

        var left = 100 * circuit.RippleMeanSquareA2 / (circuit.MotorA * circuit.MotorA);
        var name = FormattableString.Invariant($"at {frequencyHz / 1000} kHz, L/R 0.3 ms");
        Assert.True(
            DeviationLedger.Record(
                $"ripple heat left out {name}",
                Referee,
                left,
                heatPercent,
                "%",
                $"{rig}"
            )
        );
        Assert.Equal(check.MotorCurrentA, check.MotorRmsCurrentA, 1e-9);
        Near(
            $"mean battery current {name}",
            rig,
            check.BatteryCurrentA,
            circuit.BatteryA,
            batteryPercent
        );
    }

    [RefereeTheory]
    [InlineData(1000, 300e-6, 0.6, false)]
    [InlineData(4000, 50e-6, 0.6, true)]
    public void Where_the_current_runs_dry_behind_a_diode_the_rule_does_not_hold(
        double frequencyHz,
        double loopS,
        double duty,
        bool smoothed
    )
    {
        var rig = new ChopperRig(frequencyHz, loopS, duty, true);
        var (check, circuit) = Both(rig, smoothed);

        Assert.InRange(circuit.LeastMotorA, -1e-3, 1e-3);
        Assert.True(circuit.MotorA > 1.2 * check.MotorCurrentA, $"{rig}: {circuit}");
    }

    private static (LoadCase Check, ChopperFigures Circuit) Both(ChopperRig rig, bool smoothed)
    {
        var check = rig.Climb();
        return (check, ChopperDeck.Run(rig.Circuit(check.DutyRatio, smoothed)));
    }

    private static double RippleA2(LoadCase check) =>
        check.MotorRmsCurrentA * check.MotorRmsCurrentA - check.MotorCurrentA * check.MotorCurrentA;

    private static void Near(
        string quantity,
        ChopperRig rig,
        double check,
        double circuit,
        double percent
    )
    {
        var deviation = 100 * Math.Abs(check / circuit - 1);
        Assert.True(
            DeviationLedger.Record(quantity, Referee, deviation, percent, "%", $"{rig}"),
            FormattableString.Invariant($"{quantity}, {rig}: check {check}, circuit {circuit}")
        );
    }
}
