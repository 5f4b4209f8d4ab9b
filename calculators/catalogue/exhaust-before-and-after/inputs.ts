import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const KELVIN = 273.15
/** Invented: injectors 6 and 10 were changed, and the second run was made at a little less load. */
const before = [428, 431, 425, 433, 427, 455, 430, 429, 426, 440, 424, 432]
const after = [419, 420, 415, 425, 415, 420, 420, 420, 415, 418, 414, 422]

const temperature = {
  kind: 'temperature',
  physical: { minimum: 173.15, maximum: 1773.15 },
  valid: { minimum: 323.15, maximum: 1073.15 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  cylinders: {
    type: 'table',
    label: 'Exhaust temperatures',
    help: 'One row a cylinder, the same probe in the same place both times, at the same steady load as nearly as it can be set.',
    rowName: 'Cylinder',
    columns: {
      before: { type: 'quantity', label: 'Before', symbol: 'T₁', help: 'Before the change.', ...temperature },
      after: { type: 'quantity', label: 'After', symbol: 'T₂', help: 'After the change.', ...temperature },
    },
    rows: { minimum: 3, maximum: 24 },
    default: before.map((value, at) => ({ before: value + KELVIN, after: (after[at] ?? 0) + KELVIN })),
  },
  repeatability: {
    type: 'quantity',
    label: 'Repeatability of one probe',
    symbol: 'U_r',
    help: 'How far two readings of one probe at one true temperature can lie apart, plus or minus. Its lasting error drops out.',
    kind: 'temperatureDifference',
    physical: { minimum: 0.01, maximum: 200 },
    default: 3,
  },
} as const satisfies Inputs
