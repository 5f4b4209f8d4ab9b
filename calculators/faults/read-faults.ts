import type { Refusal } from '../calculator/types.ts'
import type { SevereFault } from './bend-circuit.ts'
import type { FaultData } from './types.ts'

export type FaultsReading =
  | { readonly ok: true; readonly faults: readonly SevereFault[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] }

/** How many ids are offered for one that is not known. */
const OFFERED = 3

/** Letters to be changed, left out or put in, to make one text of another. */
function lettersApart(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, place) => place)
  for (let i = 1; i <= one.length; i++) {
    const next = [i]
    for (let j = 1; j <= other.length; j++)
      next.push(
        Math.min(
          (row[j] ?? 0) + 1,
          (next[j - 1] ?? 0) + 1,
          (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1),
        ),
      )
    row = next
  }
  return row[other.length] ?? 0
}

/** Words that two ids share count more than letters: 'plugged-strainer' means 'suction-strainer-plugged'. */
function distance(one: string, other: string): number {
  const words = new Set(one.split('-'))
  const shared = other.split('-').filter((word) => words.has(word)).length
  return lettersApart(one, other) - 6 * shared
}

const quoted = (value: unknown): string => `«${String(value).slice(0, 60)}»`

/**
 * Faults with their severities out of an object.
 * @param given id → severity, 0 (as in health) to 1
 * @param known all faults
 * @param circuit id of the circuit in which they shall happen
 * @returns the faults, or a refusal for every entry that is unknown, out of range or does not exist in this circuit
 */
export function readFaults(given: unknown, known: readonly FaultData[], circuit: string): FaultsReading {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    return {
      ok: false,
      refusals: [
        {
          field: 'faults',
          reason: `faults is ${Array.isArray(given) ? 'an array' : quoted(given)}`,
          accepted:
            'an object: id of a fault to its severity, 0 to 1, such as {"suction-strainer-plugged": 0.5}',
        },
      ],
    }
  const here = known.filter(({ bends }) => Object.hasOwn(bends, circuit))
  const faults: SevereFault[] = []
  const refusals: Refusal[] = []
  for (const [id, severity] of Object.entries(given)) {
    const fault = known.find((one) => one.id === id)
    const field = `faults.${id.slice(0, 60)}`
    const near = here
      .toSorted((one, other) => distance(id, one.id) - distance(id, other.id))
      .slice(0, OFFERED)
      .map((one) => one.id)
      .join(', ')
    if (!fault) refusals.push({ field, reason: `${quoted(id)} is not a fault`, accepted: `near it: ${near}` })
    else if (!Object.hasOwn(fault.bends, circuit))
      refusals.push({
        field,
        reason: `${fault.title} cannot happen in the circuit ${quoted(circuit)}`,
        accepted: `it can in ${Object.keys(fault.bends).join(', ') || 'none that is modelled'}; near it here: ${near}`,
      })
    else if (typeof severity !== 'number' || !(severity >= 0 && severity <= 1))
      refusals.push({
        field,
        reason: `${fault.title}: the severity is ${quoted(severity)}`,
        accepted: 'a number from 0 (as in health) to 1',
      })
    else faults.push({ fault, severity })
  }
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, faults }
}
