import { operatingStates, type GlassView, type OperatingState } from '../../../calculators/circuit/types.ts'
import type { SevereFault } from '../../../calculators/faults/bend-circuit.ts'
import type { FaultData } from '../../../calculators/faults/types.ts'
import { faults, glass, rested, sourceOf, withFaults } from '../../unit/circuit-model/shipped.ts'

export const severities = [0.2, 0.4, 0.6, 0.8, 1] as const

/** The glasses in one state. */
export interface Seen {
  readonly state: OperatingState
  readonly returnGlass: GlassView
  /** Absent where the circuit has none. */
  readonly bypassGlass: GlassView | undefined
}

/** A circuit with the sides of its net, as its data gives them. */
export function circuitOf(id: string) {
  const { circuit } = sourceOf(id)
  const touched = (line: 'suction' | 'return') =>
    new Set(
      circuit.connections
        .filter((connection) => connection.line === line)
        .flatMap(({ from, to, pipe }) => [from.split('.')[0] ?? '', to.split('.')[0] ?? '', pipe?.id ?? '']),
    )
  const suction = touched('suction')
  const back = touched('return')

  /** Where a fault sits: the part of its first bend; the level is the tank's, all else of the conditions the fuel's. */
  function placeOf({ bends }: FaultData): string {
    const [first] = bends[id] ?? []
    if (first === undefined) throw new Error(id)
    if ('part' in first) return first.part
    return first.condition === 'tankLevel' ? 'tank' : 'fuel'
  }

  function seen(chosen: readonly SevereFault[]): readonly Seen[] {
    return operatingStates.map((state) => {
      const severities = Object.fromEntries(chosen.map(({ fault, severity }) => [fault.id, severity]))
      const now = rested(withFaults(id, state, severities))
      return {
        state,
        returnGlass: glass(now, 'return-glass'),
        bypassGlass: now.glasses.find(({ part }) => part === 'bypass-glass'),
      }
    })
  }

  /** What is seen with one fault by itself, for each severity the four states. */
  const sweep = (fault: FaultData): readonly (readonly Seen[])[] =>
    severities.map((severity) => seen([{ fault, severity }]))

  return {
    id,
    seen,
    sweep,
    placeOf,
    faults: faults.filter(({ bends }) => bends[id] !== undefined),
    onSuctionSide: (fault: FaultData) => suction.has(placeOf(fault)),
    onReturnSide: (fault: FaultData) => back.has(placeOf(fault)) && !suction.has(placeOf(fault)),
  }
}

export function faultOf(id: string): FaultData {
  const found = faults.find((fault) => fault.id === id)
  if (!found) throw new Error(`${id} is no fault`)
  return found
}

export const hasBubbles = ({ returnGlass }: Seen): boolean => /with bubbles/.test(returnGlass.words)
export const bubblesPriming = (views: readonly Seen[]): boolean =>
  views.some((view) => view.state === 'priming' && hasBubbles(view))
export const bubblesOnlyRunning = (views: readonly Seen[]): boolean =>
  !bubblesPriming(views) && views.some(hasBubbles)
export const fuelFrom = (views: readonly Seen[], from: 'valve' | 'drain'): boolean =>
  views.some(({ bypassGlass }) => bypassGlass?.from === from)
