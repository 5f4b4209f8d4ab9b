"""Writes parallel-filters.json: two filters side by side, the drop found with scipy's brentq.

Run it in this folder with scipy: python3 make-parallel.py
"""

import json
import random

import scipy
from scipy.optimize import brentq

random.seed(3968)


def flow(a, b, drop):
    """Root of a*q + b*q**2 = drop, by brentq too, so that no formula is shared with the code under test."""
    high = 1.0
    while a * high + b * high**2 < drop:
        high *= 2
    return brentq(lambda q: a * q + b * q * q - drop, 0, high, xtol=1e-18, rtol=1e-14)


cases = []
while len(cases) < 1000:
    viscosity = 10 ** random.uniform(-3.3, -1)
    density = random.uniform(750, 950)
    total = 10 ** random.uniform(-5, -2)
    first, second = ([10 ** random.uniform(8, 12), 10 ** random.uniform(8, 12)] for _ in range(2))
    linear = [first[0] * viscosity, second[0] * viscosity]
    square = [first[1] * density, second[1] * density]
    most = max(a * total + b * total**2 for a, b in zip(linear, square))
    drop = brentq(
        lambda p: sum(flow(a, b, p) for a, b in zip(linear, square)) - total, 0, most, xtol=1e-12, rtol=1e-13
    )
    cases.append([first, second, total, viscosity, density, drop])

with open("parallel-filters.json", "w") as file:
    json.dump(
        {
            "source": "scipy",
            "version": scipy.__version__,
            "madeBy": "make-parallel.py",
            "columns": [
                "first: element 1/m3, housing 1/m4",
                "second: element 1/m3, housing 1/m4",
                "flow m3/s",
                "viscosity Pa.s",
                "density kg/m3",
                "drop Pa",
            ],
            "cases": cases,
        },
        file,
    )
    file.write("\n")
