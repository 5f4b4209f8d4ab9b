#!/usr/bin/python3
"""Makes friction.json: Darcy factors by the Python library fluids (1.0.22), for checking calculators/hydraulics.

Run: python3 make-friction.py > friction.json
Random cases are drawn with a fixed seed, laminar and turbulent; the transition, in which no factor is agreed, is left
out. friction_factor(..., Method='Colebrook') is the library's exact Colebrook solution; laminar is 64/Re.
"""

import json
import random

import fluids

random.seed(341)
cases = []
for _ in range(400):
    reynolds = 10 ** random.uniform(-2, 3.301)
    cases.append([reynolds, 10 ** random.uniform(-6, -1.4), fluids.friction.friction_laminar(reynolds)])
for _ in range(1200):
    reynolds = 10 ** random.uniform(3.6021, 8)
    roughness = random.choice([0, 10 ** random.uniform(-6, -1.31)])
    factor = fluids.friction_factor(Re=reynolds, eD=roughness, Method='Colebrook')
    cases.append([reynolds, roughness, factor])

print(json.dumps({
    'madeBy': 'make-friction.py',
    'library': 'fluids ' + fluids.__version__,
    'columns': ['reynolds', 'relativeRoughness', 'darcyFactor'],
    'cases': cases,
}, separators=(',', ':')).replace('],[', '],\n['))
