import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const pressure = {
  kind: 'gaugePressure',
  units: ['MPa', 'bar', 'psi', 'kgf/cm2'],
  physical: { minimum: 1e5, maximum: 2e8 },
} as const satisfies Partial<QuantityInput>

const viscosity = {
  kind: 'kinematicViscosity',
  physical: { minimum: 0.3e-6, maximum: 1e-3 },
} as const satisfies Partial<QuantityInput>

/** Invented: the other eleven of a set. */
const others = [27.3, 27.1, 27.5, 27.2, 27.4, 27.0, 27.3, 27.2, 27.6, 27.1, 27.3]

/** Accuracies: common practice, no published source. */
export const inputs = {
  openingPressure: {
    type: 'quantity',
    label: 'Opening pressure read',
    symbol: 'p_o',
    help: 'Pump slowly; the highest the needle reaches before the injector opens. Mean of three.',
    ...pressure,
    default: 26.4e6,
    accuracy: { absolute: 0.3e6 },
  },
  lowestOpening: {
    type: 'quantity',
    label: 'Opening pressure, lowest permitted',
    symbol: 'p_min',
    help: 'From the injector maker’s data; new and used often have different limits.',
    ...pressure,
    default: 26.5e6,
  },
  highestOpening: {
    type: 'quantity',
    label: 'Opening pressure, highest permitted',
    symbol: 'p_max',
    help: 'From the injector maker’s data.',
    ...pressure,
    default: 28.5e6,
  },
  set: {
    type: 'table',
    label: 'Opening pressures of the rest of the set',
    help: 'The other injectors that go into the same engine.',
    rowName: 'Injector',
    columns: {
      opening: {
        type: 'quantity',
        label: 'Opening',
        symbol: 'p_i',
        help: 'As read on the same tester.',
        ...pressure,
      },
    },
    rows: { minimum: 1, maximum: 24 },
    default: others.map((megapascals) => ({ opening: megapascals * 1e6 })),
  },
  permittedInSet: {
    type: 'quantity',
    label: 'Largest departure permitted within a set',
    symbol: 'Δp_set',
    help: 'From the median of the set. From the maker’s data or the shop’s own rule.',
    kind: 'pressureDifference',
    units: ['MPa', 'bar', 'psi', 'kgf/cm2'],
    physical: { minimum: 1e4, maximum: 5e7 },
    default: 1e6,
  },
  leakOffTime: {
    type: 'quantity',
    label: 'Leak-off time read',
    symbol: 't',
    help: 'For the fall between the two pressures that the maker names, below the opening pressure.',
    kind: 'time',
    units: ['s'],
    physical: { minimum: 0.1, maximum: 3600 },
    default: 8.5,
    accuracy: { absolute: 0.3 },
  },
  shortestLeakOff: {
    type: 'quantity',
    label: 'Leak-off time, shortest permitted',
    symbol: 't_min',
    help: 'As the maker states it, for the oil below.',
    kind: 'time',
    units: ['s'],
    physical: { minimum: 0.1, maximum: 3600 },
    default: 6,
  },
  statedViscosity: {
    type: 'quantity',
    label: 'Oil viscosity for which that time is stated',
    symbol: 'ν₀',
    help: 'Calibrating oil has about 2.6 mm²/s at 40 °C, from memory of ISO 4113.',
    ...viscosity,
    default: 2.6e-6,
  },
  oilTemperature: {
    type: 'quantity',
    label: 'Temperature of the oil during the test',
    symbol: 'T',
    help: 'In the tester’s tank; a cold injector cools the oil, so let it soak.',
    kind: 'temperature',
    physical: { minimum: 263.15, maximum: 373.15 },
    valid: { minimum: 283.15, maximum: 323.15 },
    default: 293.15,
    accuracy: { absolute: 1 },
  },
  oilViscosity: {
    type: 'quantity',
    label: 'Viscosity of the oil in the tester at 40 °C',
    symbol: 'ν₄₀',
    help: 'From its data sheet. Oil that has taken up fuel is thinner.',
    ...viscosity,
    default: 2.6e-6,
    accuracy: { relative: 0.03 },
  },
  slope: {
    type: 'quantity',
    label: 'Slope B of the oil',
    symbol: 'B',
    help: 'Of its line in the viscosity-temperature chart; thin oils lie near 4.',
    kind: 'ratio',
    physical: { minimum: 0.1, maximum: 20 },
    valid: { minimum: 2.5, maximum: 5.5 },
    default: 4,
    accuracy: { absolute: 0.3 },
  },
  spray: {
    type: 'choice',
    label: 'Spray',
    help: 'At smooth, even strokes. Behind a clear guard: the jet goes through skin.',
    options: [
      { value: 'even', label: 'Well atomised and even from every hole' },
      { value: 'uneven', label: 'Lopsided, or a hole missing' },
      { value: 'streams', label: 'Solid streams, not atomised' },
    ],
    default: 'even',
  },
  seat: {
    type: 'choice',
    label: 'Tip, held a little below the opening pressure',
    help: 'Wipe the tip dry, hold the pressure for the time that the maker names, and look.',
    options: [
      { value: 'dry', label: 'Dry' },
      { value: 'damp', label: 'Damp, no drop forms' },
      { value: 'drips', label: 'A drop forms or falls' },
    ],
    default: 'dry',
  },
} as const satisfies Inputs
