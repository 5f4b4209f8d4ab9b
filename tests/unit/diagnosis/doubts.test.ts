import { describe, expect, it } from 'vitest'
import { doubtsOf } from '../../../calculators/diagnosis/doubts.ts'
import { tellables } from '../../../calculators/diagnosis/tellables.ts'
import { readObservations } from '../../../calculators/terminal/read-observations.ts'
import { RefusedInput } from '../../../calculators/terminal/read-inputs.ts'
import { knowledge, seen } from './pq12.ts'

async function refusal(given: unknown) {
  try {
    await readObservations(knowledge, given)
  } catch (error) {
    if (error instanceof RefusedInput) return error.refusal
    throw error
  }
  throw new Error('it was accepted')
}

describe('what cannot be read is refused by name', () => {
  it.each([
    ['no list', {}, 'observations', 'a list'],
    ['far too many', Array.from({ length: 501 }, () => 7), 'observations', 'up to 500'],
    [
      'sure that is no yes or no',
      [{ id: 'smoke', value: 'none', sure: 'yes' }],
      'observations.0.sure',
      'true or false',
    ],
    ['no object', [7], 'observations.0', 'an object of id'],
    [
      'an unknown field',
      [{ id: 'smoke', value: 'none', when: 1 }],
      'observations.0.when',
      'id, state, value, sure',
    ],
    [
      'an unknown id',
      [{ id: 'return-glas', state: 'idle', value: 'empty' }],
      'observations.0.id',
      'return-glass',
    ],
    [
      'another circuit’s gauge',
      [{ id: 'gallery-gauge', state: 'idle', value: 1 }],
      'observations.0.id',
      'near it',
    ],
    [
      'no state',
      [{ id: 'return-glass', value: 'empty' }],
      'observations.0.state',
      'priming, idle, part, full',
    ],
    [
      'power while priming',
      [{ id: 'power', state: 'priming', value: 1 }],
      'observations.0.state',
      'idle, part, full',
    ],
    ['smoke in a state', [{ id: 'smoke', state: 'full', value: 'none' }], 'observations.0.state', 'no state'],
    ['an unknown value', [{ id: 'smoke', value: 'pink' }], 'observations.0.value', 'none, black, white'],
    ['a number for a look', [{ id: 'smoke', value: 3 }], 'observations.0.value', 'none, black, white'],
    ['a wrong unit', [{ id: 'header-gauge', state: 'full', value: '3 kg' }], 'observations.0.value', 'Pa'],
    [
      'no word for a gauge',
      [{ id: 'header-gauge', state: 'full', value: 'low' }],
      'observations.0.value',
      'lower, usual, higher',
    ],
    ['infinity', [{ id: 'header-gauge', state: 'full', value: Infinity }], 'observations.0.value', 'finite'],
  ])('%s', async (_, given, field, accepted) => {
    const found = await refusal(given)
    expect(found.field).toBe(field)
    expect(found.accepted).toContain(accepted)
  })

  it('reads a text with a unit', async () => {
    const [read] = await readObservations(knowledge, [{ id: 'header-gauge', state: 'full', value: '30 psi' }])
    expect(read?.value).toBeCloseTo(206_843, 0)
  })

  it('reads a word for a gauge, and the unit with a figure', async () => {
    const [word, figure] = await readObservations(knowledge, [
      { id: 'header-gauge', state: 'full', value: 'lower' },
      { id: 'header-gauge', state: 'idle', value: '2 bar' },
    ])
    expect(word).toEqual({ id: 'header-gauge', state: 'full', value: 'lower' })
    expect(figure).toEqual({ id: 'header-gauge', state: 'idle', value: 200_000, unit: 'bar' })
  })

  it('lists what can be told, each once', () => {
    const ids = tellables(knowledge).map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids).toEqual(expect.arrayContaining(['return-glass', 'exhaust-12', 'smoke', 'wet-the-joints']))
  })
})

