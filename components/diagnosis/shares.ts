/**
 * Shares as whole percentages that sum to 100, each off by less than one: what is lost by rounding down goes to those
 * that lost most.
 * @param shares that sum to one [-]
 * @returns whole numbers in their order
 */
export function wholePercents(shares: readonly number[]): number[] {
  const whole = shares.map((share) => Math.floor(share * 100))
  const missing = Math.round(shares.reduce((sum, share) => sum + share * 100, 0)) - sumOf(whole)
  const order = shares
    .map((share, place) => ({ place, lost: share * 100 - Math.floor(share * 100) }))
    .toSorted((a, b) => b.lost - a.lost)
  const raised = new Set(order.slice(0, missing).map(({ place }) => place))
  return whole.map((percent, place) => percent + (raised.has(place) ? 1 : 0))
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0)

/** From these shares on a cause is called so. */
const WORDS = [
  [0.8, 'very likely'],
  [0.5, 'likely'],
  [0.2, 'possible'],
  [0.05, 'less likely'],
] as const

export const shareInWords = (share: number): string =>
  WORDS.find(([least]) => share >= least)?.[1] ?? 'unlikely'

/** '42 %', and below one 'under 1 %'. */
export const percentText = (percent: number): string =>
  percent === 0 ? 'under 1\u00a0%' : `${percent}\u00a0%`

/** More is not told apart by an estimate. */
const MOST_TIMES = 100

/** How much more often something is seen with a cause: 'seen about 4 times as often with this cause as with all causes on average'. */
export function timesInWords(weight: number): string {
  const times = Math.exp(Math.abs(weight))
  const number =
    times > MOST_TIMES
      ? `more than ${MOST_TIMES}`
      : `about ${times < 3 ? Number(times.toPrecision(2)) : Math.round(times)}`
  return weight >= 0
    ? `seen ${number} times as often with this cause as with all causes on average`
    : `seen ${number} times less often with this cause than with all causes on average`
}

/** A factor below two either way tells little. */
export const LITTLE = Math.log(2)
const MUCH = Math.log(10)

/** 'for it', 'strongly against it', with what was seen as the subject. */
export function speaks(weight: number): string {
  const much = Math.abs(weight) >= MUCH ? 'strongly ' : ''
  return `speaks ${much}${weight > 0 ? 'for' : 'against'} it`
}
