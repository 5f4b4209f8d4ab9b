import { stateMinutes } from '../checks/state-minutes.ts'
import type { CheckData, PlantState, StatesData } from '../checks/types.ts'
import { openAnswers } from './open-answers.ts'
import { Queue } from './queue.ts'
import type { Answer, Knowledge, Move, Told } from './types.ts'

/** What the search knows of an exercise. */
export interface Task extends Knowledge {
  readonly answers: readonly Answer[]
  readonly checks: ReadonlyMap<string, CheckData>
  readonly states: StatesData
}

interface Place {
  readonly state: PlantState
  readonly open: bigint
  readonly moves: readonly Move[]
}

/** More places than this are not looked at; the widest shipped exercise stays well below. */
const MOST_PLACES = 20_000

/** A place that was reached, and for how much. */
interface Settled {
  readonly cost: number
  readonly state: PlantState
  readonly open: bigint
}

const minutesOf = ({ checks }: Task, { check }: Move): number => checks.get(check)?.minutes ?? 0

/** Share of what is still possible, by weight, that an inspection would find; 1 for a glance and a gauge. */
function chance({ checks, answers, masks }: Task, open: bigint, { check }: Move): number {
  const finds = checks.get(check)?.finds ?? []
  if (finds.length === 0) return 1
  const found = new Set(finds.flatMap(({ faults }) => faults))
  let [all, hit] = [0, 0]
  for (const place of openAnswers(open, masks)) {
    const answer = answers[place]
    if (answer === undefined) continue
    all += answer.weight
    if (answer.faults.some((fault) => found.has(fault))) hit += answer.weight
  }
  return hit / all
}

/** In each state, of the moves that leave the same, the quickest; an inspection is never the same as another. */
function withoutRepeats(task: Task): Told[] {
  const best = new Map<string, Told>()
  for (const told of task.told) {
    if ((task.open & ~told.leaves) === 0n) continue
    const inspects = (task.checks.get(told.check)?.finds.length ?? 0) > 0
    const key = inspects ? `${told.state} ${told.check}` : `${told.state} ${told.leaves & task.open}`
    const known = best.get(key)
    if (known === undefined || minutesOf(task, told) < minutesOf(task, known)) best.set(key, told)
  }
  return [...best.values()]
}

/**
 * The shortest way: the checks after which only the hidden cause is left, together with those that no check tells
 * from it. A uniform-cost search (Dijkstra) over the states of the plant and the hypotheses still open; the cost is
 * in minutes, bringing the plant into a state included. So that luck does not count as skill, an inspection that
 * would find the cause in one case of three, by the weights of what is still open, counts three times its minutes:
 * gauges and glasses come first, and a spanner where they have left a reason for it. The minutes that are told are
 * the true ones. A place is dropped where another one, with no more left to rule out, could have come to its state
 * for no more; where an inspection follows, that is nearly but not strictly without loss.
 * @param task what each move tells, and what it costs [min]
 * @returns the moves in their order, or undefined where the search had to be given up
 * @source common practice
 */
export function shortestMoves(task: Task): Move[] | undefined {
  const moves = withoutRepeats(task)
  const goal = openAnswers(
    task.told.reduce((open, { leaves }) => open & leaves, task.open),
    task.masks,
  ).length
  const queue = new Queue<Place>()
  queue.put(0, { state: task.start, open: task.open, moves: [] })
  const settled: Settled[] = []
  while (settled.length < MOST_PLACES) {
    const next = queue.take()
    if (next === undefined) return undefined
    const { state, open, moves: way } = next.item
    if (openAnswers(open, task.masks).length === goal) return [...way]
    const bettered = settled.some(
      (other) =>
        (other.open & ~open) === 0n &&
        other.cost + stateMinutes(other.state, state, task.states) <= next.cost,
    )
    if (bettered) continue
    settled.push({ cost: next.cost, state, open })
    for (const move of moves) {
      const left = open & move.leaves
      if (left === open) continue
      const share = chance(task, open, move)
      if (share === 0) continue
      const cost = stateMinutes(state, move.state, task.states) + minutesOf(task, move) / share
      queue.put(next.cost + cost, {
        state: move.state,
        open: left,
        moves: [...way, { state: move.state, check: move.check }],
      })
    }
  }
  return undefined
}
