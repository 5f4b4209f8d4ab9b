import { checkValues, validityNotices } from './check-values.ts'
import type { ShownUnits, Values } from './check-values.ts'
import { otherVerdicts } from './other-verdicts.ts'
import { NO_FINITE_RESULT, refuse } from './refusal.ts'
import { relevantInputs } from './relevant-inputs.ts'
import type { Calculator, Computation, InputValue, Notice, Outputs, Refusal, Step } from './types.ts'
import { surroundingsOf, uncertaintyOf } from './uncertainty.ts'
import type { Draws, Uncertainty } from './uncertainty.ts'

export interface QuantityResult {
  /** SI. */
  readonly value: number
  /** SI: half-width of an interval that holds the true value in about 95 % of cases. */
  readonly uncertainty?: number
  readonly uncertaintyMethod?: NonNullable<Uncertainty['method']>
  /** Why there is no uncertainty although some inputs have an accuracy. */
  readonly uncertaintyNote?: string
  /** SI, only from a run whose draws come later: there will be an uncertainty of about this size. */
  readonly uncertaintyPending?: number
}

export interface VerdictResult {
  /** One of the output's options. */
  readonly value: string
}

export type ResultValue = QuantityResult | VerdictResult

export type RunResult =
  | {
      readonly outputs: Readonly<Record<string, ResultValue>>
      readonly steps: readonly Step[]
      readonly notices: readonly Notice[]
    }
  | { readonly refusal: Refusal }

/** Whether a result is a quantity, not an outcome in words. */
export function isQuantityResult(result: ResultValue | undefined): result is QuantityResult {
  return typeof result?.value === 'number'
}

/** @param at the output or step that has none [-], where it is known */
function noFiniteResult(at?: string) {
  const where = at === undefined ? '' : `: «${at}» has none`
  return refuse('', `${NO_FINITE_RESULT}${where}`, 'values nearer to those of the worked example')
}

/** Label of the first output or step that is no finite number and no declared outcome. */
function unsound(calculator: Calculator, computation: Exclude<Computation<Outputs>, { refusal: unknown }>) {
  const outputs: Readonly<Record<string, unknown>> = computation.outputs
  const failed = Object.entries(calculator.outputs).find(([id, output]) =>
    output.type === 'quantity'
      ? !Number.isFinite(outputs[id])
      : !(typeof outputs[id] === 'string' && Object.hasOwn(output.options, outputs[id])),
  )
  return failed?.[1].label ?? computation.steps.find((step) => !Number.isFinite(step.value))?.label
}

/** Calls the method and lets nothing through but finite numbers and declared outcomes. */
function computed(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
): Computation<Outputs> {
  let computation: Computation<Outputs>
  try {
    computation = calculator.compute(values as Parameters<Calculator['compute']>[0])
  } catch {
    return noFiniteResult()
  }
  if ('refusal' in computation) return computation
  const at = unsound(calculator, computation)
  return at === undefined ? computation : noFiniteResult(at)
}

/**
 * The input that alone stands in the way of a finite result: with its default in its place there is one. '' where
 * there is no such input, or the method has refused for a reason of its own.
 */
function inputAtFault(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  { reason }: Refusal,
): string {
  if (!reason.startsWith(NO_FINITE_RESULT)) return ''
  const quantities = relevantInputs(calculator, values).filter(
    (id) => calculator.inputs[id]?.type !== 'choice' && values[id] !== calculator.inputs[id]?.default,
  )
  return (
    quantities.find((id) => {
      const mended = { ...values, [id]: calculator.inputs[id]?.default as InputValue }
      return !('refusal' in computed(calculator, mended))
    }) ?? ''
  )
}

function badAccuracy(calculator: Calculator, accuracies: Readonly<Record<string, number>>) {
  for (const [id, value] of Object.entries(accuracies)) {
    const field = id.split('.')[0] ?? ''
    if (!Object.hasOwn(calculator.inputs, field))
      return refuse(
        '',
        `«${id.slice(0, 40)}» has an accuracy but is not an input here`,
        Object.keys(calculator.inputs).join(', '),
      )
    if (typeof value !== 'number' || !Number.isFinite(value) || value < 0)
      return refuse(
        field,
        `The accuracy of ${calculator.inputs[field]?.label} is not a number of zero or more`,
        'zero or more',
      )
    const input = calculator.inputs[field]
    const quantity = input?.type === 'table' ? input.columns[id.split('.')[1] ?? ''] : input
    if (quantity === undefined || !('physical' in quantity)) continue
    const span = quantity.physical.maximum - quantity.physical.minimum
    if (value > span)
      return refuse(
        field,
        `The accuracy of ${quantity.label} is wider than the whole range of possible values`,
        `0 to ${Number(span.toPrecision(6))} in SI`,
      )
  }
  return undefined
}

