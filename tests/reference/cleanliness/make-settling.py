"""Writes settling.json: settling velocities in creeping flow as the library fluids finds them.

Run it in this folder with python3-fluids 1.0.22: python3 make-settling.py
"""

import json
import random

import fluids

random.seed(1851)
cases = []
while len(cases) < 1000:
    diameter = 10 ** random.uniform(-6.5, -3)
    density = random.uniform(950, 3000)
    liquid = random.uniform(700, 940)
    viscosity = 10 ** random.uniform(-3.3, 0)
    velocity = fluids.v_terminal(diameter, density, liquid, viscosity, Method="Stokes")
    if velocity * diameter * liquid / viscosity > 0.1:
        continue
    cases.append([diameter, density, liquid, viscosity, velocity])

with open("settling.json", "w") as file:
    json.dump(
        {
            "source": "fluids-library",
            "version": fluids.__version__,
            "madeBy": "make-settling.py",
            "columns": ["diameter m", "density kg/m3", "liquid kg/m3", "viscosity Pa.s", "velocity m/s"],
            "cases": cases,
        },
        file,
    )
    file.write("\n")
