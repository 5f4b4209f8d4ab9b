import { describe, expect, it } from 'vitest'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import { tellables, type Observation } from '../../../calculators/diagnosis/index.ts'
import { knowledgeOf } from '../../../calculators/terminal/knowledge.ts'
import { askedOf, keyOf, questionsNamed } from '../../../components/diagnosis/keys.ts'
import { entriesOf, yamlFile, type Symptom } from '../../content/pages/content.ts'

interface Start {
  readonly given?: readonly Observation[]
  readonly ask?: readonly Pick<Observation, 'id' | 'state'>[]
}

/** Among so many of the likeliest causes one of the symptom's page must be. */
const AMONG = 5

const starts = Object.entries(yamlFile<Start>('diagnosis/starts.yaml'))
const symptoms = new Map(entriesOf<Symptom>('symptoms').map(({ id, data }) => [id, data]))
const circuits = ['pq-12', 'ps-6', 'pb-8'].map((circuit) => {
  const knowledge = knowledgeOf(circuit)
  return { knowledge, questions: tellables(knowledge) }
})

describe.each(starts)('%s', (id, { given = [], ask = [] }) => {
  it('is a symptom', () => {
    expect([...symptoms.keys()]).toContain(id)
  })

  it('can be told of some circuit, each of what it asks somewhere', () => {
    const can = circuits.filter(({ questions }) => {
      const known = askedOf(questions)
      return given.every((one) => known.has(keyOf(one.id, one.state)))
    })
    expect(can).not.toEqual([])
    for (const one of ask)
      expect(
        can.some(({ questions }) =>
          questionsNamed(questions, one.id).some((question) =>
            askedOf(questions).has(keyOf(question.id, one.state)),
          ),
        ),
        `${one.id} ${one.state ?? ''}`,
      ).toBe(true)
  })
})

describe('with what a symptom gives filled in', () => {
  const [pq12] = circuits
  it.each(starts.filter(([, { given = [] }]) => given.some(({ state }) => state !== undefined)))(
    '%s: a cause of its page is among the likeliest',
    (id, { given = [] }) => {
      if (pq12 === undefined) throw new Error('no circuit')
      const likeliest = rank(pq12.knowledge, given).causes.slice(0, AMONG)
      const causes = new Set(symptoms.get(id)?.causes.map(({ fault }) => fault))
      expect(likeliest.filter(({ fault }) => causes.has(fault))).not.toEqual([])
    },
  )
})
