import type { Inputs } from '../../calculator/types.ts'
import { billInputs, fixedLossInput, pipeInputs } from '../line-inputs.ts'

export const inputs = {
  ...pipeInputs,
  rise: {
    type: 'quantity',
    label: 'Rise along the flow',
    symbol: 'h',
    help: 'Height of the end over the beginning; negative where the line falls.',
    kind: 'length',
    physical: { minimum: -1e4, maximum: 1e4 },
    default: 0,
  },
  method: {
    type: 'choice',
    label: 'Losses of the fittings',
    help: 'The two-K method holds in slow and fast flow. Equivalent lengths are for turbulent flow; they are here to follow other calculations.',
    options: [
      { value: 'two-k', label: 'Two-K method' },
      { value: 'equivalent-length', label: 'Equivalent length at full turbulence' },
    ],
    default: 'two-k',
  },
  ...billInputs,
  fixedLoss: fixedLossInput,
} as const satisfies Inputs
