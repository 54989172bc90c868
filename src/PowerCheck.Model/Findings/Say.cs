using System.Globalization;
using PowerCheck.Model.Drivetrain;
using PowerCheck.Model.Units;

namespace PowerCheck.Model.Findings;

/// <summary>Figures and cases in words.</summary>
public static class Say
{
    /// <summary>A figure in its unit, three significant digits.</summary>
    /// <param name="si">The figure, SI.</param>
    /// <param name="unit">The unit.</param>
    public static string Figure(double si, Unit unit)
    {
        if (!double.IsFinite(si))
        {
            return double.IsNaN(si) ? "not known" : "rising without end";
        }

        var figure = unit.FromSi(si);
        var digits = Math.Abs(figure) switch
        {
            >= 100 => 0,
            >= 10 => 1,
            >= 1 => 2,
            _ => 3,
        };
        var text = Math.Round(figure, digits).ToString("0.###", CultureInfo.InvariantCulture);
        return unit.Symbol switch
        {
            "" => text,
            "°" => text + "°",
            "cells" when string.Equals(text, "1", StringComparison.Ordinal) => "1 cell",
            _ => $"{text} {unit.Symbol}",
        };
    }

    /// <summary>A temperature, whole degrees.</summary>
    /// <param name="celsius">Temperature [°C].</param>
    public static string Degrees(double celsius) =>
        double.IsFinite(celsius)
            ? $"{Math.Round(celsius).ToString("0", CultureInfo.InvariantCulture)} °C"
            : Figure(celsius, Unit.Celsius);

    /// <summary>A time: seconds, from two minutes on minutes.</summary>
    /// <param name="seconds">Time [s].</param>
    public static string Time(double seconds) =>
        seconds >= 120 ? Figure(seconds, Unit.Minute) : Figure(seconds, Unit.Second);

    /// <summary>How likely it is that a figure is past its limit, where that is worth a word.</summary>
    /// <param name="finding">The finding.</param>
    public static string Chance(Finding finding) =>
        finding.Chance is not { } chance || (finding.Outcome == Outcome.Holds && !finding.Caution)
            ? ""
            : $", past it with a probability of {chance.Exceedance.ToString("0.00", CultureInfo.InvariantCulture)}";

    /// <summary>A load case in a sentence.</summary>
    /// <param name="name">The case.</param>
    public static string Case(LoadCaseName name) =>
        name switch
        {
            LoadCaseName.Level => "creeping on the level",
            LoadCaseName.Climb => "creeping up the slope",
            LoadCaseName.Hold => "holding on the slope",
            LoadCaseName.Slip => "with the tires just slipping",
            LoadCaseName.Punch => "in a full-throttle punch",
            LoadCaseName.Jam => "with a wedged wheel",
            LoadCaseName.Stall => "wedged at full throttle",
            _ => "at full throttle on the level",
        };

    /// <summary>The word for a load case, as callers write it.</summary>
    /// <param name="name">The case.</param>
    public static string Word(LoadCaseName name) => Assumptions.Words.Of(name);
}
