import { readCircuit } from '../../calculators/circuit/read-model.ts'
import { solveCircuit } from '../../calculators/circuit/solve-circuit.ts'
import type { GlassView, OperatingState } from '../../calculators/circuit/types.ts'
import { bendCircuit, type SevereFault } from '../../calculators/faults/bend-circuit.ts'
import { readConditions } from '../../calculators/terminal/read-circuit-inputs.ts'
import { fuelsOf, setPointsOf } from '../content/ids.ts'
import { entriesOf, plantOfCircuit } from '../content/load.ts'
import { circuitOf } from './load-circuit.ts'

/** States in which a glass is watched, with the words for them. Part load lies between idle and full load. */
export const watchedStates = {
  priming: 'Priming',
  idle: 'Idle',
  full: 'Full load',
} as const satisfies Partial<Record<OperatingState, string>>
const states = Object.keys(watchedStates) as (keyof typeof watchedStates)[]

interface Sign {
  readonly glass: string
  readonly words: string
  readonly changed: boolean
}

export interface SignRow {
  readonly title: string
  /** What the glasses show, a list for each of the watched states. */
  readonly seen: readonly (readonly Sign[])[]
}

/**
 * What the glasses of a circuit show in health and with each of these faults by itself, in the circuit's usual
 * conditions. An unknown fault, one that the circuit cannot have, or a state that does not come to rest fails the build.
 * @param circuitId id in content/circuits
 * @param faultIds ids in content/faults
 * @param severity of each, 0 to 1
 * @returns title of the circuit, and rows: health first, then the faults in the order asked for
 */
export async function glassSigns(
  circuitId: string,
  faultIds: readonly string[],
  severity: number,
): Promise<{ readonly circuit: string; readonly rows: readonly SignRow[] }> {
  const entry = await circuitOf(circuitId)
  const setPoints = setPointsOf((await plantOfCircuit(entry)).id)
  const reading = readCircuit({ circuit: entry.data, setPoints, fuels: fuelsOf() })
  if (!reading.ok) throw new Error(`${circuitId}: ${reading.problems[0]?.message}`)
  const { model } = reading

  async function glassesIn(
    state: OperatingState,
    faults: readonly SevereFault[],
  ): Promise<readonly GlassView[]> {
    const conditions = await readConditions(model, state)
    const bending = bendCircuit(model, circuitId, faults, conditions, setPoints)
    if (!bending.ok) throw new Error(bending.reason)
    const answer = solveCircuit(model, conditions, bending.bent)
    if (!answer.ok) throw new Error(answer.reason)
    return answer.glasses
  }

  const health = await Promise.all(states.map((state) => glassesIn(state, [])))
  const labelOf = (id: string) => model.parts.find((part) => part.id === id)?.label ?? id
  const rowOf = async (title: string, faults: readonly SevereFault[]): Promise<SignRow> => ({
    title,
    seen: await Promise.all(
      states.map(async (state, place) =>
        (await glassesIn(state, faults)).map(({ part, words }, glass) => ({
          glass: labelOf(part),
          words,
          changed: words !== health[place]?.[glass]?.words,
        })),
      ),
    ),
  })
  const faults = await entriesOf('faults', faultIds)
  const rows = [await rowOf('In health', [])]
  for (const { id, data } of faults)
    rows.push(await rowOf(data.title, [{ fault: { ...data, id }, severity }]))
  return { circuit: entry.data.title, rows }
}
