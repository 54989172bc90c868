using PowerCheck.Model.Accessories;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Controllers;
using PowerCheck.Model.Motors;

namespace PowerCheck.Model.Tests.Rigs;

/// <summary>Single parts with round figures, where a test is about one part.</summary>
internal static class Parts
{
    public static readonly AuxiliaryLoad Nothing = new(0, 0);

    public static Motor Motor(
        double kt = 0.005,
        double resistanceOhm = 0.05,
        double standstillA = 1,
        double slope = 0,
        double brushV = 0,
        MotorHeat? heat = null,
        bool magnetAtCase = true
    ) =>
        new()
        {
            Kind = brushV > 0 ? MotorKind.Brushed : MotorKind.Brushless,
            KindKnown = true,
            Sensored = true,
            MagnetAtCase = magnetAtCase,
            Magnet = MagnetMaterial.Ndfeb,
            TorqueConstantNmPerA = kt,
            ResistanceOhm = resistanceOhm,
            BrushDropV = brushV,
            NoLoad = new(standstillA, slope),
            InductanceH = double.NaN,
            PolePairs = 1,
            Turns = double.NaN,
            CanDiameterM = 0.036,
            Ratings = new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN),
            Heat = heat ?? Heat(),
        };

    public static MotorHeat Heat(
        double windingJPerK = 20,
        double caseJPerK = 60,
        double windingToCase = 1,
        double caseToAmbient = 5,
        bool spinInWinding = false,
        double limitC = 120,
        double copperJPerK = 20,
        double locked = 1.5,
        double magnetLimitC = 120,
        double beta = 0
    ) =>
        new(
            windingJPerK,
            caseJPerK,
            copperJPerK,
            windingToCase,
            caseToAmbient,
            spinInWinding,
            locked,
            limitC,
            magnetLimitC,
            beta
        );

    public static Battery Battery(BatteryLabel label, double ambientC = 25) =>
        BatteryDefaults.Complete(label, ambientC, new Ledger());

    public static Controller Controller(ControllerLabel label, bool brushless = true) =>
        ControllerDefaults.Complete(label, brushless, Chemistry.Lipo, new Ledger());
}
