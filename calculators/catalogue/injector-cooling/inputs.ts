import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { density15, flowOf, temperatureOf } from '../common-inputs.ts'

const heat = (label: string, symbol: string, help: string, value: number) =>
  ({
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'power',
    units: ['W', 'kW', 'hp'],
    physical: { minimum: 0, maximum: 1e6 },
    default: value,
    accuracy: { relative: 0.3 },
    when: { input: 'known', oneOf: ['heat'] },
  }) as const satisfies QuantityInput

const whenReadings = { input: 'known', oneOf: ['readings'] } as const

export const inputs = {
  known: {
    type: 'choice',
    label: 'What is known',
    help: 'Two thermometers tell the heat. Without them it must be assumed.',
    options: [
      { value: 'readings', label: 'Temperatures before and behind, read at idle and at full load' },
      { value: 'heat', label: 'Heat picked up by an injector' },
    ],
    default: 'readings',
  },
  injectors: {
    type: 'quantity',
    label: 'Number of injectors',
    symbol: 'n',
    help: 'That the header feeds side by side.',
    kind: 'ratio',
    physical: { minimum: 1, maximum: 100 },
    default: 12,
  },
  headerFlow: flowOf(
    'Flow into the header',
    'Q_h',
    'Pump delivery, with the bypass and relief valves shut.',
    4.5e-4,
  ),
  burntAtFullLoad: flowOf('Burnt at full load', 'Q_b', 'By the whole engine.', 1.05e-4, 0),
  burntAtIdle: flowOf('Burnt at idle', 'Q_i', 'By the whole engine.', 6e-6, 0),
  inlet: temperatureOf(
    'Temperature in the supply header',
    'T₁',
    'Where the fuel comes to the injectors.',
    308.15,
  ),
  outletAtFullLoad: {
    ...temperatureOf(
      'Temperature in the return header at full load',
      'T₂',
      'After the load has been steady for a quarter of an hour.',
      321.15,
    ),
    when: whenReadings,
  },
  outletAtIdle: {
    ...temperatureOf(
      'Temperature in the return header at idle',
      'T_i',
      'After idling for a quarter of an hour.',
      311.15,
    ),
    when: whenReadings,
  },
  heatAtFullLoad: heat(
    'Heat picked up by an injector at full load',
    'P',
    'From an earlier reading, or the engine maker.',
    600,
  ),
  heatAtIdle: heat('Heat picked up by an injector at idle', 'P_i', 'Much less than at full load.', 150),
  limit: {
    type: 'quantity',
    label: 'Highest temperature in the return header',
    symbol: 'T_max',
    help: 'From the plant data.',
    kind: 'temperature',
    physical: { minimum: 150, maximum: 800 },
    default: 343.15,
  },
  density15,
} as const satisfies Inputs
