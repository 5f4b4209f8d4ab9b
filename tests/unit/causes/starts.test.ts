import { describe, expect, it } from 'vitest'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import { tellables, type Observation } from '../../../calculators/diagnosis/index.ts'
import { knowledgeOf } from '../../../calculators/terminal/knowledge.ts'
import { askedOf, keyOf, questionsNamed } from '../../../components/diagnosis/keys.ts'
import { entriesOf, yamlFile, type Symptom } from '../../content/pages/content.ts'

type Given = readonly Observation[]

interface Start {
  readonly given?: Given
  readonly either?: readonly { readonly words: string; readonly given: Given }[]
  readonly ask?: readonly Pick<Observation, 'id' | 'state'>[]
}

/** Among so many of the likeliest causes one of the symptom's page must be. */
const AMONG = 5

const starts = Object.entries(yamlFile<Start>('diagnosis/starts.yaml'))
const symptoms = new Map(entriesOf<Symptom>('symptoms').map(({ id, data }) => [id, data]))
const circuits = ['pq-12', 'ps-6', 'pb-8'].map((circuit) => {
  const knowledge = knowledgeOf(circuit)
  return { circuit, knowledge, questions: tellables(knowledge) }
})

/** Every way of every symptom, with the first circuit that can tell it. */
const ways = starts.flatMap(([id, { given = [], either }]) =>
  (either ?? [{ words: id, given: [] }]).map((way) => {
    const all = [...given, ...way.given]
    const circuit = circuits.find(({ questions }) => {
      const known = askedOf(questions)
      return all.every((one) => {
        const asked = known.get(keyOf(one.id, one.state))
        return asked !== undefined && Object.hasOwn(asked.question.values ?? {}, String(one.value))
      })
    })
    return { id, words: way.words, given: all, circuit }
  }),
)

it('every symptom can be told, and nothing else has a start', () => {
  expect(starts.map(([id]) => id).sort()).toEqual([...symptoms.keys()].sort())
})

describe.each(starts)('%s', (_, { ask = [] }) => {
  it('asks what some circuit can tell', () => {
    for (const one of ask)
      expect(
        circuits.some(({ questions }) =>
          questionsNamed(questions, one.id).some((question) =>
            askedOf(questions).has(keyOf(question.id, one.state)),
          ),
        ),
        `${one.id} ${one.state ?? ''}`,
      ).toBe(true)
  })
})

describe.each(ways)('$id: $words', ({ id, given, circuit }) => {
  it('gives something that a circuit can tell', () => {
    expect(given.length).toBeGreaterThan(0)
    expect(circuit).toBeDefined()
  })

  it('brings a cause of its page among the likeliest', () => {
    const likeliest = circuit === undefined ? [] : rank(circuit.knowledge, given).causes.slice(0, AMONG)
    const causes = new Set(symptoms.get(id)?.causes.map(({ fault }) => fault))
    expect(
      likeliest.filter(({ fault }) => causes.has(fault)),
      likeliest.map(({ fault }) => fault).join(),
    ).not.toEqual([])
  })
})
