import { expect, test } from 'vitest'
import { stateMinutes } from '../../../calculators/checks/state-minutes.ts'
import { writeProgress } from '../../../components/exercise/progress.ts'
import type { CheckOffer } from '../../../components/exercise/types.ts'
import { outcomeOf } from '../../../components/lesson/exercise-outcome.ts'
import { states } from '../checks/content.ts'

const check = (id: string, minutes: number, at: CheckOffer['states']): CheckOffer => ({
  id,
  label: id,
  kind: 'glance',
  minutes,
  how: 'Look.',
  states: at,
  cautions: [],
})
const offer = {
  checks: [check('look', 1, ['priming', 'idle']), check('open', 20, ['stopped'])],
  faults: [{ id: 'glass-dirty', title: 'Glasses dirty', alsoCalled: [] }],
  stateMinutes: states,
}
const facts = { number: '105', start: 'idle' as const, hidden: 1 }

test('minutes are those of the checks and of the ways between the states', () => {
  const text = writeProgress({
    acts: [
      { state: 'idle', check: 'look' },
      { state: 'stopped', check: 'open' },
    ],
    tries: [{ named: ['glass-dirty'], after: 1 }],
    end: 'alike',
  })
  expect(outcomeOf(text, facts, offer)).toEqual({
    end: 'solved',
    minutes: 1 + stateMinutes('idle', 'stopped', states) + 20,
    wrongNames: 1,
  })
})

test('begun and given up are no solutions', () => {
  const acts = [{ state: 'idle' as const, check: 'look' }]
  expect(outcomeOf(writeProgress({ acts, tries: [] }), facts, offer)?.end).toBe('begun')
  expect(outcomeOf(writeProgress({ acts, tries: [], end: 'given up' }), facts, offer)?.end).toBe('given up')
})

test('what does not fit this edition is no outcome', () => {
  expect(outcomeOf(null, facts, offer)).toBeUndefined()
  expect(outcomeOf('soup', facts, offer)).toBeUndefined()
  expect(
    outcomeOf('{"version":1,"acts":[{"state":"idle","check":"gone"}],"tries":[]}', facts, offer),
  ).toBeUndefined()
})
