import { describe, expect, test } from 'vitest'
import blend from '../../../calculators/catalogue/viscosity-of-blend/index.ts'
import tank from '../../../calculators/catalogue/tank-temperature/index.ts'
import { drawingsOf, plot, traced } from '../../../components/article/curves.ts'

const pair = { firstViscosity: '6.5 mm2/s', secondViscosity: '1.64 mm2/s' }
const along = { across: 'secondShare', of: 'viscosity', from: 0, to: 1 }

describe('a curve in an article', () => {
  test('runs from one end to the other through what the calculator gives', () => {
    const curve = traced(blend, pair, along)
    expect(curve[0]).toEqual({ x: 0, y: expect.closeTo(6.5e-6, 12) as number })
    expect(curve.at(-1)).toEqual({ x: 1, y: expect.closeTo(1.64e-6, 12) as number })
  })

  test('what the calculator refuses, or does not give, stops the build and says why', () => {
    expect(() => traced(blend, { ...pair, secondViscosity: '0 mm2/s' }, along)).toThrow(/second liquid/)
    expect(() => traced(blend, pair, { ...along, to: 2 })).toThrow(/secondShare = 1\.0/)
    expect(() => traced(blend, pair, { ...along, of: 'none' })).toThrow(/allowed: viscosity/)
  })

  test('is drawn within its frame, once for each pair of units, and once for units that all share', () => {
    const hours = { across: 'time', of: 'final', from: 0, to: 28_800 }
    const curve = traced(tank, {}, hours)
    const time = { name: 'Time', kind: 'time', written: 'h' } as const
    const drawings = drawingsOf([curve], time, { name: 'Tank', kind: 'temperature' }, 328.15)
    expect(drawings.map(({ systems, y }) => [systems, y.name])).toEqual([
      ['si mixed', 'Tank, °C'],
      ['us', 'Tank, °F'],
    ])
    for (const { paths, limit } of drawings) {
      const numbers = [...(paths[0] ?? '').matchAll(/([\d.]+),([\d.]+)/g)]
      expect(numbers.length).toBe(curve.length)
      for (const [, x, y] of numbers) {
        expect(Number(x)).toBeGreaterThanOrEqual(plot.left)
        expect(Number(x)).toBeLessThanOrEqual(plot.right)
        expect(Number(y)).toBeGreaterThanOrEqual(plot.top)
        expect(Number(y)).toBeLessThanOrEqual(plot.bottom)
      }
      expect(limit).toBeGreaterThan(plot.top)
    }
    const share = { name: 'Share', kind: 'ratio', written: '%' } as const
    const alike = drawingsOf([curve], time, share, undefined)
    expect(alike.map(({ systems }) => systems)).toEqual(['si us mixed'])
  })
})
