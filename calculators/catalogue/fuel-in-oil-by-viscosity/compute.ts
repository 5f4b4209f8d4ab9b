import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { shareByLogarithm, shareByWalther } from '../../fuel/viscosity-blend.ts'
import { doubleLogarithm } from '../../fuel/viscosity-walther.ts'
import { DILUTION_GRADES, dilutionGrade } from '../dilution-grades.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Under this ratio the fuel is no longer much thinner than the oil, and the method has nothing to work with. */
const LEAST_RATIO = 2

const viscosityInWords = (value: number) => inWords(value, 'kinematicViscosity')
const percent = (share: number) => `${(share * 100).toFixed(1)} %`

function refusalOf(input: Values, clean: number): Refusal | undefined {
  if (clean < LEAST_RATIO * input.fuelViscosity) {
    return {
      field: 'fuelViscosity',
      reason: `${inputs.fuelViscosity.label} is ${viscosityInWords(input.fuelViscosity)}, not much thinner than the oil`,
      accepted: `up to ${viscosityInWords(clean / LEAST_RATIO)}`,
    }
  }
  if (input.usedViscosity >= input.fuelViscosity) return undefined
  return {
    field: 'usedViscosity',
    reason: `${inputs.usedViscosity.label} is ${viscosityInWords(input.usedViscosity)}, thinner than the fuel itself`,
    accepted: `${viscosityInWords(input.fuelViscosity)} or more`,
  }
}

function noticesOf(input: Values, clean: number, share: number, byLogarithm: number): Notice[] {
  if (input.usedViscosity >= clean)
    return [
      {
        grade: 'caution',
        text: 'The used oil is not thinner than the new one. That does not prove the absence of fuel: soot and age thicken, and can hide it. Look at the flash point, or order a gas chromatography.',
      },
    ]
  const grades = new Set([dilutionGrade(share), dilutionGrade(byLogarithm)])
  return [
    {
      grade: grades.size > 1 ? 'caution' : 'information',
      text: `Two usual rules of blending put it at ${percent(Math.min(share, byLogarithm))} and ${percent(Math.max(share, byLogarithm))}.${grades.size > 1 ? ' They fall into two grades: have it measured by gas chromatography before much is decided.' : ''}`,
    },
    {
      grade: 'information',
      text: 'A fall of viscosity has other causes: a thinner oil topped up, or a viscosity improver sheared down. Neither lowers the flash point.',
    },
  ]
}

/** Share of fuel in the oil from the fall of its viscosity, by two rules, with a grade of action. */
export function compute(input: Values) {
  const clean = input.newViscosity * (1 + input.thickening)
  const refusal = refusalOf(input, clean)
  if (refusal) return { refusal }
  const share = Math.max(0, shareByWalther(clean, input.fuelViscosity, input.usedViscosity))
  const byLogarithm = Math.max(0, shareByLogarithm(clean, input.fuelViscosity, input.usedViscosity))
  const fall = 1 - input.usedViscosity / input.newViscosity
  const ratio = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'ratio',
  })
  return {
    outputs: { share, verdict: dilutionGrade(share), byLogarithm, fall, fuelVolume: share * input.oilVolume },
    steps: [
      {
        label: 'Viscosity of the oil without fuel',
        symbol: 'ν_0',
        rule: 'ν_new (1 + s)',
        value: clean,
        kind: 'kinematicViscosity' as const,
      },
      ratio('W of the oil without fuel', 'W₀', 'log log Z at ν_0', doubleLogarithm(clean)),
      ratio('W of the used oil', 'W', 'log log Z at ν_used', doubleLogarithm(input.usedViscosity)),
      ratio('W of the fuel', 'W_f', 'log log Z at ν_fuel', doubleLogarithm(input.fuelViscosity)),
      ratio('Share of fuel', 'x', '(W₀ − W) / (W₀ − W_f), not under 0', share),
      ratio('Check: by the logarithmic rule', 'x′', 'ln(ν_0/ν_used) / ln(ν_0/ν_fuel)', byLogarithm),
      ratio(
        'From here on look for the leak',
        'x₁',
        'training course of the United States Navy',
        DILUTION_GRADES.faulty,
      ),
      ratio('From here on stop', 'x₂', 'the same', DILUTION_GRADES.serious),
    ],
    notices: noticesOf(input, clean, share, byLogarithm),
  }
}
