import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'power-at-fixed-rack',
  title: 'Power at a fixed rack',
  purpose: 'How much power does this fuel give when the rack stands where it stood on another?',
  alsoCalled: [
    'power loss with light fuel',
    'low energy fuel',
    'derating by fuel',
    'less power on warm fuel',
  ],
  equation: {
    tex: String.raw`\frac{P}{P_0} = \frac{\rho(t)\,H}{\rho_0(t_0)\,H_0}`,
    words:
      'A rack that does not move meters the same volume at each stroke, so power goes with the net energy of a litre: density where it is metered, times net energy of a kilogram.',
  },
  sources: ['astm-d1250', 'iso-8217'],
  validity:
    'An engine whose injectors meter a volume and whose rack is at its stop or held: common practice, no published source for the rule. Densities follow the standard procedure for petroleum. It leaves out leakage past plungers, which warm and thin fuel makes larger, and any change of timing, combustion or efficiency. A governor that finds rack in hand simply moves it; then consumption changes, not power.',
  inputs,
  outputs: {
    power: { type: 'quantity', label: 'Power on the fuel burnt', symbol: 'P', kind: 'power' },
    relativePower: {
      type: 'quantity',
      label: 'Share of the power on the reference fuel',
      symbol: 'P/P₀',
      kind: 'ratio',
      units: ['%', '1'],
    },
    change: { type: 'quantity', label: 'Change of power', symbol: 'ΔP', kind: 'power' },
    byFuel: {
      type: 'quantity',
      label: 'Change from the fuel itself, both at the reference temperature',
      symbol: 'δ_f',
      kind: 'ratio',
      units: ['%', '1'],
    },
    byTemperature: {
      type: 'quantity',
      label: 'Change from its temperature',
      symbol: 'δ_t',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'temperature',
    y: 'power',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.max(223.15, Math.min(273.15, input.temperature - 10)),
      maximum: Math.min(423.15, Math.max(363.15, input.temperature + 10)),
    }),
    limits: (input) => [{ label: 'On the reference fuel', y: input.referencePower }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
