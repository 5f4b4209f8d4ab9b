// How good the ranking of causes is: simulated plants with one fault or two, drawn as often as they are met, at random
// severities and states, with noise on every gauge and glasses that are told wrongly. Prints tables; asserts nothing.
// `npm run ranking` draws 200 plants a line for each circuit; `npm run ranking 50` fewer; `npm run ranking 50 ps-6` those
// of one circuit; `npm run ranking 50 ps-6 7` with another seed. Work on the ranking with seeds of your own, so that the
// usual one stays unseen by what it measures.
import { gzipSync } from 'node:zlib'
import { twinsOf } from '../../calculators/diagnosis/twins.ts'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { checkStates, idsOf } from '../../calculators/terminal/content.ts'
import { knowledgeOf, packedSignaturesOf, signatureSource } from '../../calculators/terminal/knowledge.ts'
import { checksToCause } from './ranking-checks.ts'
import { printSpeed } from './ranking-speed.ts'
import { choices, trial, type Trial } from './ranking-trials.ts'
import { printCalibration, printPairs, printSingles, printWeakest } from './ranking-tables.ts'
import { seeded } from './simulate.ts'

const USUAL_SEED = 20_261_129

const plants = Number(process.argv[2] ?? 200)
if (!(Number.isInteger(plants) && plants >= 10))
  throw new Error('How many plants: a whole number from 10 on.')
const seed = Number(process.argv[4] ?? USUAL_SEED)
if (!Number.isInteger(seed)) throw new Error('The seed: a whole number.')

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0

function measure(circuit: string): void {
  const knowledge = knowledgeOf(circuit)
  const source = signatureSource(circuit)
  const json = JSON.stringify(packedSignaturesOf(circuit))
  const causes = Object.keys(knowledge.signatures.faults).length
  console.log(`\n===== ${circuit}: ${causes} causes, seed ${seed}, ${plants} plants a line`)
  console.log(`Signatures: ${json.length} bytes packed, ${gzipSync(json, { level: 9 }).length} bytes gzipped`)

  const draws = (count: 1 | 2, length: number, own: number): Map<string, Trial[]> =>
    new Map(
      Object.entries(choices).map(([name, choose]) => {
        const draw = seeded(own)
        return [name, Array.from({ length }, () => trial(knowledge, source, choose, count, draw)).flat()]
      }),
    )
  const singles = draws(1, plants, seed)
  printSingles(singles)
  printPairs(draws(2, plants, seed + 1))
  printCalibration([...singles.values()].flat())
  printWeakest([...singles.values()].flat())

  const draw = seeded(seed + 2)
  const searches = Array.from({ length: Math.ceil(plants / 5) }, () =>
    checksToCause(knowledge, source, checkStates(), draw),
  )
  console.log(
    '\nFurther checks from one look at the return glass to the right cause with a share of half or more, median',
  )
  console.log(
    `proposed ${median(searches.map((one) => one.proposed))}, in a fixed order ${median(searches.map((one) => one.fixed))}, of ${searches.length} plants`,
  )

  console.log('\nCauses that no reading in any state tells apart')
  for (const group of twinsOf(knowledge)) console.log(`  ${group.join(', ')}`)
  for (const state of operatingStates)
    console.log(
      `Looked at in ${state} alone: ${twinsOf(knowledge, [state])
        .map((group) => group.length)
        .join(', ')} of ${causes}`,
    )
  printSpeed(knowledge, source, seed)
}

for (const circuit of process.argv[3] === undefined ? idsOf('circuits') : [process.argv[3]]) measure(circuit)
