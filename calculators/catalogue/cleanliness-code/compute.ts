import { refuse } from '../../calculator/refusal.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { countsOf, FEWEST_SURE, scaleNumber } from '../../cleanliness/iso-4406.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

const SIZES = [4, 6, 14] as const
type Three = readonly [number, number, number]
type NumberField = 'count4' | 'count6' | 'count14' | 'code4' | 'code6' | 'code14'

function whyWrong(values: Three, fields: readonly [NumberField, NumberField, NumberField], whole: boolean) {
  for (const [index, value] of values.entries()) {
    const field = fields[index] ?? fields[0]
    const before = values[index - 1]
    const label = inputs[field].label
    if (whole && !Number.isInteger(value))
      return refuse(field, `${label} is ${value}, not a whole number`, 'a whole number of 0 to 28')
    if (before !== undefined && value > before)
      return refuse(
        field,
        `${label} is above ${inputs[fields[index - 1] ?? fields[0]].label.toLowerCase()}, which includes these particles`,
        'at most that of the smaller size',
      )
  }
  return undefined
}

/** '18/16/≥13'. */
function written(scale: Three, few: readonly boolean[]): string {
  return scale.map((number, index) => `${few[index] ? '≥' : ''}${number}`).join('/')
}

function outcome(scale: Three, few: readonly boolean[], notices: Notice[]) {
  const ranges = scale.map(countsOf)
  const [first, second, third] = ranges.map((range) => range.upTo)
  return {
    outputs: {
      scale4: scale[0],
      scale6: scale[1],
      scale14: scale[2],
      upTo4: first ?? Number.NaN,
      upTo6: second ?? Number.NaN,
      upTo14: third ?? Number.NaN,
      verdict: few.some(Boolean) ? ('few' as const) : ('sure' as const),
    },
    steps: ranges.flatMap(({ above, upTo }, index) => {
      const size = SIZES[index] ?? 4
      const rule = `table of ISO 4406, number ${scale[index]}`
      return [
        step(`Lower end, ${size} µm(c): more than`, `N_${size}`, rule, above, 'particleConcentration'),
        step(`Upper end, ${size} µm(c): up to`, `N_${size}`, rule, upTo, 'particleConcentration'),
      ]
    }),
    notices: [{ grade: 'information', text: `The code is ${written(scale, few)}.` } as const, ...notices],
  }
}

function fromCounts(input: Values) {
  const counts: Three = [input.count4, input.count6, input.count14]
  const refusal = whyWrong(counts, ['count4', 'count6', 'count14'], false)
  if (refusal) return refusal
  const [one, two, three] = counts.map(scaleNumber)
  const few = counts.map((count) => count * input.sample < FEWEST_SURE)
  const notices: Notice[] = few.some(Boolean)
    ? [
        {
          grade: 'caution',
          text: `Fewer than ${FEWEST_SURE} particles of a size were seen in ${inWords(input.sample, 'volume')}, so its number carries the sign ≥: the true one may be higher. Count more of the sample.`,
        },
      ]
    : []
  return outcome([one ?? -1, two ?? -1, three ?? -1], few, notices)
}

/** The code of the counts, or the counts of the code. */
export function compute(input: Values) {
  if (input.direction === 'from-counts') return fromCounts(input)
  const scale: Three = [input.code4, input.code6, input.code14]
  return whyWrong(scale, ['code4', 'code6', 'code14'], true) ?? outcome(scale, [], [])
}
