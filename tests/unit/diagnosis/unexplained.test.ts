import { describe, expect, it } from 'vitest'
import { diagnose } from '../../../calculators/diagnosis/index.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { unexplainedOf } from '../../../calculators/diagnosis/unexplained.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { knowledge, seen } from './pq12.ts'

const diagnosed = (observations: readonly Observation[]) =>
  diagnose(knowledge, observations, checkStates(), 'priming')
const named = (observations: readonly Observation[]) =>
  unexplainedOf(rank(knowledge, observations)).map(({ observation: { id, state } }) => `${id} ${state ?? ''}`)

describe('what no cause explains is named', () => {
  const beyond = { ...seen('header-gauge', 'full', 600_000), sure: true }

  it('a reading that stands though no cause shows it, and nothing is called unfit for it alone', () => {
    expect(named([beyond])).toEqual(['header-gauge full'])
    const { verdict } = diagnosed([beyond])
    expect(verdict).toMatch(/^One thing that was told goes with no cause/)
    expect(verdict).not.toContain('Nothing here fits')
  })

  it('that reading among others that a cause explains', () => {
    const others = [
      seen('return-glass', 'priming', 'bubbles'),
      seen('return-glass', 'full', 'bubbles'),
      seen('bypass-glass', 'full', 'empty'),
    ]
    expect(named([...others, beyond])).toEqual(['header-gauge full'])
    expect(named(others)).toEqual([])
  })

  it('and not what a cause explains that is seldom met', () => {
    const told = [beyond, { id: 'leaks', value: 'at-the-engine' }]
    expect(named(told)).toEqual(['header-gauge full'])
    expect(diagnosed(told).verdict).toMatch(/^One thing that was told goes with no cause/)
  })

  it('two looks that go together with no cause', () => {
    const told = [seen('return-glass', 'priming', 'empty'), seen('return-glass', 'full', 'full-and-clear')]
    expect(named(told).length).toBeGreaterThan(0)
    expect(diagnosed(told).verdict).toMatch(/goes with no cause|does not go together/)
  })

  it('two readings of that kind: nothing fits, and both are named', () => {
    const second = { ...seen('suction-vacuum-gauge', 'full', -10_000), sure: true }
    expect(diagnosed([beyond, second]).verdict).toMatch(/^Nothing here fits/)
    expect(named([beyond, second]).sort()).toEqual(['header-gauge full', 'suction-vacuum-gauge full'])
  })
})

describe('nothing is named', () => {
  it('with nothing told, in health, and with a cause that shows it', () => {
    const { readings, health } = knowledge.signatures.states.full
    const asIn = (shown: { readonly readings: readonly number[] } | undefined) =>
      readings.map(({ id }, place) => seen(id, 'full', shown?.readings[place] ?? 0))
    expect(named([])).toEqual([])
    expect(named(asIn(health))).toEqual([])
    for (const [fault, course] of Object.entries(knowledge.signatures.faults))
      for (const shown of course.full.filter((_, place) => place === 6))
        expect(named(asIn(shown)), fault).toEqual([])
  })

  it('for a rare reading that one cause explains', () => {
    expect(named([seen('header-gauge', 'full', 350_000)])).toEqual([])
  })
})
