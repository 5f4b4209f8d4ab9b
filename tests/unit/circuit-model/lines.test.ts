import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { circuitIds, flowOf, rested, sourceOf, withFaults } from './shipped.ts'

/** Flows are told to a ten-millionth of the largest. [m³/s] */
const TOLD = 1e-9

const idOf = (end: string): string => end.slice(0, end.indexOf('.'))

describe.each(circuitIds)('the lines of %s', (id) => {
  const { connections, junctions } = sourceOf(id).circuit

  it.each(operatingStates)('bring to each tee what they take from it: %s', (state) => {
    const { lines } = rested(withFaults(id, state, {}))
    const sumAt = (tee: string): number =>
      lines.reduce((sum, { connection, flow }) => {
        const drawn = connections[connection]
        if (!drawn) return sum
        return sum + (idOf(drawn.to) === tee ? flow : 0) - (idOf(drawn.from) === tee ? flow : 0)
      }, 0)
    const off = junctions.map((tee) => [tee.id, sumAt(tee.id)] as const)
    expect(off.filter(([, sum]) => Math.abs(sum) > TOLD)).toEqual([])
  })

  it('lead away from a cylinder what it was given less what it burnt', () => {
    const state = rested(withFaults(id, 'full', {}))
    const at = (end: 'from' | 'to', port: string): number =>
      state.lines.find(({ connection }) => connections[connection]?.[end].endsWith(port))?.flow ?? 0
    const injectors = sourceOf(id).circuit.elements.find(({ model }) => model.kind === 'injectors')
    const { id: part = '' } = injectors ?? {}
    const [given, back] = [at('to', `${part}.in`), at('from', `${part}.out`)]
    const cylinders = injectors?.count ?? 0
    // The middle one stands for all: along a header they differ by well under a hundredth.
    expect((given * cylinders) / flowOf(state, part)).toBeCloseTo(1, 2)
    expect(((given - back) * cylinders) / state.engine.burnt).toBeCloseTo(1, 2)
  })
})
