import { formatForSystem } from '../quantity/format.ts'
import type { UnitSystem } from '../quantity/types.ts'
import type { CheckResult, SeenReading } from './types.ts'

/** One line of what a check told: whose it is, and what it said; a sentence of an inspection stands alone. */
export interface ResultLine {
  readonly label: string
  readonly text: string
}

/** From so many readings of one kind their range is told first: twelve exhaust temperatures in a row say little. */
const MANY = 4

/** A value this far below what the instrument may be off by is nothing. */
const NOTHING = 1e-3

function readingText({ value, kind, accuracy, atStop }: SeenReading, system: UnitSystem): string {
  const shown = Math.abs(value) < NOTHING * accuracy ? 0 : value
  const text = formatForSystem(shown, kind, system, undefined, { uncertainty: accuracy })
  if (atStop === undefined) return text
  return `${text}, the needle rests at its ${atStop} stop`
}

/** The name without the number at its end: 'Exhaust, cylinder 7' → 'Exhaust, cylinder'. */
const withoutNumber = (label: string): string => label.replace(/,?\s*(cylinder)?\s*\d+$/, '')

function manyReadings(readings: readonly SeenReading[], system: UnitSystem): ResultLine[] {
  const sorted = [...readings].sort((a, b) => a.value - b.value)
  const [lowest, highest] = [sorted[0], sorted.at(-1)]
  if (lowest === undefined || highest === undefined) return []
  if (highest.value - lowest.value < lowest.accuracy)
    return [{ label: `${withoutNumber(lowest.label)}, all alike`, text: readingText(lowest, system) }]
  return [
    {
      label: `${withoutNumber(lowest.label)}, lowest and highest`,
      text: `${readingText(lowest, system)} (${lowest.label}) to ${readingText(highest, system)} (${highest.label})`,
    },
    {
      label: `${withoutNumber(lowest.label)}, each`,
      text: readings.map((reading) => readingText(reading, system)).join(', '),
    },
  ]
}

/**
 * What a check told in words and in the person's units, with as many digits as the instrument bears.
 * @param result what it told [SI]
 * @param system units that the person chose [-]
 * @source common practice
 */
export function describeResult(result: CheckResult, system: UnitSystem): ResultLine[] {
  const many = result.readings.length >= MANY
  return [
    ...result.glasses.map(({ label, words }) => ({ label, text: words })),
    ...(many
      ? manyReadings(result.readings, system)
      : result.readings.map((reading) => ({ label: reading.label, text: readingText(reading, system) }))),
    ...result.felt.map(({ label, passes }) => ({
      label,
      text: passes ? 'warm as the fuel, with a hum: fuel passes' : 'cool and still: no fuel passes',
    })),
    ...result.says.map((text) => ({ label: '', text })),
  ]
}
