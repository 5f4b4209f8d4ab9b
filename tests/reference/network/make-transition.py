#!/usr/bin/python3
"""Makes transition.json: Darcy factors by the Python library fluids (1.0.22) where flow is neither laminar nor turbulent.

Run: python3 make-transition.py > transition.json
No factor is agreed between Re 2000 and 4000. Given are three that bound and cross it: laminar 64/Re, Churchill's curve
over all flows (1977), and Colebrook and White's, carried down from turbulent flow.
"""

import json

import fluids

cases = []
for roughness in [0, 1e-5, 1e-4, 1e-3, 5e-3, 1e-2]:
    for reynolds in range(2000, 4001, 100):
        cases.append([
            reynolds,
            roughness,
            fluids.friction.friction_laminar(reynolds),
            fluids.friction.Churchill_1977(reynolds, roughness),
            fluids.friction.Colebrook(reynolds, roughness),
        ])

print(json.dumps({
    'madeBy': 'make-transition.py',
    'library': 'fluids ' + fluids.__version__,
    'columns': ['reynolds', 'relativeRoughness', 'laminar', 'churchill', 'colebrook'],
    'cases': cases,
}, separators=(',', ':')).replace('],[', '],\n['))
