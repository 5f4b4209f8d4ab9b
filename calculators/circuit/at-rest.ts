/** At rest when from one round to the next no pressure moves more than this [Pa], no temperature more than this [K]. */
export const PRESSURE_AT_REST = 0.05
export const TEMPERATURE_AT_REST = 1e-4

/** No flow moves by more than this share of the largest, or of a drop a second where hardly anything flows. [-] */
const SHARE_AT_REST = 1e-7
const HARDLY_ANY = 5e-6

/** The least share of gas, and of the rated power, that is told from none. [-] */
export const LEAST_SHARE = 1e-6

/** The least flow that a state at rest tells from none. [m³/s] @param flows of the state [m³/s] */
export function leastFlow(flows: ArrayLike<number>): number {
  let most = HARDLY_ANY
  for (let place = 0; place < flows.length; place++) most = Math.max(most, Math.abs(flows[place] as number))
  return SHARE_AT_REST * most
}

/** The value, or nothing where it is less than what is told from nothing. */
export const told = (value: number, least: number): number => (Math.abs(value) < least ? 0 : value)
