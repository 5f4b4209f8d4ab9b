import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import { circuitIds, conditionsOf, faults, modelOf, withFaults } from '../circuit-model/shipped.ts'

/** Odd tenths: tests/content/model/faults.test.ts has the others that tell. The long run has all. */
const tenths = Array.from({ length: 10 }, (_, place) => (place + 1) / 10).filter(
  (_, place) => import.meta.env.MODE === 'long' || place % 2 === 0,
)

describe.each(circuitIds)('%s', (id) => {
  const here = faults.filter(({ bends }) => Object.hasOwn(bends, id)).map((fault) => fault.id)

  it('has faults', () => {
    expect(here.length).toBeGreaterThan(20)
  })

  it.each(here)('comes to rest with %s, at every severity asked and in every state', (fault) => {
    const without = operatingStates.flatMap((state) =>
      tenths.flatMap((severity) => {
        const now = withFaults(id, state, { [fault]: severity })
        return now.ok ? [] : [`${state} ${severity}: ${now.reason}`]
      }),
    )
    expect(without).toEqual([])
  })

  it.each(here.slice(0, 5))('severity 0 of %s is health, to the last digit', (fault) => {
    const model = modelOf(id)
    const health = solveCircuit(model, conditionsOf(model, 'full'))
    expect(withFaults(id, 'full', { [fault]: 0 })).toEqual(health)
  })
})
