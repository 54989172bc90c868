using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a pack together.</summary>
internal static class BatteryRules
{
    public static void Apply(BatteryRequest? battery, Place place)
    {
        if (battery is not null)
        {
            BurstRule.Apply(
                place,
                ("continuousC", battery.ContinuousC),
                ("burstC", battery.BurstC),
                battery.BurstSeconds
            );
        }
    }
}
