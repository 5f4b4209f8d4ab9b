import type { PlantState } from '../../calculators/checks/types.ts'
import type { Tellable } from '../../calculators/diagnosis/index.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { unitForSystem } from '../../calculators/quantity/kinds.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { spreadOf, type FieldSpecs } from '../calculator/fields.ts'
import { shownQuantity } from '../calculator/state.ts'
import { accuracyKey, statedAccuracy } from './accuracies.ts'
import { isAnswered, OTHER, type FinderState } from './finder-state.ts'
import { askedOf, type Asked } from './keys.ts'
import type { FinderOffer, FoundGroup } from './types.ts'

export const titleOf = ({ causes }: FinderOffer, id: string): string =>
  causes.find((cause) => cause.id === id)?.title ?? id

/** 'Return glass, priming' */
export function askedInWords({ states }: FinderOffer, { question, state }: Asked): string {
  return state === undefined ? question.label : `${question.label}, ${stateInWords(states[state].title)}`
}

/** 'Part load' → 'part load' */
export const stateInWords = (title: string): string => title.slice(0, 1).toLowerCase() + title.slice(1)

/** 'Look at the return glass, priming'; what is looked at when all stands needs no state. */
export function checkInWords(
  { states }: FinderOffer,
  { label }: { readonly label: string },
  state: PlantState | undefined,
): string {
  return state === undefined || state === 'stopped' ? label : `${label}, ${stateInWords(states[state].title)}`
}

/** What was answered to a question, in words or with its unit; nothing where it was not looked at. */
export function answerInWords(specs: FieldSpecs, state: FinderState, { key, question }: Asked): string {
  const value = state.said[key]
  if (value !== undefined) return question.values?.[value] ?? value
  const [field, spec] = [state.gauges.fields[key], specs[key]]
  return field === undefined || spec === undefined || field.text.trim() === ''
    ? ''
    : shownQuantity(field, spec)
}

/** A line of what was answered. */
export interface AnswerLine {
  readonly key: string
  readonly label: string
  readonly answer: string
  /** It was found by a check that is more than a look or a reading. */
  readonly byCheck: boolean
}

/** Everything that was answered, in the order of the questions. */
export function answerLines(offer: FinderOffer, specs: FieldSpecs, state: FinderState): AnswerLine[] {
  const checks = new Set(offer.checks.map(({ id }) => id))
  const glass = (id: string) => offer.checks.some(({ glasses }) => glasses.includes(id))
  return [...askedOf(offer.questions).values()]
    .filter(({ key }) => isAnswered(state, key))
    .map((asked) => ({
      key: asked.key,
      label: askedInWords(offer, asked),
      answer: answerInWords(specs, state, asked),
      byCheck: checks.has(asked.question.id) && !glass(asked.question.id),
    }))
}

export const foundInWords = (offer: FinderOffer, found: string): string =>
  found === '' ? '' : found === OTHER ? 'Something that is not in the list.' : titleOf(offer, found)

/** 'Nozzle of one cylinder dribbles (cylinder 4)' */
export const causeInWords = (
  offer: FinderOffer,
  { fault, cylinder }: FoundGroup['causes'][number],
): string =>
  cylinder === undefined ? titleOf(offer, fault) : `${titleOf(offer, fault)} (cylinder ${cylinder})`

/** 'Taken as right within ± 10 kPa.': as the person says, or as such an instrument usually is. */
export function accuracyInWords(question: Tellable, { gauges }: FinderState): string {
  const accuracy = statedAccuracy(gauges.fields[accuracyKey(question)]) ?? question.accuracy
  return accuracy === undefined
    ? ''
    : `Taken as right within ± ${accuracyText(question, accuracy, gauges.system)}.`
}

export function accuracyText({ kind = 'ratio' }: Tellable, accuracy: number, system: UnitSystem): string {
  const spread = spreadOf[kind] ?? kind
  const unit = spread === 'ratio' ? '%' : unitForSystem(spread, system)
  return formatIn(accuracy, spread, unit, { digits: ACCURACY_DIGITS })
}

const ACCURACY_DIGITS = 2
