import type { Refusal } from '../calculator/types.ts'
import type { SevereFault } from './bend-circuit.ts'
import { nearest } from './nearest.ts'
import { told } from './told.ts'
import type { FaultData } from './types.ts'

export type FaultsReading =
  | { readonly ok: true; readonly faults: readonly SevereFault[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] }

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
          reason: `faults is ${told(given)}`,
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
    const near = nearest(
      id,
      here.map((one) => one.id),
    ).join(', ')
    if (!fault) refusals.push({ field, reason: `${told(id)} is not a fault`, accepted: `near it: ${near}` })
    else if (!Object.hasOwn(fault.bends, circuit))
      refusals.push({
        field,
        reason: `${fault.title} cannot happen in the circuit ${told(circuit)}`,
        accepted: `it can in ${Object.keys(fault.bends).join(', ') || 'none that is modelled'}; near it here: ${near}`,
      })
    else if (typeof severity !== 'number' || !(severity >= 0 && severity <= 1))
      refusals.push({
        field,
        reason: `${fault.title}: the severity is ${told(severity)}`,
        accepted: 'a number from 0 (as in health) to 1',
      })
    else faults.push({ fault, severity })
  }
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, faults }
}
