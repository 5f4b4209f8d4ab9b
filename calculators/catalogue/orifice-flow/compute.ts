import type { ValuesOf } from '../../calculator/types.ts'
import { orificeFlow } from '../../hydraulics/orifice-flow.ts'
import { line } from '../working-line.ts'
import type { inputs } from './inputs.ts'
import { plate } from './plate.ts'
import { restrictor } from './restrictor.ts'

export type Values = ValuesOf<typeof inputs>

/** Further digits of a coefficient are nothing but the rounding of this machine. */
const rounded = (coefficient: number) => Math.round(coefficient * 1e6) / 1e6

/** Flow or drop of an orifice, with the coefficient and how well it is known. */
export function compute(input: Values) {
  const found = input.form === 'plate' ? plate(input) : restrictor(input, input.form)
  if ('refusal' in found) return found
  const { flow, drop, coefficient, low, high, reynolds, notices } = found
  const ratio = input.bore / input.pipe
  const flowLow = orificeFlow(low, input.bore, input.pipe, drop, input.density)
  const flowHigh = orificeFlow(high, input.bore, input.pipe, drop, input.density)
  const rule =
    input.form === 'plate'
      ? 'Reader-Harris and Gallagher, with the Reynolds number of the line'
      : 'C_t (x²/(1 + x²))^¼, x the drop over that at which laminar and turbulent flow meet'
  return {
    outputs: {
      flow,
      drop,
      coefficient: rounded(coefficient),
      coefficientLow: rounded(low),
      coefficientHigh: rounded(high),
      flowLow,
      flowHigh,
      reynolds,
    },
    steps: [
      line('Ratio of the bores', 'β', 'd/D', ratio),
      line('Approach factor', 'E', '1/√(1 − β⁴)', 1 / Math.sqrt(1 - ratio ** 4)),
      line('Area of the bore', 'A', 'π d²/4', (Math.PI / 4) * input.bore ** 2, 'area'),
      line('Coefficient', 'C', rule, coefficient),
      line('Flow', 'Q', 'C E A √(2 Δp/ρ)', flow, 'volumeFlow'),
      line('Reynolds number', 'Re', input.form === 'plate' ? '4 Q/(π D ν)' : '4 Q/(π d ν)', reynolds),
    ],
    notices,
  }
}
