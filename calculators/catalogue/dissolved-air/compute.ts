import type { ValuesOf } from '../../calculator/types.ts'
import { airSolubility, gasGrown, gasReleased, liquidShare } from '../../hydraulics/gas.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Common practice, no published source. */
const LITTLE = 0.02
const MUCH = 0.1

const verdictOf = (lost: number) =>
  lost === 0 ? 'none' : lost < LITTLE ? 'little' : lost < MUCH ? 'some' : 'much'

/** Air in the fuel, what comes out at the lower pressure, and the share of a pump that it fills. */
export function compute(input: Values) {
  const pressure = input.saturation - input.vacuum
  if (!(pressure > 0)) {
    return {
      refusal: {
        field: 'vacuum',
        reason: `${inputs.vacuum.label} is ${inWords(input.vacuum, 'pressureDifference')}, as much as there was or more`,
        accepted: `less than ${inWords(input.saturation, 'pressureDifference')}`,
      },
    }
  }
  const given = input.solubilityFrom === 'given'
  const solubility = given ? input.solubility : airSolubility(input.temperature, input.densityAt15)
  const released = gasReleased(solubility, input.saturation, pressure)
  const grown = gasGrown(input.entrained, input.saturation, pressure)
  const gas = released + grown
  const liquid = liquidShare(gas)
  return {
    outputs: { solubility, gas, lost: 1 - liquid, liquid, verdict: verdictOf(1 - liquid) },
    steps: [
      step(
        'Air that a volume of fuel dissolves',
        'L',
        given ? 'given' : '7.70 (0.980 − d) · 0.300 exp[0.639 (700 − T)/T ln(3.333 · 0.098)]',
        solubility,
        'ratio',
      ),
      step('Pressure there', 'p', 'p₀ − V', pressure, 'absolutePressure'),
      step('Gas that comes out', 'φ_d', 'L (p₀ − p) / p', released, 'ratio'),
      step('Gas that was carried, grown', 'φ_e', 'e/(1 − e) · p₀/p', grown, 'ratio'),
      step('Share of a pump still filled with fuel', 'x', '1 / (1 + φ_d + φ_e)', liquid, 'ratio'),
    ],
    notices: [
      {
        grade: 'information' as const,
        text: 'This is the balance after all the excess has come out. It needs time, stirring and rough walls: in the moment between strainer and pump a part stays dissolved, and at the far end of a long line most has come out.',
      },
    ],
  } as const
}
