import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { doubtsOf } from '../../../calculators/diagnosis/doubts.ts'
import { mixUpsOf } from '../../../calculators/diagnosis/mix-up.ts'
import { diagnose } from '../../../calculators/diagnosis/index.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { drawPlant } from '../../bench/ranking-trials.ts'
import { observeAll, seeded } from '../../bench/simulate.ts'
import { knowledge, seen, source } from './pq12.ts'

/** Pascals in one unit, and what it is called in the question. */
const UNITS = [
  ['psi', 6894.757],
  ['kPa', 1000],
  ['bar', 100_000],
  ['inHg', 3386.389],
  ['kgf/cm²', 98_066.5],
] as const

const sound = (id: string, state: NonNullable<Observation['state']>): number => {
  const { readings, health } = knowledge.signatures.states[state]
  return health.readings[readings.findIndex((one) => one.id === id)] ?? 0
}

const diagnosed = (observations: readonly Observation[]) =>
  diagnose(knowledge, observations, checkStates(), 'priming')

describe('a gauge whose value was told in the wrong unit', () => {
  it('30 psi told as 30 kPa is asked about', () => {
    const { doubts, ranking, verdict } = diagnosed([seen('header-gauge', 'full', 30_000)])
    expect(doubts[0]?.perhaps?.because).toBe('it was read in psi and told in kPa')
    expect(doubts[0]?.perhaps?.value).toBeCloseTo(206_843, 0)
    expect(verdict).toContain('Answer the questions first')
    expect(ranking.items).toEqual([])
  })

  // A kilopond on a square centimetre is a bar but for two parts in a hundred, and half or twice the usual pressure, as
  // of psi and inHg, is what many a fault shows.
  const pairs = UNITS.flatMap(([read, size]) =>
    UNITS.filter(([, other]) => Math.abs(Math.log(size / other)) > 1).map(
      ([told, other]) => [read, told, other / size] as const,
    ),
  )
  it.each(pairs)('%s told as %s at the header is asked about, whatever else was told', (_, __, factor) => {
    const usual = sound('header-gauge', 'full')
    const others = [
      seen('return-glass', 'full', 'full-and-clear'),
      seen('secondary-drop-gauge', 'full', sound('secondary-drop-gauge', 'full')),
    ]
    const wrong = seen('header-gauge', 'full', usual * factor)
    const { doubts, ranking } = diagnosed([...others, wrong])
    expect(doubts.map(({ observation }) => observation)).toEqual([wrong])
    // Bar and kgf/cm² cannot be told apart, so only the value is held.
    const meant = doubts[0]?.perhaps?.value ?? 0
    expect(Math.abs(meant - usual)).toBeLessThan(0.05 * usual)
    expect(ranking.items.map(({ observation }) => observation.id).sort()).toEqual([
      'return-glass',
      'secondary-drop-gauge',
    ])
  })

  it('is asked about by the unit in which it was told, and by no other', () => {
    const told = { ...seen('header-gauge', 'full', 3_000_000), unit: 'bar' }
    expect(diagnosed([told]).doubts[0]?.perhaps?.because).toBe('it was read in psi and told in bar')
    const vacuum = { ...seen('suction-vacuum-gauge', 'full', 80_000), unit: 'kPa' }
    expect(diagnosed([vacuum]).doubts.map(({ perhaps }) => perhaps)).toEqual([undefined])
    for (const unit of ['kPa', 'psi', 'inHg', 'kgf/cm2'])
      expect(
        mixUpsOf(3_000_000, 'gaugePressure', unit).every(({ because }) => !because.endsWith('told in bar')),
      ).toBe(true)
  })

  it('is believed when the person was asked and is sure', () => {
    const { doubts, ranking } = diagnosed([{ ...seen('header-gauge', 'full', 30_000), sure: true }])
    expect(doubts).toEqual([])
    expect(ranking.items).toHaveLength(1)
  })

  it('is believed where all else tells of a fault that shows it', () => {
    // A header that leaks far: low pressure, much too little return.
    const shown = knowledge.signatures.faults['return-valve-held-open']?.full.at(-1)
    const { readings } = knowledge.signatures.states.full
    const all = readings.map(({ id }, place) => seen(id, 'full', shown?.readings[place] ?? 0))
    expect(doubtsOf(knowledge, all).doubts).toEqual([])
  })

  it.each([
    ['litres a minute told as US gallons', 'return-flow', 6.309_02e-5 * 60_000],
    ['a per cent told as a share', 'rack', 100],
    ['horsepower told as kilowatts', 'power', 1000 / 745.7],
  ])('%s', (_, id, factor) => {
    const { doubts } = doubtsOf(knowledge, [seen(id, 'full', factor * sound(id, 'full'))])
    expect((doubts[0]?.perhaps?.value ?? 0) / sound(id, 'full')).toBeCloseTo(1, 5)
  })
})

describe('what cannot be, wherever it is read', () => {
  it.each([
    ['less than a perfect vacuum', 'header-gauge', -150_000, /perfect vacuum/],
    ['a vacuum deeper than the air', 'suction-vacuum-gauge', 250_000, /no vacuum is deeper/],
    ['colder than absolute zero', 'header-temperature', -5, /absolute zero/],
    ['no number', 'header-gauge', Number.NaN, /no number/],
  ])('%s is said, sure or not', (_, id, value, says) => {
    for (const sure of [false, true]) {
      const { doubts, ranking } = diagnosed([{ ...seen(id, 'full', value), sure }])
      expect(doubts[0]?.says).toMatch(says)
      expect(ranking.items).toEqual([])
    }
  })
})

describe('true readings', () => {
  it.each([1, 2] as const)(
    'of simulated plants with %i of the faults are hardly ever asked about',
    (faults) => {
      const draw = seeded(4)
      let asked = 0
      let told = 0
      for (let count = 0; count < 12; count++) {
        const plant = drawPlant(knowledge, source, [...operatingStates], faults, draw)
        const observations = observeAll(knowledge, plant, draw)
        told += observations.length
        asked += doubtsOf(knowledge, observations).doubts.length
      }
      expect(asked / told).toBeLessThan(0.01)
    },
  )
})
