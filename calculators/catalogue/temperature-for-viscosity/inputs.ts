import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { lineInputs, temperatureLimits, viscosityLimits } from '../measured-line.ts'

/** A viscosity that a person chooses is exact: it has no accuracy. */
const chosenViscosity = {
  type: 'quantity',
  kind: 'kinematicViscosity',
  physical: viscosityLimits.physical,
  valid: viscosityLimits.valid,
} as const satisfies Partial<QuantityInput>

export const inputs = {
  ...lineInputs,
  wantedViscosity: {
    ...chosenViscosity,
    label: 'Wanted viscosity at the injectors',
    symbol: 'ν',
    help: "Between the two limits of the engine maker's manual, where the heater is to be set.",
    default: 3e-6,
  },
  highestViscosity: {
    ...chosenViscosity,
    label: 'Highest viscosity allowed',
    symbol: 'ν_max',
    help: 'Above it the fuel sprays coarsely and filters take more drop. From the manual.',
    default: 5e-6,
  },
  lowestViscosity: {
    ...chosenViscosity,
    label: 'Lowest viscosity allowed',
    symbol: 'ν_min',
    help: 'Below it the fuel lubricates poorly and leaks past plungers and pump. From the manual.',
    default: 2e-6,
  },
  controlBand: {
    type: 'quantity',
    label: 'Swing of the control about its set point',
    symbol: '±ΔT',
    help: 'What the fuel at the injectors swings by, up and down. Watch it over an hour of varying load.',
    kind: 'temperatureDifference',
    physical: { minimum: 0, maximum: 100 },
    default: 3,
  },
  highestTemperature: {
    type: 'quantity',
    label: 'Highest fuel temperature allowed',
    symbol: 'T_max',
    help: "A limit of the circuit, whatever the fuel: seals, injectors, gas in the header. From the engine maker's manual.",
    kind: 'temperature',
    physical: temperatureLimits.physical,
    default: 328.15,
  },
  cloudPoint: {
    type: 'quantity',
    label: 'Cloud point of the fuel',
    symbol: 'T_c',
    help: 'From the certificate. Under it wax separates and the fuel is no longer one liquid. It changes no number.',
    kind: 'temperature',
    physical: temperatureLimits.physical,
    default: 273.15,
  },
} as const satisfies Inputs
