import type { CheckKind, PlantState } from '../../calculators/checks/types.ts'
import type { ExerciseProps, FaultName } from './types.ts'

/** Headings of the kinds of checks, in the order of what they cost. */
export const kindHeadings: readonly (readonly [CheckKind, string])[] = [
  ['glance', 'A glance'],
  ['gauge', 'A gauge'],
  ['hand', 'A hand on the plant'],
  ['spanner', 'A spanner in the plant'],
]

const spelled = new Intl.ListFormat('en-GB', { type: 'disjunction' })
const joined = new Intl.ListFormat('en-GB', { type: 'conjunction' })

const isAll = (states: readonly PlantState[], wanted: readonly PlantState[]): boolean =>
  states.length === wanted.length && wanted.every((state) => states.includes(state))

/** When a check can be made: 'only idle or part load' */
export function statesInWords(states: readonly PlantState[], all: ExerciseProps['states']): string {
  if (isAll(states, ['priming', 'idle', 'part', 'full'])) return 'whenever fuel is pumped'
  if (isAll(states, ['idle', 'part', 'full'])) return 'with the engine running'
  return `only ${spelled.format(states.map((state) => all[state].title.toLowerCase()))}`
}

/** 'Secondary filters plugged and Suction strainer plugged' */
export const titlesOf = (ids: readonly string[], faults: readonly FaultName[]): string =>
  joined.format(ids.map((id) => faults.find((fault) => fault.id === id)?.title ?? id))

export const inMinutes = (minutes: number): string => `${minutes}\u00a0min`

/** '1 cause', '3 causes' */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()

/** Faults whose title or another name has every word that was typed, at least by its beginning. */
export function faultsNamed(faults: readonly FaultName[], typed: string): FaultName[] {
  const words = plain(typed).split(' ').filter(Boolean)
  return faults.filter(({ title, alsoCalled }) => {
    const names = [title, ...alsoCalled].flatMap((name) => plain(name).split(' '))
    return words.every((word) => names.some((name) => name.startsWith(word)))
  })
}
