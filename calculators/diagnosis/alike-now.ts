import type { OperatingState } from '../circuit/types.ts'
import { alike, cliquesOf, MOSTLY, rowsIn } from './alike.ts'
import type { RankedCause } from './rank.ts'
import { rowsOf } from './rows.ts'
import { standingFor } from './standing-for.ts'
import type { Knowledge } from './types.ts'

/** A cause with a smaller share stands alone: whether it is like another is nobody's question. */
const ASKED_FROM = 0.004

/** Whether most of what one may show in some states by now, the other may show too. */
function showsLike(
  knowledge: Knowledge,
  one: RankedCause,
  other: RankedCause,
  states: readonly OperatingState[],
  unnoticed: boolean,
): boolean {
  const rowOf = rowsIn(knowledge, states)
  const [sound] = rowsOf(knowledge.signatures, false).predictions
  const theirs = other.alone.predictions.map(({ prediction }) => rowOf(prediction))
  const own = standingFor(one.alone.predictions)
    .map(({ prediction, weight }) => ({ row: rowOf(prediction), weight }))
    .filter(({ row }) => unnoticed || sound === undefined || !alike(row, rowOf(sound)))
  const sum = (rows: typeof own) => rows.reduce((total, { weight }) => total + weight, 0)
  const same = own.filter(({ row }) => theirs.some((their) => alike(row, their)))
  return own.length > 0 && sum(same) >= MOSTLY * sum(own)
}

/**
 * Groups of causes that, as severe as they may be after all that was told, no reading and no glass in some states tells
 * apart.
 * @param knowledge of the circuit
 * @param causes ranked, the likeliest first
 * @param states in which anything was looked at
 * @returns every cause once; those that hardly come into question, alone
 * @source common practice (what counts as alike)
 */
export function alikeNow(
  knowledge: Knowledge,
  causes: readonly RankedCause[],
  states: readonly OperatingState[],
): readonly (readonly RankedCause[])[] {
  const asked = causes.filter(({ share }) => share >= ASKED_FROM)
  const others = causes.filter(({ share }) => share < ASKED_FROM)
  const groups = cliquesOf(
    asked,
    (one, other) =>
      showsLike(knowledge, one, other, states, false) && showsLike(knowledge, other, one, states, false),
  )
  return [...groups, ...others.map((cause) => [cause])]
}

/**
 * States in which a look at glasses and gauges tells some of a group apart.
 * @param knowledge of the circuit
 * @param group of causes
 * @param states that are thought of
 */
export const apartIn = (
  knowledge: Knowledge,
  group: readonly RankedCause[],
  states: readonly OperatingState[],
): OperatingState[] =>
  states.filter((state) =>
    group.some((one) =>
      group.some((other) => one !== other && !showsLike(knowledge, one, other, [state], true)),
    ),
  )
