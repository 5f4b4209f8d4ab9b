import { describe, expect, it } from 'vitest'
import { stateMinutes } from '../../../calculators/checks/state-minutes.ts'
import { plantStates } from '../../../calculators/checks/types.ts'
import { states } from './content.ts'

const costs = {
  stopped: { up: 0, down: 3 },
  priming: { up: 2, down: 5 },
  idle: { up: 7, down: 11 },
  part: { up: 13, down: 17 },
  full: { up: 19, down: 0 },
}

describe('minutes between states of the plant', () => {
  it.each([
    ['stopped', 'stopped', 0],
    ['stopped', 'priming', 2],
    ['stopped', 'full', 2 + 7 + 13 + 19],
    ['priming', 'stopped', 3],
    ['full', 'idle', 17 + 11],
    ['full', 'stopped', 17 + 11 + 5 + 3],
  ] as const)('from %s to %s: %i', (from, to, minutes) => {
    expect(stateMinutes(from, to, costs)).toBe(minutes)
  })

  it('costs by the shipped data what the steps between cost, whatever lies between', () => {
    for (const [first, from] of plantStates.entries())
      for (const between of plantStates.slice(first))
        for (const to of plantStates.slice(plantStates.indexOf(between))) {
          const parts = stateMinutes(from, between, states) + stateMinutes(between, to, states)
          expect(stateMinutes(from, to, states)).toBe(parts)
          expect(stateMinutes(from, to, states) > 0).toBe(from !== to)
        }
  })
})
