import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'time-to-cool',
  title: 'Time to cool',
  purpose: 'How long until the tank or the line is as cold as that?',
  alsoCalled: [
    'cooling time',
    'overnight cooling',
    'wind chill of a line',
    'when the tank freezes',
    'how long it can stand in the cold',
  ],
  equation: {
    tex: String.raw`t = \tau\,\ln\frac{T_0 - T_a}{T - T_a} \qquad \tau = \frac{\rho\,V\,c}{U\,A}`,
    words:
      'The difference to the outside falls by the same share in every equal time. The time constant is the heat that the fuel holds for each kelvin over the heat that its surface lets go for each kelvin.',
  },
  sources: [
    'lumped-capacity',
    'nbs-mp97',
    'churchill-bernstein-1977',
    'churchill-chu-1975',
    'fourier-cylinder',
  ],
  validity:
    'Fuel at rest and of one temperature; the outside steady; wind across a cylinder, Reynolds number to 10 million, the correlation within about 20 %. A tank that is no cylinder, the joining of wind and rising air, the conductivity of insulation and the accuracies are common practice, no published source. Heat in the wall, returning fuel and sun are left out.',
  inputs,
  outputs: {
    time: {
      type: 'quantity',
      label: 'Time to the wanted temperature',
      symbol: 't',
      kind: 'time',
      units: ['h', 'min', 'd', 's'],
    },
    temperatureAfter: {
      type: 'quantity',
      label: 'Temperature after the time that it stands',
      symbol: 'T_s',
      kind: 'temperature',
    },
    verdict: {
      type: 'verdict',
      label: 'In the time that it stands',
      options: {
        reached: { label: 'The wanted temperature is reached or passed', grade: 'caution' },
        notReached: { label: 'The wanted temperature is not reached', grade: 'information' },
      },
    },
    overallCoefficient: {
      type: 'quantity',
      label: 'Coefficient on the bare surface',
      symbol: 'U',
      kind: 'heatTransferCoefficient',
    },
    timeConstant: {
      type: 'quantity',
      label: 'Time constant',
      symbol: 'τ',
      kind: 'time',
      units: ['h', 'min', 'd', 's'],
    },
  },
  compute,
  chart: {
    x: 'elapsed',
    y: 'temperatureAfter',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: Math.max(60, 3 * input.elapsed) }),
    limits: (input) => [{ label: 'To be reached', y: input.wanted }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15, wanted: fuel.cloudPoint }),
  cases,
})
