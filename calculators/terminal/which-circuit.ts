import { told } from '../faults/told.ts'
import { idsOf, plantFile } from './content.ts'
import { RefusedInput } from './read-inputs.ts'

/**
 * The circuit that was asked for: by its own id, or by that of a plant.
 * @throws RefusedInput where none, both or an unknown one is given
 */
export function whichCircuit(input: Readonly<Record<string, unknown>>): string {
  const { plant, circuit } = input
  const choose = (field: 'plant' | 'circuit', value: unknown): string => {
    const known = idsOf(`${field}s`)
    if (typeof value === 'string' && known.includes(value)) return value
    throw new RefusedInput(field, `${told(value)} is not a ${field}`, known.join(', '))
  }
  if (circuit !== undefined && plant !== undefined)
    throw new RefusedInput('plant', 'both a plant and a circuit are given', 'one of the two')
  if (circuit !== undefined) return choose('circuit', circuit)
  if (plant !== undefined) return plantFile(choose('plant', plant)).circuit
  throw new RefusedInput('circuit', 'neither a plant nor a circuit is given', idsOf('circuits').join(', '))
}
