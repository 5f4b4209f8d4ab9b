import type { Inputs } from '../../calculator/types.ts'
import { limitInput, suctionInputs } from '../suction-inputs.ts'

export const inputs = {
  ...suctionInputs,
  limit: { ...limitInput, physical: { minimum: 100, maximum: 101_000 } },
} as const satisfies Inputs
