import { describe, expect, it } from 'vitest'
import {
  keepAnswer,
  keptAnswers,
  LESSONS_KEY,
  today,
  writeAll,
  type Shelf,
} from '../../../components/lesson/store.ts'
import { shelfOf } from './shelf.ts'

describe('the shelf of the device', () => {
  it('keeps one answer beside those that another page has written meanwhile', () => {
    const { shelf } = shelfOf()
    expect(keepAnswer(shelf, 'a/one', 'right', '2026-11-29')).toBe('')
    expect(keepAnswer(shelf, 'a/two', 'wrong', '2026-11-29')).toBe('')
    const kept = keptAnswers(shelf)
    expect(kept.ok && Object.keys(kept.answers)).toEqual(['a/one', 'a/two'])
  })

  it('says so where there is no room, and leaves what was there', () => {
    const { shelf, held } = shelfOf(100)
    keepAnswer(shelf, 'a/one', 'right', '2026-11-29')
    const before = held()
    expect(Object.keys(before)).toEqual([LESSONS_KEY])
    expect(keepAnswer(shelf, 'a/two', 'right', '2026-11-29')).toContain('no room')
    expect(held()).toEqual(before)
  })

  it('says so where the browser gives no shelf, or one that throws', () => {
    const locked: Shelf = {
      getItem: () => {
        throw new DOMException('denied', 'SecurityError')
      },
      setItem: () => {
        throw new DOMException('denied', 'SecurityError')
      },
      removeItem: () => {},
    }
    for (const shelf of [undefined, locked])
      expect(keepAnswer(shelf, 'a/one', 'right', '2026-11-29')).toContain('keeps nothing')
  })

  it.each(['soup', '{"version":2,"answers":{"a/one":{"first":"right"}}}'])(
    'never writes over what it cannot read: %s',
    (text) => {
      const { shelf, held } = shelfOf(Number.POSITIVE_INFINITY, { [LESSONS_KEY]: text })
      expect(keepAnswer(shelf, 'a/one', 'right', '2026-11-29')).toContain('cannot be read')
      expect(held()).toEqual({ [LESSONS_KEY]: text })
    },
  )

  it('writes all or nothing', () => {
    const { shelf, held } = shelfOf(12, { one: 'before', gone: 'x' })
    expect(
      writeAll(shelf, [
        ['gone', null],
        ['one', 'after'],
        ['two', 'far too long for this shelf'],
      ]),
    ).toBe(false)
    expect(held()).toEqual({ one: 'before', gone: 'x' })
    expect(
      writeAll(shelf, [
        ['gone', null],
        ['one', 'after'],
        ['two', 'short'],
      ]),
    ).toBe(true)
    expect(held()).toEqual({ one: 'after', two: 'short' })
  })

  it('has the day of the device’s clock, not that of Greenwich', () => {
    expect(today(new Date(2026, 0, 5, 0, 30))).toBe('2026-01-05')
    expect(today(new Date(2026, 10, 29, 23, 59))).toBe('2026-11-29')
  })
})
