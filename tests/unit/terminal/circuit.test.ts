import { describe, expect, it } from 'vitest'
import { circuit } from '../../../calculators/terminal/circuit.ts'
import { faults } from '../../../calculators/terminal/faults.ts'

const run = (given: unknown) => circuit.run([], () => Promise.resolve(JSON.stringify(given)))

interface Printed {
  readonly json: {
    readonly conditions: Readonly<Record<string, unknown>>
    readonly readings: readonly { readonly id: string; readonly value: number; readonly unit: string }[]
  }
}

const value = (answer: unknown, id: string): number =>
  (answer as Printed).json.readings.find((one) => one.id === id)?.value ?? Number.NaN

describe('circuit', () => {
  it('prints readings in SI, for a circuit as for its plant', async () => {
    const answer = await run({ circuit: 'pq-12', state: 'full' })
    expect(answer).toEqual(await run({ plant: 'pq-12', state: 'full' }))
    expect((answer as Printed).json.readings).toContainEqual({
      id: 'header-gauge',
      label: 'Header gauge',
      value: expect.any(Number),
      unit: 'Pa',
      accuracy: 10e3,
    })
    expect(value(answer, 'power')).toBeCloseTo(1.5e6, -3)
  })

  it('takes faults, conditions with units and parameters of parts', async () => {
    const health = await run({ circuit: 'pq-12', state: 'idle' })
    const now = await run({
      circuit: 'pq-12',
      state: 'idle',
      faults: { 'suction-strainer-plugged': 0.5 },
      conditions: { tankTemperature: '5 degC', tankLevel: '80 %', fuel: 'winter-gas-oil' },
      parts: { 'return-line': { opening: '30 %' }, injectors: { inletLoading: { 3: 50 } } },
    })
    expect((now as Printed).json.conditions).toMatchObject({ tankTemperature: 278.15, tankLevel: 0.8 })
    expect(value(now, 'suction-vacuum-gauge')).toBeGreaterThan(value(health, 'suction-vacuum-gauge'))
  })

  it.each<[unknown, string, RegExp]>([
    [{ state: 'idle' }, 'circuit', /neither a plant nor a circuit/],
    [{ circuit: 'pq-99', state: 'idle' }, 'circuit', /«pq-99» is not a circuit/],
    [{ circuit: 'pq-12', plant: 'pq-12', state: 'idle' }, 'plant', /both/],
    [{ circuit: 'pq-12' }, 'state', /no state is given/],
    [{ circuit: 'pq-12', state: 'flying' }, 'state', /«flying» is not a state/],
    [{ circuit: 'pq-12', state: 'idle', speed: 3 }, 'speed', /«speed» is not a field/],
    [{ circuit: 'pq-12', state: 'idle', faults: { gremlins: 1 } }, 'faults.gremlins', /not a fault/],
    [{ circuit: 'pq-12', state: 'idle', conditions: { fuel: 'coal' } }, 'conditions.fuel', /no fuel/],
    [{ circuit: 'pq-12', state: 'idle', conditions: { mood: 1 } }, 'conditions', /«mood» is not a condition/],
    [
      { circuit: 'pq-12', state: 'idle', conditions: { tankTemperature: '5 kPa' } },
      'conditions.tankTemperature',
      /./,
    ],
    [{ circuit: 'pq-12', state: 'idle', parts: { funnel: {} } }, 'parts', /«funnel» is no part/],
    [
      { circuit: 'pq-12', state: 'idle', parts: { tank: { colour: 1 } } },
      'parts.tank',
      /«colour» is no parameter/,
    ],
    [
      { circuit: 'pq-12', state: 'idle', parts: { tank: { ventOpen: 4 } } },
      '',
      /out of range; accepted: 0 to 1/,
    ],
    [
      { circuit: 'pq-12', state: 'idle', conditions: { tankLevel: 4 } },
      '',
      /Level of the tank: 4 is outside/,
    ],
  ])('%j is refused', async (given, field, reason) => {
    expect(await run(given)).toEqual({
      refusal: { field, reason: expect.stringMatching(reason), accepted: expect.stringMatching(/./) },
    })
  })
})

it('faults lists every fault with its circuits', async () => {
  const answer = await faults.run([], () => Promise.resolve(''))
  expect(answer).toMatchObject({
    json: expect.arrayContaining([
      expect.objectContaining({
        id: 'suction-strainer-plugged',
        circuits: expect.arrayContaining(['pq-12']),
      }),
    ]),
  })
})
