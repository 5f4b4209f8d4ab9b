import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import {
  consumptionRatio,
  indicatedPowerRatio,
  onReferenceFuel,
} from '../../engine/consumption-correction.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** No reciprocating engine has passed this; none that runs falls far below the other. Common practice. */
const BEST_EFFICIENCY = 0.56
const WORST_EFFICIENCY = 0.15
/** The rule for ambient conditions is a small correction; past this it is guesswork. */
const LARGE_CORRECTION = 0.05

interface Ambient {
  readonly ratio: number
  readonly indicated: number
}

function ambientOf(input: Values): Ambient {
  if (input.correction === 'none') return { ratio: 1, indicated: 1 }
  const indicated = indicatedPowerRatio(input, input.correction)
  return { ratio: consumptionRatio(indicated, input.mechanicalEfficiency), indicated }
}

function noticesOf(efficiency: number, ambient: Ambient): Notice[] {
  const notices: Notice[] = []
  if (efficiency > BEST_EFFICIENCY)
    notices.push({
      grade: 'action',
      text: 'No piston engine turns so much of its fuel into work. Look for returned fuel counted twice, a wrong power or a wrong time.',
    })
  if (efficiency < WORST_EFFICIENCY)
    notices.push({
      grade: 'caution',
      text: 'That is far more fuel than a loaded engine burns. At idle or light load the figure says little.',
    })
  if (Math.abs(ambient.ratio - 1) > LARGE_CORRECTION)
    notices.push({
      grade: 'caution',
      text: 'The correction for ambient conditions is above 5 %: measure again nearer to reference conditions.',
    })
  return notices
}

function stepsOf(input: Values, mass: number, ambient: Ambient): Step[] {
  const ratio = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'ratio',
  })
  const massStep: Step = {
    label: 'Mass of fuel burnt',
    symbol: 'm',
    rule: input.measured === 'volume' ? 'V ρ' : 'as weighed',
    value: mass,
    kind: 'mass',
  }
  const fuelStep = ratio('Correction for the fuel', 'f', 'H / H_r', input.netEnergy / input.referenceEnergy)
  if (input.correction === 'none') return [massStep, fuelStep]
  const rules = {
    'charge-cooled': '(p/p_r)^0.7 (T_r/T)^1.2 (T_r/T_c)',
    turbocharged: '(p/p_r)^0.7 (T_r/T)²',
    natural: '(p/p_r) (T_r/T)',
  }
  return [
    massStep,
    fuelStep,
    ratio(
      'Ratio of indicated power, p_r 100 kPa and T_r 298 K',
      'k',
      rules[input.correction],
      ambient.indicated,
    ),
    ratio('Ratio of specific consumption', 'β', 'k / [k − 0.7 (1 − k)(1/η_m − 1)]', ambient.ratio),
  ]
}

/** Specific fuel consumption as measured and brought to reference, with working; or why there is none. */
export function compute(input: Values) {
  const mass = input.measured === 'volume' ? input.volume * input.density : input.mass
  const asMeasured = mass / (input.power * input.time)
  const ambient = ambientOf(input)
  if (!(ambient.ratio > 0 && ambient.ratio < 3)) {
    return {
      refusal: {
        field: 'pressure',
        reason:
          'The rule for ambient conditions ends before air so thin, so hot or an engine of so much friction',
        accepted: 'a barometer, temperatures and a mechanical efficiency nearer to reference',
      },
    }
  }
  const onFuel = onReferenceFuel(asMeasured, input.netEnergy, input.referenceEnergy)
  const efficiency = 1 / (asMeasured * input.netEnergy)
  return {
    outputs: { atReference: onFuel / ambient.ratio, onFuel, asMeasured, efficiency },
    steps: stepsOf(input, mass, ambient),
    notices: noticesOf(efficiency, ambient),
  }
}
