import { describe, expect, it } from 'vitest'
import { exerciseKey } from '../../../components/exercise/progress.ts'
import {
  entriesFor,
  exercisesOn,
  fileText,
  readFile,
  type Taken,
} from '../../../components/lesson/progress-file.ts'
import { LESSONS_KEY, writeAll } from '../../../components/lesson/store.ts'
import { shelfOf } from './shelf.ts'

const taken: Taken = {
  answers: { 'a/one': { first: 'wrong', on: '2026-11-29', right: '2026-11-30' } },
  exercises: { '105': { version: 1, acts: [{ state: 'idle' }], tries: [], end: 'right' } },
}
const NUMBERS = ['101', '105']

describe('the record as a file', () => {
  it('comes back from the file as it was taken along', () => {
    expect(readFile(fileText(taken, '2026-11-30'))).toEqual({ ok: true, taken })
  })

  it('is replaced as a whole: what the file has not is not left from somebody else', () => {
    const { shelf, held } = shelfOf(Number.POSITIVE_INFINITY, {
      [exerciseKey('101')]: '{"version":1,"acts":[],"tries":[]}',
      'clear-return:units': 'us',
    })
    expect(writeAll(shelf, entriesFor(taken, NUMBERS))).toBe(true)
    expect(Object.keys(held()).sort()).toEqual([exerciseKey('105'), LESSONS_KEY, 'clear-return:units'].sort())
    expect(exercisesOn(shelf, NUMBERS)).toEqual(taken.exercises)
  })

  it('deletes answers and exercises, and nothing else', () => {
    const { shelf, held } = shelfOf(Number.POSITIVE_INFINITY, {
      [exerciseKey('105')]: '{}',
      [LESSONS_KEY]: 'soup',
      'clear-return:units': 'us',
    })
    expect(writeAll(shelf, entriesFor(undefined, NUMBERS))).toBe(true)
    expect(held()).toEqual({ 'clear-return:units': 'us' })
  })

  it('leaves out an exercise whose record is no JSON', () => {
    const { shelf } = shelfOf(Number.POSITIVE_INFINITY, { [exerciseKey('101')]: 'soup' })
    expect(exercisesOn(shelf, NUMBERS)).toEqual({})
  })

  const file = (change: Record<string, unknown>) =>
    JSON.stringify({ ...(JSON.parse(fileText(taken, '2026-11-30')) as object), ...change })
  it.each([
    ['', 'no JSON'],
    ['[1, 2]', 'no record of this course'],
    ['{"version":1}', 'no record of this course'],
    [file({ version: 9 }), 'version is 9; accepted: 1'],
    [file({ version: undefined }), 'version is missing'],
    [file({ answers: { 'a/one': { first: 'yes', on: '2026-11-29' } } }), 'first is «"yes"»'],
    [file({ exercises: undefined }), 'exercises is missing'],
    [file({ exercises: { abc: {} } }), 'accepted: a number of three digits'],
    [file({ exercises: { 105: { version: 1 } } }), 'exercises, 105 has no acts'],
    ['x'.repeat(500_001), 'accepted: at most 500000'],
  ])('a file that does not fit is refused with a reason (%#)', (text, reason) => {
    const read = readFile(text)
    expect(read.ok).toBe(false)
    expect(read.ok ? '' : read.reason).toContain(reason)
  })
})
