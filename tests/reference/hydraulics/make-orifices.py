#!/usr/bin/python3
"""Makes orifices.json: orifice plates by the Python library fluids (1.0.22), for checking calculators/hydraulics.

Run: python3 make-orifices.py > orifices.json
Random plates and flows within the limits of ISO 5167-2, all three tappings; the coefficient is the library's
C_Reader_Harris_Gallagher, the drop the one at which its flow_meter_discharge gives the flow back.
"""

import json
import math
import random

import fluids
from fluids.flow_meter import C_Reader_Harris_Gallagher, flow_meter_discharge

random.seed(5167)
TAPS = ['corner', 'flange', 'D']
cases = []
while len(cases) < 1200:
    pipe = 10 ** random.uniform(math.log10(0.05), 0)
    ratio = random.uniform(0.1, 0.75)
    bore = ratio * pipe
    tappings = random.randrange(3)
    least = 5000 if ratio <= 0.56 else 16000 * ratio ** 2
    if tappings == 1:
        least = max(5000, 170 * ratio ** 2 * pipe * 1000)
    if bore < 0.0125:
        continue
    reynolds = least * 10 ** random.uniform(0, 3)
    density = random.uniform(700, 1000)
    viscosity = 10 ** random.uniform(-7, -4.5)
    flow = reynolds * math.pi * pipe * viscosity / 4
    c = C_Reader_Harris_Gallagher(D=pipe, Do=bore, rho=density, mu=viscosity * density, m=flow * density,
                                  taps=TAPS[tappings])
    # A liquid's flow grows with the root of the drop, so one pascal gives the scale.
    drop = (flow * density / flow_meter_discharge(D=pipe, Do=bore, P1=2, P2=1, rho=density, C=c)) ** 2
    cases.append([bore, pipe, tappings, density, viscosity, flow, c, drop])

print(json.dumps({
    'madeBy': 'make-orifices.py',
    'library': 'fluids ' + fluids.__version__,
    'columns': ['bore', 'pipe', 'tappings', 'density', 'kinematicViscosity', 'flow', 'coefficient', 'drop'],
    'cases': [[float('%.12g' % x) for x in case] for case in cases],
}, separators=(',', ':')).replace('],[', '],\n['))
