#!/usr/bin/python3
"""Makes valves.json: valve coefficients by the Python library fluids (1.0.22), for checking calculators/hydraulics.

Run: python3 make-valves.py > valves.json
Turbulent cases, choked or not, come from size_control_valve_l. Its stepped laminar search is not used, because it
takes the formulas of full-size and reduced trim the wrong way round; there the Reynolds number and the correction come
from the library's own functions, told the trim, and C·F_R = C_turbulent is solved with scipy. C/d² stays under 0.04.
"""

import json
import math
import random

import fluids
from fluids.control_valve import FF_critical_pressure_ratio_l, Reynolds_factor, Reynolds_valve, size_control_valve_l
from scipy.optimize import brentq

random.seed(60534)
LIMIT = 0.04
FULL_FROM = 0.016 * 0.865
cases = []


def draw():
    size = 10 ** random.uniform(-2.1, -0.8)
    inlet = 10 ** random.uniform(5.1, 6.3)
    drop = inlet * random.uniform(0.02, 0.95)
    density = random.uniform(700, 1000)
    vapour = 10 ** random.uniform(1, 4.8)
    critical = random.uniform(1.5e6, 22e6)
    recovery = random.uniform(0.55, 0.98)
    style = random.uniform(0.1, 1)
    return size, inlet, drop, density, vapour, critical, recovery, style


def add(flow, viscosity, kv, regime, size, inlet, drop, density, vapour, critical, recovery, style):
    cases.append([flow, viscosity, size, inlet, drop, density, vapour, critical, recovery, style, kv, regime])


while sum(case[-1] == 0 for case in cases) < 600:
    given = size, inlet, drop, density, vapour, critical, recovery, style = draw()
    kv = 10 ** random.uniform(-4, math.log10(LIMIT)) * (size * 1000) ** 2
    flow = kv / 3600 * math.sqrt(drop / 1e5 / density * 999)
    viscosity = 10 ** random.uniform(-7, -5.5)
    full = size_control_valve_l(rho=density, Psat=vapour, Pc=critical, mu=viscosity * density, P1=inlet,
                                P2=inlet - drop, Q=flow, D1=size, D2=size, d=size, FL=recovery, Fd=style,
                                allow_laminar=False, full_output=True)
    if Reynolds_valve(viscosity, flow * 3600, size * 1000, recovery, style, full['Kv']) < 10000:
        continue
    if full['Kv'] / (size * 1000) ** 2 > LIMIT:
        continue
    add(flow, viscosity, full['Kv'], 0, *given)

while sum(case[-1] == 1 for case in cases) < 600:
    given = size, inlet, drop, density, vapour, critical, recovery, style = draw()
    if drop > recovery ** 2 * (inlet - FF_critical_pressure_ratio_l(vapour, critical) * vapour):
        continue
    turbulent = 10 ** random.uniform(-4, math.log10(LIMIT / 3)) * (size * 1000) ** 2
    flow = turbulent / 3600 * math.sqrt(drop / 1e5 / density * 999.10329075702327)
    viscosity = 10 ** random.uniform(-6, -3)

    def excess(kv):
        reynolds = Reynolds_valve(viscosity, flow * 3600, size * 1000, recovery, style, kv)
        full_trim = kv / (size * 1000) ** 2 >= FULL_FROM
        return kv * min(1, Reynolds_factor(recovery, kv, size * 1000, reynolds, full_trim)) - turbulent

    most = LIMIT * (size * 1000) ** 2
    if excess(most) <= 0 or excess(turbulent * 1.0001) >= 0:
        continue
    kv = brentq(excess, turbulent, most, xtol=1e-14, rtol=1e-12)
    # Where Reynolds number 10 lies between the bounds, the standard's own formulas step: several answers.
    signs = [excess(turbulent * (most / turbulent) ** (step / 400)) > 0 for step in range(401)]
    if sum(a != b for a, b in zip(signs, signs[1:])) != 1 or abs(excess(kv)) > 1e-8 * turbulent:
        continue
    add(flow, viscosity, kv, 1, *given)

print(json.dumps({
    'madeBy': 'make-valves.py',
    'library': 'fluids ' + fluids.__version__,
    'columns': ['flow', 'kinematicViscosity', 'size', 'inletPressure', 'drop', 'density', 'vapourPressure',
                'criticalPressure', 'recovery', 'style', 'kv', 'viscous'],
    'cases': [[float('%.12g' % x) for x in case] for case in cases],
}, separators=(',', ':')).replace('],[', '],\n['))
