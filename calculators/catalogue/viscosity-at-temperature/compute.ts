import type { ValuesOf } from '../../calculator/types.ts'
import { viscosityOnLine, waltherZ } from '../../fuel/viscosity-walther.ts'
import { lineOf, lineSteps, ratioStep, whyNoLine, zInSymbols } from '../measured-line.ts'
import { noticesOnLine } from '../measured-line-notices.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Ten thousand times stiffer than the end of the equation's range: what the line says there is no viscosity. */
const STIFFEST = 1e5

/** Viscosity at the wanted temperature, with working and notices, or why there is none. */
export function compute(input: Values) {
  const refusal = whyNoLine(input)
  if (refusal) return { refusal }
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
    steps: [
      ...lineSteps(input, line),
      ratioStep('Z at the wanted temperature', 'Z', '10^(10^(A − B log T))', waltherZ(kinematicViscosity)),
      {
        label: 'Viscosity at the wanted temperature',
        symbol: 'ν',
        rule: `the ν for which ${zInSymbols()} = Z, solved exactly`,
        value: kinematicViscosity,
        kind: 'kinematicViscosity' as const,
      },
    ],
    notices: noticesOnLine(input, input.cloudPoint, {
      name: 'The wanted temperature',
      temperature: input.wantedTemperature,
      kinematicViscosity,
    }),
  }
}
