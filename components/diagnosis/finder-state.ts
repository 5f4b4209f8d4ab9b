import type { PlantState } from '../../calculators/checks/types.ts'
import { plantStates } from '../../calculators/checks/types.ts'
import type { Observation, Tellable } from '../../calculators/diagnosis/index.ts'
import { kindOf } from '../../calculators/quantity/kinds.ts'
import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { offeredUnits, unitFor, type FieldSpec, type FieldSpecs } from '../calculator/fields.ts'
import { apply as applyToFields, fieldFrom, type Action, type FormState } from '../calculator/state.ts'
import { accuracySpecs } from './accuracies.ts'
import { askedOf } from './keys.ts'
import type { FinderOffer } from './types.ts'

/** What a person has told, found and left out; the address keeps all of it. */
export interface FinderState {
  /** State in which the plant stands now: what it costs to reach another one hangs on it. */
  readonly now: PlantState
  /** Key of a question → id of the value that was chosen. What was not looked at is not there. */
  readonly said: Readonly<Record<string, string>>
  /** The fields of all gauges by key; an empty one was not read. */
  readonly gauges: FormState
  /** Keys of readings of which the person was asked whether they are right, and said that they are. */
  readonly sure: readonly string[]
  /** Ids of checks that cannot be made now. */
  readonly skipped: readonly string[]
  /** Id of the cause that was found in the end, OTHER, or empty as long as it is open. */
  readonly found: string
  readonly note: string
  /** Id of the symptom from whose page somebody came. */
  readonly from: string
}

/** What was found is not in the list. */
export const OTHER = 'other'
export const LONGEST_NOTE = 400

export type FinderAction =
  | { readonly type: 'say'; readonly key: string; readonly value: string | undefined }
  | { readonly type: 'gauge'; readonly action: Action }
  | { readonly type: 'sure'; readonly key: string }
  | { readonly type: 'now'; readonly now: PlantState }
  | { readonly type: 'skip'; readonly check: string }
  | { readonly type: 'unskip' }
  | { readonly type: 'found'; readonly found: string }
  | { readonly type: 'note'; readonly note: string }
  | { readonly type: 'restore'; readonly state: FinderState }

/** A position of the rack is read in per cent. */
const usualUnit = (kind: KindId): string => (kind === 'ratio' ? '%' : kindOf(kind).preferred.si)

/** The fields of all gauges of a circuit, one for each state in which they can be read, and how right each is. */
export function gaugeSpecs(questions: readonly Tellable[]): FieldSpecs {
  const specs: Record<string, FieldSpec> = {}
  for (const [key, { question }] of askedOf(questions)) {
    const { kind, label } = question
    if (kind === undefined) continue
    const units = offeredUnits({ kind })
    specs[key] = { id: key, input: key, label, symbol: '', kind, units, usualUnit: usualUnit(kind) }
  }
  for (const spec of accuracySpecs(questions)) specs[spec.id] = spec
  return specs
}

export function startState(specs: FieldSpecs, system: UnitSystem): FinderState {
  const fields = Object.fromEntries(
    Object.values(specs).map((spec) => [
      spec.id,
      fieldFrom(spec, '', { unit: unitFor(spec, system), picked: false }),
    ]),
  )
  return {
    now: 'stopped',
    said: {},
    gauges: { system, fields, choices: {}, tables: {}, outputUnits: {} },
    sure: [],
    skipped: [],
    found: '',
    note: '',
    from: '',
  }
}

export function apply(specs: FieldSpecs, state: FinderState, action: FinderAction): FinderState {
  switch (action.type) {
    case 'say': {
      const { [action.key]: _, ...others } = state.said
      // A gauge is told by a figure or by a word.
      const gauges = applyToFields(specs, state.gauges, { type: 'type', field: action.key, text: '' })
      return {
        ...state,
        gauges: Object.hasOwn(state.gauges.fields, action.key) ? gauges : state.gauges,
        said: action.value === undefined ? others : { ...others, [action.key]: action.value },
      }
    }
    case 'gauge': {
      const { action: change } = action
      // Another text is another reading: nobody has said that it is right.
      const sure = change.type === 'type' ? state.sure.filter((key) => key !== change.field) : state.sure
      const said =
        change.type === 'type' && change.text.trim() !== ''
          ? Object.fromEntries(Object.entries(state.said).filter(([key]) => key !== change.field))
          : state.said
      return { ...state, sure, said, gauges: applyToFields(specs, state.gauges, change) }
    }
    case 'sure':
      return { ...state, sure: [...state.sure, action.key] }
    case 'now':
      return { ...state, now: action.now }
    case 'skip':
      return { ...state, skipped: [...state.skipped, action.check] }
    case 'unskip':
      return { ...state, skipped: [] }
    case 'found':
      return { ...state, found: action.found }
    case 'note':
      return { ...state, note: action.note.slice(0, LONGEST_NOTE) }
    case 'restore':
      return action.state
  }
}

/** What was told, as the ranking takes it. A gauge that was not understood is not in it. */
export function observationsOf(
  { questions }: FinderOffer,
  { said, gauges, sure }: FinderState,
): Observation[] {
  return [...askedOf(questions)].flatMap(([key, { question, state }]): Observation[] => {
    const common = { id: question.id, ...(state === undefined ? {} : { state }) }
    const value = said[key]
    if (value !== undefined) return [{ ...common, value }]
    const field = gauges.fields[key]
    if (field === undefined || field.reading === 'waiting' || !field.reading.ok) return []
    const { si, unit } = field.reading
    return [{ ...common, value: si, unit, ...(sure.includes(key) ? { sure: true } : {}) }]
  })
}

/** Whether a question has an answer, understood or not. */
export const isAnswered = ({ said, gauges }: FinderState, key: string): boolean =>
  said[key] !== undefined || (gauges.fields[key]?.text ?? '').trim() !== ''

export const isPlantState = (text: string): text is PlantState => plantStates.some((state) => state === text)
