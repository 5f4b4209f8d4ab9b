import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { parse } from 'yaml'
import { describe, expect, it } from 'vitest'
import type { GlassView } from '../../../calculators/circuit/types.ts'
import { changesAgainst } from '../../../calculators/circuit/changes.ts'
import { bench } from '../../../components/content/schema-bench.ts'
import { presetOf } from '../../../components/circuit/bench/preset.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import type { Preset, Setting } from '../../../components/circuit/bench/types.ts'
import { benchData, presetFile } from './bench.ts'

const ids = globSync('content/benches/*.yaml').map((path) => basename(path, '.yaml'))
const textsOf = (folder: string) =>
  globSync(`content/${folder}/*.mdx`).map((path) => readFileSync(path, 'utf8'))
const articles = textsOf('circuit')
const lessons = textsOf('lessons')
/** A bench on which only the state of the engine is to be moved. */
const IN_HEALTH = 'the-way-round-in-health'

function preset(id: string) {
  const data = benchData(presetFile(id).circuit)
  const read = presetOf(bench.parse(parse(readFileSync(`content/benches/${id}.yaml`, 'utf8'))), data)
  const solve = solverOf(data)
  const stateOf = (change: Partial<Setting> = {}) => {
    const state = solve({ ...read.setting, ...change })
    if (!state.ok) throw new Error(state.reason)
    return state
  }
  const reading = (name: string, change?: Partial<Setting>): number =>
    stateOf(change).readings.find((candidate) => candidate.id === name)?.value ?? Number.NaN
  const glass = (name: string, change?: Partial<Setting>): GlassView | undefined =>
    stateOf(change).glasses.find(({ part }) => part === name)
  return { read, stateOf, reading, glass }
}

it('an altitude can be preset and be moved', () => {
  const file: unknown = parse(readFileSync('content/benches/weak-back-pressure-valve.yaml', 'utf8'))
  const high = { ...(file as object), conditions: { state: 'full', height: '1500 m' }, move: ['height'] }
  const read = presetOf(bench.parse(high), benchData('pq-12'))
  expect(read).toMatchObject({ setting: { height: 1500 }, move: ['height'] })
  expect(bench.safeParse({ ...high, conditions: { state: 'full', height: '1500 kPa' } }).success).toBe(false)
})

const all = Object.fromEntries(ids.map((id) => [id, preset(id)]))
const of = (id: string) => {
  const found = all[id]
  if (found === undefined) throw new Error(`no preset ${id}`)
  return found
}
const fault = (id: string, severity: number): Partial<Setting> => ({ faults: { [id]: severity } })

describe.each(ids)('the bench %s', (id) => {
  it('stands in one article, or else in one lesson', () => {
    const holds = (text: string) => text.includes(`<CircuitBench preset="${id}" />`)
    const inArticles = articles.filter(holds).length
    expect(inArticles).toBeLessThanOrEqual(1)
    expect(inArticles === 0 ? lessons.filter(holds) : ['an article']).toHaveLength(1)
  })

  it.skipIf(id === IN_HEALTH)('shows a difference to health as it starts', () => {
    const { read, stateOf } = of(id)
    const health = stateOf({ faults: {}, tankLevel: 0.7 })
    const shown = changesAgainst(health, stateOf()).map((change) => change.id)
    expect(shown.filter((name) => isShown(read, name))).not.toEqual([])
  })
})

const isShown = ({ glasses, readings }: Preset, id: string): boolean => [...glasses, ...readings].includes(id)

