import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { HOUR } from '../trend-outcomes.ts'

const flow = {
  kind: 'volumeFlow',
  physical: { minimum: 1e-9, maximum: 10 },
} as const satisfies Partial<QuantityInput>
const viscosity = {
  kind: 'kinematicViscosity',
  physical: { minimum: 1e-7, maximum: 1 },
} as const satisfies Partial<QuantityInput>
const density = {
  kind: 'density',
  physical: { minimum: 300, maximum: 2000 },
} as const satisfies Partial<QuantityInput>
const drop = {
  kind: 'pressureDifference',
  physical: { minimum: 10, maximum: 1e7 },
} as const satisfies Partial<QuantityInput>

/** Invented: hours, drop [kPa], flow [L/min], viscosity [mm²/s] of the PQ-12's secondaries on cold and warm days. */
const readings = [
  [0, 25, 27, 3],
  [120, 43, 27, 5.2],
  [250, 30, 26, 3.1],
  [370, 31, 27, 2.7],
  [500, 58, 27, 4.6],
  [620, 43, 26, 3],
  [740, 46, 27, 2.8],
] as const

export const inputs = {
  readings: {
    type: 'table',
    label: 'Readings since the last change',
    help: 'One row a reading. The viscosity calculator gives the viscosity at the temperature of the fuel in the filter.',
    rowName: 'Reading',
    columns: {
      hours: {
        type: 'quantity',
        label: 'Hours',
        symbol: 't',
        help: 'Running hours.',
        kind: 'time',
        units: ['h', 'd'],
        physical: { minimum: 0, maximum: 1e6 * HOUR },
      },
      drop: { type: 'quantity', label: 'Drop', symbol: 'Δp', help: 'Across the filter.', ...drop },
      flow: { type: 'quantity', label: 'Flow', symbol: 'Q', help: 'Through the filter.', ...flow },
      viscosity: { type: 'quantity', label: 'Viscosity', symbol: 'ν', help: 'In the filter.', ...viscosity },
    },
    rows: { minimum: 4, maximum: 40 },
    default: readings.map(([hours, kilopascals, flowRate, stokes]) => ({
      hours: hours * HOUR,
      drop: kilopascals * 1e3,
      flow: flowRate / 6e4,
      viscosity: stokes * 1e-6,
    })),
  },
  referenceFlow: {
    type: 'quantity',
    label: 'Reference flow',
    symbol: 'Q₀',
    help: 'At which the drop of a new element and the change-out drop are stated.',
    ...flow,
    default: 4.5e-4,
  },
  referenceViscosity: {
    type: 'quantity',
    label: 'Reference viscosity',
    symbol: 'ν₀',
    help: 'At which they are stated.',
    ...viscosity,
    default: 3e-6,
  },
  density: {
    type: 'quantity',
    label: 'Density of the fuel',
    symbol: 'ρ',
    help: 'One value does for all readings: its change with temperature matters little here.',
    ...density,
    default: 835,
  },
  cleanDrop: {
    type: 'quantity',
    label: 'Drop of a new element at reference',
    symbol: 'Δp_new',
    help: 'From the plant data, or the first reading after a change brought to reference.',
    ...drop,
    default: 25e3,
  },
  housingShare: {
    type: 'quantity',
    label: 'Share of the housing in that drop',
    symbol: 's',
    help: 'Head, ports and bowl without element. One fifth is a common guess.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0, maximum: 0.95 },
    default: 0.2,
  },
  changeOut: {
    type: 'quantity',
    label: 'Drop at which the element is changed',
    symbol: 'Δp_max',
    help: 'At reference flow and viscosity.',
    ...drop,
    default: 100e3,
  },
  law: {
    type: 'choice',
    label: 'How the element loads',
    help: 'The middle law is a fair first choice for depth media. Watch which one the points follow.',
    options: [
      { value: 'cake', label: 'In a straight line: dirt lies on the element as a cake' },
      { value: 'intermediate', label: 'Ever faster, by a steady share: intermediate blocking' },
      { value: 'standard', label: 'Faster still: pores grow narrow (standard blocking)' },
      { value: 'complete', label: 'Fastest: pores are shut one by one (complete blocking)' },
    ],
    default: 'intermediate',
  },
  lookAhead: {
    type: 'quantity',
    label: 'Look ahead',
    symbol: 'H',
    help: 'Running hours beyond the last reading. No life longer than that is given.',
    kind: 'time',
    units: ['h', 'd'],
    physical: { minimum: HOUR, maximum: 1e6 * HOUR },
    default: 1000 * HOUR,
  },
} as const satisfies Inputs
