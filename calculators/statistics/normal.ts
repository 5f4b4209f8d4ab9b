/**
 * Upper tail of the standard normal distribution: the share of it above z. [-]
 * A continued fraction far out and the power series near the middle, both summed until nothing changes.
 * @param z standard deviations from the middle [-], any finite number
 * @returns 0 to 1, to about twelve digits
 * @source abramowitz-stegun (26.2.10 and 26.2.14)
 */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z)
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
  if (z > 38) return 0
  if (z < 3) {
    let term = z
    let sum = z
    for (let n = 3; Math.abs(term) > 1e-17 * sum; n += 2) {
      term *= (z * z) / n
      sum += term
    }
    return 0.5 - density * sum
  }
  let fraction = z
  for (let n = 200; n >= 1; n--) fraction = z + n / fraction
  return density / fraction
}

/**
 * The z below which a given share of the standard normal distribution lies: the inverse of `normalTail`, found by
 * halving an interval, since it is asked for rarely and nothing can go wrong. [-]
 * @param share of the distribution below z [-], between 0 and 1
 * @returns −38 to 38
 * @source abramowitz-stegun (26.2.10, inverted)
 */
export function normalQuantile(share: number): number {
  let low = -38
  let high = 38
  for (let step = 0; step < 70; step++) {
    const middle = (low + high) / 2
    // Compared in the smaller tail, where no digits are lost.
    const below = share < 0.5 ? normalTail(-middle) < share : normalTail(middle) > 1 - share
    if (below) low = middle
    else high = middle
  }
  return (low + high) / 2
}
