import type { Inputs } from '../../calculator/types.ts'

/** Invented: idle, light, half and full load of the PQ-12 as share, L/min and km/h. */
const states = [
  [0.45, 0.25, 0],
  [0.2, 1.6, 15],
  [0.2, 3.2, 25],
  [0.15, 6.3, 20],
] as const

export const inputs = {
  states: {
    type: 'table',
    label: 'Duty cycle',
    help: 'One row a state of the engine, such as idle, half and full load. The shares add up to 100 %. Speed is 0 where it stands.',
    rowName: 'State',
    columns: {
      share: {
        type: 'quantity',
        label: 'Share of time',
        symbol: 'f',
        help: 'Of the running time.',
        kind: 'ratio',
        units: ['%', '1'],
        physical: { minimum: 0, maximum: 1 },
      },
      burn: {
        type: 'quantity',
        label: 'Fuel burnt',
        symbol: 'Q',
        help: 'In this state.',
        kind: 'volumeFlow',
        physical: { minimum: 0, maximum: 0.1 },
        accuracy: { relative: 0.05 },
      },
      speed: {
        type: 'quantity',
        label: 'Speed',
        symbol: 'v',
        help: 'Mean speed of travel in this state.',
        kind: 'travelSpeed',
        units: ['km/h', 'mph'],
        physical: { minimum: 0, maximum: 150 },
      },
    },
    rows: { minimum: 1, maximum: 20 },
    default: states.map(([share, litres, speed]) => ({ share, burn: litres / 6e4, speed: speed / 3.6 })),
  },
  content: {
    type: 'quantity',
    label: 'Fuel in the tank',
    symbol: 'V',
    help: 'Usable fuel, above the suction pipe.',
    kind: 'volume',
    physical: { minimum: 1e-3, maximum: 1e5 },
    default: 4,
    accuracy: { relative: 0.02 },
  },
  reserve: {
    type: 'quantity',
    label: 'Kept in reserve',
    symbol: 's',
    help: 'Share of the content that is not counted on. The last of a tank holds water and dirt.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0, maximum: 0.95 },
    default: 0.15,
  },
} as const satisfies Inputs
