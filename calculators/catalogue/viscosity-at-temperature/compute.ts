import type { Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import {
  lineThroughPoint,
  lineThroughPoints,
  viscosityOnLine,
  waltherZ,
  type WaltherLine,
} from '../../fuel/viscosity-walther.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'
import { noticesOf } from './notices.ts'

export type Values = ValuesOf<typeof inputs>

/** Closer than a laboratory can hold two baths apart, the slope is nothing but noise. */
const SAME_TEMPERATURE = 0.01

/** Ten thousand times stiffer than the end of the equation's range: what the line says there is no viscosity. */
const STIFFEST = 1e5

function whyNoLine(input: Values): Refusal | undefined {
  const apart = input.secondTemperature - input.firstTemperature
  if (Math.abs(apart) < SAME_TEMPERATURE) {
    return {
      field: 'secondTemperature',
      reason: `${inputs.secondTemperature.label} is ${inWords(input.secondTemperature, 'temperature')}, the same as the first one`,
      accepted: 'a temperature that differs from the first one, best by 20 K or more',
    }
  }
  const warmerIsThinner = (input.secondViscosity - input.firstViscosity) * apart < 0
  if (!warmerIsThinner) {
    const second = `${inWords(input.secondViscosity, 'kinematicViscosity')} at ${inWords(input.secondTemperature, 'temperature')}`
    const first = `${inWords(input.firstViscosity, 'kinematicViscosity')} at ${inWords(input.firstTemperature, 'temperature')}`
    return {
      field: 'secondViscosity',
      reason: `The viscosities fall the wrong way: ${first}, but ${second}`,
      accepted: `${inputs.secondViscosity.label}: ${apart > 0 ? 'less' : 'more'} than ${inWords(input.firstViscosity, 'kinematicViscosity')}, since the warmer fuel is the thinner one`,
    }
  }
  return undefined
}

/** The line through what is known. */
export function lineOf(input: Values): WaltherLine {
  const first = { temperature: input.firstTemperature, kinematicViscosity: input.firstViscosity }
  if (input.form === 'point-and-slope') return lineThroughPoint(first, input.slope)
  const second = { temperature: input.secondTemperature, kinematicViscosity: input.secondViscosity }
  return lineThroughPoints(first, second)
}

function ratio(label: string, symbol: string, rule: string, value: number): Step {
  return { label, symbol, rule, value, kind: 'ratio' }
}

function stepsOf(input: Values, line: WaltherLine, kinematicViscosity: number): Step[] {
  const twoPoints = input.form === 'two-points'
  const form = (index: string) => `ν${index} + 0.7 + exp(−1.47 − 1.84ν${index} − 0.51ν${index}²)`
  return [
    ratio('Z of the first viscosity', 'Z₁', form('₁'), waltherZ(input.firstViscosity)),
    ...(twoPoints
      ? [
          ratio('Z of the second viscosity', 'Z₂', form('₂'), waltherZ(input.secondViscosity)),
          ratio('Slope of the line', 'B', '(log log Z₁ − log log Z₂) / (log T₂ − log T₁)', line.slope),
        ]
      : []),
    ratio('Intercept of the line', 'A', 'log log Z₁ + B log T₁', line.intercept),
    ratio('Z at the wanted temperature', 'Z', '10^(10^(A − B log T))', waltherZ(kinematicViscosity)),
    {
      label: 'Viscosity at the wanted temperature',
      symbol: 'ν',
      rule: `the ν for which ${form('')} = Z, solved exactly`,
      value: kinematicViscosity,
      kind: 'kinematicViscosity',
    },
  ]
}

/** Viscosity at the wanted temperature, with working and notices, or why there is none. */
export function compute(input: Values) {
  if (input.form === 'two-points') {
    const refusal = whyNoLine(input)
    if (refusal) return { refusal }
  }
  const line = lineOf(input)
  const kinematicViscosity = viscosityOnLine(line, input.wantedTemperature)
  if (!(kinematicViscosity <= STIFFEST)) {
    return {
      refusal: {
        field: 'wantedTemperature',
        reason: `${inputs.wantedTemperature.label} is ${inWords(input.wantedTemperature, 'temperature')}, where the line gives a viscosity that no liquid has`,
        accepted: 'a temperature nearer to the measured ones',
      },
    }
  }
  return {
    outputs: { kinematicViscosity },
    steps: stepsOf(input, line, kinematicViscosity),
    notices: noticesOf(input, kinematicViscosity),
  }
}
