namespace PowerCheck.Model.Sources;

/// <summary>Everything that the model rests on, by key.</summary>
public static class SourceList
{
    /// <summary>All sources.</summary>
    public static IReadOnlyList<Source> All { get; } =
    [
        new(
            "assumed",
            "Default of this project",
            "none",
            "Typical figures where the caller gives none; each is listed with its spread in the answer.",
            "own"
        ),
        new(
            "definition",
            "Definitions of mechanics and electricity in SI units",
            "BIPM, The International System of Units, 9th edition, 2019",
            "Torque constant from KV, center distance, grade force, power and heat balances.",
            "document"
        ),
        new(
            "mjc",
            "Direct-current motor model of a physics simulator (mathematical note)",
            "2026, after Hughes and Drury, Electric Motors and Drives, 5th edition, 2019",
            "Voltage, torque and friction equations; feedback of temperature on resistance.",
            "document"
        ),
        new(
            "msl",
            "Modelica Standard Library",
            "Modelica Association, commit b756f9d, 2026",
            "Worked machine, thermal and battery examples; magnet coefficients; heat capacities; convection.",
            "document"
        ),
        new(
            "pybamm",
            "PyBaMM parameter sets Marquis2019 and Prada2013",
            "PyBaMM team, commits 49b4f68 and 1b01e77",
            "Open-circuit voltage of lithium-cobalt and iron-phosphate cells.",
            "document"
        ),
        new(
            "iec60028",
            "IEC 60028, International standard of resistance for copper",
            "International Electrotechnical Commission, 1925",
            "Temperature coefficient of copper, 0.00393 per kelvin at 20 °C.",
            "memory"
        ),
        new(
            "iec60034-1",
            "IEC 60034-1, Rotating electrical machines: rating and performance",
            "International Electrotechnical Commission",
            "Intermittent duty and the root mean square current of a cycle.",
            "secondary"
        ),
        new(
            "iec60085",
            "IEC 60085, Electrical insulation: thermal evaluation and designation",
            "International Electrotechnical Commission, 2007",
            "Temperatures of the insulation classes; 10 K for the hot spot as in NEMA practice.",
            "secondary"
        ),
        new(
            "iec60149",
            "IEC 60255-149, Functional requirements for thermal electrical relays",
            "International Electrotechnical Commission, 2013",
            "Thermal memory: first order, driven by loss; time to the limit.",
            "memory"
        ),
        new(
            "slva",
            "Conduction, freewheel and gate losses of a switching stage, application report SLVAED3A",
            "A semiconductor maker, 2019 to 2024",
            "Conduction and freewheel losses; switches 1.3 times as resistive when hot.",
            "document"
        ),
        new(
            "rashid",
            "M. H. Rashid, Power Electronics: Devices, Circuits, and Applications, 4th edition",
            "Pearson",
            "Averaged chopper: motor voltage, battery current, input power.",
            "secondary"
        ),
        new(
            "hph",
            "American wire gauge table",
            "HyperPhysics, Georgia State University, after Floyd, Electric Circuits Fundamentals, 2nd edition",
            "Resistance by gauge and currents of a wire in free air.",
            "document"
        ),
        new(
            "ac43",
            "Advisory Circular 43.13-1B, chapter 11",
            "Federal Aviation Administration, 2001",
            "Current of a single wire in free air against its temperature rise.",
            "document"
        ),
        new(
            "onderdonk",
            "Onderdonk's equation for the heating of a wire by a short current",
            "after E. R. Stauffacher, General Electric Review, 1928",
            "Current that damages a lead within seconds.",
            "secondary"
        ),
        new(
            "iso8820",
            "ISO 8820, Road vehicles: fuse-links",
            "International Organization for Standardization",
            "A blade fuse carries 1.1 times its rating for ever, may open within a second at 1.35 times, and opens within 5 s at twice.",
            "memory"
        ),
        new(
            "iso13732",
            "ISO 13732-1, Ergonomics of the thermal environment: contact with hot surfaces; ASTM C1055",
            "International Organization for Standardization, 2006; ASTM International",
            "60 °C as the touch warning for bare metal.",
            "secondary"
        ),
        new(
            "gears",
            "Gear module and diametral pitch",
            "A gear maker's table; Machinery's Handbook, 31st edition, page 2299",
            "Module, pitch diameter, center distance; efficiencies of gear stages.",
            "secondary"
        ),
        new(
            "magnets",
            "Grade tables of magnet makers",
            "several makers",
            "Temperature coefficient of neodymium-iron-boron, −0.11 % per kelvin; highest working temperatures.",
            "document"
        ),
        new(
            "cells",
            "Cell makers' data and common chargers' settings",
            "several makers",
            "Voltages per cell full, nominal and at the end of discharge; 60 °C as the highest cell temperature.",
            "secondary"
        ),
        new(
            "jcgm100",
            "Guide to the expression of uncertainty in measurement",
            "JCGM 100:2008",
            "Propagation of uncertainty by first order.",
            "document"
        ),
        new(
            "jcgm101",
            "Propagation of distributions using a Monte Carlo method",
            "JCGM 101:2008",
            "Drawing, intervals from draws, and when first order may be trusted.",
            "document"
        ),
        new(
            "jcgm106",
            "The role of measurement uncertainty in conformity assessment",
            "JCGM 106:2012",
            "Probability of being past a limit.",
            "document"
        ),
        new(
            "davies",
            "The distribution of a linear combination of chi-squared random variables",
            "R. Davies, Applied Statistics 29, 1980 (from memory)",
            "Tail of a sum of normal deviates and their squares.",
            "secondary"
        ),
        new(
            "latinsquare",
            "Latin hypercube sampling",
            "M. McKay, R. Beckman and W. Conover, Technometrics 21, 1979 (from memory)",
            "Draws that take one value from each equally likely slice.",
            "secondary"
        ),
        new(
            "usfa",
            "Lithium-ion battery safety",
            "United States Fire Administration and National Fire Protection Association",
            "Cautions on charging, damage, heat and disposal.",
            "document"
        ),
        new(
            "tsa",
            "Travelling with lithium batteries",
            "Transportation Security Administration",
            "100 Wh limit and carry-on rule for air travel.",
            "document"
        ),
        new(
            "practice",
            "Common practice of the trade",
            "no source",
            "What builders take for granted; marked where it is used.",
            "own"
        ),
    ];
}
