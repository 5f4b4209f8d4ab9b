import { rank } from '../../calculators/diagnosis/rank.ts'
import type { SignatureSource } from '../../calculators/diagnosis/signatures.ts'
import type { Knowledge } from '../../calculators/diagnosis/types.ts'
import { drawPlant } from './ranking-trials.ts'
import { observeAll, seeded, simulate } from './simulate.ts'

/** Both are repeated, so that neither is measured cold. */
const least = (run: () => void): number =>
  Math.min(
    ...Array.from({ length: 10 }, () => {
      const start = performance.now()
      run()
      return performance.now() - start
    }),
  )

/** Prints what a ranking costs against one solve of the circuit, in the same run. */
export function printSpeed(knowledge: Knowledge, source: SignatureSource, seed: number): void {
  const plant = drawPlant(knowledge, source, ['priming', 'full'], 1, seeded(seed))
  const observations = observeAll(knowledge, plant, seeded(seed))
  const solve = least(() => simulate(source, plant.faults, ['full']))
  // One gauge is read off anew each time.
  const changed = (nth: number) =>
    observations.map((one, place) =>
      place === 5 && typeof one.value === 'number' ? { ...one, value: one.value * (1 + nth / 1e4) } : one,
    )
  let nth = 0
  const cold = least(() => rank({ ...knowledge }, observations))
  const warm = least(() => rank(knowledge, changed(nth++)))
  console.log(
    `\nOne ranking of ${observations.length} observations takes ${(cold / solve).toFixed(1)} times one solve of the circuit; after one answer more ${(warm / solve).toFixed(1)} times`,
  )
}
