import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { WALTHER_RANGE } from '../../fuel/viscosity-walther.ts'

/** The lower end keeps clear of 0.1153 mm²/s, where the equation's double logarithm ends. */
const viscosityLimits = {
  kind: 'kinematicViscosity',
  physical: { minimum: 0.15e-6, maximum: 100 },
  valid: WALTHER_RANGE,
  // Common practice, rounded up: two laboratories agree within 0.65 % on base oils by ISO 3104.
  accuracy: { relative: 0.01 },
} as const satisfies Partial<QuantityInput>

/** Wide enough for any fuel, narrow enough that the equation still gives numbers. */
const temperatureLimits = {
  kind: 'temperature',
  physical: { minimum: 150, maximum: 800 },
  valid: { minimum: 203.15, maximum: 643.15 },
  accuracy: { absolute: 0.1 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  form: {
    type: 'choice',
    label: 'What is known',
    help: 'Two measured viscosities make the surest line. With one only, the slope of a similar fuel must stand in.',
    options: [
      { value: 'two-points', label: 'Two measured viscosities' },
      { value: 'point-and-slope', label: 'One measured viscosity and the slope B' },
    ],
    default: 'two-points',
  },
  firstTemperature: {
    type: 'quantity',
    label: 'First temperature',
    symbol: 'T₁',
    help: 'Temperature at which the first viscosity was measured.',
    ...temperatureLimits,
    default: 288.15,
  },
  firstViscosity: {
    type: 'quantity',
    label: 'Viscosity at the first temperature',
    symbol: 'ν₁',
    help: 'Kinematic viscosity from the certificate of the fuel or the laboratory.',
    ...viscosityLimits,
    default: 5.5e-6,
  },
  secondTemperature: {
    type: 'quantity',
    label: 'Second temperature',
    symbol: 'T₂',
    help: 'Far from the first one: the line is the better for it.',
    ...temperatureLimits,
    default: 333.15,
    when: { input: 'form', oneOf: ['two-points'] },
  },
  secondViscosity: {
    type: 'quantity',
    label: 'Viscosity at the second temperature',
    symbol: 'ν₂',
    help: 'Lower than the other one if this temperature is the higher.',
    ...viscosityLimits,
    default: 2.1e-6,
    when: { input: 'form', oneOf: ['two-points'] },
  },
  slope: {
    type: 'quantity',
    label: 'Slope B',
    symbol: 'B',
    help: 'From the two-point form of a similar fuel. Distillates lie near 4, residual fuels lower.',
    kind: 'ratio',
    physical: { minimum: 0.1, maximum: 20 },
    valid: { minimum: 2.5, maximum: 5.5 },
    default: 4,
    accuracy: { relative: 0.05 },
    when: { input: 'form', oneOf: ['point-and-slope'] },
  },
  wantedTemperature: {
    type: 'quantity',
    label: 'Wanted temperature',
    symbol: 'T',
    help: 'Temperature for which the viscosity is asked.',
    ...temperatureLimits,
    default: 313.15,
  },
  cloudPoint: {
    type: 'quantity',
    label: 'Cloud point of the fuel',
    symbol: 'T_c',
    help: 'From the certificate. Under it wax separates and the fuel is no longer one liquid. It changes no number.',
    kind: 'temperature',
    physical: { minimum: 150, maximum: 800 },
    default: 273.15,
  },
} as const satisfies Inputs
