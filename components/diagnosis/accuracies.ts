import type { Knowledge, Tellable } from '../../calculators/diagnosis/index.ts'
import { kindOf } from '../../calculators/quantity/kinds.ts'
import { accuracyField, spreadOf, type FieldSpec } from '../calculator/fields.ts'
import type { QuantityField } from '../calculator/state.ts'
import { isExhaust } from './keys.ts'

/** How right each instrument is, by the id of its reading. [SI] */
export type Accuracies = Readonly<Record<string, number>>

/** The probes of all exhausts are of one kind. */
const EXHAUSTS = 'exhaust'

/** Key of the field in which a person says how right an instrument is: the same in every state. */
export const accuracyKey = (question: Tellable): string =>
  accuracyField(isExhaust(question) ? EXHAUSTS : question.id)

/** The fields for the accuracies of all instruments of a circuit. */
export function accuracySpecs(questions: readonly Tellable[]): FieldSpec[] {
  const specs = questions.flatMap((question): FieldSpec[] => {
    if (question.kind === undefined) return []
    const kind = spreadOf[question.kind] ?? question.kind
    const { units, preferred } = kindOf(kind)
    const id = accuracyKey(question)
    const label = isExhaust(question) ? 'Thermometers of the exhausts' : question.label
    const share = kind === 'ratio'
    return [
      {
        id,
        input: id,
        label,
        symbol: '±',
        kind,
        units: share ? ['%'] : units,
        usualUnit: share ? '%' : preferred.si,
      },
    ]
  })
  return [...new Map(specs.map((spec) => [spec.id, spec])).values()]
}

/** A field that says how right an instrument is; nothing where it is empty, not understood, or not above nought. */
export function statedAccuracy(field: QuantityField | undefined): number | undefined {
  if (field === undefined || field.reading === 'waiting' || !field.reading.ok) return undefined
  return field.reading.si > 0 ? field.reading.si : undefined
}

/** The accuracies that a person has stated, for each reading. */
export function statedAccuracies(
  questions: readonly Tellable[],
  fields: Readonly<Record<string, QuantityField>>,
): Accuracies {
  return Object.fromEntries(
    questions.flatMap((question): [string, number][] => {
      if (question.kind === undefined) return []
      const stated = statedAccuracy(fields[accuracyKey(question)])
      return stated === undefined ? [] : [[question.id, stated]]
    }),
  )
}

/** What the ranking rests on, with other accuracies of the instruments. */
export function withAccuracies(knowledge: Knowledge, accuracies: Accuracies): Knowledge {
  const { signatures } = knowledge
  const stated = <State extends (typeof signatures.states)['idle']>(state: State): State => ({
    ...state,
    readings: state.readings.map((reading) => {
      const accuracy = accuracies[reading.id]
      return accuracy === undefined ? reading : { ...reading, accuracy }
    }),
  })
  const { priming, idle, part, full } = signatures.states
  return {
    ...knowledge,
    signatures: {
      ...signatures,
      states: { priming: stated(priming), idle: stated(idle), part: stated(part), full: stated(full) },
    },
  }
}
