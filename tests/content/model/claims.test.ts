import { describe, expect, test } from 'vitest'
import { claimScopes } from '../../../components/content/claim-scope.ts'
import { gravest, partOf, queryOf, readClaim, type Claim } from '../../../components/content/claim.ts'
import { mdxPages, proseOf, tagsOf } from '../../../components/content/mdx-pages.ts'
import { disagreements, remarked, shownAt } from './claims.ts'

const scopes = claimScopes()

/** The words of each claim of a page, in their order, without the tags in them. */
const wordsOf = (text: string): string[] =>
  [...text.matchAll(/<Claim\b[^>]*>([\s\S]*?)<\/Claim>/g)].map(([, words = '']) =>
    proseOf(words).replace(/\s+/g, ' ').trim(),
  )

const claims = mdxPages().flatMap(({ path, text }) => {
  const words = wordsOf(text)
  const tags = tagsOf(text).filter(({ name }) => name === 'Claim')
  if (words.length !== tags.length)
    throw new Error(`${path}: ${tags.length} claims, ${words.length} of them closed`)
  return tags.map(({ attributes, line }, place) => ({
    path,
    line,
    words: words[place] ?? '',
    reading: readClaim(attributes, scopes),
  }))
})

test('at least forty statements of the pages are held against the model', () => {
  expect(claims.length).toBeGreaterThanOrEqual(40)
})

test.each(claims)('$path:$line «$words»', ({ words, reading }) => {
  expect(words).toMatch(/\w \w/)
  if (!reading.ok) throw new Error(reading.problems.join('\n'))
  expect(disagreements(reading.claim)).toEqual([])
})

test.each(claims)('$path:$line: the bench opens at what is claimed', ({ reading }) => {
  if (!reading.ok) throw new Error(reading.problems.join('\n'))
  const { claim } = reading
  const scope = scopes(claim.circuit)
  expect(shownAt(claim.circuit, queryOf(gravest(claim), scope && partOf(claim, scope))).ok).toBe(true)
})

describe('a claim that is not so is found out', () => {
  const claimOf = (attributes: Record<string, string>): Claim => {
    const reading = readClaim(attributes, scopes)
    if (!reading.ok) throw new Error(reading.problems.join('\n'))
    return reading.claim
  }

  test.each([
    ['the wrong direction', { state: 'full', fault: 'pump-worn', reading: 'header-gauge', is: 'higher' }],
    ['dust', { state: 'full', fault: 'pump-worn', severity: '0.3', reading: 'header-gauge', is: 'lower' }],
    [
      'one severity of three',
      { state: 'full', fault: 'pump-worn', severity: '0.3, 0.8, 1', reading: 'header-gauge', is: 'lower' },
    ],
    [
      'one state of two',
      { state: 'priming, full', fault: 'injector-passes-gas', glass: 'return-glass', is: 'bubbling' },
    ],
    [
      'no change, where there is one',
      { state: 'full', fault: 'pump-worn', reading: 'header-gauge', is: 'unchanged' },
    ],
    [
      'another look',
      { state: 'full', fault: 'return-line-blocked', glass: 'bypass-glass', is: 'running from above' },
    ],
    [
      'a remark that is not made',
      { state: 'full', fault: 'pump-worn', part: 'pump-relief-valve', is: 'open' },
    ],
    [
      'a remark that is made',
      { state: 'full', fault: 'pump-relief-weak', severity: '1', part: 'pump-relief-valve', is: 'not open' },
    ],
    ['another state', { state: 'idle', reading: 'header-gauge', is: 'lower', than: 'full' }],
    [
      'another fault',
      { state: 'full', fault: 'pump-worn', reading: 'header-gauge', is: 'lower', than: 'return-valve-weak' },
    ],
    [
      'another gauge',
      { state: 'full', reading: 'primary-drop-gauge', is: 'higher', than: 'secondary-drop-gauge' },
    ],
    ['a changed condition', { state: 'full', level: '10 %', reading: 'suction-vacuum-gauge', is: 'lower' }],
  ] satisfies [string, Record<string, string>][])('%s', (_, attributes) => {
    expect(disagreements(claimOf(attributes))).not.toEqual([])
  })

  test('two gauges of different kinds are not held against each other', () => {
    const claim = claimOf({
      state: 'full',
      reading: 'header-gauge',
      is: 'higher',
      than: 'header-temperature',
    })
    expect(() => disagreements(claim)).toThrow(/temperature/)
  })

  test.each([
    ['open', 'pump-relief-weak', 'pump-relief-valve', 'priming'],
    ['rattling', 'strainer-cover-draws-air', 'supply-pump', 'priming'],
    ['running dry', 'suction-pipe-uncovered', 'supply-pump', 'priming'],
  ] as const)('the model knows the remark «%s»', (is, fault, part, state) => {
    const { remarks } = shownAt('pq-12', queryOf({ state, faults: { [fault]: 1 }, changed: {} }))
    expect(remarks.filter((remark) => remark.part === part).some(({ text }) => remarked[is].test(text))).toBe(
      true,
    )
  })
})

