using PowerCheck.Api.Checks.Requests;
using PowerCheck.Model.Accessories;

namespace PowerCheck.Api.Checks.Mapping;

/// <summary>Turns an accessory of a request into the model's label.</summary>
internal static class AccessoryMapper
{
    public static AccessoryLabel Map(AccessoryRequest accessory) =>
        new()
        {
            Kind = Word<AccessoryKind>.Of(accessory.Kind),
            Supply = Word<AccessorySupply>.Of(accessory.Supply),
            IdleCurrentA = accessory.IdleCurrentA,
            WorkingCurrentA = accessory.WorkingCurrentA,
            JammedCurrentA = accessory.JammedCurrentA,
        };
}
