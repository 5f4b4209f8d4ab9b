import { describe, expect, test } from 'vitest'
import type { z } from 'astro/zod'
import type { CircuitState, OperatingState } from '../../../calculators/circuit/types.ts'
import { symptom as symptomSchema } from '../../../components/content/schemas.ts'
import { circuitIds, faults, rested, withFaults } from '../../unit/circuit-model/shipped.ts'
import { entriesOf } from '../pages/content.ts'

type Symptom = z.infer<typeof symptomSchema>
type Sign = Symptom['signs'][number]

/** The gravest first: it shows most often. */
const SEVERITIES = [1, 0.7, 0.4]
const RETURN_GLASS = 'return-glass'
const BYPASS_GLASS = 'bypass-glass'

const wordsOf = ({ glasses }: CircuitState, glass: string): string =>
  glasses.find(({ part }) => part === glass)?.words ?? ''

const solved = new Map<string, CircuitState | undefined>()

/** A state of a circuit in health or with one fault; nothing where the model says that it cannot tell. */
function stateOf(circuit: string, state: OperatingState, fault?: string, severity = 1) {
  const key = [circuit, state, fault, severity].join(' ')
  if (!solved.has(key)) {
    const now = withFaults(circuit, state, fault === undefined ? {} : { [fault]: severity })
    solved.set(key, now.ok || fault === undefined ? rested(now) : undefined)
  }
  return solved.get(key)
}

const holdsOne = (text: string, words: readonly string[]) => words.some((word) => text.includes(word))

/** How far the exhaust that is furthest off departs from the middle of all, beyond the accuracy of the probes. */
function apart({ readings }: CircuitState): number {
  const exhausts = readings.filter(({ id }) => id.startsWith('exhaust-'))
  const sorted = exhausts.map(({ value }) => value).toSorted((one, other) => one - other)
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0
  return Math.max(...exhausts.map(({ value, accuracy }) => Math.abs(value - middle) - accuracy))
}

function isThere(sign: Sign, now: CircuitState, health: CircuitState): boolean {
  if ('readings' in sign) {
    return sign.readings.some((id) => {
      const [read, usual] = [now, health].map(({ readings }) => readings.find((one) => one.id === id))
      if (!read || !usual) return false
      const change = sign.are === 'high' ? read.value - usual.value : usual.value - read.value
      return change > Math.max(read.accuracy, usual.accuracy)
    })
  }
  if ('returnGlass' in sign) {
    const [words, usual] = [wordsOf(now, RETURN_GLASS), wordsOf(health, RETURN_GLASS)]
    return words !== usual && holdsOne(words, sign.returnGlass)
  }
  if ('bypassGlass' in sign) {
    const [words, usual] = [wordsOf(now, BYPASS_GLASS), wordsOf(health, BYPASS_GLASS)]
    return words !== usual && holdsOne(words, sign.bypassGlass)
  }
  if ('remarks' in sign) {
    const usual = new Set(health.remarks.map(({ text }) => text))
    return now.remarks.some(({ text }) => !usual.has(text) && holdsOne(text, sign.remarks))
  }
  return apart(now) > 0
}

/** Whether the return glass shows nothing in the states in which the sign says so. */
const isElsewhereAsInHealth = (sign: Sign, circuit: string, fault: string, severity: number): boolean =>
  !('asInHealth' in sign) ||
  sign.asInHealth.every((state) => {
    const [health, now] = [stateOf(circuit, state), stateOf(circuit, state, fault, severity)]
    return (
      health !== undefined &&
      now !== undefined &&
      wordsOf(now, RETURN_GLASS) === wordsOf(health, RETURN_GLASS)
    )
  })

/** Whether the model shows one of the signs for a fault in some circuit that can have it, state and severity. */
function modelShows(signs: readonly Sign[], fault: string): boolean {
  const bends = faults.find(({ id }) => id === fault)?.bends ?? {}
  return signs.some((sign) =>
    circuitIds
      .filter((circuit) => Object.hasOwn(bends, circuit))
      .some((circuit) =>
        sign.in.some((state) =>
          SEVERITIES.some((severity) => {
            const [health, now] = [stateOf(circuit, state), stateOf(circuit, state, fault, severity)]
            const there = health !== undefined && now !== undefined && isThere(sign, now, health)
            return there && isElsewhereAsInHealth(sign, circuit, fault, severity)
          }),
        ),
      ),
  )
}

const symptoms = entriesOf<unknown>('symptoms').map(({ id, data }) => ({ id, ...symptomSchema.parse(data) }))
const withSigns = symptoms.filter(({ signs }) => signs.length > 0)

test('in health no symptom is there', () => {
  const there = circuitIds.flatMap((circuit) =>
    withSigns.flatMap(({ id, signs }) =>
      signs
        .flatMap((sign) =>
          sign.in.filter((state) => {
            const health = stateOf(circuit, state)
            return health !== undefined && isThere(sign, health, health)
          }),
        )
        .map((state) => `${id}: ${circuit} ${state}`),
    ),
  )
  expect(there).toEqual([])
})

test('a row without a sign does not call on the model', () => {
  const called = symptoms.filter(
    ({ signs, causes }) => signs.length === 0 && causes.some(({ basis }) => basis === 'model'),
  )
  expect(called.map(({ id }) => id)).toEqual([])
})

describe.each(withSigns)('symptom $id', ({ signs, causes }) => {
  test.each(causes)('$fault: the row says whether the model shows it', ({ fault, basis }) => {
    expect(modelShows(signs, fault)).toBe(basis === 'model')
  })
})
