import { describe, expect, it } from 'vitest'
import type { PlantState } from '../../../calculators/checks/types.ts'
import { diagnose } from '../../../calculators/diagnosis/index.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { allChecks, checkStates } from '../../../calculators/terminal/content.ts'
import { knowledgeOf } from '../../../calculators/terminal/knowledge.ts'

const states = checkStates()
const RUNNING: ReadonlySet<string> = new Set(['idle', 'part', 'full'])

/** Words of checks with which something is opened, taken off or fitted, or a person goes to the tank. */
const OPENS =
  /\b(open|opened|take (off|out)|take .* apart|take a sample|drain|drum|dip|fill|fit|lead the end|wipe the .* inside|vent of|in the tank|put a|along the suction|reference gauges)\b/i

/** What such words mean where nothing of the fuel side is opened. */
const NOT_OPENED: Readonly<Record<string, string>> = {
  'bypass-glass': 'The drain is named, and nobody touches it.',
  'isolate-the-heater': 'Its medium is shut and opened, not the fuel.',
}

describe('a check that opens the fuel side', () => {
  const opening = allChecks().filter(({ id, kind, label, how }) => {
    return kind === 'spanner' || (OPENS.test(`${label} ${how}`) && NOT_OPENED[id] === undefined)
  })

  it('is most of those with the hand or the spanner, so that the words find them', () => {
    expect(opening.length).toBeGreaterThan(25)
    expect(opening.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['flow-of-the-return', 'lamp-at-the-drain', 'look-at-the-vent', 'dip-the-tank']),
    )
  })

  it.each(opening.map(({ id, states: where }) => [id, where] as const))(
    '%s is made with the engine stopped, and nowhere else in its data',
    (_, where) => {
      expect(where.filter((state) => RUNNING.has(state))).toEqual([])
    },
  )

  it.each(opening.map((check) => [check.id, check] as const))(
    '%s says that the pump stands where it is not made with all stopped',
    (_, { states: where, kind, how, cautions }) => {
      if (where.includes('stopped') || kind !== 'spanner') return
      expect(how).toMatch(/pump (stopped|locked out)|stop the pump/i)
      expect(cautions).toContain('unexpected-start')
    },
  )
})

describe.each(['pq-12', 'ps-6', 'pb-8'])('the next checks of %s', (circuit) => {
  const knowledge = knowledgeOf(circuit)
  const next = (told: readonly Observation[], now: PlantState) => diagnose(knowledge, told, states, now).next

  // Every single thing that can be told without a gauge, from every state of the plant.
  const told = Object.entries(knowledge.observables).flatMap(([id, one]): Observation[] =>
    one.from === 'told' && one.circuits.includes(circuit)
      ? Object.keys(one.values).map((value) => ({ id, value }))
      : [],
  )
  // Every single find of every check.
  const found = knowledge.checks
    .filter(({ circuits }) => circuits.includes(circuit))
    .flatMap(({ id, finds }) => finds.map((_, place): Observation => ({ id, value: `find-${place + 1}` })))

  it('never put a spanner to a plant whose engine runs', () => {
    for (const one of [...told, ...found.filter((_, place) => place % 6 === 0)])
      for (const { check, state } of next([one], 'full').proposals)
        expect(check.kind === 'spanner' && RUNNING.has(state), `${one.id}: ${check.id} ${state}`).toBe(false)
  })

  it('carry how it is done, the cautions of check and state, and a procedure where there is one', () => {
    for (const { check, state, cautions } of next([], 'stopped').proposals) {
      expect(check.how).not.toBe('')
      expect(cautions).toEqual(expect.arrayContaining([...check.cautions, ...states[state].cautions]))
    }
  })

  it('run no engine with a leak, a smell of fuel, or a find of either', () => {
    const leaking: Observation[] = [
      { id: 'leaks', value: 'at-the-engine' },
      { id: 'leaks', value: 'at-a-glass' },
      { id: 'engine-oil', value: 'fuel' },
      { id: 'smell', value: 'fuel' },
      { id: 'smell', value: 'petrol' },
      ...found.filter(({ id, value }) => {
        const find = knowledge.checks.find((check) => check.id === id)?.finds[
          Number(String(value).slice(5)) - 1
        ]
        return find?.faults.some((fault) => knowledge.weights.doNotRun.faults.includes(fault))
      }),
    ]
    for (const one of leaking)
      for (const others of [[], [{ id: 'smoke', value: 'black' }], [{ id: 'leaks', value: 'none' }]]) {
        const { doNotRun, proposals } = next([one, ...others], 'full')
        expect(doNotRun, JSON.stringify(one)).toMatch(/^Stop the engine.* to learn more\. The reason is /)
        expect(proposals.filter(({ state }) => RUNNING.has(state))).toEqual([])
      }
  })

  it('do not run the pump either with a light fuel in the tank', () => {
    const { doNotRun, proposals } = next([{ id: 'smell', value: 'petrol' }], 'priming')
    expect(doNotRun).toContain('Stop the engine and the fuel pump')
    expect(proposals.filter(({ state }) => state !== 'stopped')).toEqual([])
    expect(proposals.map(({ check }) => check.id)).toContain('sample-for-density-and-viscosity')
  })

  it('do not run the pump either with a leak that is known at the engine', () => {
    const grave = new Set([...knowledge.weights.doNotPrime.faults, ...knowledge.weights.doNotPrime.found])
    const leaking = [
      { id: 'leaks', value: 'at-the-engine' },
      ...knowledge.checks.flatMap(({ id, finds, circuits }) =>
        circuits.includes(circuit)
          ? finds.flatMap(({ faults }, place) =>
              faults.some((fault) => grave.has(fault)) ? [{ id, value: `find-${place + 1}` }] : [],
            )
          : [],
      ),
    ]
    expect(leaking.length).toBeGreaterThan(1)
    for (const one of leaking) {
      const { doNotRun, proposals } = next([one], 'full')
      expect(doNotRun, JSON.stringify(one)).toContain('Stop the engine and the fuel pump')
      expect(proposals.filter(({ state }) => state !== 'stopped')).toEqual([])
    }
  })

  it('do not run an engine whose fuel is told to be hotter than the plant allows, believed or not', () => {
    const [[id, highest] = ['', 0], ...others] = Object.entries(knowledge.highest)
    expect(highest).toBeGreaterThan(300)
    expect(others).toEqual([])
    for (const over of [1, 40])
      for (const sure of [true, false]) {
        const { doNotRun, proposals } = next([{ id, state: 'full', value: highest + over, sure }], 'full')
        expect(doNotRun).toContain('above what the plant allows')
        expect(proposals.filter(({ state }) => RUNNING.has(state))).toEqual([])
      }
    expect(next([{ id, state: 'full', value: highest - 5 }], 'full').doNotRun ?? '').not.toContain('allows')
  })

  it('prefer a glance to a gauge to a spanner that tell as much in the same time', () => {
    const { effort } = knowledge.weights
    expect(effort.glance).toBeLessThan(effort.gauge)
    expect(effort.gauge).toBeLessThan(effort.hand)
    expect(effort.hand).toBeLessThan(effort.spanner)
    for (const { check, tells, minutes, worth } of next([], 'stopped').proposals)
      expect(worth).toBeCloseTo(tells / (minutes * effort[check.kind]), 12)
  })
})
