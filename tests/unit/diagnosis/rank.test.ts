import { describe, expect, it } from 'vitest'
import { reasonsOf } from '../../../calculators/diagnosis/reasons.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { knowledge, likeliest, seen, sharesOf, verdict } from './pq12.ts'

const sum = (shares: Record<string, number>) =>
  Object.values(shares).reduce((total, share) => total + share, 0)

const some: readonly Observation[] = [
  seen('return-glass', 'priming', 'bubbles'),
  seen('suction-vacuum-gauge', 'priming', 9_000),
  seen('header-gauge', 'full', 180_000),
  seen('exhaust-4', 'full', 640),
  { id: 'serviced', value: 'filters' },
  { id: 'wet-the-joints', value: 'nothing' },
  seen('feel-the-relief-line', 'priming', 'still'),
]

describe('the ranking', () => {
  it('gives shares that sum to one, whatever was told', () => {
    for (let count = 0; count <= some.length; count++)
      expect(sum(sharesOf(some.slice(0, count)))).toBeCloseTo(1, 12)
  })

  it('hangs on what was told, and not on its order', () => {
    expect(sharesOf(some.toReversed())).toEqual(sharesOf(some))
  })

  it('gives the same whether or not something of it was reckoned before', () => {
    sharesOf(some.slice(0, 3))
    expect(sharesOf(some)).toEqual(sharesOf(some, { ...knowledge }))
  })

  it('takes no notice of what was not looked at: an observation that nothing tells apart moves nothing', () => {
    const before = sharesOf([seen('return-glass', 'priming', 'bubbles')])
    // The circuit has no such gauge, so nobody can have looked at it.
    const after = sharesOf([seen('return-glass', 'priming', 'bubbles'), seen('gallery-gauge', 'full', 1)])
    expect(after).toEqual(before)
  })

  it('with nothing told gives each cause by how often it is met', () => {
    const shares = sharesOf([])
    const { frequency, healthy } = knowledge.weights
    expect((shares['strainer-cover-draws-air'] ?? 0) / (shares['foot-valve-binds'] ?? 1)).toBeCloseTo(
      frequency.common / frequency.rare,
      9,
    )
    expect((shares['healthy'] ?? 0) / (shares['foot-valve-binds'] ?? 1)).toBeCloseTo(
      healthy / frequency.rare,
      9,
    )
    expect(verdict([])).toContain('Nothing was told')
  })

  it('gives a cause that is met hardly ever hardly any share, and one met always nearly all', () => {
    const bubbles = [seen('return-glass', 'priming', 'bubbles')]
    const at = (common: number) =>
      sharesOf(bubbles, {
        ...knowledge,
        faults: knowledge.faults.map((fault) => ({
          ...fault,
          frequency: fault.id === 'strainer-cover-draws-air' ? ('common' as const) : ('rare' as const),
        })),
        weights: { ...knowledge.weights, frequency: { common, occasional: 1, rare: 1 } },
      })['strainer-cover-draws-air'] ?? 0
    expect(at(1e-9)).toBeLessThan(0.01)
    expect(at(1e9)).toBeGreaterThan(0.99)
  })

  it('says that a sound plant is sound', () => {
    const { readings, health } = knowledge.signatures.states.full
    const all = [
      seen('return-glass', 'full', 'full-and-clear'),
      seen('bypass-glass', 'full', 'empty'),
      ...readings.map(({ id }, place) => seen(id, 'full', health.readings[place] ?? 0)),
    ]
    const ranking = rank(knowledge, all)
    expect(ranking.causes.every(({ share }) => share < ranking.healthy.share)).toBe(true)
  })

  it('says that nothing fits where nothing does', () => {
    // Each can be for itself, and together they cannot: a starved pump that delivers all against high drops.
    const all = [
      seen('suction-vacuum-gauge', 'full', 50e3),
      seen('header-gauge', 'full', 450e3),
      seen('primary-drop-gauge', 'full', 140e3),
      seen('secondary-drop-gauge', 'full', 1e3),
      seen('return-flow', 'full', 0.00038),
      seen('header-temperature', 'full', 280),
    ].map((one) => ({ ...one, sure: true }))
    const ranking = rank(knowledge, all)
    expect(ranking.unknown).toBeGreaterThan(0.5)
    expect(verdict(all)).toContain('Nothing here fits')
  })

  it('tells what speaks for a cause and what against it', () => {
    const ranking = rank(knowledge, [
      seen('return-glass', 'priming', 'full-and-clear'),
      seen('return-glass', 'full', 'bubbles'),
    ])
    const says = (fault: string) => {
      const cause = ranking.causes.find((one) => one.fault === fault)
      if (!cause) throw new Error(fault)
      return Object.fromEntries(
        reasonsOf(ranking, cause.alone).map(({ item, words }) => [item.observation.state, words]),
      )
    }
    expect(says('injector-passes-gas')['full']).toMatch(/for it/)
    expect(says('return-valve-set-high')['full']).toMatch(/against it/)
  })
})

describe('cases of the textbook', () => {
  it('bubbles while priming come from the suction side', () => {
    const suction = new Set([
      'air-left-in-the-circuit',
      'strainer-cover-draws-air',
      'suction-union-draws-air',
      'pump-shaft-seal-draws-air',
      'suction-pipe-uncovered',
      'suction-pipe-cracked-in-tank',
      'glass-gasket-draws-air',
    ])
    const first = likeliest([seen('return-glass', 'priming', 'bubbles')], 4)
    expect(first.filter((fault) => !suction.has(fault))).toEqual([])
  })

  it('bubbles with the engine running, and none while priming, come from an injector', () => {
    const first = likeliest(
      [seen('return-glass', 'priming', 'full-and-clear'), seen('return-glass', 'full', 'bubbles')],
      1,
    )
    expect(first).toEqual(['injector-passes-gas'])
  })

  it('fuel that runs into the bypass glass with a high drop comes from plugged secondary filters', () => {
    const first = likeliest(
      [
        seen('bypass-glass', 'full', 'running-from-valve'),
        seen('secondary-drop-gauge', 'full', 150_000),
        seen('header-gauge', 'full', 180_000),
      ],
      2,
    )
    expect(first).toContain('secondary-filters-plugged')
  })

  it('fuel that rises in the bypass glass from its drain comes from the return line', () => {
    const first = likeliest([seen('bypass-glass', 'full', 'rising-from-drain')], 3)
    expect(first).toEqual(expect.arrayContaining(['return-line-squeezed', 'return-line-blocked']))
  })

  it('one cold exhaust names the cylinder, whichever it is', () => {
    const { readings, health } = knowledge.signatures.states.full
    const exhausts = readings.flatMap(({ id }, place) => {
      const value = health.readings[place] ?? 0
      return id.startsWith('exhaust-') ? [seen(id, 'full', id === 'exhaust-3' ? value - 90 : value)] : []
    })
    const cause = rank(knowledge, exhausts).causes[0]
    expect(['plunger-worn', 'cylinder-inlet-plugged']).toContain(cause?.fault)
    expect(cause?.cylinder).toBe(3)
  })

  it('an inspection that finds a cause settles it', () => {
    const [first] = rank(knowledge, [
      seen('return-glass', 'priming', 'bubbles'),
      { id: 'wet-the-joints', value: 'find-1' },
    ]).causes
    expect(first?.fault).toBe('strainer-cover-draws-air')
    expect(first?.share).toBeGreaterThan(0.8)
  })
})
