import { describe, expect, it } from 'vitest'
import { hypothesesOf, pairAnswers, singleAnswers } from '../../../calculators/exercise/answers.ts'
import { judge } from '../../../calculators/exercise/judge.ts'
import { answerMasks, openAnswers } from '../../../calculators/exercise/open-answers.ts'
import type { FaultData } from '../../../calculators/faults/types.ts'

const fault = (id: string, frequency: FaultData['frequency']): FaultData => ({
  id,
  title: id,
  bends: {},
  frequency,
})
const faults = [
  fault('dirt', 'common'),
  fault('air', 'common'),
  fault('worn', 'occasional'),
  fault('cracked', 'rare'),
]

describe('what can be the matter', () => {
  it('is every single fault, the common ones the likelier', () => {
    expect(singleAnswers(faults)).toEqual([
      { faults: ['dirt'], weight: 9 },
      { faults: ['air'], weight: 9 },
      { faults: ['worn'], weight: 3 },
      { faults: ['cracked'], weight: 1 },
    ])
  })

  it('or a pair of which one is common and neither rare, each pair once', () => {
    expect(pairAnswers(faults, ['air', 'dirt']).map(({ faults: ids }) => ids.join(' and '))).toEqual([
      'air and dirt',
      'dirt and worn',
      'air and worn',
    ])
  })

  it('and the hidden pair in any case', () => {
    expect(pairAnswers(faults, ['cracked', 'worn'])).toContainEqual({
      faults: ['cracked', 'worn'],
      weight: 3,
    })
  })

  it('in ranges of severity that meet, the hidden severity a corner of each of its own', () => {
    const answers = singleAnswers(faults.slice(0, 2))
    const hypotheses = hypothesesOf(answers, [{ fault: 'air', severity: 0.61 }])
    const severities = hypotheses.map(({ corners }) => corners.map(([at]) => at?.severity))
    expect(severities).toEqual([
      [0.25, 0.5],
      [0.5, 0.75],
      [0.75, 1],
      [0.25, 0.5, 0.61],
      [0.5, 0.75, 0.61],
      [0.75, 1, 0.61],
    ])
    expect(openAnswers(0b000100n, answerMasks(hypotheses))).toEqual([0])
    expect(openAnswers(0b101000n, answerMasks(hypotheses))).toEqual([1])
    expect(openAnswers(0b111111n, answerMasks(hypotheses))).toEqual([0, 1])
  })

  it('of a pair in all four corners', () => {
    const [first] = hypothesesOf([{ faults: ['air', 'dirt'], weight: 1 }], [{ fault: 'worn', severity: 1 }])
    expect(first?.corners).toHaveLength(4)
    expect(first?.corners[1]).toEqual([
      { fault: 'air', severity: 0.4 },
      { fault: 'dirt', severity: 1 },
    ])
  })
})

describe('a named cause', () => {
  it.each([
    [['air'], ['air'], [], 'right'],
    [['worn'], ['air'], [['air'], ['worn']], 'alike'],
    [['dirt'], ['air'], [['air'], ['worn']], 'wrong'],
    [['dirt', 'air'], ['air', 'dirt'], [], 'right'],
    [['air', 'worn'], ['air', 'dirt'], [], 'partly'],
    [['air', 'worn'], ['air', 'dirt'], [['air', 'worn']], 'alike'],
    [['cracked', 'worn'], ['air', 'dirt'], [], 'wrong'],
    [['air'], ['air', 'dirt'], [], 'partly'],
    [[], ['air'], [], 'wrong'],
  ] as const)('%j where %j is hidden and %j are alike: %s', (named, hidden, alike, verdict) => {
    expect(judge(named, hidden, alike)).toBe(verdict)
  })
})