describe('what the articles say of their benches', () => {
  it('pinched O-ring: clear for a while, then bubbles, less vacuum, and the same with the engine running', () => {
    const { glass, reading } = of('pinched-o-ring-on-priming')
    const gas = (severity: number, state: Setting['state'] = 'priming') =>
      glass('return-glass', { state, ...fault('strainer-cover-draws-air', severity) })?.gas ?? Number.NaN
    expect(glass('return-glass', fault('strainer-cover-draws-air', 0.05))?.look).toBe('full and clear')
    expect(gas(0.5)).toBeGreaterThan(gas(0.2))
    expect(gas(1)).toBeGreaterThan(gas(0.5))
    expect(reading('suction-vacuum-gauge', fault('strainer-cover-draws-air', 1))).toBeLessThan(
      reading('suction-vacuum-gauge', fault('strainer-cover-draws-air', 0)),
    )
    expect(gas(0.5, 'idle') / gas(0.5)).toBeCloseTo(1, 0)
  })

  it('leaking injector: bubbles at load, fewer without, none while priming, and no gauge leaves its accuracy', () => {
    const { glass, stateOf } = of('one-leaking-injector-at-load')
    const gas = (state: Setting['state']) => glass('return-glass', { state })?.gas ?? Number.NaN
    expect(gas('full')).toBeGreaterThan(gas('part'))
    expect(gas('part')).toBeGreaterThan(0)
    expect(glass('return-glass', { state: 'priming' })?.words).toBe('full and clear')
    const changes = changesAgainst(stateOf({ faults: {} }), stateOf())
    expect(changes.map(({ of: kind }) => kind)).toEqual(['glass'])
  })

  it('plugged secondaries: the drop ever faster, then the bypass from above, then less header pressure', () => {
    const { glass, reading } = of('plugged-secondaries')
    const drop = (severity: number) =>
      reading('secondary-drop-gauge', fault('secondary-filters-plugged', severity))
    expect(drop(0.3) - drop(0.15)).toBeGreaterThan(drop(0.15) - drop(0))
    expect(drop(0.45) - drop(0.3)).toBeGreaterThan(drop(0.3) - drop(0.15))
    expect(glass('bypass-glass', fault('secondary-filters-plugged', 0.33))?.look).toBe('empty')
    expect(glass('bypass-glass', fault('secondary-filters-plugged', 0.55))?.from).toBe('valve')
    const header = (severity: number) => reading('header-gauge', fault('secondary-filters-plugged', severity))
    expect(header(1)).toBeLessThan(header(0) - 20e3)
  })

  it('squeezed return: fuel from the drain before the header gauge tells; plugged filters: from above', () => {
    const { glass, reading, stateOf } = of('restricted-return')
    expect(glass('bypass-glass')?.from).toBe('drain')
    const accuracy = stateOf().readings.find(({ id }) => id === 'header-gauge')?.accuracy ?? Number.NaN
    expect(reading('header-gauge') - reading('header-gauge', { faults: {} })).toBeLessThan(accuracy)
    expect(glass('bypass-glass', fault('secondary-filters-plugged', 0.7))?.from).toBe('valve')
  })

  it('weak spring: the header falls, the glass stays clear, the power goes last', () => {
    const { glass, reading } = of('weak-back-pressure-valve')
    const at = (severity: number) => ({ state: 'full' as const, ...fault('return-valve-weak', severity) })
    expect(reading('header-gauge', at(0.5))).toBeLessThan(reading('header-gauge', at(0)) - 30e3)
    expect(reading('power', at(0.5))).toBeCloseTo(reading('power', at(0)), -3)
    expect(reading('power', at(1))).toBeLessThan(0.97 * reading('power', at(0)))
    for (const severity of [0.3, 0.6, 1])
      expect(glass('return-glass', at(severity))?.words).toBe('full and clear')
  })

  it('slime: vacuum and both drops climb together, the glass stays clear; plugged secondaries move one gauge', () => {
    const { glass, reading, stateOf } = of('slime-on-three-filters')
    const gauges = ['suction-vacuum-gauge', 'primary-drop-gauge', 'secondary-drop-gauge']
    for (const name of gauges)
      for (const [less, more] of [
        [0, 0.4],
        [0.4, 0.8],
      ] as const)
        expect(reading(name, fault('microbial-slime', more))).toBeGreaterThan(
          reading(name, fault('microbial-slime', less)) * 1.3,
        )
    expect(glass('return-glass', fault('microbial-slime', 0.8))?.words).toBe('full and clear')
    const one = changesAgainst(stateOf({ faults: {} }), stateOf(fault('secondary-filters-plugged', 0.2)))
    expect(one.map(({ id }) => id)).toEqual(['secondary-drop-gauge'])
  })

  it('hot tank: header, drop, return flow and power fall as the article says; the glass stays clear', () => {
    const { glass, reading } = of('hot-tank')
    const share = (name: string) => reading(name) / reading(name, { faults: {} })
    expect(share('header-gauge')).toBeCloseTo(0.9, 1)
    expect(share('secondary-drop-gauge')).toBeLessThan(2 / 3)
    expect(share('return-flow')).toBeCloseTo(11 / 12, 2)
    expect(share('power')).toBeCloseTo(0.98, 2)
    expect(glass('return-glass')?.words).toBe('full and clear')
    const worn = fault('pump-worn', 0.5)
    expect(reading('header-temperature', worn)).toBeCloseTo(reading('header-temperature', { faults: {} }), 0)
    expect(reading('header-gauge', worn)).toBeLessThan(reading('header-gauge', { faults: {} }))
  })

  it('weak feed pressure: both gauges fall by as much, heat and glass stay, then the pumps do not fill', () => {
    const { glass, reading, stateOf } = of('weak-feed-pressure-on-the-booster')
    const fall = (name: string, severity: number) =>
      reading(name, { faults: {} }) - reading(name, fault('feed-pressure-valve-weak', severity))
    expect(fall('header-gauge', 0.5) / fall('feed-gauge', 0.5)).toBeCloseTo(1, 1)
    expect(Math.abs(fall('header-temperature', 1))).toBeLessThan(1)
    expect(glass('return-glass')?.words).toBe('full and clear')
    expect(fall('power', 0.5)).toBeLessThan(1e3)
    const texts = stateOf(fault('feed-pressure-valve-weak', 1)).remarks.map(({ text }) => text)
    expect(texts.some((text) => text.includes('does not fill'))).toBe(true)
  })

  it('worn pump: the return flow falls before the header gauge tells; cold fuel brings some of it back', () => {
    const { glass, reading, stateOf } = of('worn-pump')
    const changes = changesAgainst(stateOf({ faults: {} }), stateOf(fault('pump-worn', 0.3)))
    expect(changes.map(({ id }) => id)).toEqual(['return-flow'])
    const flow = (celsius: number) => reading('return-flow', { tankTemperature: celsius + 273.15 })
    expect(flow(0)).toBeGreaterThan(flow(25))
    expect(flow(25)).toBeGreaterThan(flow(50))
    expect(glass('return-glass', fault('pump-worn', 1))?.words).toBe('full and clear')
  })

  it('blocked vent: nothing, then all at once; less at idle and nothing while priming', () => {
    const { stateOf, reading } = of('blocked-vent')
    const seen = (state: Setting['state'], severity: number) => {
      const health = stateOf({ state, faults: {} })
      return changesAgainst(health, stateOf({ state, ...fault('tank-vent-blocked', severity) })).length
    }
    expect(seen('full', 0.4)).toBe(0)
    const vacuum = (severity: number) => reading('suction-vacuum-gauge', fault('tank-vent-blocked', severity))
    expect(vacuum(0.8)).toBeGreaterThan(5 * vacuum(0))
    expect(vacuum(1)).toBeCloseTo(vacuum(0.9), -3)
    expect(reading('header-gauge', fault('tank-vent-blocked', 0.8))).toBeLessThan(
      reading('header-gauge', { faults: {} }) - 20e3,
    )
    expect(seen('idle', 0.8)).toBeLessThan(seen('full', 0.8))
    expect(seen('priming', 1)).toBe(0)
  })

  it('low tank: the vacuum first, then bubbles, then a glass part full and less power', () => {
    const { read, glass, reading, stateOf } = of('low-tank')
    // It starts before all of it: the vacuum alone differs, and the glass is clear.
    expect(read.readings).toContain('suction-vacuum-gauge')
    expect(changesAgainst(stateOf({ tankLevel: 0.7 }), stateOf()).map(({ id }) => id)).toEqual([
      'suction-vacuum-gauge',
    ])
    expect(glass('return-glass')?.words).toBe('full and clear')
    expect(reading('suction-vacuum-gauge', { tankLevel: 0.15 })).toBeGreaterThan(
      reading('suction-vacuum-gauge', { tankLevel: 0.7 }) + 2e3,
    )
    expect(glass('return-glass', { tankLevel: 0.15 })?.words).toBe('full and clear')
    expect(glass('return-glass', { tankLevel: 0.1 })?.look).toBe('full with bubbles')
    expect(glass('return-glass', { tankLevel: 0.06 })?.look).toBe('part full')
    expect(reading('power', { tankLevel: 0.06 })).toBeLessThan(0.9 * reading('power', { tankLevel: 0.7 }))
  })

  it('booster: the sensor reads its set point while the header cools and the filter drop climbs', () => {
    const { reading } = of('viscosity-control-on-the-booster')
    const health = { faults: {} }
    expect(reading('viscosity-gauge') / reading('viscosity-gauge', health)).toBeCloseTo(1, 1)
    expect(reading('header-temperature')).toBeLessThan(reading('header-temperature', health) - 10)
    expect(reading('fine-filter-drop-gauge')).toBeGreaterThan(1.5 * reading('fine-filter-drop-gauge', health))
    expect(reading('header-temperature', { tankTemperature: 333.15 })).toBeCloseTo(
      reading('header-temperature'),
      0,
    )
  })

  it('cold fuel: the bypass opens with clean filters; with plugged ones the header is warm', () => {
    const { glass, reading } = of('cold-fuel-and-the-bypass')
    expect(glass('bypass-glass')?.from).toBe('valve')
    const plugged = fault('secondary-filters-plugged', 0.6)
    expect(glass('bypass-glass', plugged)?.from).toBe('valve')
    expect(reading('header-temperature')).toBeLessThan(reading('header-temperature', plugged) - 15)
  })

  it('less and less moved: the return header passes its limit before the header gauge does; the power never moves', () => {
    const { stateOf, reading } = of('less-and-less-moved')
    const slow = (severity: number) => fault('pump-motor-slow', severity)
    const returnHeader = (severity: number) =>
      stateOf(slow(severity)).parts.find(({ id }) => id === 'return-header')?.out.temperature ?? Number.NaN
    expect(reading('header-gauge')).toBeGreaterThan(170e3)
    expect(returnHeader(0.6)).toBeGreaterThan(273.15 + 60)
    expect(returnHeader(0)).toBeLessThan(273.15 + 60)
    expect(stateOf().remarks.some(({ text }) => /flash point/.test(text))).toBe(true)
    expect(reading('header-gauge', slow(1))).toBeLessThan(170e3)
    const burnt = stateOf(slow(1)).engine.burnt
    expect((reading('return-flow', slow(1)) + burnt) / burnt).toBeLessThan(2)
    expect(reading('power', slow(1))).toBeCloseTo(reading('power', slow(0)), -3)
  })

  it('what the governor hides: at part load all power and even exhausts for over a quarter more rack', () => {
    const { stateOf, reading } = of('what-the-governor-hides')
    const open = (severity: number, state: Setting['state'] = 'part') => ({
      state,
      ...fault('return-valve-held-open', severity),
    })
    expect(reading('power', open(1))).toBeCloseTo(reading('power', open(0)), -2)
    const { exhaust, rack } = stateOf(open(1)).engine
    expect(Math.max(...exhaust) - Math.min(...exhaust)).toBeLessThan(2)
    expect(rack / stateOf(open(0)).engine.rack).toBeGreaterThan(1.25)
    expect(reading('header-gauge', open(1))).toBeLessThan(reading('header-gauge', open(0)) - 100e3)
    expect(reading('power', open(1, 'full'))).toBeLessThan(0.75 * reading('power', open(0, 'full')))
  })

  it('gauge or valve: both give one header reading, and no other reading leaves its accuracy', () => {
    const { stateOf, reading } = of('gauge-or-valve')
    const health = stateOf({ faults: {} })
    const moved = (change: Partial<Setting>) => changesAgainst(health, stateOf(change)).map(({ id }) => id)
    const weak = fault('return-valve-weak', 0.65)
    expect(moved({})).toEqual(['header-gauge'])
    expect(moved(weak)).toEqual(['header-gauge'])
    expect(Math.abs(reading('header-gauge', weak) - reading('header-gauge'))).toBeLessThan(5e3)
    const worst = { state: 'full' as const, ...fault('return-valve-weak', 1) }
    expect(reading('power', worst)).toBeLessThan(0.95 * reading('power', { state: 'full', faults: {} }))
  })

  it('a strainer that pulls as the wrong vacuum gauge says brings bubbles; a blocked return passes the scale', () => {
    const { glass, reading, stateOf } = of('gauge-or-valve')
    const plugged = fault('suction-strainer-plugged', 0.82)
    const vacuum = reading('suction-vacuum-gauge', plugged)
    expect(Math.abs(vacuum - reading('suction-vacuum-gauge', fault('vacuum-gauge-wrong', 1)))).toBeLessThan(
      1e3,
    )
    expect(glass('return-glass', plugged)?.look).toBe('full with bubbles')
    expect(glass('return-glass', fault('vacuum-gauge-wrong', 1))?.look).toBe('full and clear')
    const header = stateOf(fault('return-line-blocked', 1)).parts.find(({ id }) => id === 'supply-header')
    expect((header?.in.pressure ?? Number.NaN) - 101_325).toBeGreaterThan(600e3)
  })
})

