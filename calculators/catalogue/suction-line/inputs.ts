import type { Inputs } from '../../calculator/types.ts'
import { limitInput, suctionInputs } from '../suction-inputs.ts'

export const inputs = {
  ...suctionInputs,
  limit: limitInput,
  temperature: {
    type: 'quantity',
    label: 'Temperature of the fuel',
    symbol: 't',
    help: 'In the suction line. It sets vapour pressure and the solubility of air.',
    kind: 'temperature',
    physical: { minimum: 200, maximum: 450 },
    valid: { minimum: 228, maximum: 423 },
    default: 293.15,
    accuracy: { absolute: 2 },
  },
  vapour: {
    type: 'choice',
    label: 'Vapour pressure',
    help: 'For distillate fuel it is computed from the temperature. Give another one for light or mixed liquids.',
    options: [
      { value: 'distillate', label: 'Of a No. 2 distillate at this temperature' },
      { value: 'given', label: 'Given' },
    ],
    default: 'distillate',
  },
  vapourPressure: {
    type: 'quantity',
    label: 'Vapour pressure of the liquid',
    symbol: 'p_v',
    help: 'Absolute, at the temperature of the liquid.',
    kind: 'absolutePressure',
    physical: { minimum: 0, maximum: 1e6 },
    default: 50,
    when: { input: 'vapour', oneOf: ['given'] },
  },
} as const satisfies Inputs
