import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { QuantityOutput } from '../../calculator/types.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const fraction = (label: string, symbol: string) =>
  ({ type: 'quantity', label, symbol, kind: 'massFraction' }) as const satisfies QuantityOutput

export default defineCalculator({
  id: 'free-water',
  title: 'Dissolved and free water',
  purpose: 'Is the water in this fuel dissolved, free now, or free when it gets cold?',
  alsoCalled: ['water in fuel', 'ppm water', 'dissolved water'],
  equation: {
    tex: String.raw`\log_{10} x = -\left(4200\,\tfrac{\mathrm{H}}{\mathrm{C}} + 1050\right)\left(\tfrac{1}{T} - 0.0016\right)`,
    words:
      'The logarithm of the share of water, by moles, that the fuel dissolves falls in proportion to one over the absolute temperature, the more steeply the more hydrogen the fuel holds for its carbon.',
  },
  sources: ['hibbard-schalla-1952', 'nbs-mp97', 'en-590', 'astm-d975', 'iso-8217'],
  validity:
    'Petroleum fuels without olefins, FAME or strong additives, in touch with liquid water. The authors call the equation good enough for most engineering; against two figures of jet fuel it was a third high at 80 °F and nearly half low at 14 °F, so the answer is an order of size. The mean molecular mass is from memory.',
  inputs,
  outputs: {
    state: {
      type: 'verdict',
      label: 'The water',
      options: {
        dissolved: { label: 'Dissolved, also when cold', grade: 'good' },
        whenCold: { label: 'Dissolved now; part of it separates when cold', grade: 'caution' },
        free: { label: 'Part of it is free now', grade: 'action' },
        near: { label: 'Too near saturation to be told by this equation', grade: 'caution' },
      },
    },
    verdict: {
      type: 'verdict',
      label: 'Against the limit',
      options: {
        within: { label: 'Within', grade: 'good' },
        outside: { label: 'Outside', grade: 'action' },
      },
    },
    solubility: fraction('Water that the fuel dissolves at its temperature', 's'),
    free: fraction('Free water now', 'w − s'),
    freeCold: fraction('Free water when coldest', 'w_f'),
    freeVolume: {
      type: 'quantity',
      label: 'Water at the bottom of the tank, once it has separated',
      symbol: 'V_w',
      kind: 'volume',
      units: ['mL', 'L', 'gal'],
    },
    limitAsMass: fraction('Limit', 'w_max'),
  },
  compute,
  chart: {
    x: 'temperature',
    y: 'solubility',
    yScale: 'log',
    range: () => ({ minimum: 253.15, maximum: 333.15 }),
    limits: (input) => (input.water > 0 ? [{ label: 'Water found', y: input.water }] : []),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
