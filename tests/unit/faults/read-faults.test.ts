import { describe, expect, it } from 'vitest'
import { readFaults } from '../../../calculators/faults/read-faults.ts'
import { faults } from '../circuit-model/shipped.ts'

const read = (given: unknown, circuit = 'pq-12') => readFaults(given, faults, circuit)

it('faults with their severities are read', () => {
  const reading = read({ 'suction-strainer-plugged': 0.5, 'tank-vent-blocked': 1 })
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusals))
  expect(reading.faults.map(({ fault, severity }) => [fault.id, severity])).toEqual([
    ['suction-strainer-plugged', 0.5],
    ['tank-vent-blocked', 1],
  ])
})

it('nothing is health', () => {
  expect(read({})).toEqual({ ok: true, faults: [] })
})

describe('each wrong entry is refused with what is accepted', () => {
  const elsewhere = faults.find(({ bends }) => !('pq-12' in bends))?.id ?? ''

  it.each<[unknown, string, RegExp, RegExp]>([
    [
      { 'plugged-strainer': 1 },
      'faults.plugged-strainer',
      /«plugged-strainer» is not a fault/,
      /suction-strainer-plugged/,
    ],
    [{ 'tank-vent-bloked': 1 }, 'faults.tank-vent-bloked', /is not a fault/, /near it: tank-vent-blocked/],
    [{ __proto_: 1 }, 'faults.__proto_', /is not a fault/, /near it/],
    [{ 'tank-vent-blocked': 7 }, 'faults.tank-vent-blocked', /the severity is «7»/, /from 0 .* to 1/],
    [{ 'tank-vent-blocked': -0.1 }, 'faults.tank-vent-blocked', /the severity is «-0.1»/, /from 0/],
    [{ 'tank-vent-blocked': Number.NaN }, 'faults.tank-vent-blocked', /«NaN»/, /from 0/],
    [{ 'tank-vent-blocked': '1' }, 'faults.tank-vent-blocked', /«1»/, /a number/],
    [{ [elsewhere]: 1 }, `faults.${elsewhere}`, /cannot happen in the circuit «pq-12»/, /it can in p/],
    [[], 'faults', /an array/, /an object/],
    [null, 'faults', /faults is null/, /an object/],
    [{ 'tank-vent-blocked': {} }, 'faults.tank-vent-blocked', /the severity is an object/, /a number/],
    [{ 'tank-vent-blocked': null }, 'faults.tank-vent-blocked', /the severity is null/, /a number/],
    ['all', 'faults', /«all»/, /an object/],
  ])('%j', (given, field, reason, accepted) => {
    expect(read(given)).toEqual({
      ok: false,
      refusals: [
        {
          field,
          reason: expect.stringMatching(reason),
          accepted: expect.stringMatching(accepted),
        },
      ],
    })
  })

  it('all of them at once', () => {
    const reading = read({ one: 1, two: 2, 'tank-vent-blocked': 3 })
    expect(reading.ok ? [] : reading.refusals.map(({ field }) => field)).toEqual([
      'faults.one',
      'faults.two',
      'faults.tank-vent-blocked',
    ])
  })
})
