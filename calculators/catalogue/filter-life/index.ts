import { defineCalculator } from '../../calculator/define-calculator.ts'
import { trendLines } from '../trend-lines.ts'
import { outlooks } from '../trend-outcomes.ts'
import cases from './cases.json' with { type: 'json' }
import { compute, dropOf, elementDrops, straightPoints, type Values } from './compute.ts'
import { inputs } from './inputs.ts'

/** The chart ends where the drop leaves the paper. */
const HIGHEST = 1.5

function drawn(input: Values, straight: number): number | undefined {
  const drop = dropOf(input, straight)
  return drop === undefined || drop > HIGHEST * input.changeOut ? undefined : drop
}

export default defineCalculator({
  id: 'filter-life',
  title: 'Life left of a filter',
  purpose: 'From the readings so far: how many hours are left before this filter is due?',
  alsoCalled: [
    'remaining life',
    'filter hours left',
    'when to change the filter',
    'how long will the filter last',
  ],
  equation: {
    tex: String.raw`\ln\frac{\Delta p_{e}}{\Delta p_{e,\mathrm{new}}} = b\,t, \qquad \Delta p_e = \left(\Delta p - \Delta p_{h0}\frac{Q^2}{Q_0^2}\right)\frac{\nu_0\,Q_0}{\nu\,Q}`,
    words:
      'Each reading is brought to reference flow and viscosity and freed of the housing. By the law of intermediate blocking the logarithm of the element’s drop, over that of a new one, rises in a straight line with the hours; the other laws straighten another function of it.',
  },
  sources: ['hlavacek-bouchet-1993', 'iso-3968', 'theil-1950', 'sen-1968', 'hydraulics-lexicon-filters'],
  validity:
    'One set of elements since its last change, steady flow, the bypass shut, fuel above its cloud point, dirt arriving at a steady rate. The laws hold for constant flow and for one kind of dirt; which one a filter follows is seen only from its readings. Drawing the line on, and the share of the housing, are common practice, no published source. The band is that of the slope alone, at 95 %.',
  inputs,
  outputs: {
    verdict: { type: 'verdict', label: 'Outlook', options: outlooks },
    likely: {
      type: 'quantity',
      label: 'Life left by the line, at most the look-ahead',
      symbol: 't_L',
      kind: 'time',
      units: ['h', 'd'],
    },
    earliest: {
      type: 'quantity',
      label: 'Shortest by the band, at most the look-ahead',
      symbol: 't_L,min',
      kind: 'time',
      units: ['h', 'd'],
    },
    latest: {
      type: 'quantity',
      label: 'Longest by the band, at most the look-ahead',
      symbol: 't_L,max',
      kind: 'time',
      units: ['h', 'd'],
    },
    now: {
      type: 'quantity',
      label: 'Drop at reference by the line, at the last hours',
      symbol: 'Δp₀',
      kind: 'pressureDifference',
    },
    shareUsed: {
      type: 'quantity',
      label: 'Share of the permitted drop used',
      symbol: 'Δp₀/Δp_max',
      kind: 'ratio',
      units: ['%', '1'],
    },
    chance: {
      type: 'quantity',
      label: 'Chance of such an order where there is no trend',
      symbol: 'P',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  points: {
    x: { label: 'Running hours', symbol: 't', kind: 'time', follows: 'readings.hours' },
    y: { label: 'Drop at reference', symbol: 'Δp₀', kind: 'pressureDifference', follows: 'readings.drop' },
    points: (input) =>
      elementDrops(input).map(({ x, y }, at) => ({
        label: `Reading ${at + 1}`,
        x,
        y: y + input.housingShare * input.cleanDrop,
      })),
    lines: (input) =>
      trendLines(straightPoints(input), input.lookAhead, (straight) => drawn(input, straight)),
    limits: (input) => [{ label: 'Change-out drop', y: input.changeOut }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
