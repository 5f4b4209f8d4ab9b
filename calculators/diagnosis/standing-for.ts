import type { Explanation } from './explain-by.ts'

/** Severities that stand for all of a cause. */
const STANDING_FOR_ALL = 6

/** A few predictions of equal weight that stand for all, evenly through their weights. */
export function standingFor(predictions: Explanation['predictions']): Explanation['predictions'] {
  const whole = predictions.reduce((sum, { weight }) => sum + weight, 0)
  let passed = 0
  let chosen = 0
  return predictions.flatMap(({ prediction, weight }) => {
    passed += weight / whole
    const before = chosen
    chosen = Math.max(before, Math.floor(STANDING_FOR_ALL * passed + 0.5))
    return chosen > before ? [{ prediction, weight: (chosen - before) / STANDING_FOR_ALL }] : []
  })
}
