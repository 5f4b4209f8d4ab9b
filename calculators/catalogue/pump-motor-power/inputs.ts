import type { Inputs } from '../../calculator/types.ts'
import { pumpFlowInput, riseInput, speedInput } from '../pump-inputs.ts'

export const inputs = {
  flow: pumpFlowInput('Flow', 'Q', 4.5e-4),
  rise: riseInput('Pressure rise', 'Δp', 650e3),
  efficiency: {
    type: 'quantity',
    label: 'Overall efficiency of the pump',
    symbol: 'η',
    help: 'Hydraulic power over shaft power. Small pumps reach half; cold thick fuel costs more.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0.01, maximum: 1 },
    default: 0.5,
    accuracy: { absolute: 0.04 },
  },
  motorEfficiency: {
    type: 'quantity',
    label: 'Efficiency of the motor',
    symbol: 'η_m',
    help: 'Shaft power over electrical power, from its plate or data.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0.01, maximum: 1 },
    default: 0.75,
    accuracy: { absolute: 0.03 },
  },
  speed: speedInput('Speed', 'n'),
  rating: {
    type: 'quantity',
    label: 'Rated output of the motor',
    symbol: 'P_r',
    help: 'Shaft power on its plate, not what it draws.',
    kind: 'power',
    physical: { minimum: 0.1, maximum: 1e8 },
    default: 750,
  },
} as const satisfies Inputs
