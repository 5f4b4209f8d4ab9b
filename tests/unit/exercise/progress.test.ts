import { describe, expect, it } from 'vitest'
import { apply, standsIn } from '../../../components/exercise/exercise-state.ts'
import { noProgress, readProgress, writeProgress } from '../../../components/exercise/progress.ts'
import type { CheckOffer, Progress } from '../../../components/exercise/types.ts'
import { faultsNamed } from '../../../components/exercise/words.ts'

const offer = (id: string, states: CheckOffer['states']): CheckOffer => ({
  id,
  label: id,
  kind: 'glance',
  minutes: 1,
  how: 'Look.',
  states,
  cautions: [],
})
const known = {
  number: '101',
  hidden: 1,
  checks: [offer('return-glass', ['priming', 'idle']), offer('open-the-strainer', ['stopped'])],
  faults: [
    {
      id: 'glass-dirty',
      title: 'Glasses dirty or clouded',
      alsoCalled: ['brown glass', 'varnished sight glass'],
    },
    { id: 'tank-vent-blocked', title: 'Tank vent blocked', alsoCalled: ['blocked breather'] },
  ],
}
const done: Progress = {
  acts: [{ state: 'priming', check: 'return-glass' }, { state: 'stopped' }],
  tries: [{ named: ['glass-dirty'], after: 1 }],
  end: 'given up',
}
const changed = (change: (kept: Record<string, unknown>) => void): string => {
  const kept = JSON.parse(writeProgress(done)) as Record<string, unknown>
  change(kept)
  return JSON.stringify(kept)
}

describe('progress that is kept on the device', () => {
  it('comes back as it was', () => {
    expect(readProgress(writeProgress(done), known)).toEqual(done)
    expect(readProgress(writeProgress(noProgress), known)).toEqual({ ...noProgress, end: undefined })
  })

  it.each([
    ['nothing', null],
    ['no JSON', 'soup'],
    ['a list', '[]'],
    ['null', 'null'],
    ['another form', changed((kept) => (kept['version'] = 2))],
    [
      'a check that this edition lacks',
      changed((kept) => (kept['acts'] = [{ state: 'idle', check: 'gone' }])),
    ],
    [
      'a check in a state that it is not made in',
      changed((kept) => (kept['acts'] = [{ state: 'full', check: 'return-glass' }])),
    ],
    ['a state that there is not', changed((kept) => (kept['acts'] = [{ state: 'asleep' }]))],
    ['acts that are none', changed((kept) => (kept['acts'] = [7]))],
    ['no acts', changed((kept) => delete kept['acts'])],
    ['tries after acts that were not made', changed((kept) => (kept['tries'] = [{ named: [], after: 9 }]))],
    ['tries that are no list', changed((kept) => (kept['tries'] = 'none'))],
  ])('is not taken up where it is %s', (_, text) => {
    expect(readProgress(text, known)).toBeUndefined()
  })

  it('does not end in a way that there is not', () => {
    expect(
      readProgress(
        changed((kept) => (kept['end'] = 'won')),
        known,
      )?.end,
    ).toBeUndefined()
  })
})

describe('the course of an exercise', () => {
  it('stands in the state of what was done last', () => {
    const primed = apply(noProgress, { type: 'bring', state: 'priming' })
    expect(standsIn(noProgress, 'idle')).toBe('idle')
    expect(standsIn(primed, 'idle')).toBe('priming')
    expect(standsIn(apply(primed, { type: 'check', state: 'stopped', check: 'x' }), 'idle')).toBe('stopped')
  })

  it('goes on after a wrong name and ends with a right one', () => {
    const wrong = apply(noProgress, { type: 'name', named: ['glass-dirty'], verdict: 'wrong' })
    expect(wrong).toEqual({ acts: [], tries: [{ named: ['glass-dirty'], after: 0 }] })
    expect(apply(wrong, { type: 'name', named: ['tank-vent-blocked'], verdict: 'alike' }).end).toBe('alike')
  })

  it('takes nothing more once it has ended, but starts afresh', () => {
    expect(apply(done, { type: 'bring', state: 'idle' })).toBe(done)
    expect(apply(done, { type: 'name', named: [], verdict: 'right' })).toBe(done)
    expect(apply(done, { type: 'again' })).toEqual(noProgress)
  })
})

describe('the search over the faults', () => {
  const named = (typed: string) => faultsNamed(known.faults, typed).map(({ id }) => id)

  it('finds by title and by shop word, from the beginning of each word, in any order', () => {
    expect(named('vent')).toEqual(['tank-vent-blocked'])
    expect(named('BREATH')).toEqual(['tank-vent-blocked'])
    expect(named('glass varn')).toEqual(['glass-dirty'])
    expect(named('blocked')).toEqual(['tank-vent-blocked'])
  })

  it('finds nothing where a word is in none, and all where none is asked for', () => {
    expect(named('glass breather')).toEqual([])
    expect(named('ent')).toEqual([])
    expect(named('  ')).toHaveLength(2)
  })
})
