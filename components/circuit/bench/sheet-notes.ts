import type { CircuitState, GlassView, Reading } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import type { BenchData } from './types.ts'
import { shownValue } from './words.ts'

const INSTRUMENT = /-gauge$|^thermometer$|^viscometer$/

/** What stands under the labels of glasses and instruments in the drawing of a circuit that runs, by their ids. */
export function sheetNotes(
  { circuit }: BenchData,
  now: CircuitState,
  health: CircuitState,
  system: UnitSystem,
): ReadonlyMap<string, string> {
  const instruments = new Set(
    circuit.elements.filter(({ model }) => INSTRUMENT.test(model.kind)).map(({ id }) => id),
  )
  return new Map([
    ...now.glasses.map((glass) => [glass.part, glassNote(glass)] as const),
    ...now.readings.flatMap((reading) => {
      const { id, part = '', kind, value, accuracy } = reading
      if (!instruments.has(part)) return []
      const usual = health.readings.find((candidate) => candidate.id === id)
      return [[part, shownValue(value, kind, system, accuracy) + trendOf(reading, usual)] as const]
    }),
  ])
}

/** What the glass shows, of the table's words as many as there is room for; how full it is, is drawn. */
function glassNote({ look, from, milky }: GlassView): string {
  if (from === 'valve') return 'from above'
  if (from === 'drain') return 'from its drain'
  return milky && look === 'full and clear' ? 'full, milky' : look
}

/** An arrow where the instrument tells a change: no colour is needed to see it. */
function trendOf(now: Reading, usual: Reading | undefined): '' | ' ▲' | ' ▼' {
  const difference = now.value - (usual?.value ?? now.value)
  if (Math.abs(difference) < now.accuracy) return ''
  return difference > 0 ? ' ▲' : ' ▼'
}
