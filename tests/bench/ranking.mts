// How good the ranking of causes is: simulated plants with one fault or two, drawn as often as they are met, at random
// severities and states, with noise on every gauge and glasses that are told wrongly. Prints tables; asserts nothing.
// `npm run ranking` draws 200 plants a line for each circuit; `npm run ranking 50` fewer; `npm run ranking 50 ps-6` those
// of one circuit.
import { gzipSync } from 'node:zlib'
import { rank } from '../../calculators/diagnosis/rank.ts'
import { twinsOf } from '../../calculators/diagnosis/twins.ts'
import { checkStates, idsOf } from '../../calculators/terminal/content.ts'
import { knowledgeOf, packedSignaturesOf, signatureSource } from '../../calculators/terminal/knowledge.ts'
import { checksToCause } from './ranking-checks.ts'
import { choices, drawPlant, groupOf, trial, type Trial } from './ranking-trials.ts'
import { observeAll, seeded, simulate } from './simulate.ts'

const SEED = 2027
const plants = Number(process.argv[2] ?? 200)
if (!(Number.isInteger(plants) && plants >= 10))
  throw new Error('How many plants: a whole number from 10 on.')

const percent = (count: number, of: number): string =>
  `${((100 * count) / Math.max(1, of)).toFixed(0)} %`.padStart(6)
const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0

function measure(circuit: string): void {
  const knowledge = knowledgeOf(circuit)
  const source = signatureSource(circuit)
  const json = JSON.stringify(packedSignaturesOf(circuit))
  console.log(
    `\n===== ${circuit}: ${Object.keys(knowledge.signatures.faults).length} causes, seed ${SEED}, ${plants} plants a line`,
  )
  console.log(`Signatures: ${json.length} bytes packed, ${gzipSync(json, { level: 9 }).length} bytes gzipped`)

  console.log('\nOne fault: right cause first, and among the first three')
  console.log('                                  each cause alone   groups no reading tells apart')
  const singles: Trial[] = []
  for (const [name, choose] of Object.entries(choices)) {
    const draw = seeded(SEED)
    const trials = Array.from({ length: plants }, () => trial(knowledge, source, choose, 1, draw))
    singles.push(...trials)
    const within = (of: (one: Trial) => readonly number[], places: number) =>
      percent(trials.filter((one) => (of(one)[0] ?? places) < places).length, plants)
    const alone = (one: Trial) => one.places
    const group = (one: Trial) => one.groupPlaces
    console.log(
      `${name.padEnd(32)} ${within(alone, 1)} ${within(alone, 3)}       ${within(group, 1)} ${within(group, 3)}`,
    )
  }

  console.log('\nTwo faults together: both among the first four')
  for (const [name, choose] of Object.entries(choices)) {
    const draw = seeded(SEED + 1)
    const pairs = Math.ceil(plants / 2)
    const trials = Array.from({ length: pairs }, () => trial(knowledge, source, choose, 2, draw))
    const both = (of: (one: Trial) => readonly number[]) =>
      percent(trials.filter((one) => of(one).every((place) => place < 4)).length, pairs)
    console.log(
      `${name.padEnd(32)} ${both((one) => one.places)}              ${both((one) => one.groupPlaces)}`,
    )
  }

  console.log('\nOf causes that were given a share, how many were right (one fault, all lines above)')
  for (let low = 0.1; low < 0.95; low += 0.1) {
    const given = singles.flatMap(({ ranking, faults }) =>
      ranking.causes
        .filter(({ share }) => share >= low && share < low + 0.1)
        .map((cause) => faults.includes(cause.fault)),
    )
    const right = given.filter(Boolean).length
    const span = `${(100 * low).toFixed(0)} to ${(100 * low + 10).toFixed(0)} %`
    console.log(`${span.padEnd(14)} ${percent(right, given.length)} of ${given.length}`)
  }

  const draw = seeded(SEED + 2)
  const searches = Array.from({ length: Math.ceil(plants / 5) }, () =>
    checksToCause(knowledge, source, checkStates(), draw),
  )
  console.log(
    '\nFurther checks from one look at the return glass to the right cause with a share of half or more, median',
  )
  console.log(
    `proposed ${median(searches.map((one) => one.proposed))}, in a fixed order ${median(searches.map((one) => one.fixed))}`,
  )

  console.log('\nCauses that no reading tells apart')
  for (const group of twinsOf(knowledge)) console.log(`  ${group.join(', ')}`)

  console.log('\nThe three weakest: least often first, of causes drawn five times or more')
  const weak = [...Map.groupBy(singles, ({ faults }) => groupOf(knowledge, faults[0] ?? ''))]
    .filter(([, all]) => all.length >= 5)
    .map(([group, all]) => ({
      group,
      share: all.filter((one) => one.groupPlaces[0] === 0).length / all.length,
      all,
    }))
    .toSorted((a, b) => a.share - b.share)
  for (const { group, share, all } of weak.slice(0, 3)) {
    const instead = all.filter((one) => one.groupPlaces[0] !== 0).map((one) => one.ranking.causes[0]?.fault)
    console.log(
      `  ${group}: ${percent(share, 1)} of ${all.length}; instead ${[...new Set(instead)].join(', ')}`,
    )
  }

  // Both are repeated, so that neither is measured cold.
  const plant = drawPlant(knowledge, source, ['priming', 'full'], 1, seeded(SEED))
  const observations = observeAll(knowledge, plant, seeded(SEED))
  const least = (run: () => void): number =>
    Math.min(
      ...Array.from({ length: 10 }, () => {
        const start = performance.now()
        run()
        return performance.now() - start
      }),
    )
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
    `
One ranking of ${observations.length} observations takes ${(cold / solve).toFixed(1)} times one solve of the circuit; after one answer more ${(warm / solve).toFixed(1)} times`,
  )
}

for (const circuit of process.argv[3] === undefined ? idsOf('circuits') : [process.argv[3]]) measure(circuit)
