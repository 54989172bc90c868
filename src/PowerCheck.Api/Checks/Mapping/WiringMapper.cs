using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Units;
using PowerCheck.Model.Wiring;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns the wiring of a request into the model's label.</summary>
internal static class WiringMapper
{
    public static WiringLabel Map(WiringRequest wiring) =>
        new()
        {
            BatteryLeadAwg = wiring.BatteryLeadAwg,
            BatteryLeadM = Unit.Millimetre.Of(wiring.BatteryLeadMm),
            MotorLeadAwg = wiring.MotorLeadAwg,
            MotorLeadM = Unit.Millimetre.Of(wiring.MotorLeadMm),
            InsulationC = wiring.InsulationC,
            ConnectorContinuousA = wiring.ConnectorContinuousA,
            FuseA = wiring.FuseA,
        };
}
