import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { normalTail } from '../../statistics/normal.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Half-width of a 95 % interval in standard deviations. */
const COVERAGE = 1.96
/** Smaller chances are not told apart: nobody knows a gauge's errors so far out. */
const SMALLEST_CHANCE = 1e-6

/** From here to the limit a third reading decides more than any sum. */
const NEARLY = 0.7

function noticesOf(input: Values, shareOfLimit: number): Notice[] {
  const notices: Notice[] = []
  if (shareOfLimit >= NEARLY && shareOfLimit < 1.3)
    notices.push({
      grade: 'caution',
      text: 'It lies close to what the gauges leave open. Read both again, or change the two gauges over: what goes with the gauge is the gauge.',
    })
  if (input.gauges === 'one')
    notices.push({
      grade: 'information',
      text: 'With one gauge its own error drops out of the difference, as long as both readings lie in the same part of the scale.',
    })
  if (
    input.unrest >
    (input.gauges === 'two' ? Math.hypot(input.firstAccuracy, input.secondAccuracy) : input.repeatability)
  )
    notices.push({
      grade: 'caution',
      text: 'What is measured swings more than the gauges are wrong. A better gauge does not help; the mean of several readings does.',
    })
  return notices
}

/** The difference against what gauges and unrest leave open. */
export function compute(input: Values) {
  const difference = input.secondReading - input.firstReading
  const gauges =
    input.gauges === 'two'
      ? Math.hypot(input.firstAccuracy, input.secondAccuracy)
      : Math.SQRT2 * input.repeatability
  const smallest = Math.hypot(gauges, Math.SQRT2 * input.unrest)
  const ratio = Math.abs(difference) / smallest
  const chance = Math.max(SMALLEST_CHANCE, Math.min(1, 2 * normalTail(COVERAGE * ratio)))
  return {
    outputs: {
      verdict: ratio > 1 ? ('real' as const) : ('cannotBeTold' as const),
      difference,
      smallest,
      ratio,
      chance,
    },
    steps: [
      step('Difference', 'd', 'x₂ − x₁', difference, 'ratio'),
      step(
        'What the gauges leave open',
        'U_g',
        input.gauges === 'two' ? '√(U₁² + U₂²)' : '√2 U_r',
        gauges,
        'ratio',
      ),
      step('With the unrest of both readings', 'U', '√(U_g² + 2U_p²)', smallest, 'ratio'),
      step('Difference over what is left open', 'E', '|d| / U', ratio, 'ratio'),
      step(
        'Chance of so large a difference where there is none',
        'P',
        'both tails of the normal distribution beyond 1.96 E',
        chance,
        'ratio',
      ),
    ],
    notices: noticesOf(input, ratio),
  }
}
