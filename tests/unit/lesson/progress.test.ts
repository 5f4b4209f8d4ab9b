import { describe, expect, it } from 'vitest'
import {
  readAnswers,
  tallyOf,
  withAnswer,
  writeAnswers,
  type Answers,
} from '../../../components/lesson/progress.ts'

const DAY = '2026-11-29'
const LATER = '2026-12-02'
const key = 'the-way-round/what-comes-back'

describe('answers that are kept on the device', () => {
  it('keep what the first one was, whatever comes after', () => {
    const wrong = withAnswer({}, key, 'wrong', DAY)
    expect(wrong).toEqual({ [key]: { first: 'wrong', on: DAY } })
    const right = withAnswer(wrong, key, 'right', LATER)
    expect(right).toEqual({ [key]: { first: 'wrong', on: DAY, right: LATER } })
    expect(withAnswer(right, key, 'right', '2027-01-01')).toEqual(right)
    expect(withAnswer(right, key, 'shown', '2027-01-01')).toEqual(right)
  })

  it('count an answer that was shown first as not right', () => {
    const shown = withAnswer(withAnswer({}, key, 'shown', DAY), key, 'right', LATER)
    expect(tallyOf(shown, 'the-way-round', ['what-comes-back'])).toEqual({
      of: 1,
      answered: 1,
      atFirst: 0,
      missed: [1],
    })
  })

  it('come back as they were', () => {
    const answers: Answers = {
      [key]: { first: 'right', on: DAY, right: DAY },
      'another-edition/gone': { first: 'wrong', on: LATER },
    }
    expect(readAnswers(writeAnswers(answers))).toEqual({ ok: true, value: answers })
    expect(readAnswers(null)).toEqual({ ok: true, value: {} })
  })

  it('are counted for the questions that this edition has', () => {
    const answers: Answers = {
      'a/one': { first: 'right', on: DAY, right: DAY },
      'a/two': { first: 'wrong', on: DAY },
      'a/gone': { first: 'right', on: DAY, right: DAY },
      'b/one': { first: 'right', on: DAY, right: DAY },
    }
    expect(tallyOf(answers, 'a', ['one', 'new', 'two'])).toEqual({
      of: 3,
      answered: 2,
      atFirst: 1,
      missed: [3],
    })
  })

  const kept = (answers: unknown) => JSON.stringify({ version: 1, answers })
  it.each([
    ['soup', 'no JSON'],
    ['7', 'version is «7»; accepted: 1'],
    ['[]', 'accepted: 1'],
    ['{"version":2,"answers":{}}', 'version is «2»; accepted: 1'],
    ['{"version":1}', 'answers is «nothing»'],
    [kept([]), 'answers is «[]»'],
    [kept({ 'no-slash': { first: 'right', on: DAY } }), 'no-slash'],
    [kept({ 'a/b': 'right' }), 'a/b is «"right"»; accepted: first, on and right'],
    [kept({ 'a/b': { first: 'perhaps', on: DAY } }), 'first is «"perhaps"»; accepted: right, wrong, shown'],
    [kept({ 'a/b': { first: 'right', on: '29/11/2026' } }), 'on is «"29/11/2026"»'],
    [kept({ 'a/b': { first: 'right', on: '2026-13-77' } }), 'accepted: a day such as 2026-11-29'],
    [kept({ 'a/b': { first: 'right', on: DAY, right: 7 } }), 'right is «7»'],
  ])('%s is refused with its field and what is accepted', (text, reason) => {
    const read = readAnswers(text)
    expect(read.ok).toBe(false)
    expect(read.ok ? '' : read.reason).toContain(reason)
  })
})
