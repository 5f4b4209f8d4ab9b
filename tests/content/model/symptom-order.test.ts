import { describe, expect, test } from 'vitest'
import { operatingStates, type OperatingState } from '../../../calculators/circuit/types.ts'
import { tellables, type Observation } from '../../../calculators/diagnosis/index.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import { knowledgeOf } from '../../../calculators/terminal/knowledge.ts'
import { symptom as symptomSchema } from '../../../components/content/schemas.ts'
import { askedOf, keyOf } from '../../../components/diagnosis/keys.ts'
import { entriesOf, yamlFile } from '../pages/content.ts'

type Given = readonly Observation[]

interface Start {
  readonly given?: Given
  readonly either?: readonly { readonly given: Given }[]
}

const circuits = ['pq-12', 'ps-6', 'pb-8'].map((circuit) => {
  const knowledge = knowledgeOf(circuit)
  return { knowledge, asked: askedOf(tellables(knowledge)) }
})

/**
 * The doubt of the ranking where only a symptom is known: how often a cause is met is estimated in three classes, of
 * which each is two to three times the next. A cause may stand above another that is one class likelier, not more.
 */
const ONE_CLASS = 3

/** All that a symptom can be, in each of its ways; what hangs on a single state, in each in which the page looks for it. */
function told({ given = [], either }: Start, states: readonly OperatingState[]): Given[] {
  const ways: Given[] = either?.map((way) => [...given, ...way.given]) ?? [given]
  return ways.flatMap((way): Given[] => {
    if (way.filter(({ state }) => state !== undefined).length !== 1) return [way]
    return states.map((state) => way.map((one) => (one.state === undefined ? one : { ...one, state })))
  })
}

/** How likely each cause of a circuit is with the symptom, the mean of all that it can be there. */
function sharesOf(
  { knowledge, asked }: (typeof circuits)[number],
  all: readonly Given[],
): Map<string, number> {
  const can = all.filter((given) => given.every(({ id, state }) => asked.has(keyOf(id, state))))
  const shares = new Map<string, number>()
  for (const given of can)
    for (const { fault, share } of rank(knowledge, given).causes)
      shares.set(fault, (shares.get(fault) ?? 0) + share / can.length)
  return shares
}

const starts = yamlFile<Start>('diagnosis/starts.yaml')
const symptoms = entriesOf<unknown>('symptoms').map(({ id, data }) => ({
  id,
  start: starts[id] ?? {},
  ...symptomSchema.parse(data),
}))

describe('the order of causes agrees with the ranking that starts with the symptom', () => {
  test.each(symptoms)('$id', ({ start, signs, causes }) => {
    const states = operatingStates.filter(
      (state) => signs.length === 0 || signs.some((sign) => sign.in.includes(state)),
    )
    const all = told(start, states)
    const perCircuit = circuits.map((circuit) => sharesOf(circuit, all)).filter(({ size }) => size > 0)
    expect(perCircuit.length).toBeGreaterThan(0)
    // What rests on practice says so in its row.
    const rows = causes.filter(({ basis }) => basis === 'model').map(({ fault }) => fault)
    const wrong = rows.flatMap((one, place) =>
      rows.slice(place + 1).flatMap((other) => {
        const both = perCircuit.flatMap((shares) => {
          const [above, below] = [shares.get(one), shares.get(other)]
          return above === undefined || below === undefined ? [] : [{ above, below }]
        })
        // The order stands for all circuits that can have both.
        const turned = both.length > 0 && both.every(({ above, below }) => below > ONE_CLASS * above)
        const figures = both.map(({ above, below }) => `${below.toFixed(3)} to ${above.toFixed(3)}`)
        return turned ? [`${other} below ${one}: ${figures.join(', ')}`] : []
      }),
    )
    expect(wrong).toEqual([])
  })
})
