import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import { glass, pq12, reading, sourceOf } from './shipped.ts'

/** The plant's set points are invented; that the model meets them is what they were chosen for. */
const { setPoints } = sourceOf('pq-12')
function setPoint(id: string): number {
  const point = setPoints[id]
  const read = point && readFigure(point.value, point.kind)
  if (!read?.ok) throw new Error(id)
  return read.si
}

const HEADER_TOLERANCE = 25e3

describe('PQ-12 in health', () => {
  it.each(operatingStates)('%s: glasses, vacuum and drops', (state) => {
    const now = pq12(state)
    expect(glass(now, 'return-glass')).toMatchObject({ look: 'full and clear', from: 'through', gas: 0 })
    expect(glass(now, 'bypass-glass')).toMatchObject({ look: 'empty', from: 'none' })
    expect(reading(now, 'suction-vacuum-gauge')).toBeLessThanOrEqual(setPoint('suction-vacuum-clean'))
    expect(reading(now, 'suction-vacuum-gauge')).toBeGreaterThan(0)
    const near = (id: string, clean: string) => {
      const ratio = reading(now, id) / setPoint(clean)
      expect(ratio).toBeGreaterThan(0.85)
      expect(ratio).toBeLessThan(1.15)
    }
    near('primary-drop-gauge', 'primary-drop-clean')
    near('secondary-drop-gauge', 'secondary-drop-clean')
    const line = now.parts.find(({ id }) => id === 'return-line')
    expect((line?.in.pressure ?? Infinity) - now.conditions.airPressure).toBeLessThan(
      setPoint('return-line-pressure'),
    )
    expect(now.remarks).toEqual([])
  })

  it.each(['idle', 'part'] as const)('%s: header pressure within its band', (state) => {
    const off = Math.abs(reading(pq12(state), 'header-gauge') - setPoint('header-pressure'))
    expect(off).toBeLessThan(HEADER_TOLERANCE)
  })

  it('full load: header pressure above its low limit, power and rack reached, return header warm', () => {
    const now = pq12('full')
    expect(reading(now, 'header-gauge')).toBeGreaterThan(setPoint('header-pressure-low'))
    expect(now.engine.power / setPoint('rated-power')).toBeCloseTo(1, 4)
    expect(now.engine.rack).toBeCloseTo(1, 4)
    const header = now.parts.find(({ id }) => id === 'return-header')
    expect(Math.abs((header?.out.temperature ?? 0) - setPoint('return-header-temperature'))).toBeLessThan(1)
    for (const exhaust of now.engine.exhaust)
      expect(Math.abs(exhaust - setPoint('exhaust-at-full-load'))).toBeLessThan(1)
  })

  it('idle: no power is wanted or given, and the rack stands where its fuel a stroke puts it', () => {
    const { engine } = pq12('idle')
    expect(engine.power).toBeCloseTo(0, 3)
    // Fuel a stroke is fuel over speed.
    const fuel = setPoint('fuel-burnt-at-idle') / setPoint('fuel-burnt-at-full-load')
    expect(engine.rack).toBeCloseTo((fuel * setPoint('rated-speed')) / setPoint('idle-speed'), 3)
  })

  it('priming: nothing burns and no exhaust is read', () => {
    const now = pq12('priming')
    expect(now.engine).toMatchObject({ power: 0, rack: 0, wanted: 0, exhaust: [] })
    expect(Math.abs(now.engine.burnt)).toBeLessThan(1e-9)
    expect(now.readings.map(({ id }) => id)).not.toContain('exhaust-1')
  })
})

describe('gauges', () => {
  it('a gauge above its tapping reads less by the column between', () => {
    const now = pq12('idle')
    const header = now.parts.find(({ id }) => id === 'supply-header')
    const gauge = (header?.in.pressure ?? 0) - now.conditions.airPressure - reading(now, 'header-gauge')
    // 0.6 m of a fuel of about 840 kg/m³.
    expect(gauge).toBeGreaterThan(0.6 * 9.8 * 830)
    expect(gauge).toBeLessThan(0.6 * 9.8 * 850)
  })

  it('an error moves the reading and nothing else', () => {
    const error = { part: 'header-gauge', parameter: 'error', value: 20e3 }
    const [before, after] = [pq12('idle'), pq12('idle', [error])]
    expect(reading(after, 'header-gauge') - reading(before, 'header-gauge')).toBeCloseTo(20e3, 6)
    expect(after.parts).toEqual(before.parts)
  })

  it('a reading past the range rests at the stop', () => {
    const shut = pq12('idle', [{ part: 'return-line', parameter: 'opening', value: 0.01 }])
    expect(shut.readings.find(({ id }) => id === 'header-gauge')).toMatchObject({
      value: 600e3,
      atStop: 'highest',
    })
  })
})