describe('what cannot be right is asked about and left out', () => {
  it('a gauge at its stop, until the person says that it moves', () => {
    const stuck = { id: 'header-gauge', state: 'full', value: 0 } as const
    const { doubts, sound } = doubtsOf(knowledge, [stuck])
    expect(doubts.map(({ says, mayStand }) => [says, mayStand])).toEqual([
      [expect.stringContaining('stands at its stop'), true],
    ])
    expect(sound).toEqual([])
    expect(doubtsOf(knowledge, [{ ...stuck, sure: true }]).doubts).toEqual([])
  })

  it('told twice, and differently', () => {
    const { sound, doubts } = doubtsOf(knowledge, [
      seen('return-glass', 'full', 'empty'),
      seen('return-glass', 'full', 'full-and-clear'),
      seen('bypass-glass', 'full', 'empty'),
    ])
    expect(sound.map(({ id }) => id)).toEqual(['bypass-glass'])
    expect(doubts).toHaveLength(2)
  })

  it('told twice alike counts once', () => {
    const twice = [seen('return-glass', 'full', 'empty'), seen('return-glass', 'full', 'empty')]
    expect(doubtsOf(knowledge, twice)).toEqual({ sound: twice.slice(0, 1), doubts: [] })
  })

  it.each([
    ['a hundred times too large', 'header-gauge', 100 * 208_000, /bar/],
    ['kPa told as psi', 'header-gauge', 6.894757 * 208_000, /psi/],
    ['an impossible pressure', 'header-gauge', -5e5, /^$/],
    ['far more than the pump can do', 'header-gauge', 5e7, /^$/],
    ['a thousand times too large', 'header-gauge', 208e6, /thousand/],
    ['°F told as °C', 'header-temperature', 273.15 + 104, /°F/],
  ])('%s', (_, id, value, because) => {
    const { sound, doubts } = doubtsOf(knowledge, [seen(id, 'full', value)])
    expect(sound).toEqual([])
    expect(doubts).toHaveLength(1)
    expect(doubts[0]?.perhaps?.because ?? '').toMatch(because)
  })

  it.each([
    ['more than any cause shows', 'header-gauge', 'full', 600_000],
    ['less than any cause shows', 'header-gauge', 'full', 4_000],
    ['pressure where a vacuum is read', 'suction-vacuum-gauge', 'full', -10_000],
  ] as const)('%s is asked about, and believed when the person is sure', (_, id, state, value) => {
    const told = seen(id, state, value)
    const { sound, doubts } = doubtsOf(knowledge, [told])
    expect(sound).toEqual([])
    expect(doubts[0]?.says).toContain('no cause in the list shows such a value in this state')
    expect(doubtsOf(knowledge, [{ ...told, sure: true }]).doubts).toEqual([])
  })

  it('tells the limit that hangs on the air as a figure, for the person’s own unit', () => {
    const { doubts } = doubtsOf(knowledge, [seen('suction-vacuum-gauge', 'full', 250_000)])
    expect(doubts[0]?.says).not.toMatch(/\d/)
    expect(doubts[0]?.limit).toBe(101_325)
  })

  it('asks nothing of what the circuit can show when the person is sure, and hardly ever otherwise', () => {
    const { readings } = knowledge.signatures.states.full
    let asked = 0
    let told = 0
    for (const fault of Object.values(knowledge.signatures.faults))
      for (const shown of fault.full.filter((_, severity) => severity % 3 === 1)) {
        const all = readings.map(({ id }, place) => seen(id, 'full', shown.readings[place] ?? 0))
        expect(
          doubtsOf(
            knowledge,
            all.map((one) => ({ ...one, sure: true })),
          ).doubts,
        ).toEqual([])
        asked += doubtsOf(knowledge, all).doubts.length
        told += all.length
      }
    expect(asked / told).toBeLessThan(0.005)
  })
})
