import type { Inputs } from '../../calculator/types.ts'
import { HOUR } from '../trend-outcomes.ts'

/** Invented: header pressure in kPa at full load, falling. */
const readings = [
  [0, 212],
  [250, 211],
  [500, 208],
  [750, 209],
  [1000, 204],
  [1250, 203],
  [1500, 201],
  [1750, 199],
] as const

export const inputs = {
  readings: {
    type: 'table',
    label: 'Readings',
    help: 'Any one reading against running hours, always taken in the same state of the engine. Readings as plain numbers, all in one unit.',
    rowName: 'Reading',
    columns: {
      hours: {
        type: 'quantity',
        label: 'Running hours',
        symbol: 't',
        help: 'From the hour meter; where it starts does not matter.',
        kind: 'time',
        units: ['h', 'd'],
        physical: { minimum: 0, maximum: 1e6 * HOUR },
      },
      reading: {
        type: 'quantity',
        label: 'Reading',
        symbol: 'y',
        help: 'In one unit throughout.',
        kind: 'ratio',
        units: ['1'],
        physical: { minimum: -1e9, maximum: 1e9 },
      },
    },
    rows: { minimum: 4, maximum: 60 },
    default: readings.map(([hours, reading]) => ({ hours: hours * HOUR, reading })),
  },
  side: {
    type: 'choice',
    label: 'The limit is',
    help: 'Which way is bad.',
    options: [
      { value: 'minimum', label: 'a minimum: the reading must stay above it' },
      { value: 'maximum', label: 'a maximum: the reading must stay below it' },
    ],
    default: 'minimum',
  },
  limit: {
    type: 'quantity',
    label: 'Limit',
    symbol: 'y_max',
    help: 'In the unit of the readings.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: -1e9, maximum: 1e9 },
    default: 170,
  },
  accuracy: {
    type: 'quantity',
    label: 'Repeatability of the gauge',
    symbol: 'U_r',
    help: 'Plus or minus, in the unit of the readings. It does not change the line, which learns the scatter from the readings themselves.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0, maximum: 1e9 },
    default: 3,
  },
  lookAhead: {
    type: 'quantity',
    label: 'Look ahead',
    symbol: 'H',
    help: 'Running hours beyond the last reading, for instance to the next overhaul. No date later than that is given.',
    kind: 'time',
    units: ['h', 'd'],
    physical: { minimum: HOUR, maximum: 1e6 * HOUR },
    default: 4000 * HOUR,
  },
} as const satisfies Inputs
