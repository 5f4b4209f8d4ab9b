import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stateMinutes } from '../../../calculators/checks/state-minutes.ts'
import { plantStates, type CheckData, type PlantState } from '../../../calculators/checks/types.ts'
import { openAnswers } from '../../../calculators/exercise/open-answers.ts'
import { shortestMoves, type Task } from '../../../calculators/exercise/shortest-way.ts'
import { wayOf } from '../../../calculators/exercise/way.ts'

const nothing = { readings: [], glasses: [], felt: [], says: [] }

const states = {
  stopped: { up: 0, down: 2 },
  priming: { up: 3, down: 2 },
  idle: { up: 5, down: 4 },
  part: { up: 8, down: 4 },
  full: { up: 6, down: 0 },
}

interface Sketch {
  readonly state: PlantState
  readonly minutes: number
  /** Answers that it leaves, one bit each. */
  readonly leaves: number
  /** Answers that it is an inspection for. */
  readonly finds?: readonly number[]
}

/** A task with one hypothesis an answer; answer 0 is the hidden one. */
function taskOf(count: number, sketches: readonly Sketch[], weights: readonly number[] = []): Task {
  const checks = sketches.map(({ state, minutes, finds }, place): CheckData => ({
    id: `check-${place}`,
    label: `Check ${place}`,
    kind: 'gauge',
    minutes,
    states: [state],
    circuits: [],
    glasses: [],
    readings: [],
    feels: [],
    finds: finds ? [{ faults: finds.map((answer) => `fault-${answer}`), says: 'Found.' }] : [],
  }))
  return {
    start: 'priming',
    open: (1n << BigInt(count)) - 1n,
    answers: Array.from({ length: count }, (_, place) => ({
      faults: [`fault-${place}`],
      weight: weights[place] ?? 1,
    })),
    masks: Array.from({ length: count }, (_, place) => 1n << BigInt(place)),
    told: sketches.map(({ state, leaves }, place) => ({
      state,
      check: `check-${place}`,
      leaves: BigInt(leaves | 1),
      result: nothing,
      health: nothing,
    })),
    checks: new Map(checks.map((check) => [check.id, check])),
    states,
  }
}

const minutesOf = (task: Task) => ({
  states,
  checks: Object.fromEntries([...task.checks].map(([id, { minutes }]) => [id, minutes])),
})
const totalOf = (task: Task) => wayOf(task, minutesOf(task), shortestMoves(task) ?? []).at(-1)?.total ?? 0

describe('the shortest way', () => {
  it('takes one check that settles all before two that settle it together', () => {
    const task = taskOf(4, [
      { state: 'priming', minutes: 3, leaves: 0b0011 },
      { state: 'priming', minutes: 3, leaves: 0b1101 },
      { state: 'priming', minutes: 5, leaves: 0b0001 },
    ])
    expect(shortestMoves(task)).toEqual([{ state: 'priming', check: 'check-2' }])
  })

  it('takes the two where they are quicker together', () => {
    const task = taskOf(4, [
      { state: 'priming', minutes: 2, leaves: 0b0011 },
      { state: 'priming', minutes: 2, leaves: 0b1101 },
      { state: 'priming', minutes: 5, leaves: 0b0001 },
    ])
    expect(totalOf(task)).toBe(4)
  })

  it('counts what the state of the plant costs', () => {
    const task = taskOf(2, [
      { state: 'full', minutes: 1, leaves: 0b01 },
      { state: 'priming', minutes: 19, leaves: 0b01 },
    ])
    expect(totalOf(task)).toBe(19)
    expect(shortestMoves({ ...task, start: 'full' })).toEqual([{ state: 'full', check: 'check-0' }])
  })

  it('needs no check where the complaint leaves one cause', () => {
    const task = taskOf(3, [{ state: 'priming', minutes: 1, leaves: 0b001 }])
    expect(shortestMoves({ ...task, open: 1n })).toEqual([])
  })

  it('goes as far as checks can tell, and no farther', () => {
    const task = taskOf(3, [{ state: 'priming', minutes: 1, leaves: 0b011 }])
    expect(shortestMoves(task)).toEqual([{ state: 'priming', check: 'check-0' }])
  })

  it('looks before it opens: an inspection counts the more, the less reason there is for it', () => {
    const look: Sketch = { state: 'priming', minutes: 4, leaves: 0b0011 }
    const open: Sketch = { state: 'priming', minutes: 5, leaves: 0b0001, finds: [0] }
    // By itself the inspection would do in 5 minutes, but it would be a guess with one chance in four.
    expect(shortestMoves(taskOf(4, [look, open]))).toEqual([
      { state: 'priming', check: 'check-0' },
      { state: 'priming', check: 'check-1' },
    ])
    // Where the hidden cause is by far the likeliest, it is no guess.
    expect(shortestMoves(taskOf(4, [look, open], [9, 1, 1, 1]))).toEqual([
      { state: 'priming', check: 'check-1' },
    ])
  })

  it('is as short as the shortest of all orders of all checks', () => {
    const sketch = fc.record({
      state: fc.constantFrom(...plantStates),
      minutes: fc.integer({ min: 1, max: 12 }),
      leaves: fc.integer({ min: 0, max: 63 }),
    })
    fc.assert(
      fc.property(fc.array(sketch, { minLength: 1, maxLength: 5 }), (sketches) => {
        const task = taskOf(6, sketches)
        const goal = openAnswers(
          task.told.reduce((open, { leaves }) => open & leaves, task.open),
          task.masks,
        ).length
        let least = Infinity
        const walk = (state: PlantState, open: bigint, spent: number, left: readonly number[]): void => {
          if (openAnswers(open, task.masks).length === goal) least = Math.min(least, spent)
          for (const place of left) {
            const [told, check] = [task.told[place], sketches[place]]
            if (told === undefined || check === undefined) continue
            const cost = stateMinutes(state, check.state, states) + check.minutes
            walk(
              check.state,
              open & told.leaves,
              spent + cost,
              left.filter((other) => other !== place),
            )
          }
        }
        walk(
          'priming',
          task.open,
          0,
          sketches.map((_, place) => place),
        )
        expect(totalOf(task)).toBe(least)
      }),
      { numRuns: 200, seed: 4 },
    )
  })
})

describe('a way told step by step', () => {
  const task = taskOf(4, [
    { state: 'priming', minutes: 2, leaves: 0b0111 },
    { state: 'idle', minutes: 3, leaves: 0b0101 },
  ])

  it('adds up the minutes of work and of states, and says what each step ruled out', () => {
    const acts = [
      { state: 'priming', check: 'check-0' },
      { state: 'idle', check: 'check-1' },
    ] as const
    expect(wayOf(task, minutesOf(task), acts)).toEqual([
      { act: acts[0], minutes: 2, total: 2, ruledOut: [3], open: [0, 1, 2] },
      { act: acts[1], minutes: 5 + 3, total: 10, ruledOut: [1], open: [0, 2] },
    ])
  })

  it('counts a change of state that led to nothing, and a check that was made twice', () => {
    const acts = [
      { state: 'idle' },
      { state: 'priming' },
      { state: 'priming', check: 'check-0' },
      { state: 'priming', check: 'check-0' },
    ] as const
    const steps = wayOf(task, minutesOf(task), acts)
    expect(steps.map(({ total }) => total)).toEqual([5, 7, 9, 11])
    expect(steps.at(-1)?.ruledOut).toEqual([])
  })
})
