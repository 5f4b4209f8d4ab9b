import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { FuelRecord } from '../../calculator/types.ts'
import { viscosityAt40 } from '../measured-line.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

/** The fuel is the first liquid, at 40 °C, where certificates give the viscosity. */
function fromFuel(fuel: FuelRecord) {
  const firstViscosity = viscosityAt40(fuel)
  return firstViscosity === undefined ? {} : { firstViscosity }
}

export default defineCalculator({
  id: 'viscosity-of-blend',
  title: 'Viscosity of a blend',
  purpose: 'How thick is the mixture of these fuels, or how much of one does a wanted viscosity need?',
  alsoCalled: ['mixing fuels', 'blend calculation', 'cutter stock', 'Refutas'],
  equation: {
    tex: String.raw`\log\log Z = \sum_i x_i\,\log\log Z_i,\qquad Z_i = \nu_i + 0.7 + e^{-1.47 - 1.84\nu_i - 0.51\nu_i^2}`,
    words:
      'Not the viscosities but their double logarithms mix by shares, each viscosity in mm²/s first getting the additions of the viscosity-temperature equation. This is the ASTM blending method, which works at one temperature.',
  },
  sources: ['astm-d7152', 'astm-d341', 'maples-refutas'],
  validity:
    'Petroleum products that mix without reacting, all at one temperature, from 0.21 mm²/s on. Stated for shares by volume; for fuels the standard found shares by mass the more accurate. Not for oils with viscosity improvers, nor with solids, nor below a cloud point. The equation of the standard is from memory; its Wright method, which needs each viscosity at two temperatures, is the more accurate and is not used here.',
  inputs,
  outputs: {
    viscosity: {
      type: 'quantity',
      label: 'Viscosity of the blend',
      symbol: 'ν',
      kind: 'kinematicViscosity',
    },
    shareOfSecond: {
      type: 'quantity',
      label: 'Share of the second liquid',
      symbol: 'x₂',
      kind: 'ratio',
      units: ['%', '1'],
    },
    byRefutas: {
      type: 'quantity',
      label: 'Check: viscosity by the Refutas index',
      symbol: 'ν′',
      kind: 'kinematicViscosity',
    },
  },
  compute,
  chart: {
    x: 'secondShare',
    y: 'viscosity',
    yScale: 'log',
    // A wanted viscosity has no curve over the share: an empty range shows none.
    range: (input) => ({
      minimum: 0,
      maximum: { 'blend-of-two': 1, 'blend-of-three': 1 - input.thirdShare, share: 0 }[input.wanted],
    }),
  },
  fromFuel,
  cases,
})
