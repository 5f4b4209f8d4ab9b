import { describe, expect, it } from 'vitest'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import { conditionsOf, faults, flowOf, glass, modelOf, pq12, reading, rested, withFaults } from './shipped.ts'

const bent = (part: string, parameter: string, value: number, cylinder?: number) => [
  { part, parameter, value, ...(cylinder === undefined ? {} : { cylinder }) },
]

/** Rules of the trade, common practice: what a cause shows and what it does not. */
describe('rules of the trade', () => {
  it('air drawn in on the suction side bubbles already while priming', () => {
    const now = pq12('priming', bent('pump-suction-pipe', 'airHole', 8e-4))
    expect(glass(now, 'return-glass').look).toBe('full with bubbles')
  })

  it('a leaking injector bubbles with the engine running only, more at full load than at idle', () => {
    const gas = (['priming', 'idle', 'full'] as const).map(
      (state) => glass(pq12(state, bent('injectors', 'gasHole', 3e-4, 5)), 'return-glass').gas,
    )
    expect(gas[0]).toBe(0)
    expect(gas[1]).toBeGreaterThan(0.003)
    expect(gas[2]).toBeGreaterThan(gas[1] ?? Infinity)
  })

  it('plugged secondaries run the bypass glass from above, without bubbles in the return glass', () => {
    const now = pq12('full', bent('secondary-filters', 'loading', 12))
    expect(glass(now, 'bypass-glass')).toMatchObject({ from: 'valve' })
    expect(glass(now, 'bypass-glass').words).toMatch(/running from above/)
    expect(glass(now, 'return-glass').gas).toBe(0)
    expect(now.remarks.map(({ text }) => text)).toContain('Bypass valve is open.')
  })

  it('a restricted common return lets fuel rise from the drain, the bypass valve being shut', () => {
    const now = pq12('full', bent('return-line', 'opening', 0.1))
    expect(glass(now, 'bypass-glass')).toMatchObject({ look: 'full and clear', from: 'drain' })
    expect(glass(now, 'bypass-glass').words).toMatch(/rising from its drain/)
    expect(Math.abs(flowOf(now, 'bypass-valve'))).toBeLessThan(1e-6)
  })

  it('a plugged strainer shows as vacuum first, then as air that comes out, then as a pump that starves', () => {
    const loaded = (loading: number) => pq12('full', bent('suction-strainer', 'loading', loading))
    const [clean, plugged, shut] = [loaded(1), loaded(25), loaded(3000)]
    expect(reading(plugged, 'suction-vacuum-gauge')).toBeGreaterThan(
      reading(clean, 'suction-vacuum-gauge') + 20e3,
    )
    expect(flowOf(plugged, 'supply-pump')).toBeLessThanOrEqual(flowOf(clean, 'supply-pump'))
    expect(shut.remarks.map(({ text }) => text)).toContain('Supply pump runs dry.')
    expect(shut.parts.find(({ id }) => id === 'supply-pump')?.in.pressure).toBeGreaterThan(0)
  })

  it('a blocked vent hardly shows while priming and starves the engine at load', () => {
    const shut = bent('tank', 'ventOpen', 0.0005)
    const vacuum = (state: 'priming' | 'full') =>
      reading(pq12(state, shut), 'suction-vacuum-gauge') - reading(pq12(state), 'suction-vacuum-gauge')
    expect(Math.abs(vacuum('priming'))).toBeLessThan(500)
    expect(vacuum('full')).toBeGreaterThan(3e3)
  })

  it('a foot valve that leaks back shows while priming only', () => {
    const leaks = bent('foot-valve', 'leakBack', 2e-3)
    expect(glass(pq12('priming', leaks), 'return-glass').look).toBe('full with bubbles')
    expect(glass(pq12('idle', leaks), 'return-glass').look).toBe('full and clear')
  })

  it('a header leak loses fuel outward and draws no air', () => {
    const now = pq12('full', bent('supply-header', 'airHole', 2e-3))
    expect(now.leaks).toHaveLength(1)
    expect(now.leaks[0]?.flow).toBeGreaterThan(1e-6)
    expect(glass(now, 'return-glass').gas).toBe(0)
    expect(now.remarks.map(({ grade }) => grade)).toContain('stop')
  })

  it('an uncovered suction mouth draws air, a covered one does not', () => {
    expect(pq12('full', [], { tankLevel: 0.3 }).parts.every(({ out }) => out.gas === 0)).toBe(true)
    const low = pq12('full', [], { tankLevel: 0.06 })
    expect(glass(low, 'return-glass').gas).toBeGreaterThan(0.3)
  })

  it('a worn plunger lowers the exhaust of its cylinder and no other', () => {
    const { engine } = pq12('part', bent('injectors', 'plungerLeak', 0.3, 4))
    const others = engine.exhaust.filter((_, place) => place !== 3)
    expect(engine.exhaust[3]).toBeLessThan(Math.min(...others) - 30)
    expect(Math.max(...others) - Math.min(...others)).toBeLessThan(3)
    expect(engine.power).toBeCloseTo(engine.wanted, 0)
  })

  it('water makes the fuel milky and takes power', () => {
    const now = pq12('full', [], {}, { water: 0.05 })
    expect(glass(now, 'return-glass')).toMatchObject({ milky: true })
    expect(now.engine.power).toBeLessThan(0.97 * now.engine.wanted)
  })

  it('below the cloud point filters load up with wax', () => {
    const vacuum = (tankTemperature: number) =>
      reading(pq12('priming', [], { tankTemperature }), 'suction-vacuum-gauge')
    expect(vacuum(268.15)).toBeGreaterThan(1.4 * vacuum(278.15))
  })
})

