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
    [{ circuit: 'pq-12', state: 'flying' }, 'state', /the state is «flying»/],
    [{ circuit: 'pq-12', state: ['full'] }, 'state', /the state is an array/],
    [{ circuit: ['pq-12'], state: 'full' }, 'circuit', /an array is not a circuit/],
    [{ circuit: 'pq-12', state: 'idle', speed: 3 }, 'speed', /«speed» is not a field/],
    [{ circuit: 'pq-12', state: 'idle', faults: { gremlins: 1 } }, 'faults.gremlins', /not a fault/],
    [{ circuit: 'pq-12', state: 'idle', faults: null }, 'faults', /faults is null/],
    [{ circuit: 'pq-12', state: 'idle', conditions: null }, 'conditions', /conditions is null/],
    [
      { circuit: 'pq-12', state: 'idle', conditions: { fuel: 'coal' } },
      'conditions.fuel',
      /«coal» is no fuel/,
    ],
    [
      { circuit: 'pq-12', state: 'idle', conditions: { fuel: {} } },
      'conditions.fuel',
      /an object is no fuel/,
    ],
    [{ circuit: 'pq-12', state: 'idle', conditions: { mood: 1 } }, 'conditions', /«mood» is not a condition/],
    [
      { circuit: 'pq-12', state: 'idle', conditions: { tankTemperature: '5 kPa' } },
      'conditions.tankTemperature',
      /./,
    ],
    [{ circuit: 'pq-12', state: 'idle', parts: { funnel: {} } }, 'parts', /«funnel» is no part/],
    [
      { circuit: 'pq-12', state: 'idle', parts: { tank: { colour: 1 } } },
      'parts.tank.colour',
      /«colour» is no parameter/,
    ],
  ])('%j is refused', async (given, field, reason) => {
    expect(await run(given)).toEqual({
      refusal: { field, reason: expect.stringMatching(reason), accepted: expect.stringMatching(/./) },
    })
  })

  const asTyped: readonly [object, string, RegExp, string][] = [
    [
      { conditions: { tankTemperature: '-35 degC' } },
      'conditions.tankTemperature',
      /«-35 degC» is outside what this circuit’s model was made for/,
      '−10 °C to 60 °C',
    ],
    [{ conditions: { tankTemperature: 25 } }, 'conditions.tankTemperature', /«25 K»/, '−10 °C to 60 °C'],
    [
      { conditions: { ambientTemperature: '140 degC' } },
      'conditions.ambientTemperature',
      /«140 degC»/,
      '−25 °C to 45 °C',
    ],
    [
      { conditions: { airPressure: '50 kPa' } },
      'conditions.airPressure',
      /«50 kPa».*thin air/,
      '79 kPa to 106 kPa',
    ],
    [{ conditions: { tankLevel: 4 } }, 'conditions.tankLevel', /«4»/, '0 % to 100 %'],
    [{ conditions: { tankLevel: -1e-9 } }, 'conditions.tankLevel', /«-1e-9»/, '0 % to 100 %'],
    [{ parts: { tank: { ventOpen: 4 } } }, 'parts.tank.ventOpen', /free: «4» is out of range/, '0 to 1'],
    [
      { parts: { injectors: { gasHole: { 1: '9 mm' } } } },
      'parts.injectors.gasHole.1',
      /combustion gas comes in: «9 mm» is out of range/,
      '0 m to 0.002 m',
    ],
    [
      { parts: { injectors: { gasHole: { three: 0 } } } },
      'parts.injectors.gasHole.three',
      /«three» is no cylinder/,
      '1 to 12',
    ],
    [
      { parts: { injectors: { gasHole: { 13: 0 } } } },
      'parts.injectors.gasHole.13',
      /no cylinder 13/,
      '1 to 12',
    ],
    [
      { parts: { injectors: { heatAtFull: { 1: '1 kW' } } } },
      'parts.injectors.heatAtFull.1',
      /not each cylinder has its own/,
      'one figure, without a cylinder',
    ],
    [
      { parts: { 'back-pressure-valve': { cracking: '900 kPa' } } },
      'parts.back-pressure-valve.cracking',
      /900\skPa, is not below the pressure at full flow, 160\skPa/,
      'below 160 kPa',
    ],
    [
      { parts: { 'secondary-filters': { shutElements: 3 } } },
      'parts.secondary-filters.shutElements',
      /3 shut elements of 2$/,
      '0 to 2',
    ],
  ]
  it.each(asTyped)(
    '%j is refused as it was typed, with what is accepted',
    async (given, field, reason, accepted) => {
      const { refusal } = (await run({ circuit: 'pq-12', state: 'idle', ...given })) as {
        refusal: { field: string; reason: string; accepted: string }
      }
      expect(refusal.field).toBe(field)
      expect(refusal.reason).toMatch(reason)
      expect(refusal.accepted.replaceAll('\u00a0', ' ')).toBe(accepted)
    },
  )

  it('the level of a circuit that would run empty says why it ends there', async () => {
    expect(await run({ circuit: 'pb-8', state: 'full', conditions: { tankLevel: '5 %' } })).toMatchObject({
      refusal: { field: 'conditions.tankLevel', reason: expect.stringMatching(/loop .* runs empty/) },
    })
    expect(await run({ circuit: 'pb-8', state: 'full', conditions: { tankLevel: '10 %' } })).toHaveProperty(
      'json',
    )
  })

  it('a circuit without rest names the field that led there', async () => {
    const faults = { 'feed-suction-draws-air': 1, 'suction-strainer-plugged': 1 }
    expect(await run({ circuit: 'pb-8', state: 'full', faults })).toMatchObject({
      refusal: { field: 'faults', reason: expect.stringMatching(/«.+».*Suction strainer/) },
    })
  })

  it('one figure for all cylinders takes the place of what faults did to single ones', async () => {
    const given = { circuit: 'pq-12', state: 'full' }
    const health = await run(given)
    const mended = await run({
      ...given,
      faults: { 'injector-passes-gas': 1 },
      parts: { injectors: { gasHole: 0 } },
    })
    expect((mended as Printed).json.readings).toEqual((health as Printed).json.readings)
  })

  it('prints no number with more digits than a state at rest bears, and no dust', async () => {
    for (const plant of ['pq-12', 'ps-6', 'pb-8'])
      for (const state of ['priming', 'idle']) {
        const text = JSON.stringify(await run({ plant, state }))
        const numbers = text.match(/-?\d+(\.\d+)?(e[-+]?\d+)?/g)?.map(Number) ?? []
        const digits = numbers.map((number) => number.toPrecision(7))
        expect(numbers.filter((number, place) => Number(digits[place]) !== number)).toEqual([])
        const { engine } = (JSON.parse(text) as { json: { engine: { power: number; burnt: number } } }).json
        expect(engine.power).toBe(0)
        expect(engine.burnt === 0).toBe(state === 'priming')
      }
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
