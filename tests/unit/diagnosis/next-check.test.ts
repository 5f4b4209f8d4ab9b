import { describe, expect, it } from 'vitest'
import { diagnose } from '../../../calculators/diagnosis/index.ts'
import { separating, twinsOf } from '../../../calculators/diagnosis/twins.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { knowledge, seen } from './pq12.ts'

const states = checkStates()
const next = (observations: readonly Observation[]) =>
  diagnose(knowledge, observations, states, 'priming').next

describe('the next check', () => {
  it('begins with a glance or a gauge where nothing was told', () => {
    expect(['glance', 'gauge']).toContain(next([]).proposals[0]?.check.kind)
  })

  it('does not propose again what was told', () => {
    const { proposals } = next([seen('return-glass', 'priming', 'bubbles')])
    expect(proposals.map(({ check, state }) => `${check.id} ${state}`)).not.toContain('return-glass priming')
  })

  it('proposes what tells causes apart that no reading does', () => {
    const readings = knowledge.signatures.states.priming.readings.map(({ id }, place) =>
      seen(
        id,
        'priming',
        knowledge.signatures.faults['strainer-cover-draws-air']?.priming[8]?.readings[place] ?? 0,
      ),
    )
    const { proposals } = next([...readings, seen('return-glass', 'priming', 'bubbles')])
    expect(proposals.slice(0, 4).some(({ check }) => check.finds.length > 0)).toBe(true)
  })

  it('does not run an engine with a leak to learn more', () => {
    const { proposals, doNotRun } = next([{ id: 'leaks', value: 'at-the-engine' }])
    expect(doNotRun).toContain('Stop the engine')
    expect(proposals.length).toBeGreaterThan(0)
    expect(proposals.filter(({ state }) => !['stopped', 'priming'].includes(state))).toEqual([])
  })

  it('tells no more than there is to know, and nothing less than nothing', () => {
    const causes = Object.keys(knowledge.signatures.faults).length + 1
    for (const { tells, minutes } of next([]).proposals) {
      expect(tells).toBeGreaterThan(0)
      expect(tells).toBeLessThan(Math.log2(causes))
      expect(minutes).toBeGreaterThan(0)
    }
  })
})

describe('causes that no reading tells apart', () => {
  it('are grouped: air that is drawn in before the pump', () => {
    const group = twinsOf(knowledge).find((one) => one.includes('strainer-cover-draws-air'))
    expect(group).toContain('suction-union-draws-air')
    expect(separating(knowledge, group ?? []).map(({ id }) => id)).toContain('wet-the-joints')
  })

  it('are no group where a glass tells them apart', () => {
    const group = twinsOf(knowledge).find((one) => one.includes('return-line-squeezed'))
    expect(group ?? []).not.toContain('secondary-filters-plugged')
  })
})
