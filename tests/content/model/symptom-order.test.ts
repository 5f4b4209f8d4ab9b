import { describe, expect, test } from 'vitest'
import type { z } from 'astro/zod'
import type { OperatingState } from '../../../calculators/circuit/types.ts'
import type { Knowledge, Shown } from '../../../calculators/diagnosis/types.ts'
import { knowledgeOf } from '../../../calculators/terminal/knowledge.ts'
import { symptom as symptomSchema } from '../../../components/content/schemas.ts'
import { entriesOf } from '../pages/content.ts'

type Symptom = z.infer<typeof symptomSchema>
type Sign = Symptom['signs'][number]

const all = ['pq-12', 'ps-6', 'pb-8'].map((circuit) => knowledgeOf(circuit))

/**
 * The doubt of the ranking where only a symptom is known: how often a cause is met is estimated in three classes, of
 * which each is two to three times the next. A cause may stand above another that is one class likelier, not more.
 */
const ONE_CLASS = 3

/** What the return glass shows, in the words of signs. */
const words: Readonly<Record<string, string>> = {
  'full-and-clear': 'full and clear',
  bubbles: 'bubbles',
  'part-full': 'part full',
  empty: 'empty',
  milky: 'milky',
  'not-to-be-seen': 'dirt',
}

/** How far the exhaust that is furthest off departs from the middle of all, beyond the accuracy of the probes. */
function apart({ signatures }: Knowledge, state: OperatingState, { readings }: Shown): number {
  const exhausts = signatures.states[state].readings.flatMap(({ id, accuracy }, place) =>
    id.startsWith('exhaust-') ? [{ value: readings[place] ?? 0, accuracy }] : [],
  )
  const sorted = exhausts.map(({ value }) => value).toSorted((one, other) => one - other)
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0
  return Math.max(...exhausts.map(({ value, accuracy }) => Math.abs(value - middle) - accuracy))
}

/** Whether a sign that a person can tell the ranking is there; a remark of the model is none. */
function isThere(knowledge: Knowledge, sign: Sign, state: OperatingState, now: Shown): boolean {
  const { signatures } = knowledge
  const { readings, health } = signatures.states[state]
  if ('readings' in sign)
    return sign.readings.some((id) => {
      const place = readings.findIndex((one) => one.id === id)
      const up = (now.readings[place] ?? 0) - (health.readings[place] ?? 0)
      return place >= 0 && (sign.are === 'high' ? up : -up) > (readings[place]?.accuracy ?? 0)
    })
  if ('returnGlass' in sign) {
    const place = signatures.glasses.indexOf('return-glass')
    const look = now.glasses[place] ?? ''
    return look !== health.glasses[place] && sign.returnGlass.some((word) => words[look]?.includes(word))
  }
  return !('remarks' in sign) && apart(knowledge, state, now) > 0
}

/** How often a cause is met with these signs: its frequency by the share of its severities that show them. */
function weightOf(signs: readonly Sign[], fault: string): number {
  return Math.max(
    0,
    ...all.map((knowledge) => {
      const course = knowledge.signatures.faults[fault]
      const frequency = knowledge.faults.find(({ id }) => id === fault)?.frequency ?? 'rare'
      if (!course) return 0
      const severities = knowledge.signatures.severities.slice(1)
      const showing = severities.filter((_, place) =>
        signs.some((sign) =>
          sign.in.some((state) => {
            const now = course[state][place + 1]
            return now !== undefined && isThere(knowledge, sign, state, now)
          }),
        ),
      )
      return (knowledge.weights.frequency[frequency] * showing.length) / severities.length
    }),
  )
}

const symptoms = entriesOf<unknown>('symptoms')
  .map(({ id, data }) => ({ id, ...symptomSchema.parse(data) }))
  .filter(({ signs }) => signs.some((sign) => !('remarks' in sign)))

describe('the order of causes agrees with the ranking that starts with the symptom', () => {
  test.each(symptoms.map(({ id, signs, causes }) => [id, signs, causes] as const))(
    '%s',
    (_, signs, causes) => {
      // What rests on practice says so in its row; what only a remark of the model shows the ranking is not told.
      const rows = causes
        .filter(({ basis }) => basis === 'model')
        .map(({ fault }) => ({ fault, weight: weightOf(signs, fault) }))
        .filter(({ weight }) => weight > 0)
      expect(rows.length).toBeGreaterThan(0)
      const wrong = rows.flatMap((one, place) =>
        rows
          .slice(place + 1)
          .filter(({ weight }) => weight > 1.0001 * ONE_CLASS * one.weight)
          .map(
            (other) =>
              `${other.fault} (${other.weight.toFixed(1)}) above ${one.fault} (${one.weight.toFixed(1)})`,
          ),
      )
      expect(wrong).toEqual([])
    },
  )
})
