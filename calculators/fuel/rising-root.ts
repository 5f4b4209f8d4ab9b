import type { Range } from '../calculator/types.ts'

type RealFunction = (x: number) => number

/** Enough halvings of any range of a number held in 64 bits. */
const HALVINGS = 200

/**
 * Where a rising function takes a value, by halving on the scale of logarithms. [the function's argument]
 * @param rising function that rises throughout the range [any unit]
 * @param wanted value looked for [the function's unit]
 * @param range where it is looked for [the argument's unit], both ends above zero
 * @returns the argument; the nearer end of the range where the function does not come to that value
 * @source common practice, no published source (bisection)
 */
export function risingRoot(rising: RealFunction, wanted: number, range: Range): number {
  let low = Math.log(range.minimum)
  let high = Math.log(range.maximum)
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (rising(Math.exp(middle)) < wanted) low = middle
    else high = middle
  }
  return Math.exp((low + high) / 2)
}
