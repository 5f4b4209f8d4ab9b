#!/usr/bin/python3
"""Makes fittings.json: loss coefficients and whole lines by the Python library fluids (1.0.22), for calculators/hydraulics.

Run: python3 make-fittings.py > fittings.json
Random cases are drawn with a fixed seed. `twoK` holds one fitting each, its constants from the library's own table, over
laminar and turbulent flow. `lines` holds a pipe with a bill of fittings: friction by 64/Re or exact Colebrook, fittings by
Hooper2K, pressure drop by dP_from_K. The transition, in which no factor is agreed, is left out of the lines.
"""

import json
import math
import random

import fluids
from fluids.fittings import Hooper, Hooper2K

random.seed(1981)

NAMES = {
    'elbows90': 'Elbow, 90°, Standard (R/D = 1), Screwed',
    'bends90': 'Elbow, 90°, Long-radius (R/D = 1.5), All types',
    'elbows45': 'Elbow, 45°, Standard (R/D = 1), All types',
    'teesThrough': 'Tee, Run, Screwed',
    'teesBranch': 'Elbow, Used as, Standard, Screwed',
    'gateValves': 'Valve, Gate, Full line size, Beta = 1',
    'ballValves': 'Valve, Gate, Full line size, Beta = 1',
    'globeValves': 'Valve, Globe, Standard',
    'angleValves': 'Valve, Globe, Angle or Y-type',
    'swingChecks': 'Valve, Check, Swing',
    'liftChecks': 'Valve, Check, Lift',
}
INCH = 0.0254
assert all(name in Hooper for name in NAMES.values())


def log_uniform(low, high):
    # Nine digits, so that the file holds the very numbers that were used.
    return float('%.9g' % 10 ** random.uniform(math.log10(low), math.log10(high)))


two_k = []
for _ in range(1100):
    fitting = random.choice(list(NAMES))
    bore = log_uniform(0.004, 0.5)
    reynolds = log_uniform(0.1, 1e7)
    loss = Hooper2K(Di=bore / INCH, Re=reynolds, name=NAMES[fitting])
    two_k.append([fitting, bore, reynolds, float('%.12g' % loss)])

lines = []
while len(lines) < 1100:
    bore = log_uniform(0.006, 0.15)
    length = log_uniform(0.1, 200)
    roughness = random.choice([1.5e-6, 4.6e-5, 1.5e-4])
    # Half of them slow and thick, half fast and thin, so that both regimes are there in numbers.
    slow = len(lines) % 2 == 0
    viscosity = log_uniform(3e-6, 1e-3) if slow else log_uniform(4e-7, 2e-5)
    velocity = log_uniform(0.01, 2) if slow else log_uniform(0.3, 6)
    density = float('%.9g' % random.uniform(780, 990))
    reynolds = velocity * bore / viscosity
    if 1999 < reynolds < 4001 or reynolds < 0.1:
        continue
    bill = {name: random.randint(0, 5) for name in random.sample(list(NAMES), 3)}
    if reynolds < 2000:
        factor = fluids.friction.friction_laminar(reynolds)
    else:
        factor = fluids.friction_factor(Re=reynolds, eD=roughness / bore, Method='Colebrook')
    loss = fluids.K_from_f(fd=factor, L=length, D=bore)
    loss += sum(n * Hooper2K(Di=bore / INCH, Re=reynolds, name=NAMES[name]) for name, n in bill.items())
    drop = fluids.dP_from_K(K=loss, rho=density, V=velocity)
    flow = float('%.12g' % (velocity * math.pi / 4 * bore**2))
    lines.append([flow, viscosity, density, length, bore, roughness, bill, float('%.12g' % drop)])

print(json.dumps({
    'madeBy': 'make-fittings.py',
    'library': 'fluids ' + fluids.__version__,
    'twoKColumns': ['fitting', 'bore m', 'reynolds', 'loss coefficient'],
    'twoK': two_k,
    'linesColumns': ['flow m3/s', 'viscosity m2/s', 'density kg/m3', 'length m', 'bore m', 'roughness m', 'bill', 'drop Pa'],
    'lines': lines,
}, separators=(',', ':')).replace('],[', '],\n['))
