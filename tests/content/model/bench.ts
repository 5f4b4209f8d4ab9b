import {
  operatingStates,
  type CircuitState,
  type OperatingState,
} from '../../../calculators/circuit/types.ts'
import { glass, rested, withFaults } from '../../unit/circuit-model/shipped.ts'

/** Faults with their severities, by id; none in health. */
export type Given = Readonly<Record<string, number>>

/** What a circuit shows from a cold start, with its usual fuel and a tank a little over half full. */
export function shown(circuit: string, state: OperatingState, given: Given): CircuitState {
  return rested(withFaults(circuit, state, given))
}

const healthy = new Map<string, CircuitState>()

export function inHealth(circuit: string, state: OperatingState): CircuitState {
  const key = `${circuit} ${state}`
  const known = healthy.get(key) ?? shown(circuit, state, {})
  healthy.set(key, known)
  return known
}

/** What differs from health by more than the instrument may be off, or what an eye sees, in any state. */
export function signs(circuit: string, given: Given): string[] {
  return operatingStates.flatMap((state) => {
    const health = inHealth(circuit, state)
    const now = shown(circuit, state, given)
    const readings = now.readings.filter(({ id, value, accuracy }) => {
      const usual = health.readings.find((one) => one.id === id)
      return !usual || Math.abs(value - usual.value) > Math.max(accuracy, usual.accuracy)
    })
    const glasses = now.glasses.filter(({ part, words }) => glass(health, part).words !== words)
    const remarks = now.remarks.filter(({ text }) => !health.remarks.some((usual) => usual.text === text))
    return [
      ...readings.map(({ id }) => `${state}: ${id}`),
      ...glasses.map(({ part, words }) => `${state}: ${part} ${words}`),
      ...remarks.map(({ text }) => `${state}: ${text}`),
    ]
  })
}
