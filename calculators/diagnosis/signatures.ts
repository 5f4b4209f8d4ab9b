import { perform } from '../checks/perform.ts'
import type { CheckData } from '../checks/types.ts'
import type { CircuitModel } from '../circuit/model.ts'
import type { SetPoint } from '../circuit/read-figures.ts'
import { solveCircuit } from '../circuit/solve-circuit.ts'
import type { CircuitState, Conditions, NoState, OperatingState } from '../circuit/types.ts'
import { bendCircuit, type SevereFault } from '../faults/bend-circuit.ts'
import type { FaultData } from '../faults/types.ts'
import { glassValue } from './glass-value.ts'
import type { Shown, Signatures } from './types.ts'

const SEVERITIES = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]
const DIGITS = 5

export interface SignatureSource {
  readonly circuit: string
  readonly model: CircuitModel
  readonly setPoints: Readonly<Record<string, SetPoint>>
  readonly faults: readonly FaultData[]
  readonly checks: readonly CheckData[]
}

const byState = <Value>(value: (state: OperatingState) => Value): Record<OperatingState, Value> => ({
  priming: value('priming'),
  idle: value('idle'),
  part: value('part'),
  full: value('full'),
})

/** Parts that a hand feels on this circuit. */
const feltChecks = ({ checks, circuit }: SignatureSource): readonly CheckData[] =>
  checks.filter((check) => check.feels.length > 0 && check.circuits.includes(circuit))

/**
 * The circuit with faults, at the usual temperatures.
 * @param source circuit and its data
 * @param state one of the four
 * @param faults with severities 0 to 1; none in health
 * @returns the state at rest, or why there is none
 */
export function solveWith(
  source: SignatureSource,
  state: OperatingState,
  faults: readonly SevereFault[],
): CircuitState | NoState {
  const { model, circuit, setPoints } = source
  const conditions: Conditions = { state, ...model.usual }
  const bending = bendCircuit(model, circuit, faults, conditions, setPoints)
  return bending.ok ? solveCircuit(model, conditions, bending.bent) : bending
}

/**
 * What instruments, eyes and hands give of a state.
 * @param source circuit and its checks
 * @param state at rest
 * @returns readings to five digits [SI], values of the glasses, and whether the felt parts pass fuel
 */
export function shownOf(source: SignatureSource, state: CircuitState): Shown {
  return {
    readings: state.readings.map(({ value }) => Number(value.toPrecision(DIGITS))),
    glasses: state.glasses.map(glassValue),
    felt: feltChecks(source).flatMap((check) => perform(check, state, []).felt.map(({ passes }) => passes)),
  }
}

/** The cylinder at which the data lets a fault of a single cylinder sit. */
function cylinderOf({ bends }: FaultData, circuit: string): number | undefined {
  const [bend] = bends[circuit] ?? []
  if (bend === undefined || !('part' in bend) || !Array.isArray(bend.cylinders)) return undefined
  return bend.cylinders.length === 1 ? (bend.cylinders[0] as number) : undefined
}

function rested(state: CircuitState | NoState): CircuitState {
  if (state.ok) return state
  throw new Error(`The circuit does not come to rest in health: ${state.reason}`)
}

/**
 * What health and every fault of a circuit show, at every severity and in every state.
 * @param source circuit, faults and checks
 * @returns the signatures, at the usual temperatures and a tank six tenths full; single cylinders as the data names
 * them
 * @throws where the circuit has no state in health
 * @source common practice (the severities and the usual surroundings)
 */
export function computeSignatures(source: SignatureSource): Signatures {
  const { circuit, model } = source
  const here = source.faults.filter(({ bends }) => Object.hasOwn(bends, circuit))
  const health = byState((state) => rested(solveWith(source, state, [])))
  const faultStates = (fault: FaultData, state: OperatingState): Shown[] => {
    let last = health[state]
    return SEVERITIES.map((severity) => {
      const solved = severity === 0 ? last : solveWith(source, state, [{ fault, severity }])
      // Where the model comes to no rest, the last slighter state is the best that is known.
      if (solved.ok) last = solved
      return shownOf(source, last)
    })
  }
  return {
    circuit,
    severities: SEVERITIES,
    glasses: health.priming.glasses.map(({ part }) => part),
    felt: feltChecks(source).flatMap(({ feels }) => feels),
    cylinders: model.cylinders,
    atCylinder: Object.fromEntries(
      here.flatMap((fault) => {
        const cylinder = cylinderOf(fault, circuit)
        return cylinder === undefined ? [] : [[fault.id, cylinder]]
      }),
    ),
    states: byState((state) => ({
      readings: health[state].readings.map(({ id, label, kind, accuracy }) => ({
        id,
        label,
        kind,
        accuracy,
      })),
      health: shownOf(source, health[state]),
    })),
    faults: Object.fromEntries(
      here.map((fault) => [fault.id, byState((state) => faultStates(fault, state))]),
    ),
  }
}
