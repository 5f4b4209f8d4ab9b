import { operatingStates, type OperatingState } from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'
import { exhaustWords, readingWords } from './in-words.ts'
import { observableId } from './items.ts'
import type { Knowledge } from './types.ts'

/** One thing that can be told of a circuit. */
export interface Tellable {
  readonly id: string
  readonly label: string
  readonly states: readonly OperatingState[]
  /** Ids of values with what they mean; for a reading the words that stand for its figure. */
  readonly values?: Readonly<Record<string, string>>
  readonly kind?: KindId
  readonly accuracy?: number
}

/** What a hand says of a line through which fuel passes, or not. */
export const feltWords = { passes: 'Warm as the fuel, or with a hum.', still: 'Cool and still.' } as const

function readingsOf({ signatures, observables }: Knowledge): Tellable[] {
  const found = new Map<string, Tellable>()
  for (const state of operatingStates)
    for (const { id, label, kind, accuracy } of signatures.states[state].readings) {
      const observable = observables[observableId(id)]
      if (observable?.from !== 'reading' || !observable.states.includes(state)) continue
      const before = found.get(id)
      // Which cylinder it is can only be told by a figure.
      const values = observableId(id) === id ? { values: readingWords } : {}
      found.set(id, { id, label, kind, accuracy, states: [...(before?.states ?? []), state], ...values })
    }
  return [...found.values()]
}

/** What a check that a person makes can say, as values with their sentences. */
function checksOf({ checks, signatures }: Knowledge): Tellable[] {
  return checks
    .filter(({ circuits }) => circuits.includes(signatures.circuit))
    .flatMap((check): Tellable[] => {
      const { id, label } = check
      if (check.feels.length > 0)
        return [
          {
            id,
            label,
            states: operatingStates.filter((state) => check.states.includes(state)),
            values: feltWords,
          },
        ]
      if (check.finds.length === 0) return []
      const finds = check.finds.map(({ says }, place) => [`find-${place + 1}`, says] as const)
      return [
        { id, label, states: [], values: { ...Object.fromEntries(finds), nothing: check.otherwise ?? '' } },
      ]
    })
}

/**
 * Everything that can be told of a circuit: glasses, instruments, what the model does not give, and checks made.
 * @param knowledge of the circuit
 */
export function tellables(knowledge: Knowledge): Tellable[] {
  const { observables, signatures } = knowledge
  const chosen = Object.entries(observables).flatMap(([id, observable]): Tellable[] => {
    const { label, circuits } = observable
    if (observable.from === 'reading' || !circuits.includes(signatures.circuit)) return []
    if (observable.from === 'exhausts')
      return [{ id, label, states: observable.states, values: exhaustWords }]
    const states = observable.from === 'glass' ? observable.states : []
    return [{ id, label, states, values: observable.values }]
  })
  return [...chosen, ...readingsOf(knowledge), ...checksOf(knowledge)]
}
