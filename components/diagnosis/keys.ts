import type { Observation, Tellable } from '../../calculators/diagnosis/index.ts'
import type { OperatingState } from '../../calculators/circuit/types.ts'

/** A question in a state has one answer: 'return-glass.priming'; what hangs on no state goes by its id alone. */
export const keyOf = (id: string, state?: string): string => (state === undefined ? id : `${id}.${state}`)

export const keyOfObservation = ({ id, state }: Pick<Observation, 'id' | 'state'>): string => keyOf(id, state)

/** One thing that can be answered: a question, in a state where it hangs on one. */
export interface Asked {
  readonly key: string
  readonly question: Tellable
  readonly state?: OperatingState
}

/** All that can be answered of a circuit, by key. */
export function askedOf(questions: readonly Tellable[]): ReadonlyMap<string, Asked> {
  return new Map(
    questions.flatMap((question): [string, Asked][] =>
      question.states.length === 0
        ? [[question.id, { key: question.id, question }]]
        : question.states.map((state) => {
            const key = keyOf(question.id, state)
            return [key, { key, question, state }]
          }),
    ),
  )
}

/** Every cylinder's exhaust goes by one name in data: 'exhaust-*'. */
export function questionsNamed(questions: readonly Tellable[], name: string): readonly Tellable[] {
  return name.endsWith('*')
    ? questions.filter(({ id }) => id.startsWith(name.slice(0, -1)))
    : questions.filter(({ id }) => id === name)
}

export const isExhaust = ({ id }: Tellable): boolean => id.startsWith('exhaust-')

/** Id of the field of a question, in one of the places where it is asked. */
export const fieldId = (place: string, key: string): string => `${place}-${key.replaceAll('.', '-')}`
