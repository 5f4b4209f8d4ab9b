import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { FuelRecord } from '../../calculator/types.ts'
import { DILUTION_GRADES, dilutionVerdict } from '../dilution-grades.ts'
import { viscosityAt40 } from '../measured-line.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

/** The fuel at 40 °C, the usual temperature of an oil report. */
function fromFuel(fuel: FuelRecord) {
  const fuelViscosity = viscosityAt40(fuel)
  return fuelViscosity === undefined ? {} : { fuelViscosity }
}

const ratio = { type: 'quantity', kind: 'ratio', units: ['%', '1'] } as const

export default defineCalculator({
  id: 'fuel-in-oil-by-viscosity',
  title: 'Fuel in oil by viscosity',
  purpose: 'The oil has grown thin: how much fuel is in it, and what is to be done?',
  alsoCalled: ['fuel dilution', 'thin oil', 'oil level rising', 'per cent of fuel in the oil'],
  equation: {
    tex: String.raw`x = \frac{W_0 - W}{W_0 - W_f},\qquad W = \log\log\left(\nu + 0.7 + e^{-1.47 - 1.84\nu - 0.51\nu^2}\right)`,
    words:
      'The rule of blends is read backwards: the share of fuel is how far the double logarithm of the viscosity has gone on its way from the clean oil to the fuel.',
  },
  sources: [
    'astm-d7152',
    'chybowski-2024',
    'navy-oil-tests',
    'fuel-dilution-chart',
    'astm-d3524',
    'astm-d7593',
  ],
  validity:
    'An estimate, good to about one per cent of dilution at best. All viscosities at one temperature, 40 °C as a rule. Not for oils with a viscosity improver that shears down. The two rules differ by half of the result; a published chart lies between them in both of its examples. The grades of 2 and 5 % are those of a Navy training course; the engine maker may set others, and then they rule. Gas chromatography is the referee.',
  inputs,
  outputs: {
    share: { ...ratio, label: 'Share of fuel in the oil', symbol: 'x' },
    verdict: dilutionVerdict,
    byLogarithm: { ...ratio, label: 'Check: share by the logarithmic rule', symbol: 'x′' },
    fall: { ...ratio, label: 'Fall of viscosity', symbol: '1 − ν_used/ν_new' },
    fuelVolume: { type: 'quantity', label: 'Fuel in the sump', symbol: 'V_f', kind: 'volume' },
  },
  compute,
  chart: {
    x: 'usedViscosity',
    y: 'share',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.max(input.fuelViscosity, Math.min(0.6 * input.newViscosity, 0.9 * input.usedViscosity)),
      maximum: Math.max(1.1 * input.newViscosity, input.usedViscosity),
    }),
    limits: () => [
      { label: 'Look for the leak', y: DILUTION_GRADES.faulty },
      { label: 'Stop', y: DILUTION_GRADES.serious },
    ],
  },
  fromFuel,
  cases,
})
