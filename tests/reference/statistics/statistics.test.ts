import { describe, expect, test } from 'vitest'
import { mannKendall } from '../../../calculators/statistics/mann-kendall.ts'
import { median, medianAbsoluteDeviation, SIGMA_PER_MAD } from '../../../calculators/statistics/median.ts'
import { normalQuantile, normalTail } from '../../../calculators/statistics/normal.ts'
import { modifiedZ, STANDS_OUT } from '../../../calculators/statistics/outliers.ts'
import { theilSen } from '../../../calculators/statistics/theil-sen.ts'
import vectors from './statistics.json' with { type: 'json' }

const pointsOf = (x: readonly number[], y: readonly number[]) =>
  x.map((value, at) => ({ x: value, y: y[at] ?? Number.NaN }))

/** Distance in units of the expected value, or of one where that is small. */
const off = (value: number | undefined, expected: number) =>
  Math.abs((value ?? Number.NaN) - expected) / Math.max(1, Math.abs(expected))

const { library } = vectors

describe(`against ${library}`, () => {
  test.each(vectors.tails)('tail beyond %f', (z = 0, share = 0) => {
    expect(Math.abs(normalTail(z) / share - 1)).toBeLessThan(1e-11)
  })

  test.each(vectors.quantiles)('quantile of %f', (share = 0, z = 0) => {
    expect(off(normalQuantile(share), z)).toBeLessThan(1e-9)
  })

  test(`${vectors.series.length} random series: line, its interval, S and its probability, median, MAD`, () => {
    expect(vectors.series.length).toBeGreaterThan(250)
    for (const one of vectors.series) {
      const points = pointsOf(one.x, one.y)
      const line = theilSen(points, 0.95)
      expect(off(line?.slope, one.slope)).toBeLessThan(1e-9)
      expect(off(line?.intercept, one.intercept)).toBeLessThan(1e-9)
      expect(off(line?.lowSlope, one.low)).toBeLessThan(1e-9)
      expect(off(line?.highSlope, one.high)).toBeLessThan(1e-9)
      const test = mannKendall(points)
      expect(test.s).toBe(one.s)
      expect(off(test.z, one.z)).toBeLessThan(1e-9)
      expect(off(test.probability, one.p)).toBeLessThan(1e-9)
      expect(off(median(one.y), one.median)).toBeLessThan(1e-9)
      expect(off(medianAbsoluteDeviation(one.y), one.mad)).toBeLessThan(1e-9)
    }
  })
})

describe('series printed elsewhere', () => {
  test.each([
    ['zyp', [0, 1, 2, 4, 5], [6, 4, 1, 8, 7], 0.35, 5.3],
    ['litteR', [1, 2, 3, 4, 5], [1, 2, 3, 5, 9], 1.75, -2.25],
    ['mkac', [1, 2, 3, 5], [2, 3, 5, 10], 2, -1],
  ])('inputs of the R package %s', (_, x, y, slope, intercept) => {
    const line = theilSen(pointsOf(x, y), 0.95)
    expect(off(line?.slope, slope)).toBeLessThan(1e-9)
    expect(off(line?.intercept, intercept)).toBeLessThan(1e-9)
  })

  test('Tietjen and Moore: only the last of the mass-spectrometer series stands out', () => {
    const series = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
    expect(off(median(series), 201.37)).toBeLessThan(1e-9)
    expect(off(medianAbsoluteDeviation(series), 0.995)).toBeLessThan(1e-9)
    const z = modifiedZ(series, 0)
    expect(z.map((one) => Math.abs(one) > STANDS_OUT)).toEqual([...Array(7).fill(false), true])
    expect(z[7]).toBeCloseTo(29.96, 2)
  })

  test('two bad cylinders: a screen at three standard deviations finds neither, the modified z both', () => {
    const series = [428, 431, 425, 433, 427, 402, 430, 429, 426, 455, 424, 432]
    const mean = series.reduce((sum, value) => sum + value, 0) / series.length
    const sigma = Math.sqrt(series.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (series.length - 1))
    expect(series.filter((value) => Math.abs(value - mean) > 3 * sigma)).toEqual([])
    const z = modifiedZ(series, 0)
    expect(series.filter((_, at) => Math.abs(z[at] ?? 0) > STANDS_OUT)).toEqual([402, 455])
    expect(z[5]).toBeCloseTo(-5.96, 2)
    expect(z[9]).toBeCloseTo(5.96, 2)
  })
})

test('the factor of the MAD is that of the normal distribution', () => {
  expect(off(SIGMA_PER_MAD, 1 / normalQuantile(0.75))).toBeLessThan(1e-12)
})

test('no line through points of one x, and nothing but equal values has neither trend nor spread', () => {
  expect(theilSen(pointsOf([1, 1, 1], [1, 2, 3]), 0.95)).toBeUndefined()
  expect(mannKendall(pointsOf([1, 2, 3], [5, 5, 5]))).toEqual({ s: 0, z: 0, probability: 1 })
  expect(modifiedZ([5, 5, 5, 6], 1)).toEqual([0, 0, 0, 0.6745])
})
