"""Writes gnu-units.json: every unit of the handbook as GNU units converts it.

Run it in this folder on a machine with GNU units: python3 make-gnu-units.py
"""

import json
import re
import subprocess

# Unit of the handbook, its name in GNU units, the SI unit it is brought to.
FACTORS = [
    ("%", "percent", "1"),
    ("m", "meter", "m"), ("cm", "centimeter", "m"), ("mm", "millimeter", "m"), ("um", "micrometer", "m"),
    ("km", "kilometer", "m"), ("mi", "mile", "m"),
    ("in", "inch", "m"), ("ft", "foot", "m"),
    ("m2", "meter^2", "m^2"), ("cm2", "centimeter^2", "m^2"), ("mm2", "millimeter^2", "m^2"), ("in2", "inch^2", "m^2"), ("ft2", "foot^2", "m^2"),
    ("m3", "meter^3", "m^3"), ("L", "liter", "m^3"), ("mL", "milliliter", "m^3"), ("gal", "usgallon", "m^3"),
    ("mm3", "millimeter^3", "m^3"),
    ("impgal", "brgallon", "m^3"), ("bbl", "bbl", "m^3"),
    ("kg", "kilogram", "kg"), ("g", "gram", "kg"), ("t", "tonne", "kg"), ("lb", "pound", "kg"),
    ("s", "second", "s"), ("min", "minute", "s"), ("h", "hour", "s"), ("d", "day", "s"),
    ("Pa", "pascal", "Pa"), ("kPa", "kilopascal", "Pa"), ("MPa", "megapascal", "Pa"), ("bar", "bar", "Pa"),
    ("mbar", "millibar", "Pa"), ("psi", "psi", "Pa"), ("inHg", "inHg", "Pa"), ("mmHg", "mmHg", "Pa"),
    ("inH2O", "inch water", "Pa"), ("ftH2O", "foot water", "Pa"), ("kgf/cm2", "kilogram force/centimeter^2", "Pa"),
    ("barg", "bar", "Pa"), ("psig", "psi", "Pa"), ("kPag", "kilopascal", "Pa"),
    ("bara", "bar", "Pa"), ("psia", "psi", "Pa"), ("kPaa", "kilopascal", "Pa"),
    ("kg/m3", "kilogram/meter^3", "kg/m^3"), ("g/mL", "gram/milliliter", "kg/m^3"),
    ("kg/L", "kilogram/liter", "kg/m^3"), ("lb/ft3", "pound/foot^3", "kg/m^3"),
    ("m2/s", "meter^2/second", "m^2/s"), ("mm2/s", "millimeter^2/second", "m^2/s"), ("cSt", "centistokes", "m^2/s"),
    ("St", "stokes", "m^2/s"),
    ("Pa.s", "pascal second", "Pa s"), ("mPa.s", "millipascal second", "Pa s"), ("cP", "centipoise", "Pa s"),
    ("m3/s", "meter^3/second", "m^3/s"), ("m3/h", "meter^3/hour", "m^3/s"), ("L/s", "liter/second", "m^3/s"),
    ("L/min", "liter/minute", "m^3/s"), ("L/h", "liter/hour", "m^3/s"), ("gal/min", "usgallon/minute", "m^3/s"),
    ("gal/h", "usgallon/hour", "m^3/s"), ("impgal/min", "brgallon/minute", "m^3/s"),
    ("impgal/h", "brgallon/hour", "m^3/s"),
    ("kg/s", "kilogram/second", "kg/s"), ("kg/h", "kilogram/hour", "kg/s"), ("lb/h", "pound/hour", "kg/s"),
    ("W", "watt", "W"), ("kW", "kilowatt", "W"), ("hp", "horsepower", "W"),
    ("kg/J", "kilogram/joule", "kg/J"), ("g/(kW.h)", "gram/(kilowatt hour)", "kg/J"),
    ("lb/(hp.h)", "pound/(horsepower hour)", "kg/J"),
    ("rad/s", "radian/second", "radian/s"), ("rpm", "rpm", "radian/s"),
    ("N.m", "newton meter", "N m"), ("lbf.ft", "lbf foot", "N m"),
    ("1/K", "1/kelvin", "1/K"), ("1/degF", "1/degF", "1/K"),
    ("N", "newton", "N"), ("kN", "kilonewton", "N"), ("lbf", "lbf", "N"),
    ("N/m", "newton/meter", "N/m"), ("N/mm", "newton/millimeter", "N/m"), ("lbf/in", "lbf/inch", "N/m"),
    ("J/(kg.K)", "joule/(kilogram kelvin)", "J/(kg K)"), ("kJ/(kg.K)", "kilojoule/(kilogram kelvin)", "J/(kg K)"),
    ("Btu/(lb.degF)", "btu/(pound degF)", "J/(kg K)"),
    ("W/(m2.K)", "watt/(meter^2 kelvin)", "W/(m^2 K)"),
    ("Btu/(h.ft2.degF)", "btu/(hour foot^2 degF)", "W/(m^2 K)"),
    ("W/K", "watt/kelvin", "W/K"), ("kW/K", "kilowatt/kelvin", "W/K"), ("Btu/(h.degF)", "btu/(hour degF)", "W/K"),
    ("g/h", "gram/hour", "kg/s"),
    ("m/s", "meter/second", "m/s"), ("mm/s", "millimeter/second", "m/s"), ("km/h", "kilometer/hour", "m/s"),
    ("ft/s", "foot/second", "m/s"), ("mph", "mile/hour", "m/s"),
    ("mg/kg", "milligram/kilogram", "1"), ("mg/L", "milligram/liter", "kg/m^3"),
    ("1/mL", "1/milliliter", "1/m^3"), ("1/m3", "1/meter^3", "1/m^3"),
    ("J/kg", "joule/kilogram", "J/kg"), ("kJ/kg", "kilojoule/kilogram", "J/kg"), ("MJ/kg", "megajoule/kilogram", "J/kg"),
    ("kWh/kg", "kilowatt hour/kilogram", "J/kg"), ("Btu/lb", "btu/pound", "J/kg"),
    ("J/m3", "joule/meter^3", "J/m^3"), ("GJ/m3", "gigajoule/meter^3", "J/m^3"), ("MJ/L", "megajoule/liter", "J/m^3"),
    ("kWh/L", "kilowatt hour/liter", "J/m^3"), ("Btu/gal", "btu/usgallon", "J/m^3"),
    ("g/(hp.h)", "gram/(horsepower hour)", "kg/J"),
]
TEMPERATURES = [("degC", "tempC", t) for t in (-40, 0, 15, 100, 365.5)] + [
    ("degF", "tempF", t) for t in (-459.67, -40, 0, 32, 60, 212, 1000)
]
DIFFERENCES = [("K", "kelvin"), ("degC", "degC"), ("degF", "degF")]


def gnu(have: str, want: str) -> float:
    out = subprocess.run(
        ["units", "--terse", "--digits", "17", have, want], capture_output=True, text=True, check=True
    )
    return float(out.stdout.strip().splitlines()[0])


version = subprocess.run(["units", "--version"], capture_output=True, text=True, check=True).stdout
data = {
    "source": "gnu-units",
    "madeBy": "make-gnu-units.py",
    "version": re.search(r"GNU Units version [\d.]+", version)[0],
    "factors": [{"unit": unit, "gnu": name, "si": gnu(name, si)} for unit, name, si in FACTORS],
    "temperatures": [
        {"unit": unit, "value": value, "kelvin": gnu(f"{function}({value})", "K")}
        for unit, function, value in TEMPERATURES
    ],
    "differences": [{"unit": unit, "gnu": name, "kelvin": gnu(name, "kelvin")} for unit, name in DIFFERENCES],
}
with open("gnu-units.json", "w", encoding="utf-8") as file:
    json.dump(data, file, indent=2)
    file.write("\n")
