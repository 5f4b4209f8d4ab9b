#!/usr/bin/python3
"""Makes statistics.json: what scipy and numpy give, for checking calculators/statistics.

Run: python3 make-statistics.py > statistics.json
Random series are drawn with a fixed seed, of 3 to 30 points, with and without equal values. Slopes are those of
scipy.stats.theilslopes (95 %), the probability of Mann and Kendall that of scipy.stats.kendalltau where no values are
equal and the series is short (exact), and otherwise from S and its tie-corrected variance by scipy.stats.norm.
"""

import json
import math
import random

import numpy
import scipy
from scipy import stats

random.seed(1968)


def ties(values):
    _, counts = numpy.unique(values, return_counts=True)
    return sum(t * (t - 1) * (2 * t + 5) for t in counts if t > 1)


def mann_kendall(x, y):
    n = len(x)
    s = sum(
        int(numpy.sign(x[j] - x[i]) * numpy.sign(y[j] - y[i])) for i in range(n) for j in range(i + 1, n)
    )
    tied = len(set(x)) < n or len(set(y)) < n
    variance = (n * (n - 1) * (2 * n + 5) - ties(x) - ties(y)) / 18
    z = 0.0 if s == 0 or variance <= 0 else (s - math.copysign(1, s)) / math.sqrt(variance)
    if not tied and n <= 10:
        p = float(stats.kendalltau(x, y, method='exact').pvalue)
    else:
        p = min(1.0, 2 * float(stats.norm.sf(abs(z))))
    return s, z, p


series = []
for number in range(300):
    count = random.randint(3, 30)
    step = random.choice([0.1, 1, 50])
    x = [round(step * at, 6) for at in range(count)]
    if number % 4 == 1:
        x = sorted(random.choice(x) for _ in x)
        if len(set(x)) < 2:
            continue
    slope = random.uniform(-2, 2)
    digits = random.choice([0, 1, 6])
    y = [round(slope * value / step + random.gauss(0, 2), digits) for value in x]
    line = stats.theilslopes(y, x, 0.95)
    s, z, p = mann_kendall(x, y)
    series.append({
        'x': x, 'y': y,
        'slope': float(line.slope), 'intercept': float(line.intercept),
        'low': float(line.low_slope), 'high': float(line.high_slope),
        's': s, 'z': z, 'p': p,
        'median': float(numpy.median(y)), 'mad': float(stats.median_abs_deviation(y)),
    })

tails = [[z, float(stats.norm.sf(z))] for z in [-8, -3, -1, 0, 0.1, 0.5, 1, 1.96, 2.5, 2.999, 3, 3.5, 5, 8, 20]]
quantiles = [[p, float(stats.norm.ppf(p))] for p in [1e-9, 0.001, 0.025, 0.3, 0.5, 0.75, 0.95, 0.975, 0.999]]

print(json.dumps({
    'madeBy': 'make-statistics.py',
    'library': f'scipy {scipy.__version__}, numpy {numpy.__version__}',
    'tails': tails, 'quantiles': quantiles, 'series': series,
}, separators=(',', ':')).replace('},{', '},\n{'))
