import type { FuelRecord, Inputs, QuantityInput, Refusal, Step, ValuesOf } from '../calculator/types.ts'
import {
  lineThroughPoint,
  lineThroughPoints,
  viscosityOnLine,
  WALTHER_RANGE,
  waltherZ,
  type WaltherLine,
} from '../fuel/viscosity-walther.ts'
import { inWords } from './words.ts'

/** The lower end keeps clear of 0.1153 mm²/s, where the equation's double logarithm ends. */
export const viscosityLimits = {
  kind: 'kinematicViscosity',
  physical: { minimum: 0.15e-6, maximum: 100 },
  valid: WALTHER_RANGE,
  // Common practice, rounded up: two laboratories agree within 0.65 % on base oils by ISO 3104.
  accuracy: { relative: 0.01 },
} as const satisfies Partial<QuantityInput>

/** Wide enough for any fuel, narrow enough that the equation still gives numbers. */
export const temperatureLimits = {
  kind: 'temperature',
  physical: { minimum: 150, maximum: 800 },
  valid: { minimum: 203.15, maximum: 643.15 },
  accuracy: { absolute: 0.1 },
} as const satisfies Partial<QuantityInput>

/** What is known of a fuel's viscosity: two measured points, or one and a slope. */
export const lineInputs = {
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
} as const satisfies Inputs

export type LineValues = ValuesOf<typeof lineInputs>

/** Closer than a laboratory can hold two baths apart, the slope is nothing but noise. */
const SAME_TEMPERATURE = 0.01

/** Why two measured points give no line of a liquid, or undefined where they do. */
export function whyNoLine(input: LineValues): Refusal | undefined {
  if (input.form === 'point-and-slope') return undefined
  const apart = input.secondTemperature - input.firstTemperature
  if (Math.abs(apart) < SAME_TEMPERATURE) {
    return {
      field: 'secondTemperature',
      reason: `${lineInputs.secondTemperature.label} is ${inWords(input.secondTemperature, 'temperature')}, the same as the first one`,
      accepted: 'a temperature that differs from the first one, best by 20 K or more',
    }
  }
  const warmerIsThinner = (input.secondViscosity - input.firstViscosity) * apart < 0
  if (warmerIsThinner) return undefined
  const second = `${inWords(input.secondViscosity, 'kinematicViscosity')} at ${inWords(input.secondTemperature, 'temperature')}`
  const first = `${inWords(input.firstViscosity, 'kinematicViscosity')} at ${inWords(input.firstTemperature, 'temperature')}`
  return {
    field: 'secondViscosity',
    reason: `The viscosities fall the wrong way: ${first}, but ${second}`,
    accepted: `${lineInputs.secondViscosity.label}: ${apart > 0 ? 'less' : 'more'} than ${inWords(input.firstViscosity, 'kinematicViscosity')}, since the warmer fuel is the thinner one`,
  }
}

/** The line through what is known. */
export function lineOf(input: LineValues): WaltherLine {
  const first = { temperature: input.firstTemperature, kinematicViscosity: input.firstViscosity }
  if (input.form === 'point-and-slope') return lineThroughPoint(first, input.slope)
  const second = { temperature: input.secondTemperature, kinematicViscosity: input.secondViscosity }
  return lineThroughPoints(first, second)
}

export function ratioStep(label: string, symbol: string, rule: string, value: number): Step {
  return { label, symbol, rule, value, kind: 'ratio' }
}

/** Z in symbols, with an index: 'ν₁ + 0.7 + exp(−1.47 − 1.84ν₁ − 0.51ν₁²)'. */
export const zInSymbols = (index = '') => `ν${index} + 0.7 + exp(−1.47 − 1.84ν${index} − 0.51ν${index}²)`

/** The working up to A and B. */
export function lineSteps(input: LineValues, line: WaltherLine): Step[] {
  return [
    ratioStep('Z of the first viscosity', 'Z₁', zInSymbols('₁'), waltherZ(input.firstViscosity)),
    ...(input.form === 'two-points'
      ? [
          ratioStep('Z of the second viscosity', 'Z₂', zInSymbols('₂'), waltherZ(input.secondViscosity)),
          ratioStep('Slope of the line', 'B', '(log log Z₁ − log log Z₂) / (log T₂ − log T₁)', line.slope),
        ]
      : []),
    ratioStep('Intercept of the line', 'A', 'log log Z₁ + B log T₁', line.intercept),
  ]
}

/** The fuel's coldest and warmest measured points: the longest line it offers. */
export function lineFromFuel(fuel: FuelRecord) {
  const first = fuel.viscosities[0]
  const last = fuel.viscosities.at(-1)
  if (!first || !last) return {}
  return {
    firstTemperature: first.temperature,
    firstViscosity: first.kinematicViscosity,
    secondTemperature: last.temperature,
    secondViscosity: last.kinematicViscosity,
    cloudPoint: fuel.cloudPoint,
  }
}

const FORTY_CELSIUS = 313.15

/**
 * Viscosity of a fuel of the data at 40 °C, where certificates give it: the measured value, or one from the line of the
 * outer points, rounded as a certificate would round it. [m²/s]
 */
export function viscosityAt40(fuel: FuelRecord): number | undefined {
  const measured = fuel.viscosities.find((point) => Math.abs(point.temperature - FORTY_CELSIUS) < 0.01)
  if (measured) return measured.kinematicViscosity
  const first = fuel.viscosities[0]
  const last = fuel.viscosities.at(-1)
  if (!first || !last) return undefined
  return Number(viscosityOnLine(lineThroughPoints(first, last), FORTY_CELSIUS).toPrecision(3))
}
