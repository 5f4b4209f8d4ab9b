import { perform } from '../checks/perform.ts'
import type { CheckData, CheckResult, PlantState, StatesData } from '../checks/types.ts'
import type { CircuitState, NoState, OperatingState } from '../circuit/types.ts'
import type { FaultData } from '../faults/types.ts'
import { hypothesesOf, pairAnswers, singleAnswers } from './answers.ts'
import { fits } from './fits.ts'
import { answerMasks, openAnswers } from './open-answers.ts'
import { shortestMoves } from './shortest-way.ts'
import type { Answer, FaultAt, Hypothesis, Knowledge, Move, Told } from './types.ts'

/** What an exercise hides, and what is known at its start. */
export interface Exercise {
  readonly start: PlantState
  /** One fault, or two. */
  readonly hidden: readonly FaultAt[]
  /** Checks of which the complaint already gives the answer. */
  readonly told: readonly Move[]
}

/** The plant that the exercise is about. */
export interface World {
  /** The checks that can be made on this circuit. */
  readonly checks: readonly CheckData[]
  readonly states: StatesData
  /** The faults that this circuit can have. */
  readonly faults: readonly FaultData[]
  /** The solved circuit with these faults, in the exercise's conditions, or why there is none. */
  readonly show: (state: OperatingState, faults: readonly FaultAt[]) => CircuitState | NoState
}

export interface Course extends Knowledge {
  readonly answers: readonly Answer[]
  readonly hypotheses: readonly Hypothesis[]
  /** Places of the answers that no check tells from the hidden one, it included. */
  readonly alike: readonly number[]
  /** The shortest way. */
  readonly way: readonly Move[]
}

const idsOf = (faults: readonly FaultAt[]): string[] => faults.map(({ fault }) => fault)

/** What a check would tell with these faults; none where the circuit does not come to rest with them. */
function telling(
  { show }: World,
  check: CheckData,
  state: PlantState,
  faults: readonly FaultAt[],
): CheckResult | NoState {
  if (state === 'stopped') return perform(check, undefined, idsOf(faults))
  const shown = show(state, faults)
  return shown.ok ? perform(check, shown, idsOf(faults)) : shown
}

/** What each check tells in each state that it can be made in. */
function tellings(world: World, hidden: readonly FaultAt[]): Omit<Told, 'leaves'>[] {
  return world.checks.flatMap((check) =>
    check.states.map((state) => {
      const result = telling(world, check, state, hidden)
      const health = telling(world, check, state, [])
      if ('ok' in result)
        throw new Error(`${idsOf(hidden).join(' and ')} in the state «${state}»: ${result.reason}`)
      if ('ok' in health) throw new Error(`In health in the state «${state}»: ${health.reason}`)
      return { state, check: check.id, result, health }
    }),
  )
}

/**
 * All that an exercise is made of, by the model: what each check tells in each state, which causes that leaves, which
 * causes nothing tells apart, and the shortest way. One fault is looked for among all of the circuit, two among the
 * pairs that one would think of.
 * @param exercise what is hidden, and what is known at the start [-]
 * @param world the plant, its checks [min] and its faults [-]
 * @returns the course; an exercise whose shortest way is not found throws an error that says so
 * @source common practice
 */
export function prepareCourse(exercise: Exercise, world: World): Course {
  const { hidden, start } = exercise
  const answers =
    hidden.length === 1 ? singleAnswers(world.faults) : pairAnswers(world.faults, idsOf(hidden).sort())
  const hypotheses = hypothesesOf(answers, hidden)
  const checks = new Map(world.checks.map((check) => [check.id, check]))
  const fitting = (open: bigint, { state, check: id, result }: Omit<Told, 'leaves'>): bigint => {
    const check = checks.get(id)
    if (check === undefined) return open
    let leaves = 0n
    for (const [place, { corners }] of hypotheses.entries()) {
      const bit = 1n << BigInt(place)
      if ((open & bit) === 0n) continue
      // A corner in which the circuit does not come to rest tells nothing, for the cause or against it.
      const told = corners.flatMap((faults) => {
        const would = telling(world, check, state, faults)
        return 'ok' in would ? [] : [would]
      })
      if (told.length === 0 || fits(result, told)) leaves |= bit
    }
    return leaves
  }
  const tells = tellings(world, hidden)
  const everything = (1n << BigInt(hypotheses.length)) - 1n
  const open = exercise.told.reduce((left, { state, check }) => {
    const move = tells.find((told) => told.state === state && told.check === check)
    if (move === undefined) throw new Error(`«${check}» cannot be made in the state «${state}».`)
    return fitting(left, move)
  }, everything)
  // What the complaint has ruled out is not looked at again: for two faults at once that is most of the work.
  const told = tells.map((move): Told => ({ ...move, leaves: fitting(open, move) }))
  const masks = answerMasks(hypotheses)
  const knowledge = { start, told, masks, open }
  const way = shortestMoves({ ...knowledge, answers, checks, states: world.states })
  if (way === undefined) throw new Error(`No shortest way to ${idsOf(hidden).join(' and ')} was found.`)
  const last = told.reduce((left, { leaves }) => left & leaves, open)
  return { ...knowledge, answers, hypotheses, alike: openAnswers(last, masks), way }
}
