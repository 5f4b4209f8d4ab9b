import { defineCalculator } from '../../calculator/define-calculator.ts'
import { robustSet } from '../../engine/exhaust.ts'
import { median } from '../../statistics/median.ts'
import cases from './cases.json' with { type: 'json' }
import { compute, standsOut, temperaturesOf } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'exhaust-spread',
  title: 'Exhaust temperatures of all cylinders',
  purpose: 'Which cylinder stands out, and is the pyrometer good enough to say so?',
  alsoCalled: ['pyrometer readings', 'EGT spread', 'hot cylinder', 'cold cylinder', 'outlier'],
  equation: {
    tex: String.raw`M_i = \frac{0.6745\,(T_i - \tilde{T})}{\mathrm{MAD}}, \qquad \mathrm{MAD} = \operatorname{median}\,|T_i - \tilde{T}|`,
    words:
      'The modified z of a cylinder is 0.6745 times its departure from the median of all cylinders, over the median of the sizes of all departures. Above 3.5 it stands out.',
  },
  sources: ['iglewicz-hoaglin-1993', 'nist-handbook-statistics', 'gum-2008'],
  validity:
    'One engine at one steady load, all cylinders read within a few minutes. Fewer than half of the cylinders may be at fault. Cylinders are taken as alike: where manifold and place make some of them run hotter by nature, compare each with its own earlier reading. Chances below one in a million are not told apart. What a hot or cold cylinder means and the floor under the deviation are common practice, no published source.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'The set',
      options: {
        even: { label: 'Even: no cylinder stands out', grade: 'good' },
        standsOut: { label: 'A cylinder stands out, within the permitted departure', grade: 'caution' },
        allScatter: { label: 'Beyond the permitted departure, and the whole set scatters', grade: 'caution' },
        beyondLimit: { label: 'A cylinder stands out beyond the permitted departure', grade: 'action' },
      },
    },
    cylinder: {
      type: 'quantity',
      label: 'Cylinder that departs most',
      symbol: 'i',
      kind: 'ratio',
      units: ['1'],
    },
    departure: {
      type: 'quantity',
      label: 'Its departure from the median',
      symbol: 'ΔT',
      kind: 'temperatureDifference',
    },
    score: { type: 'quantity', label: 'Its modified z', symbol: 'M', kind: 'ratio', units: ['1'] },
    chance: {
      type: 'quantity',
      label: 'Chance that reading errors alone make it',
      symbol: 'P',
      kind: 'ratio',
      units: ['%', '1'],
    },
    centre: { type: 'quantity', label: 'Median of all cylinders', symbol: 'T̃', kind: 'temperature' },
    spread: {
      type: 'quantity',
      label: 'Spread (robust standard deviation)',
      symbol: 'σ',
      kind: 'temperatureDifference',
    },
    range: { type: 'quantity', label: 'Hottest less coldest', symbol: 'R', kind: 'temperatureDifference' },
  },
  compute,
  points: {
    x: { label: 'Cylinder', symbol: '', kind: 'ratio' },
    y: { label: 'Temperature', symbol: 'T', kind: 'temperature', follows: 'cylinders.temperature' },
    points: (input) => {
      const values = temperaturesOf(input)
      const out = standsOut(robustSet(values, input.accuracy))
      return values.map((y, at) => ({
        label: `Cylinder ${at + 1}`,
        x: at + 1,
        y,
        standsOut: out.includes(at),
      }))
    },
    lines: (input) => {
      const centre = median(temperaturesOf(input))
      const ends = [1, input.cylinders.length]
      return [{ label: 'Median', points: ends.map((x) => ({ x, y: centre })) }]
    },
    limits: (input) => {
      const centre = median(temperaturesOf(input))
      return [
        { label: 'Permitted, hot', y: centre + input.permitted },
        { label: 'Permitted, cold', y: centre - input.permitted },
      ]
    },
  },
  cases,
})
