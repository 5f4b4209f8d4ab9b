import type { TakeNumbers } from './room.ts'

/** Values that chase each other from round to round are moved ever less, those that creep one way ever more. */
export interface Settling {
  /** What the round asks for; to be filled in before `move`. */
  readonly wanted: Float64Array
  /** Moves values towards what is wanted. */
  readonly move: (values: Float64Array) => void
}

const LEAST_SHARE = 0.02
const LESS = 0.5
const MORE = 1.2

/**
 * A damper for some values of a loop: the share of the way that each is moved halves where its direction turns.
 * @param take gives it room, from room
 * @param count how many values [-]
 * @param leastShare of the way that is always gone [-]
 * @returns the damper; the first move goes all the way
 * @source common practice (sign-based step sizes)
 */
export function settlingOf(take: TakeNumbers, count: number, leastShare = LEAST_SHARE): Settling {
  const wanted = take(count)
  const last = take(count)
  const shares = take(count).fill(1)
  const move = (values: Float64Array): void => {
    for (let place = 0; place < count; place++) {
      const way = (wanted[place] as number) - (values[place] as number)
      if (way === 0) continue
      const turned = way * (last[place] as number) < 0
      const share = shares[place] as number
      const next = turned ? Math.max(leastShare, share * LESS) : Math.min(1, share * MORE)
      shares[place] = next
      last[place] = way
      values[place] = (values[place] as number) + next * way
    }
  }
  return { wanted, move }
}