describe('what the lessons say of their benches', () => {
  it('in health: idling takes next to nothing from the return, full load what is burnt; the vacuum stays', () => {
    const { glass, reading } = of(IN_HEALTH)
    const flow = (state: Setting['state']) => reading('return-flow', { state })
    for (const state of ['priming', 'idle', 'part', 'full'] as const) {
      expect(glass('return-glass', { state })?.words).toBe('full and clear')
      expect(glass('bypass-glass', { state })?.look).toBe('empty')
    }
    expect(flow('idle') / flow('priming')).toBeGreaterThan(0.98)
    expect(flow('full') / flow('idle')).toBeLessThan(0.82)
    expect(reading('header-gauge', { state: 'full' })).toBeLessThan(
      reading('header-gauge', { state: 'idle' }),
    )
    expect(
      reading('suction-vacuum-gauge', { state: 'full' }) / reading('suction-vacuum-gauge', { state: 'idle' }),
    ).toBeCloseTo(1, 1)
  })

  it('weak spring, told in lesson 3: the return flow does not fall', () => {
    const { reading } = of('weak-back-pressure-valve')
    const at = (severity: number) => ({ state: 'full' as const, ...fault('return-valve-weak', severity) })
    for (const severity of [0.3, 0.6, 1])
      expect(reading('return-flow', at(severity))).toBeGreaterThanOrEqual(reading('return-flow', at(0)))
  })

  it('leaking injector, told in lesson 5: there is a size that shows at full load and not at idle', () => {
    const { glass } = of('one-leaking-injector-at-load')
    const look = (state: Setting['state']) =>
      glass('return-glass', { state, ...fault('injector-passes-gas', 0.4) })?.look
    expect(look('full')).toBe('full with bubbles')
    expect(look('idle')).toBe('full and clear')
  })

  it('cold fuel, told in lesson 6: the header is far below the set point, and at it with plugged filters', () => {
    const { glass, reading } = of('cold-fuel-and-the-bypass')
    const setPoint = 313.15
    expect(reading('header-temperature')).toBeLessThan(setPoint - 15)
    const plugged = fault('secondary-filters-plugged', 0.6)
    expect(glass('bypass-glass', plugged)?.from).toBe('valve')
    expect(reading('header-temperature', plugged)).toBeGreaterThan(setPoint - 1)
  })

  it('wrong gauge: only its own reading is changed, and a weak valve looks the same until the power goes', () => {
    const { reading, stateOf } = of('a-gauge-that-lies')
    const health = stateOf({ faults: {} })
    const changed = (severities: Partial<Setting>) =>
      changesAgainst(health, stateOf(severities)).map(({ id }) => id)
    expect(changed({})).toEqual(['header-gauge'])
    expect(changed(fault('return-valve-weak', 0.45))).toEqual(['header-gauge'])
    expect(reading('header-gauge', fault('return-valve-weak', 0.45)) / reading('header-gauge')).toBeCloseTo(
      1,
      1,
    )
    const power = (name: string) => reading('power', { state: 'full', ...fault(name, 1) })
    const whole = reading('power', { state: 'full', faults: {} })
    expect(power('return-valve-weak')).toBeLessThan(0.97 * whole)
    expect(power('header-gauge-wrong')).toBeCloseTo(whole, -2)
  })

  it('one cylinder: colder at full load by more than two probes can make, and at idle by less', () => {
    const { glass, reading } = of('one-cylinder-of-twelve')
    const departure = (state: Setting['state']) =>
      reading('exhaust-6', { state }) - reading('exhaust-7', { state })
    const twoProbes = Math.hypot(5, 5)
    expect(departure('full')).toBeGreaterThan(twoProbes)
    expect(departure('idle')).toBeLessThan(twoProbes)
    expect(Math.abs(reading('exhaust-6') - reading('exhaust-8'))).toBeLessThan(1)
    expect(glass('return-glass')?.words).toBe('full and clear')
    expect(reading('power') / reading('power', { faults: {} })).toBeGreaterThan(0.99)
    expect(Math.abs(reading('header-gauge') - reading('header-gauge', { faults: {} }))).toBeLessThan(10e3)
  })

  it('two faults: each glass is cleared by its own repair, and only by that', () => {
    const { glass } = of('two-faults-at-once')
    const looks = (faults: Setting['faults']) => ({
      bubbles: glass('return-glass', { faults })?.look === 'full with bubbles',
      fallsIn: glass('bypass-glass', { faults })?.from === 'valve',
    })
    const [air, plugged] = [{ 'strainer-cover-draws-air': 0.5 }, { 'secondary-filters-plugged': 0.7 }]
    expect(looks({ ...air, ...plugged })).toEqual({ bubbles: true, fallsIn: true })
    expect(looks(plugged)).toEqual({ bubbles: false, fallsIn: true })
    expect(looks(air)).toEqual({ bubbles: true, fallsIn: false })
    expect(looks({})).toEqual({ bubbles: false, fallsIn: false })
  })
})
