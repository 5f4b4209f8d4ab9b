import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const ratio = { type: 'quantity', kind: 'ratio', units: ['%', '1'] } as const

export default defineCalculator({
  id: 'fuel-in-oil-by-flash-point',
  title: 'Fuel in oil by flash point',
  purpose: 'The oil flashes sooner than it did: is that fuel, and roughly how much?',
  alsoCalled: ['flash point of the oil', 'fuel dilution by flash point'],
  equation: {
    tex: String.raw`x = \frac{I_{used} - I_{new}}{I_{fuel} - I_{new}},\qquad I = 10^{-F/100}`,
    words:
      'An index that stands for vapour pressure blends by shares of volume: ten to the power of minus a hundredth of the flash point F in °F. Once it is worked with the flash point of fresh fuel and once with that of fuel aged in hot oil.',
  },
  sources: ['thiele-1927', 'oil-survey-limits', 'astm-d93', 'chybowski-2022'],
  validity:
    'A sign of fuel, and no measurement of it. The rule was published for blends of lubricating oils; for fuel in oil it is stretched. The range from fresh to aged fuel, the flash point of aged fuel and the worked example are common practice, no published source. Closed cup for all. The accuracies shown at first are those of one laboratory; two differ by twice as much. The alarm at a fall of 50 °C and the rejection under 150 °C are limits of one engine builder; your own manual rules. Gas chromatography is the referee.',
  inputs,
  outputs: {
    fall: {
      type: 'quantity',
      label: 'Fall of the flash point',
      symbol: 'ΔF',
      kind: 'temperatureDifference',
    },
    verdict: {
      type: 'verdict',
      label: 'Action',
      options: {
        cannotBeTold: { label: 'No fall that the test can tell', grade: 'information' },
        watch: {
          label: 'A fall under the alarm: sample again soon, compare the viscosity',
          grade: 'caution',
        },
        alarm: { label: 'Fall of 50 °C or more: look for the leak now', grade: 'action' },
        rejected: { label: 'Under 150 °C: stop, find the leak and change the oil', grade: 'action' },
      },
    },
    ifFresh: { ...ratio, label: 'Share if the fuel is fresh', symbol: 'x_fresh' },
    ifAged: { ...ratio, label: 'Share if the fuel has aged in the oil', symbol: 'x_aged' },
  },
  compute,
  chart: {
    x: 'usedFlash',
    y: 'ifAged',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(0.5 * (input.freshFlash + input.ageing + input.newFlash), input.usedFlash),
      maximum: Math.max(input.newFlash, input.usedFlash),
    }),
  },
  cases,
})
