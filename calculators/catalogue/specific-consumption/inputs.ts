import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { USUAL_MECHANICAL_EFFICIENCY } from '../../engine/consumption-correction.ts'

const byVolume = { input: 'measured', oneOf: ['volume'] } as const
const ambient = { input: 'correction', oneOf: ['charge-cooled', 'turbocharged', 'natural'] } as const

const energy = {
  type: 'quantity',
  kind: 'specificEnergy',
  physical: { minimum: 2e7, maximum: 5e7 },
  valid: { minimum: 3.9e7, maximum: 4.4e7 },
  default: 42.7e6,
} as const satisfies Partial<QuantityInput>

const air = {
  type: 'quantity',
  kind: 'temperature',
  physical: { minimum: 233.15, maximum: 343.15 },
  valid: { minimum: 263.15, maximum: 323.15 },
  default: 298.15,
  // Common practice: a thermometer in the air intake or the coolant.
  accuracy: { absolute: 1 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  measured: {
    type: 'choice',
    label: 'What was measured',
    help: 'Weighing is surer: a volume needs its density at the meter.',
    options: [
      { value: 'volume', label: 'A volume of fuel' },
      { value: 'mass', label: 'A mass of fuel' },
    ],
    default: 'volume',
  },
  volume: {
    type: 'quantity',
    label: 'Volume of fuel burnt',
    symbol: 'V',
    help: 'What went in, less what came back and what leaked off, all at the temperature of the meter.',
    kind: 'volume',
    physical: { minimum: 1e-6, maximum: 1e6 },
    default: 0.063,
    // Common practice: a good positive displacement meter.
    accuracy: { relative: 0.005 },
    when: byVolume,
  },
  density: {
    type: 'quantity',
    label: 'Density at the meter',
    symbol: 'ρ',
    help: 'At the temperature of the meter, not at 15 °C: see the calculator of density and volume.',
    kind: 'density',
    physical: { minimum: 600, maximum: 1200 },
    default: 827,
    // Common practice: a density meter, and the correction to the temperature of the meter.
    accuracy: { absolute: 1 },
    when: byVolume,
  },
  mass: {
    type: 'quantity',
    label: 'Mass of fuel burnt',
    symbol: 'm',
    help: 'What the scale lost, less what leaked off.',
    kind: 'mass',
    physical: { minimum: 1e-3, maximum: 1e9 },
    default: 53,
    accuracy: { relative: 0.002 },
    when: { input: 'measured', oneOf: ['mass'] },
  },
  time: {
    type: 'quantity',
    label: 'Time',
    symbol: 't',
    help: 'At a steady load throughout; ten minutes and more.',
    kind: 'time',
    units: ['min', 's', 'h'],
    physical: { minimum: 1, maximum: 1e8 },
    default: 600,
    accuracy: { absolute: 1 },
  },
  power: {
    type: 'quantity',
    label: 'Power',
    symbol: 'P',
    help: 'At the shaft, steady over that time. From a generator: its output divided by its efficiency.',
    kind: 'power',
    physical: { minimum: 100, maximum: 1e9 },
    default: 1.5e6,
    // Common practice: electrical instruments of a load test.
    accuracy: { relative: 0.01 },
  },
  netEnergy: {
    ...energy,
    label: 'Net energy of the fuel burnt',
    symbol: 'H',
    help: 'Measured, or from the calculator of the energy in a fuel.',
    // The estimate from density, and no better than two calorimeters.
    accuracy: { relative: 0.005 },
  },
  referenceEnergy: {
    ...energy,
    label: 'Net energy of the reference fuel',
    symbol: 'H_r',
    help: 'The one the declaration names: 42.7 MJ/kg is usual (from memory).',
  },
  correction: {
    type: 'choice',
    label: 'Ambient conditions',
    help: 'The rule for ambient conditions stands here from memory. For an acceptance test use the standard itself and the maker’s figures.',
    options: [
      { value: 'none', label: 'Leave them as they were: fuel only' },
      { value: 'charge-cooled', label: 'Correct: turbocharged with charge air cooler' },
      { value: 'turbocharged', label: 'Correct: turbocharged without cooler' },
      { value: 'natural', label: 'Correct: not turbocharged, limited by heat' },
    ],
    default: 'none',
  },
  pressure: {
    type: 'quantity',
    label: 'Barometric pressure',
    symbol: 'p',
    help: 'At the place, not brought to sea level as weather reports give it.',
    kind: 'absolutePressure',
    physical: { minimum: 4e4, maximum: 1.2e5 },
    valid: { minimum: 7e4, maximum: 1.1e5 },
    default: 1e5,
    accuracy: { absolute: 300 },
    when: ambient,
  },
  airTemperature: {
    ...air,
    label: 'Temperature of the intake air',
    symbol: 'T',
    help: 'At the inlet of the engine or its turbocharger.',
    when: ambient,
  },
  coolantTemperature: {
    ...air,
    label: 'Temperature of the coolant into the charge air cooler',
    symbol: 'T_c',
    help: 'Not that of the charge air itself.',
    when: { input: 'correction', oneOf: ['charge-cooled'] },
  },
  mechanicalEfficiency: {
    type: 'quantity',
    label: 'Mechanical efficiency',
    symbol: 'η_m',
    help: 'From the maker; 80 % is taken where none is stated (from memory).',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0.4, maximum: 1 },
    valid: { minimum: 0.7, maximum: 0.95 },
    default: USUAL_MECHANICAL_EFFICIENCY,
    accuracy: { absolute: 0.03 },
    when: ambient,
  },
} as const satisfies Inputs
