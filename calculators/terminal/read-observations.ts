import type { OperatingState } from '../circuit/types.ts'
import { tellables, type Tellable } from '../diagnosis/tellables.ts'
import type { Knowledge, Observation } from '../diagnosis/types.ts'
import { nearest } from '../faults/nearest.ts'
import { quoted } from './command.ts'
import { isRecord, readWithUnit, RefusedInput, typeOf } from './read-inputs.ts'

const FIELDS = ['id', 'state', 'value', 'sure']

/** Every thing that can be told of a circuit in every state, and room for some told twice. */
const MOST = 500

function stateOf(field: string, known: Tellable, given: unknown): OperatingState | undefined {
  const accepted = known.states.join(', ')
  if (known.states.length === 0) {
    if (given === undefined) return undefined
    throw new RefusedInput(`${field}.state`, `${known.label} hangs on no state`, 'no state')
  }
  const state = known.states.find((one) => one === given)
  if (state === undefined)
    throw new RefusedInput(
      `${field}.state`,
      given === undefined
        ? `${known.label}: no state is given`
        : `${known.label} is not seen in the state ${quoted(String(given))}`,
      accepted,
    )
  return state
}

async function valueOf(
  field: string,
  known: Tellable,
  value: unknown,
): Promise<Pick<Observation, 'value' | 'unit'>> {
  const values = Object.keys(known.values ?? {})
  if (typeof value === 'string' && values.includes(value)) return { value }
  if (known.kind !== undefined) {
    const { si, ...told } = await readWithUnit(`${field}.value`, known.label, value, known.kind).catch(
      (error: unknown) => {
        if (!(error instanceof RefusedInput) || values.length === 0) throw error
        const { reason, accepted } = error.refusal
        throw new RefusedInput(`${field}.value`, reason, `${accepted}, or a word: ${values.join(', ')}`)
      },
    )
    if (Number.isFinite(si)) return { value: si, ...told }
    throw new RefusedInput(`${field}.value`, `${known.label} is ${String(si)}`, 'a finite number')
  }
  throw new RefusedInput(
    `${field}.value`,
    `${known.label}: ${typeof value === 'string' ? quoted(value) : typeOf(value)} is no value of it`,
    values.join(', '),
  )
}

/**
 * What was observed, out of a list of objects {id, state, value}.
 * @param knowledge of the circuit
 * @param given the list; readings as numbers in SI or texts with a unit
 * @throws RefusedInput where an id, a state or a value is not known, naming what is near or accepted
 */
export async function readObservations(knowledge: Knowledge, given: unknown): Promise<Observation[]> {
  if (!Array.isArray(given))
    throw new RefusedInput(
      'observations',
      `observations is ${typeOf(given)}`,
      'a list such as [{"id": "return-glass", "state": "priming", "value": "bubbles"}]',
    )
  if (given.length > MOST)
    throw new RefusedInput(
      'observations',
      `there are ${given.length} observations`,
      `up to ${MOST}, more than can be told of a circuit`,
    )
  const known = tellables(knowledge)
  const ids = known.map(({ id }) => id)
  const read: Observation[] = []
  for (const [index, one] of (given as readonly unknown[]).entries()) {
    const field = `observations.${index}`
    if (!isRecord(one))
      throw new RefusedInput(field, `it is ${typeOf(one)}`, 'an object of id, state and value')
    const stray = Object.keys(one).find((key) => !FIELDS.includes(key))
    if (stray !== undefined)
      throw new RefusedInput(
        `${field}.${stray.slice(0, 40)}`,
        `${quoted(stray)} is not a field`,
        FIELDS.join(', '),
      )
    const id = typeof one['id'] === 'string' ? one['id'] : ''
    const found = known.find((each) => each.id === id)
    if (!found)
      throw new RefusedInput(
        `${field}.id`,
        `${quoted(id)} is nothing that can be told of this circuit`,
        `near it: ${nearest(id, ids).join(', ')}; all are listed by \`observations\``,
      )
    const state = stateOf(field, found, one['state'])
    const told = await valueOf(field, found, one['value'])
    const { sure } = one
    if (sure !== undefined && typeof sure !== 'boolean')
      throw new RefusedInput(`${field}.sure`, `sure is ${typeOf(sure)}`, 'true or false')
    read.push({
      id,
      ...told,
      ...(state === undefined ? {} : { state }),
      ...(sure === undefined ? {} : { sure }),
    })
  }
  return read
}
