import { describe, expect, it } from 'vitest'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { circuitIds, conditionsOf, faults, modelOf, withFaults } from './shipped.ts'

/** A pump that starves, where another start could lead to another rest. */
const HARD = { 'suction-strainer-plugged': 1, 'suction-pipe-uncovered': 0.6 }
const OTHERS = [{ 'pump-worn': 1 }, { 'return-line-blocked': 1 }, { 'strainer-cover-draws-air': 1 }]

/** Those of the faults that the circuit can have. */
const known = (id: string, severities: Readonly<Record<string, number>>) =>
  Object.fromEntries(
    Object.entries(severities).filter(([name]) => faults.some((one) => one.id === name && one.bends[id])),
  )

describe('one setting has one answer', () => {
  it.each(circuitIds)('%s: whatever was solved before it, and in whatever order', (id) => {
    const first = operatingStates.map((state) => withFaults(id, state, known(id, HARD)))
    for (const others of OTHERS) for (const state of operatingStates) withFaults(id, state, known(id, others))
    const again = operatingStates.toReversed().map((state) => withFaults(id, state, known(id, HARD)))
    expect(again.toReversed()).toEqual(first)
  })

  it.each(circuitIds)('%s: each state starts where it rests in health, and finds itself there', (id) => {
    const model = modelOf(id)
    const solutions = operatingStates.map((state) => {
      const now = solveCircuit(model, conditionsOf(model, state))
      return now.ok ? now.effort.solutions : now.reason
    })
    // One to find it, one to see that it stays.
    expect(solutions).toEqual(operatingStates.map(() => 2))
  })
})
