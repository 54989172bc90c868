using PowerCheck.Api.Checks.Requests;

namespace PowerCheck.Api.Checks.Rules;

/// <summary>What ties the members of a speed controller together.</summary>
internal static class ControllerRules
{
    public static void Apply(ControllerRequest? controller, Place place)
    {
        if (controller is null)
        {
            return;
        }

        BurstRule.Apply(
            place,
            ("continuousCurrentA", controller.ContinuousCurrentA),
            ("burstCurrentA", controller.BurstCurrentA),
            controller.BurstSeconds
        );
        place.Ordered("minVoltageV", controller.MinVoltageV, "maxVoltageV", controller.MaxVoltageV);
        Cells(controller, place);
        MotorKinds(controller.MotorKinds ?? [], place);
        Turns(controller.MinTurns ?? [], place);
        ReceiverSupply(controller.ReceiverSupply, place.In("receiverSupply"));
    }

    private static void Cells(ControllerRequest controller, Place place)
    {
        place.Ordered("minCells", controller.MinCells, "maxCells", controller.MaxCells);
        var limits = controller.CellLimits ?? [];
        if (limits.Count > 0 && (controller.MinCells ?? controller.MaxCells) is not null)
        {
            place.Conflict(
                "cellLimits",
                "Cell counts are given twice. Give either cellLimits, or minCells and maxCells.",
                controller.MinCells is null ? ["maxCells"]
                    : controller.MaxCells is null ? ["minCells"]
                    : ["minCells", "maxCells"]
            );
        }

        for (var at = 0; at < limits.Count; at++)
        {
            place
                .In("cellLimits", at)
                .Ordered("minCells", limits[at].MinCells, "maxCells", limits[at].MaxCells);
        }

        Twice(place, "cellLimits", "chemistry", [.. limits.Select(limit => limit.Chemistry)]);
    }

    private static void MotorKinds(IReadOnlyList<string> kinds, Place place)
    {
        if (kinds.Distinct(StringComparer.Ordinal).Count() < kinds.Count)
        {
            place.Conflict(
                "motorKinds.1",
                "A kind of motor is named twice. Name each once.",
                "motorKinds.0"
            );
        }
    }

    private static void Turns(IReadOnlyList<TurnLimitRequest> limits, Place place) =>
        Twice(place, "minTurns", "cells", [.. limits.Select(limit => limit.Cells?.ToString())]);

    private static void Twice(Place place, string list, string member, string?[] values)
    {
        for (var at = 1; at < values.Length; at++)
        {
            var earlier = values[at] is { } value ? Array.IndexOf(values, value, 0, at) : -1;
            if (earlier >= 0)
            {
                place.Conflict(
                    $"{list}.{at}.{member}",
                    $"{place.Path(list)} says something of {values[at]} twice. Say it once.",
                    $"{list}.{earlier}.{member}"
                );
            }
        }
    }

    private static void ReceiverSupply(ReceiverSupplyRequest? supply, Place place)
    {
        if (supply is null)
        {
            return;
        }

        place.Ordered(
            "continuousCurrentA",
            supply.ContinuousCurrentA,
            "peakCurrentA",
            supply.PeakCurrentA
        );
        if (supply is { Regulator: "linear", Efficiency: not null })
        {
            place.Conflict(
                "efficiency",
                "The efficiency of a linear supply follows from its voltages. Leave efficiency out.",
                "regulator"
            );
        }

        if (supply is { Regulator: "switching", MaxHeatW: not null })
        {
            place.Conflict(
                "maxHeatW",
                "A switching supply is judged by its currents. Leave maxHeatW out.",
                "regulator"
            );
        }

        if (supply.ReceiverResetV >= supply.VoltageV)
        {
            place.Conflict(
                "receiverResetV",
                $"The receiver would reset at {supply.ReceiverResetV} V, which its supply of {supply.VoltageV} V never exceeds.",
                "voltageV"
            );
        }
    }
}
