import type { OperatingState } from '../circuit/types.ts'
import { alike, cliquesOf, mostlyShown, mutuallyShown, rowsIn, type Showing } from './alike.ts'
import { predictHealth } from './predict.ts'
import type { RankedCause } from './rank.ts'
import { standingFor } from './standing-for.ts'
import type { Knowledge } from './types.ts'

/** A cause with a smaller share stands alone: whether it is like another is nobody's question. */
const ASKED_FROM = 0.004

/** What a cause may show in some states by now; without what nobody would notice, where that is asked. */
function showingOf(
  knowledge: Knowledge,
  { alone: { predictions } }: RankedCause,
  states: readonly OperatingState[],
  noticed: boolean,
): Showing {
  const rowOf = rowsIn(knowledge, states)
  const sound = rowOf(predictHealth(knowledge.signatures))
  return {
    compared: standingFor(predictions)
      .map(({ prediction, weight }) => ({ row: rowOf(prediction), weight }))
      .filter(({ row }) => !noticed || !alike(row, sound)),
    all: predictions.map(({ prediction }) => rowOf(prediction)),
  }
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
  const asked = causes
    .filter(({ share }) => share >= ASKED_FROM)
    .map((cause) => ({ cause, showing: showingOf(knowledge, cause, states, true) }))
  const others = causes.filter(({ share }) => share < ASKED_FROM)
  const groups = cliquesOf(asked, (one, other) => mutuallyShown(one.showing, other.showing))
  return [...groups.map((group) => group.map(({ cause }) => cause)), ...others.map((cause) => [cause])]
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
  states.filter((state) => {
    const showings = group.map((cause) => showingOf(knowledge, cause, [state], false))
    return showings.some((one) => showings.some((other) => one !== other && !mostlyShown(one, other)))
  })
