import type { OperatingState } from '../circuit/types.ts'
import { operatingStates } from '../circuit/types.ts'
import type { ReadingKey, Shown, Signatures } from './types.ts'

/** What one state shows, as departures from health. */
interface PackedState {
  readonly readings: readonly ReadingKey[]
  readonly health: Shown
  /**
   * For each reading, then each glass, then each felt part: over all faults and rising severities the change from
   * the severity before, in steps. A 0 stands for as many of them as the number behind it says.
   */
  readonly changes: readonly (readonly number[])[]
}

/** Signatures as they are shipped: plain JSON, a twelfth of what they are written out. */
export interface PackedSignatures {
  readonly circuit: string
  readonly severities: readonly number[]
  readonly glasses: readonly string[]
  readonly felt: readonly string[]
  readonly cylinders: number
  readonly atCylinder: Readonly<Record<string, number>>
  readonly faults: readonly string[]
  /** Ids of all values of glasses, by whose place a glass is counted. */
  readonly looks: readonly string[]
  readonly states: Readonly<Record<OperatingState, PackedState>>
}

/** Steps in the accuracy of an instrument: what rounding takes away is a twentieth of it at most. */
const STEPS_IN_ACCURACY = 20

function withZerosCounted(changes: readonly number[]): number[] {
  const packed: number[] = []
  let zeros = 0
  for (const change of [...changes, Number.NaN]) {
    if (change === 0) {
      zeros++
      continue
    }
    if (zeros > 0) packed.push(0, zeros)
    zeros = 0
    if (!Number.isNaN(change)) packed.push(change)
  }
  return packed
}

function withZerosWritten(packed: readonly number[]): number[] {
  const changes: number[] = []
  for (let place = 0; place < packed.length; place++) {
    const change = packed[place] ?? 0
    if (change !== 0) changes.push(change)
    else for (let left = packed[++place] ?? 0; left > 0; left--) changes.push(0)
  }
  return changes
}

/** One column of what is shown, as whole numbers with 0 in health, and back. */
interface Column {
  readonly count: (shown: Shown) => number
  readonly value: (count: number) => number | string | boolean
}

function columnsOf(
  readings: readonly ReadingKey[],
  health: Shown,
  looks: readonly string[],
): { readonly readings: Column[]; readonly glasses: Column[]; readonly felt: Column[] } {
  return {
    readings: readings.map(({ accuracy }, place) => {
      const step = accuracy / STEPS_IN_ACCURACY
      const sound = health.readings[place] ?? 0
      return {
        count: (shown) => Math.round(((shown.readings[place] ?? sound) - sound) / step),
        value: (count) => {
          const value = sound + step * count
          // Nothing stays nothing.
          return Math.abs(value) < step / 2 ? 0 : value
        },
      }
    }),
    glasses: health.glasses.map((sound, place) => ({
      count: (shown) => looks.indexOf(shown.glasses[place] ?? sound) - looks.indexOf(sound),
      value: (count) => looks[looks.indexOf(sound) + count] ?? sound,
    })),
    felt: health.felt.map((sound, place) => ({
      count: (shown) => Number(shown.felt[place]) - Number(sound),
      value: (count) => Number(sound) + count === 1,
    })),
  }
}

/**
 * Signatures made small for the way to a page.
 * @param signatures of a circuit
 * @returns plain JSON; readings are at most a twentieth of their instrument's accuracy off
 * @source common practice (the size of a step)
 */
export function packSignatures(signatures: Signatures): PackedSignatures {
  const { circuit, severities, glasses, felt, cylinders, atCylinder, states, faults } = signatures
  const ids = Object.keys(faults)
  const shown = operatingStates.flatMap((state) => [
    states[state].health,
    ...ids.flatMap((id) => faults[id]?.[state] ?? []),
  ])
  const looks = [...new Set(shown.flatMap((one) => one.glasses))].sort()
  const packed = (state: OperatingState): PackedState => {
    const { readings, health } = states[state]
    const columns = columnsOf(readings, health, looks)
    return {
      readings,
      health,
      changes: [...columns.readings, ...columns.glasses, ...columns.felt].map(({ count }) =>
        withZerosCounted(
          ids.flatMap((id) => {
            const counts = (faults[id]?.[state] ?? []).map(count)
            return counts.slice(1).map((value, place) => value - (counts[place] ?? 0))
          }),
        ),
      ),
    }
  }
  return {
    circuit,
    severities,
    glasses,
    felt,
    cylinders,
    atCylinder,
    faults: ids,
    looks,
    states: {
      priming: packed('priming'),
      idle: packed('idle'),
      part: packed('part'),
      full: packed('full'),
    },
  }
}

function coursesOf(packed: PackedSignatures, state: OperatingState): Shown[][] {
  const { readings, health, changes } = packed.states[state]
  const columns = columnsOf(readings, health, packed.looks)
  const written = changes.map(withZerosWritten)
  const steps = packed.severities.length - 1
  return packed.faults.map((_, fault) => {
    const counts = written.map(() => 0)
    const next = (step: number): Shown => {
      written.forEach((column, place) => {
        counts[place] = (counts[place] ?? 0) + (column[fault * steps + step] ?? 0)
      })
      let place = 0
      const value = <Value>({ value: of }: Column) => of(counts[place++] ?? 0) as Value
      return {
        readings: columns.readings.map(value<number>),
        glasses: columns.glasses.map(value<string>),
        felt: columns.felt.map(value<boolean>),
      }
    }
    return [health, ...Array.from({ length: steps }, (__, step) => next(step))]
  })
}

/**
 * Signatures as they were before they were packed, but for the rounding.
 * @param packed by packSignatures
 */
export function unpackSignatures(packed: PackedSignatures): Signatures {
  const { circuit, severities, glasses, felt, cylinders, atCylinder, states } = packed
  const state = (of: OperatingState) => ({ readings: states[of].readings, health: states[of].health })
  const courses = {
    priming: coursesOf(packed, 'priming'),
    idle: coursesOf(packed, 'idle'),
    part: coursesOf(packed, 'part'),
    full: coursesOf(packed, 'full'),
  }
  return {
    circuit,
    severities,
    glasses,
    felt,
    cylinders,
    atCylinder,
    states: { priming: state('priming'), idle: state('idle'), part: state('part'), full: state('full') },
    faults: Object.fromEntries(
      packed.faults.map((id, place) => [
        id,
        {
          priming: courses.priming[place] ?? [],
          idle: courses.idle[place] ?? [],
          part: courses.part[place] ?? [],
          full: courses.full[place] ?? [],
        },
      ]),
    ),
  }
}