describe('what is refused', () => {
  const model = modelOf('pq-12')
  it.each([
    ['a part that is none', bent('funnel', 'bore', 1), /«funnel» is no part of/],
    [
      'a parameter that is none',
      bent('return-glass', 'length', 1),
      /«length» is no parameter of Return glass/,
    ],
    [
      'a value out of range',
      bent('return-glass', 'dirt', 7),
      /Return glass, .*: 7 is out of range; accepted: 0 to 1/,
    ],
    ['not a number', bent('return-glass', 'dirt', Number.NaN), /NaN is out of range/],
    [
      'a thirteenth cylinder',
      bent('injectors', 'gasHole', 1e-4, 13),
      /there is no cylinder 13; accepted: 1 to 12/,
    ],
  ])('%s', (_, parameters, reason) => {
    const state = solveCircuit(model, conditionsOf(model, 'idle'), { parameters, conditions: {} })
    expect(state).toEqual({ ok: false, reason: expect.stringMatching(reason) })
  })

  it.each([
    ['fuel', { fuel: 'coal' }, /«coal» is no fuel of/],
    [
      'temperature',
      { tankTemperature: 25 },
      /Temperature of the tank: −248\.1\s°C is outside .*; accepted: −10\s°C to 60\s°C/,
    ],
    ['level', { tankLevel: 1.2 }, /Level of the tank: 120\s% is outside .*; accepted: 0\s% to 100\s%/],
    ['pressure of the air', { airPressure: Number.NaN }, /Pressure of the air: NaN is outside/],
  ])('%s', (_, others, reason) => {
    const state = solveCircuit(model, conditionsOf(model, 'idle', others))
    expect(state).toEqual({ ok: false, reason: expect.stringMatching(reason) })
  })
})

describe('what is said of a state', () => {
  const texts = (state: { readonly remarks: readonly { readonly text: string }[] }) =>
    state.remarks.map(({ text }) => text).join(' ')

  it('fuel in a glass hotter than its plant allows, where there is fuel in the glass', () => {
    const hot =
      /The fuel in the return glass is hotter than it may be: 1\d\d(\.\d)?\s°C against 60\s°C at most\./
    const plugged = (state: 'idle' | 'full') =>
      texts(rested(withFaults('pq-12', state, { 'secondary-filters-plugged': 1 })))
    expect(plugged('full')).toMatch(hot)
    expect(plugged('full')).not.toMatch(/bypass glass is hotter/)
    expect(plugged('idle')).not.toMatch(/hotter than it may be/)
    expect(texts(pq12('full'))).not.toMatch(/hotter than it may be/)
  })

  it('fuel below its cloud point: wax, and at which filters', () => {
    expect(texts(pq12('full', [], { tankTemperature: 268.15 }))).toMatch(
      /cloud point, 2\s°C: wax .*: Suction strainer\./,
    )
    expect(texts(pq12('full', [], { tankTemperature: 278.15 }))).not.toMatch(/wax/)
  })

  it('no fuel: no power, and the engine stops', () => {
    const dry = pq12('full', bent('suction-strainer', 'loading', 5000), { tankLevel: 0 })
    expect(dry.engine.power).toBe(0)
    expect(texts(dry)).toMatch(/The engine stops/)
  })

  it('a state that hunts is taken with a remark that says how exactly', () => {
    const state = withFaults('pq-12', 'idle', { 'foot-valve-binds': 1, 'strainer-cover-draws-air': 1 })
    if (!state.ok) throw new Error(state.reason)
    expect(state.effort.solutions).toBeGreaterThan(120)
    expect(texts(state)).toMatch(/less exactly .* up to 1\.5\sPa, .* 0\.003\sK/)
  })

  it('what does not come to rest is named, single cylinders by their numbers', () => {
    const state = withFaults('pq-12', 'full', { 'coupling-slipping': 1, 'injector-passes-gas': 1 })
    expect(state).toEqual({
      ok: false,
      reason: expect.stringMatching(/«Return header».*Supply pump; Twelve unit injectors, cylinder 9;/),
    })
  })
})

describe('the power is that of the fuel that the cylinders took', () => {
  it.each(['pq-12', 'ps-6', 'pb-8'])('%s with every fault at its worst', (id) => {
    const every = faults.flatMap(({ id: fault, bends }) => (bends[id] ? [[fault, 1] as const] : []))
    const state = withFaults(id, 'full', Object.fromEntries(every))
    if (!state.ok) throw new Error(state.reason)
    expect(state.engine.burnt).toBeLessThan(1e-9)
    expect(state.engine.power).toBe(0)
  })
})