/** A spread with what the method itself says beside it, as a root of squares. */
function withOwn(spread: Uncertainty, own = 0): Uncertainty {
  if (!(own > 0) || spread.note !== undefined) return spread
  if (spread.pending !== undefined) return { pending: Math.hypot(own, spread.pending) }
  return { value: Math.hypot(own, spread.value ?? 0), method: spread.method ?? 'first order' }
}

function quantityResult(
  value: number,
  { value: uncertainty, method, note, pending }: Uncertainty,
): QuantityResult {
  return {
    value,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(method === undefined ? {} : { uncertaintyMethod: method }),
    ...(note === undefined ? {} : { uncertaintyNote: note }),
    ...(pending === undefined ? {} : { uncertaintyPending: pending }),
  }
}

/**
 * Runs a calculator. `compute` is called only with complete values, each finite and physically possible; what does
 * not count with the present choices is replaced by its default. Never gives NaN or an infinity, never throws for
 * any value.
 * @param values what was given [SI], by input; what is missing takes its default
 * @param accuracies half-widths that replace the declared accuracies [SI], by input or 'table.column'; 0 for exact
 * @param shownUnits units in which refusals and notices are worded [-], by input
 * @param draws 'later' leaves the uncertainty of strongly curved outputs pending, so that the result is there at once
 * @returns outputs with uncertainty, the steps of the working and graded notices; or a refusal
 * @source gum-2008
 */
export function run(
  calculator: Calculator,
  values: Values,
  accuracies: Readonly<Record<string, number>> = {},
  shownUnits: ShownUnits = {},
  draws: Draws = 'now',
): RunResult {
  const checked = checkValues(calculator, values, shownUnits)
  if ('refusal' in checked) return checked
  const wrongAccuracy = badAccuracy(calculator, accuracies)
  if (wrongAccuracy) return wrongAccuracy
  const computation = computed(calculator, checked.values)
  if ('refusal' in computation) {
    const { refusal } = computation
    return {
      refusal: { ...refusal, field: refusal.field || inputAtFault(calculator, checked.values, refusal) },
    }
  }
  // Only what is possible is drawn, and choices stay: no need to check, and to word, each of a thousand draws.
  const evaluate = (moved: Values) => {
    const result = computed(calculator, moved)
    return 'refusal' in result ? undefined : result.outputs
  }
  const surroundings = surroundingsOf(calculator, checked.values, accuracies, evaluate)
  const spreads = uncertaintyOf(surroundings, computation.outputs, evaluate, draws)
  const outputs = Object.keys(calculator.outputs).map((id): [string, ResultValue] => {
    const value = computation.outputs[id] as number | string
    const spread = withOwn(spreads[id] ?? {}, computation.uncertainties?.[id])
    return [id, typeof value === 'number' ? quantityResult(value, spread) : { value }]
  })
  return {
    outputs: Object.fromEntries(outputs),
    steps: computation.steps,
    notices: [
      ...validityNotices(calculator, checked.values, shownUnits),
      ...otherVerdicts(calculator, computation.outputs, surroundings),
      ...computation.notices,
    ],
  }
}

/** Whether some of the outputs wait for their draws. */
export const isPending = (outputs: Readonly<Record<string, ResultValue>>): boolean =>
  Object.values(outputs).some((output) => isQuantityResult(output) && output.uncertaintyPending !== undefined)

/**
 * The outputs alone, without uncertainty: for charts and for many runs in a row.
 * @param values what was given [SI], by input
 */
export function runPlain(calculator: Calculator, values: Values): Computation<Outputs> {
  const checked = checkValues(calculator, values)
  return 'refusal' in checked ? checked : computed(calculator, checked.values)
}
