using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the currents of an accessory together: idle, working and jammed do not fall.</summary>
internal static class AccessoryRules
{
    public static void Apply(IReadOnlyList<AccessoryRequest> accessories, Place root)
    {
        for (var at = 0; at < accessories.Count; at++)
        {
            var (idle, working, jammed) = (
                accessories[at].IdleCurrentA,
                accessories[at].WorkingCurrentA,
                accessories[at].JammedCurrentA
            );
            var place = root.In("accessories", at);
            place.Ordered("idleCurrentA", idle, "workingCurrentA", working);
            place.Ordered("workingCurrentA", working, "jammedCurrentA", jammed);
            if (working is null)
            {
                place.Ordered("idleCurrentA", idle, "jammedCurrentA", jammed);
            }
        }
    }
}