describe('attributes that do not fit are refused, with what is allowed', () => {
  const good = { state: 'full', fault: 'pump-worn', reading: 'header-gauge', is: 'lower' }
  test.each([
    [{ ...good, circuit: 'none' }, /circuit: «none» is not an id/],
    [{ ...good, state: undefined }, /state is missing; allowed: priming, idle/],
    [{ ...good, state: 'full, racing' }, /state: «racing» .*allowed: priming/],
    [{ ...good, fault: 'none' }, /fault: «none» is no fault of pq-12; allowed: .*pump-worn/],
    [{ ...good, fault: 'feed-check-leaks' }, /is no fault of pq-12/],
    [{ ...good, severity: '0' }, /severity: «0»/],
    [{ ...good, severity: '0.5, 1.1' }, /severity: .*up to 1/],
    [{ ...good, fault: undefined, level: '10 %', severity: '1' }, /severity: there is no fault/],
    [{ ...good, fuel: 'none' }, /fuel: «none» .*allowed: summer-gas-oil/],
    [{ ...good, tank: '80 degC' }, /tank: «80 degC»/],
    [{ ...good, tank: '40' }, /tank: «40»/],
    [{ ...good, level: '110 %' }, /level: «110 %»/],
    [{ ...good, reading: 'none' }, /reading: «none» .*allowed: .*header-gauge.*exhaust-12/],
    [{ ...good, reading: 'exhaust-13' }, /reading: «exhaust-13»/],
    [{ ...good, glass: 'return-glass' }, /speaks of reading and glass; allowed: exactly one/],
    [{ ...good, reading: undefined }, /speaks of nothing/],
    [{ ...good, is: undefined }, /is: «» .*allowed: lower, higher/],
    [{ ...good, is: 'bubbling' }, /is: «bubbling» .*allowed: lower/],
    [
      { ...good, reading: undefined, glass: 'header-gauge', is: 'clear' },
      /glass: «header-gauge» .*bypass-glass/,
    ],
    [{ ...good, reading: undefined, part: 'supply-pump', is: 'sad' }, /is: «sad» .*allowed: open/],
    [{ ...good, than: 'none' }, /than: .*allowed: .*priming/],
    [{ ...good, fault: undefined }, /«lower» than what\?/],
    [{ ...good, state: 'priming', reading: 'power' }, /while priming the engine stands/],
    [{ ...good, reeding: 'x' }, /attribute: «reeding»/],
  ] as [Record<string, string | undefined>, RegExp][])('%o', (attributes, problem) => {
    const reading = readClaim(attributes, scopes)
    expect(reading.ok ? [] : reading.problems).toContainEqual(expect.stringMatching(problem))
  })

  test('and what fits is read', () => {
    expect(readClaim(good, scopes)).toMatchObject({ ok: true, claim: { severities: [0.5, 0.75, 1] } })
  })
})
