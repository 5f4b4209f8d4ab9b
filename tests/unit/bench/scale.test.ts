import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { paceOf, PACES } from '../../../components/circuit/bench/looks.ts'
import { scaleOf, SHADES } from '../../../components/circuit/bench/scale.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import { pq12, set } from './bench.ts'

const health = solverOf(pq12)(set({}))
if (!health.ok) throw new Error(health.reason)
const air = health.conditions.airPressure
const at = (pressure: number, temperature = 300) => ({ pressure: air + pressure, temperature, gas: 0 })

describe('the scale of the lines', () => {
  const scale = scaleOf('pressure', health, 'si')

  it('has round borders in even steps, from nothing to above all of health', () => {
    const borders = scale.borders.map(Number)
    const step = (borders[1] ?? 0) - (borders[0] ?? 0)
    expect(borders[0]).toBe(0)
    expect(borders).toHaveLength(SHADES + 1)
    borders.forEach((border, index) => expect(border).toBeCloseTo(index * step, 6))
    const highest = Math.max(...health.lines.map(({ from }) => from.pressure - air)) / 1000
    expect(borders.at(-1)).toBeGreaterThan(highest)
  })

  it('gives each step its shade, all above the last one, and all that the pump draws the one below', () => {
    const step = Number(scale.borders[1]) * 1000
    for (let shade = 0; shade < SHADES; shade++) expect(scale.shadeOf(at((shade + 0.5) * step))).toBe(shade)
    expect(scale.shadeOf(at(100 * step))).toBe(SHADES - 1)
    expect(scale.shadeOf(at(-0.2 * step))).toBe('below')
  })

  it('follows the unit system', () => {
    const us = scaleOf('pressure', health, 'us')
    expect(us.unit).toBe('psi')
    expect(Number(us.borders.at(-1))).toBeLessThan(Number(scale.borders.at(-1)) / 5)
  })

  it('of temperature covers the circuit in health', () => {
    const { shadeOf } = scaleOf('temperature', health, 'si')
    const shades = health.lines.flatMap(({ from, to }) => [shadeOf(from), shadeOf(to)])
    expect(shades).not.toContain('below')
    expect(new Set(shades).size).toBeGreaterThan(2)
  })
})

it('the shades rise in even steps of lightness, so that no step looks larger than another', () => {
  const css = readFileSync('components/circuit/bench/shades.css', 'utf8')
  const shades = [...css.matchAll(/\.shade-(\d) \{\s*--shade: oklch\(([\d.]+)/g)]
  const lightness = shades.map((match) => Number(match[2]))
  expect(shades.map((match) => Number(match[1]))).toEqual([...Array(SHADES).keys()])
  const steps = lightness.slice(1).map((value, index) => value - (lightness[index] ?? 0))
  for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? Number.NaN, 6)
  expect(steps[0]).toBeGreaterThan(0)
})

it('dashes stand where nothing flows, and are faster where more does', () => {
  expect(paceOf(0, 1)).toBe(0)
  expect(paceOf(1e-4, 1)).toBe(0)
  expect(paceOf(Number.NaN, 1)).toBe(0)
  expect(paceOf(-1, 1)).toBe(PACES)
  const paces = [0.003, 0.02, 0.08, 0.2, 0.5, 1, 5].map((flow) => paceOf(flow, 1))
  expect(paces).toEqual(paces.toSorted((a, b) => a - b))
  expect(paces.at(-1)).toBe(PACES)
})
