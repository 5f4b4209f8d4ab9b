import type { Trial } from './ranking-trials.ts'

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`.padStart(6)
const shareOf = <Value>(all: readonly Value[], is: (one: Value) => boolean): number =>
  all.filter(is).length / Math.max(1, all.length)
const meanOf = <Value>(all: readonly Value[], of: (one: Value) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0) / Math.max(1, all.length)

/** Rows by what was observed: each choice of states by glasses and gauges alone, and with what is felt and told. */
function* rowsOf(
  trials: ReadonlyMap<string, readonly Trial[]>,
): Generator<readonly [string, readonly Trial[]]> {
  for (const [name, all] of trials)
    for (const told of [false, true])
      yield [
        `${name}${told ? ', with what is felt and told' : ''}`.padEnd(57),
        all.filter((one) => one.told === told),
      ]
}

export function printSingles(trials: ReadonlyMap<string, readonly Trial[]>): void {
  console.log(
    '\nOne fault: right cause first, and among the first three; causes that no reading in the states looked at',
  )
  console.log(
    'tells apart as one; how often the first is right by its own share; and how many share the place of the right one',
  )
  console.log(`${''.padEnd(57)}  each cause alone    groups            by share  in a group`)
  for (const [name, all] of rowsOf(trials)) {
    const within = (of: (one: Trial) => readonly number[], places: number) =>
      percent(shareOf(all, (one) => (of(one)[0] ?? places) < places))
    const alone = (one: Trial) => one.places
    const group = (one: Trial) => one.groupPlaces
    console.log(
      `${name}  ${within(alone, 1)} ${within(alone, 3)}      ${within(group, 1)} ${within(group, 3)}     ${percent(meanOf(all, (one) => one.firstShare))}     ${meanOf(all, (one) => one.alike).toFixed(1)}`,
    )
  }
}

export function printPairs(trials: ReadonlyMap<string, readonly Trial[]>): void {
  console.log(
    '\nTwo faults together, each of which shows something alone: both among the first four; and of those of',
  )
  console.log('which neither hides the other')
  console.log(`${''.padEnd(57)}  each alone  groups   neither hidden`)
  for (const [name, all] of rowsOf(trials)) {
    const both = (some: readonly Trial[], of: (one: Trial) => readonly number[]) =>
      percent(shareOf(some, (one) => of(one).every((place) => place < 4)))
    const seen = all.filter(({ hidden }) => !hidden)
    console.log(
      `${name}  ${both(all, (one) => one.places)}     ${both(all, (one) => one.groupPlaces)}   ${both(seen, (one) => one.groupPlaces)} of ${seen.length}`,
    )
  }
}

export function printCalibration(trials: readonly Trial[]): void {
  console.log('\nOf causes that were given a share, how many were right (one fault, all lines above)')
  for (let low = 0.1; low < 0.95; low += 0.1) {
    const given = trials.flatMap(({ ranking, faults }) =>
      ranking.causes
        .filter(({ share }) => share >= low && share < low + 0.1)
        .map((cause) => faults.includes(cause.fault)),
    )
    const span = `${(100 * low).toFixed(0)} to ${(100 * low + 10).toFixed(0)} %`
    console.log(`${span.padEnd(14)} ${percent(shareOf(given, Boolean))} of ${given.length}`)
  }
}

/** So often a cause must have been drawn to be called weak. */
const DRAWN = 5
const WEAKEST = 3

export function printWeakest(trials: readonly Trial[]): void {
  console.log(`\nThe weakest: least often first with its group, of causes drawn ${DRAWN} times or more`)
  const alone = trials.filter(({ told }) => !told)
  const weak = [...Map.groupBy(alone, ({ faults }) => faults[0] ?? '')]
    .filter(([, all]) => all.length >= DRAWN)
    .map(([fault, all]) => ({ fault, all, share: shareOf(all, (one) => one.groupPlaces[0] === 0) }))
    .toSorted((a, b) => a.share - b.share)
  for (const { fault, all, share } of weak.slice(0, WEAKEST)) {
    console.log(`  ${fault}: ${percent(share)} of ${all.length}; instead`)
    for (const { groupPlaces, states, ranking } of all)
      if (groupPlaces[0] !== 0) {
        const [first] = ranking.causes
        const own = ranking.causes.find((cause) => cause.fault === fault)
        console.log(
          `    ${first?.fault} with ${percent(first?.share ?? 0)} against ${percent(own?.share ?? 0)}, looked at in ${states.join(', ')}`,
        )
      }
  }
}
