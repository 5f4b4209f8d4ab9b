import { describe, expect, it } from 'vitest'
import { operatingStates, type OperatingState } from '../../../calculators/circuit/types.ts'
import { diagnose } from '../../../calculators/diagnosis/index.ts'
import { twinsOf } from '../../../calculators/diagnosis/twins.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { knowledge, seen } from './pq12.ts'

const groupWith = (fault: string, observations: readonly Observation[]) => {
  const { groups } = diagnose(knowledge, observations, checkStates(), 'priming')
  const group = groups.find(({ causes }) => causes.some((cause) => cause.fault === fault))
  return { faults: group?.causes.map((cause) => cause.fault).toSorted(), apartIn: group?.apartIn }
}

describe('causes that no glass and no gauge tells apart', () => {
  it('are fewer the more states are looked at', () => {
    const grouped = (states: readonly OperatingState[]) => twinsOf(knowledge, states).flat().length
    for (const state of operatingStates) expect(grouped([state])).toBeGreaterThan(grouped(operatingStates))
  })

  it('share one place in the state looked at, and name the state that tells them apart', () => {
    const primed = groupWith('foot-valve-leaks-back', [seen('return-glass', 'priming', 'bubbles')])
    expect(primed.faults).toContain('pump-shaft-seal-draws-air')
    expect(primed.apartIn).toContain('idle')
    const idled = groupWith('foot-valve-leaks-back', [
      seen('return-glass', 'priming', 'bubbles'),
      seen('return-glass', 'idle', 'full-and-clear'),
    ])
    expect(idled.faults).toEqual(['foot-valve-leaks-back'])
    expect(idled.apartIn).toEqual([])
  })

  it('are not to be told apart by running an engine that must not run', () => {
    const told = [seen('return-glass', 'priming', 'bubbles'), { id: 'leaks', value: 'at-the-engine' }]
    expect(groupWith('foot-valve-leaks-back', told).apartIn).toEqual([])
  })

  it('go apart by what a check found, and not where it found none of them', () => {
    const bubbles = seen('return-glass', 'priming', 'bubbles')
    const among = groupWith('strainer-cover-draws-air', [bubbles]).faults ?? []
    expect(among).toContain('pump-shaft-seal-draws-air')
    const wetted = groupWith('strainer-cover-draws-air', [bubbles, { id: 'wet-the-joints', value: 'find-1' }])
    expect(wetted.faults).toEqual(['strainer-cover-draws-air'])
    const check = knowledge.checks.find(({ id }) => id === 'wet-the-joints')
    const findable = among.filter((fault) => check?.finds.some(({ faults }) => faults.includes(fault)))
    expect(findable.length).toBeGreaterThan(1)
    const nothing = groupWith('strainer-cover-draws-air', [
      bubbles,
      { id: 'wet-the-joints', value: 'nothing' },
    ])
    expect(nothing.faults).toEqual(findable.toSorted())
  })

  it('let no one cause of them stand out', () => {
    const told = [seen('suction-vacuum-gauge', 'full', 1000)]
    const { groups, verdict } = diagnose(knowledge, told, checkStates(), 'full')
    expect(groups[0]?.causes.length).toBeGreaterThan(1)
    expect(verdict).toContain('one of a few causes')
  })

  it('are those of all states where only sounds, smells and history were told', () => {
    const { groups } = diagnose(knowledge, [{ id: 'delivery', value: 'new' }], checkStates(), 'stopped')
    const together = groups
      .map(({ causes }) =>
        causes
          .map(({ fault }) => fault)
          .toSorted()
          .join(' '),
      )
      .filter((faults) => faults.includes(' '))
    const alike = twinsOf(knowledge).map((group) => group.toSorted().join(' '))
    expect(together.toSorted()).toEqual(alike.toSorted())
  })
})
