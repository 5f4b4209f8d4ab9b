import { defineCalculator } from '../../calculator/define-calculator.ts'
import { trendLines } from '../trend-lines.ts'
import { outlooks } from '../trend-outcomes.ts'
import cases from './cases.json' with { type: 'json' }
import { compute, pointsOf } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'reading-trend',
  title: 'Trend of a reading',
  purpose: 'Is this reading drifting, and when does it meet its limit?',
  alsoCalled: ['trend line', 'drift of a gauge', 'Theil-Sen', 'Mann-Kendall', 'when is it due'],
  equation: {
    tex: String.raw`b = \operatorname{median}\frac{y_j - y_i}{t_j - t_i}, \qquad y = \tilde{y} + b\,(t - \tilde{t})`,
    words:
      'The slope is the median of the slopes between all pairs of readings, and the line runs through the medians of hours and readings. A few wrong readings cannot carry it away.',
  },
  sources: ['theil-1950', 'sen-1968', 'conover-intercept', 'mann-1945', 'kendall-1975', 'r-package-zyp'],
  validity:
    'Readings of one quantity in one state of the engine, whose course is about straight over the hours covered. The band is that of the slope alone, turned about the medians, at 95 %; a single reading scatters more. Drawing the line on to a limit is common practice, no published source, and fails for what climbs ever faster, such as a filter. Equal probabilities up to ten readings without ties are counted out, others use the normal distribution.',
  inputs,
  outputs: {
    verdict: { type: 'verdict', label: 'Outlook', options: outlooks },
    likely: {
      type: 'quantity',
      label: 'Hours to the limit by the line, at most the look-ahead',
      symbol: 't_L',
      kind: 'time',
      units: ['h', 'd'],
    },
    earliest: {
      type: 'quantity',
      label: 'Earliest by the band, at most the look-ahead',
      symbol: 't_L,min',
      kind: 'time',
      units: ['h', 'd'],
    },
    latest: {
      type: 'quantity',
      label: 'Latest by the band, at most the look-ahead',
      symbol: 't_L,max',
      kind: 'time',
      units: ['h', 'd'],
    },
    chance: {
      type: 'quantity',
      label: 'Chance of such an order where there is no trend',
      symbol: 'P',
      kind: 'ratio',
      units: ['%', '1'],
    },
    slope: { type: 'quantity', label: 'Change in 1000 h', symbol: 'b', kind: 'ratio', units: ['1'] },
    lowSlope: {
      type: 'quantity',
      label: 'Change in 1000 h, lower end of the band',
      symbol: 'b_low',
      kind: 'ratio',
      units: ['1'],
    },
    highSlope: {
      type: 'quantity',
      label: 'Change in 1000 h, upper end of the band',
      symbol: 'b_high',
      kind: 'ratio',
      units: ['1'],
    },
    now: { type: 'quantity', label: 'Line at the last reading', symbol: 'y_n', kind: 'ratio', units: ['1'] },
  },
  compute,
  points: {
    x: { label: 'Running hours', symbol: 't', kind: 'time', follows: 'readings.hours' },
    y: { label: 'Reading', symbol: 'y', kind: 'ratio' },
    points: (input) => pointsOf(input).map(({ x, y }, at) => ({ label: `Reading ${at + 1}`, x, y })),
    lines: (input) => trendLines(pointsOf(input), input.lookAhead, (y) => y),
    limits: (input) => [{ label: 'Limit', y: input.limit }],
  },
  cases,
})
