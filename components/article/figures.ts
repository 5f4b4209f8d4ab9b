import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { formatForSystem } from '../../calculators/quantity/format.ts'

const systems: readonly UnitSystem[] = ['si', 'us', 'mixed']

export interface Wording {
  /** The unit systems that this wording serves, as the attribute data-figure lists them: 'si mixed'. */
  readonly systems: string
  readonly text: string
}

/**
 * How a value reads in each unit system, systems that read alike taken together, SI first. Which one is seen is
 * settled by the style sheet, so that a change of units needs no computing in the browser.
 * @param si value in the SI unit of its kind
 * @param kind kind of quantity
 * @param tolerance half-width about the value in the SI unit of `toleranceKind`; left out where there is none
 * @param toleranceKind kind of a difference between two values of `kind`
 */
export function wordingsOf(si: number, kind: KindId, tolerance?: number, toleranceKind: KindId = kind): Wording[] {
  const wordings: Wording[] = []
  for (const system of systems) {
    const value = formatForSystem(si, kind, system)
    const text =
      tolerance === undefined ? value : `${value} ± ${formatForSystem(tolerance, toleranceKind, system)}`
    const same = wordings.findIndex((wording) => wording.text === text)
    const known = wordings[same]
    if (known) wordings[same] = { ...known, systems: `${known.systems} ${system}` }
    else wordings.push({ systems: system, text })
  }
  return wordings
}
