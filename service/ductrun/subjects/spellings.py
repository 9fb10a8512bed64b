"""How the trade also writes the values of requests: what is never taken, but tells which value was probably meant.

A row is a regular expression that values match, and other ways to write such a value (a group of the match by its
number). Names of members are values too, where one is given that there is not. Capitals, blanks, hyphens, dots and
underscores need no row: they are passed over when spellings are compared. All of it is common practice, no source.
"""

from __future__ import annotations

from typing import Final

DESIGNATORS: Final = (  # metric designators of trade sizes, NFPA 70
    *(("3/8", "12"), ("1/2", "16"), ("3/4", "21"), ("1", "27"), ("1-1/4", "35"), ("1-1/2", "41"), ("2", "53")),
    *(("2-1/2", "63"), ("3", "78"), ("3-1/2", "91"), ("4", "103"), ("5", "129"), ("6", "155")),
)
SPELLINGS: Final[tuple[tuple[str, tuple[str, ...]], ...]] = (
    # trade sizes, and numbers of bars
    (r"(\d+|\d+/\d+|\d+-\d+/\d+)", (r'\1"', r"\1 in", r"\1 inch", r"\1 inches")),
    (r"no_(\d)", (r"\1", r"#\1", r"number \1")),
    *(
        (size, (designator, rf"{designator} mm", rf"metric designator {designator}"))
        for size, designator in DESIGNATORS
    ),
    # sizes of conductors
    (r"([1-4])/0 AWG", (r"\1/0 ga", r"\1 aught", r"\1 ought")),
    (r"1/0 AWG", ("0", "0 awg", "#0")),
    (r"2/0 AWG", ("00", "00 awg", "#00")),
    (r"3/0 AWG", ("000", "000 awg", "#000")),
    (r"4/0 AWG", ("0000", "0000 awg", "#0000")),
    (r"(\S+) AWG", (r"\1", r"#\1", r"no \1", r"awg \1", r"#\1 awg", r"\1 ga", r"\1 gauge", r"size \1")),
    (r"(\d+) kcmil", (r"\1", r"\1 mcm", r"\1 kcm", r"\1 mcm cable", r"\1 thousand circular mils")),
    (r"1000 kcmil", ("1 million circular mils",)),
    # markings of conductors
    (r"([A-Z]{2,4}(?:-2)?\*?)", (r"type \1", r"\1 wire", r"\1 insulation", r"\1 conductor")),
    # editions of the code
    (r"(20\d\d)", (r"nfpa 70 \1", r"nec \1", r"\1 nec", r"\1 edition")),
    # conduits; a schedule without a material is one of PVC, and PVC without a schedule is schedule 40
    (
        r"pvc_schedule_(\d+)",
        (r"schedule \1", r"sch \1", r"sched \1", r"s\1", r"pvc \1", r"pvc sch \1", r"schedule \1 pvc", r"sch \1 pvc"),
    ),
    (r"pvc_schedule_40", ("pvc", "rigid pvc", "rnc")),
    (r"pvc_(db|eb)_(\d+)", (r"\1 \2", r"type \1 \2", r"\1 \2 duct", r"pvc duct \1 \2")),
    (r"pvc_type_(a|eb)", (r"type \1",)),
    (r"hdpe_schedule_40", ("hdpe", "hdpe sch 40", "hdpe 40", "sch 40 hdpe", "schedule 40 hdpe")),
    (r"hdpe", ("polyethylene", "pe", "poly", "high density polyethylene")),
    (r"rtrc", ("fiberglass", "fre", "reinforced thermosetting resin conduit")),
    (
        r"rmc",
        (
            "rigid",
            "grc",
            "rgs",
            "galvanized rigid",
            "rigid metal conduit",
            "rigid steel",
            "rigid conduit",
            "galvanized rigid steel",
        ),
    ),
    (r"(emt|ent|fmc|imc|rmc|rtrc)", (r"\1 conduit", r"\1 pipe")),
    (r"emt", ("thinwall", "thin wall", "electrical metallic tubing")),
    (r"ent", ("electrical nonmetallic tubing",)),
    (r"lfmc", ("liquid tight flexible metal conduit",)),
    (r"fmc", ("flex", "flexible metal conduit")),
    (r"imc", ("intermediate metal conduit",)),
    # what cables are and how they lie
    (r"copper", ("cu",)),
    (r"aluminum", ("al", "aluminium")),
    (r"nonshielded", ("unshielded",)),
    (r"triplexed", ("triplex",)),
    (r"triangular", ("triangle", "trefoil")),
    # circuits and how they are rated
    (r"three_phase", ("3 phase", "3 ph", "three phases")),
    (r"single_phase", ("1 phase", "1 ph", "one phase")),
    (r"direct_current", ("dc",)),
    (r"neher_mcgrath", ("nm", "neher mc grath", "neher")),
    (r"iec_60287", ("iec", "iec 287")),
    (r"(both_ends|single_point)", (r"bonded \1", r"grounded \1")),
    (r"both_ends", ("solidly bonded", "multi point")),
    (r"single_point", ("one end", "one point")),
    (r"(60|75|90)_degc", (r"\1", r"\1 c")),
    # boxes, and what passes over ducts
    (r"manhole", ("mh", "vault")),
    (r"handhole", ("hh", "hand hole")),
    (r"h_20", ("hs 20", "h 20", "hl 93")),
    # names of members
    (r"type", ("conduit type",)),
    (r"conduit_type", ("type", "conduit kind")),
    (r"duct_material", ("material",)),
    (r"cement_per_joint", ("joints per quart", "joints per pint")),
    (r"duration_per_year", ("hours per year", "operating hours")),
    (r"ordering", ("cable order",)),
    (r"(flotation_)?safety_factor", ("factor", "flotation factor", "factor of safety", "safety ratio")),
    (r"(saturated_)?soil_density", ("earth density", "density of soil")),
    (r"side_slope_ratio", ("slope", "side slope")),
    (r"station", ("position", "distance")),
    (r"temperature_limit", ("conductor temperature", "temperature rating")),
    (r"on_spacers", ("spacers", "spaced")),
    (r"voltage_class", ("voltage", "system voltage")),
    # units: lengths, areas, volumes
    (r"ft", ("foot", "feet", "'", "lf", "linear feet")),
    (r"in", ("inch", "inches", '"')),
    (r"yd", ("yds", "yard", "yards")),
    (r"m", ("meter", "meters", "metre", "metres")),
    (r"cm", ("centimeter", "centimeters", "centimetre", "centimetres")),
    (r"mm", ("millimeter", "millimeters", "millimetre", "millimetres")),
    (r"(in|ft|m|cm|mm)2", (r"sq \1", r"\1^2", r"square \1")),
    (r"(in|ft|yd|m)3", (r"cu \1", r"\1^3", r"cubic \1")),
    (r"in2", ("sq inch", "square inches")),
    (r"ft2", ("sf", "square feet", "square foot")),
    (r"ft3", ("cf", "cubic feet", "cubic foot")),
    (r"yd3", ("cy", "cubic yard", "cubic yards", "yards")),
    (r"kcmil", ("mcm",)),
    (r"L", ("liter", "liters", "litre", "litres")),
    (r"gal_us", ("gal", "gallon", "gallons", "us gal")),
    (r"qt_us", ("qt", "quart", "quarts")),
    # units: masses, forces, pressures, densities
    (r"(lb|lbf)", ("lbs", "#", "lb", "pound", "pounds")),
    (r"(lb|lbf)/ft", ("lb/ft", "lbs/ft", "plf", "pounds/foot", "pounds per foot")),
    (r"lb/1000ft", ("lbs/1000ft", "lb/mft", "lbs/mft", "lb/kft", "lbs/kft", "pounds per 1000 feet")),
    (r"kg", ("kgs", "kilogram", "kilograms")),
    (r"kg/m", ("kg per m",)),
    (r"t", ("tonne", "tonnes", "metric ton")),
    (r"short_ton", ("us ton",)),
    (r"(t|short_ton)", ("ton", "tons")),
    (r"N", ("newton", "newtons")),
    (r"psi", ("lb/in2", "lbf/in2", "lbs/sq in", "pounds per square inch")),
    (r"psf", ("lb/ft2", "lbf/ft2", "lbs/sq ft", "pounds per square foot")),
    (r"lb/ft3", ("pcf", "lbs/ft3", "lb/cf", "pounds per cubic foot")),
    (r"lb/yd3", ("lbs/yd3", "lb/cy", "pounds per cubic yard")),
    # units: circuits and heat
    (r"A", ("amp", "amps", "ampere", "amperes")),
    (r"V", ("volt", "volts")),
    (r"(k?)W", (r"\1 watt", r"\1 watts")),
    (r"Hz", ("hertz", "cycles")),
    (r"ohm/1000ft", ("ohm/kft", "ohms/kft", "ohms/1000ft", "ohm/mft")),
    (r"ohm/km", ("ohms/km",)),
    (r"degC.cm/W", ("C cm/W", "thermal ohm cm", "rho")),
    (r"K.m/W", ("K m/W", "mK/W", "C m/W")),
    # units: temperatures, angles, durations, shares
    (r"(?:delta_)?deg(F|C)", (r"\1", r"deg \1", r"degrees \1")),
    (r"(?:delta_)?degF", ("fahrenheit",)),
    (r"(?:delta_)?degC", ("celsius", "centigrade")),
    (r"K", ("kelvin",)),
    (r"1/deg(F|C)", (r"1/\1", r"/\1", r"/deg \1", r"per \1", r"per deg \1")),
    (r"deg", ("degree", "degrees")),
    (r"rad", ("radian", "radians")),
    (r"percent", ("%", "pct")),
    (r"min", ("mins", "minute", "minutes")),
    (r"h", ("hr", "hrs", "hour", "hours")),
    (r"s", ("sec", "secs", "second", "seconds")),
)
