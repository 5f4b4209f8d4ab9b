import { describe, expect, it } from 'vitest'
import { checkStates } from '../../../calculators/terminal/content.ts'
import type { Observation } from '../../../calculators/diagnosis/index.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import {
  statedAccuracies,
  withAccuracies,
  type Accuracies,
} from '../../../components/diagnosis/accuracies.ts'
import { apply, startState } from '../../../components/diagnosis/finder-state.ts'
import { findCauses, findNext } from '../../../components/diagnosis/reckon.ts'
import { rowInWords, shownRows } from '../../../components/diagnosis/rows.ts'
import { percentText, timesInWords, wholePercents } from '../../../components/diagnosis/shares.ts'
import { workOrderOf, workOrderText } from '../../../components/diagnosis/work-order.ts'
import { knowledge, seen } from '../diagnosis/pq12.ts'
import { offer, specs } from './offer.ts'

const found = (observations: readonly Observation[]) => findCauses(knowledge, observations).causes
const next = (observations: readonly Observation[]) =>
  findNext(knowledge, findCauses(knowledge, observations).ranking, observations, checkStates(), 'priming')
const bubbles = seen('return-glass', 'priming', 'bubbles')

describe('what the page is told by the worker', () => {
  it('is plain data that passes from one thread to another', () => {
    for (const findings of [found([bubbles]), next([bubbles])])
      expect(structuredClone(findings)).toEqual(findings)
  })

  it('has every cause once, with the shares of the ranking, and all shares sum to one', () => {
    const findings = found([bubbles])
    const causes = findings.groups.flatMap((group) => group.causes)
    expect(causes.map(({ fault }) => fault).toSorted()).toEqual(
      Object.keys(knowledge.signatures.faults).toSorted(),
    )
    const ranking = rank(knowledge, [bubbles])
    for (const { fault, share } of causes)
      expect(share).toBe(ranking.causes.find((cause) => cause.fault === fault)?.share)
    const sum = findings.groups.reduce((total, { share }) => total + share, 0)
    expect(sum + findings.healthy + findings.unknown).toBeCloseTo(1, 9)
  })

  it('keeps together what no reading tells apart, until a check has told it apart', () => {
    const [together] = found([bubbles]).groups
    expect(together?.causes.length).toBeGreaterThan(1)
    expect(together?.separating).toContain('wet-the-joints')
    const [alone] = found([bubbles, { id: 'wet-the-joints', value: 'find-1' }]).groups
    expect(alone?.causes.map(({ fault }) => fault)).toEqual(['strainer-cover-draws-air'])
    expect(alone?.separating).toEqual([])
  })

  it('proposes no check that would need the engine to run where it must not', () => {
    const { checks, doNotRun } = next([{ id: 'leaks', value: 'at-the-engine' }])
    expect(doNotRun).toContain('Stop the engine')
    expect(checks.filter(({ state }) => state !== 'stopped' && state !== 'priming')).toEqual([])
  })

  it('asks about a reading that cannot be right at its field', () => {
    const { doubts } = found([seen('suction-vacuum-gauge', 'full', 900_000)])
    expect(doubts.map(({ key, mayStand }) => [key, mayStand])).toEqual([['suction-vacuum-gauge.full', false]])
  })
})

describe('a gauge of which the person says how right it is', () => {
  const stated = (text: string) => {
    const state = apply(specs, startState(specs, 'si'), {
      type: 'gauge',
      action: { type: 'type', field: 'header-gauge.accuracy', text },
    })
    return statedAccuracies(offer.questions, state.gauges.fields)
  }
  const { readings, health } = knowledge.signatures.states.full
  const usual = health.readings[readings.findIndex(({ id }) => id === 'header-gauge')] ?? 0
  const low = seen('header-gauge', 'full', 0.7 * usual)
  const healthy = (accuracies: Accuracies) =>
    findCauses(withAccuracies(knowledge, accuracies), [low]).causes.healthy

  it('is taken as the usual one where nothing, nought or nonsense is said', () => {
    for (const text of ['', '0', '-5 kPa', 'quite good']) expect(stated(text)).toEqual({})
    expect(stated('20 kPa')).toEqual({ 'header-gauge': 20_000 })
  })

  it('speaks the less against a sound plant the worse it is', () => {
    expect(healthy(stated('150 kPa'))).toBeGreaterThan(healthy({}))
  })
})

