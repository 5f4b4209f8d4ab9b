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
const articles = globSync('content/circuit/*.mdx').map((path) => readFileSync(path, 'utf8'))

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
const all = Object.fromEntries(ids.map((id) => [id, preset(id)]))
const of = (id: string) => {
  const found = all[id]
  if (found === undefined) throw new Error(`no preset ${id}`)
  return found
}
const fault = (id: string, severity: number): Partial<Setting> => ({ faults: { [id]: severity } })

describe.each(ids)('the bench %s', (id) => {
  it('stands in an article', () => {
    expect(articles.filter((text) => text.includes(`<CircuitBench preset="${id}" />`))).toHaveLength(1)
  })

  it('shows a difference to health as it starts', () => {
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
    const { glass, reading } = of('low-tank')
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
