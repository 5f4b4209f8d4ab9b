import type { Inputs } from '../../calculator/types.ts'

const KELVIN = 273.15
/** Invented: twelve cylinders, one cold and one hot. */
const degrees = [428, 431, 425, 433, 427, 402, 430, 429, 426, 455, 424, 432]

export const inputs = {
  cylinders: {
    type: 'table',
    label: 'Exhaust temperatures',
    help: 'One row a cylinder, in their order, all read within a few minutes at one steady load.',
    rowName: 'Cylinder',
    columns: {
      temperature: {
        type: 'quantity',
        label: 'Temperature',
        symbol: 'T',
        help: 'Behind the exhaust valve of this cylinder.',
        kind: 'temperature',
        physical: { minimum: 173.15, maximum: 1773.15 },
        valid: { minimum: 323.15, maximum: 1073.15 },
      },
    },
    rows: { minimum: 3, maximum: 24 },
    default: degrees.map((value) => ({ temperature: value + KELVIN })),
  },
  accuracy: {
    type: 'quantity',
    label: 'Accuracy from cylinder to cylinder',
    symbol: 'U',
    help: 'How far two probes can differ at one true temperature, plus or minus. What is wrong with all of them alike does not count. One hand-held probe moved around: its repeatability.',
    kind: 'temperatureDifference',
    physical: { minimum: 0.01, maximum: 200 },
    default: 5,
  },
  permitted: {
    type: 'quantity',
    label: 'Permitted departure from the median',
    symbol: 'ΔT_max',
    help: 'From the engine maker’s manual, at this load.',
    kind: 'temperatureDifference',
    physical: { minimum: 0.1, maximum: 500 },
    default: 35,
  },
} as const satisfies Inputs