describe('the list of causes', () => {
  it('shows whole percentages that sum to 100, whatever is told', () => {
    for (const observations of [
      [],
      [bubbles],
      [bubbles, seen('bypass-glass', 'full', 'rising-from-drain')],
    ]) {
      const rows = shownRows(offer, found(observations))
      expect(rows.reduce((sum, { percent }) => sum + percent, 0)).toBe(100)
      expect(rows.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
    }
  })

  it('puts first that none fits, or that nothing is wrong, where that is likeliest', () => {
    const sound = found([
      seen('return-glass', 'priming', 'full-and-clear'),
      seen('bypass-glass', 'priming', 'empty'),
      seen('return-glass', 'full', 'full-and-clear'),
    ])
    expect(sound.healthy).toBeGreaterThan(sound.groups[0]?.share ?? 1)
    expect(shownRows(offer, sound)[0]).toMatchObject({ id: 'healthy', ranked: true })
  })

  it('names all of a group', () => {
    const [row] = shownRows(offer, found([bubbles]))
    expect(row?.alike.length).toBeGreaterThan(0)
    expect(rowInWords(row ?? { words: '', alike: [] })).toContain('Suction strainer cover draws air')
  })
})

describe('shares in words', () => {
  it.each([
    [[1], [100]],
    [
      [0.5, 0.5],
      [50, 50],
    ],
    [
      [1 / 3, 1 / 3, 1 / 3],
      [34, 33, 33],
    ],
    [
      [0.995, 0.005],
      [100, 0],
    ],
    [
      [0.296, 0.296, 0.408],
      [29, 30, 41],
    ],
  ])('%j are %j', (shares, percents) => {
    const whole = wholePercents(shares)
    expect(whole.reduce((sum, percent) => sum + percent, 0)).toBe(100)
    expect(whole.toSorted()).toEqual(percents.toSorted())
  })

  it('never says nought of what may be', () => {
    expect(percentText(0)).toBe('under 1\u00a0%')
    expect(percentText(7)).toBe('7\u00a0%')
  })

  it.each([
    [Math.log(4.2), /^seen about 4 times as often/],
    [-Math.log(12), /^seen about 12 times less often/],
    [Math.log(5000), /^seen more than 100 times as often/],
  ])('a weight of %d is told as a factor', (weight, words) => {
    expect(timesInWords(weight)).toMatch(words)
  })
})

it('the work order says what was seen, what was checked, the causes in order and what was found', () => {
  const state = [
    { type: 'say', key: 'return-glass.priming', value: 'bubbles' },
    { type: 'gauge', action: { type: 'type', field: 'suction-vacuum-gauge.priming', text: '12' } },
    { type: 'say', key: 'wet-the-joints', value: 'find-1' },
    { type: 'found', found: 'strainer-cover-draws-air' },
    { type: 'note', note: 'Ring replaced.' },
  ] as const
  const told = state.reduce((before, action) => apply(specs, before, action), startState(specs, 'si'))
  const findings = found([
    bubbles,
    seen('suction-vacuum-gauge', 'priming', 12_000),
    { id: 'wet-the-joints', value: 'find-1' },
  ])
  const order = workOrderOf(
    offer,
    specs,
    told,
    {
      causes: findings,
      next: {
        checks: [],
        doNotRun:
          'Stop the engine, and do not run it to learn more. The reason is what was told. Leaks: wet.',
      },
    },
    new Date(2026, 10, 29),
    'https://shop.example/causes/',
  )
  const text = workOrderText(order)
  const [checked = ''] = offer.questions.flatMap(({ id, values }) =>
    id === 'wet-the-joints' ? [values?.['find-1'] ?? ''] : [],
  )
  expect(order.seen.map(({ answer }) => answer)).toEqual(['Full, with bubbles in the moving fuel.', '12 kPa'])
  expect(order.checks.map(({ answer }) => answer)).toEqual([checked])
  for (const line of [
    'Circuit: Fuel circuit of the PQ-12 (invented)',
    'Stop the engine, and do not run it to learn more. The reason is what was told. Leaks: wet.',
    'Date: 29 November 2026',
    '- Return glass, priming: Full, with bubbles in the moving fuel.',
    `1. Suction strainer cover draws air: ${order.causes[0]?.share ?? ''}`,
    'Suction strainer cover draws air\nRing replaced.',
    'Name and signature: ____',
    'The engine maker’s manual, local codes and licensed practice come first.',
    'https://shop.example/causes/',
  ])
    expect(text).toContain(line)
})
