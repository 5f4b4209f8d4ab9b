import { describe, expect, test } from 'vitest'
import {
  chokedDrop,
  criticalPressureRatio,
  CV_PER_KV,
  FULL_SIZE_FROM,
  turbulentKv,
  valveReynolds,
  viscosityFactor,
} from '../../../calculators/hydraulics/valve-coefficient.ts'
import { dropOfKv, flowOfKv, kvNeeded } from '../../../calculators/hydraulics/valve-sizing.ts'
import vectors from './valves.json' with { type: 'json' }

const off = (value: number, expected: number) => Math.abs(value / expected - 1)

const { library } = vectors

test(`${vectors.cases.length} random valves of ${library}, choked, turbulent and viscous, within 0.1 %`, () => {
  expect(vectors.cases.length).toBeGreaterThanOrEqual(1000)
  const worst = { kv: 0, flow: 0, drop: 0 }
  for (const row of vectors.cases) {
    const [flow = 0, kinematicViscosity = 0, size = 0, inlet = 0, drop = 0, density = 0] = row
    const [vapour = 0, critical = 0, recovery = 0, style = 0, kv = 0] = row.slice(6)
    const trim = { size, recovery, style }
    const effectiveDrop = Math.min(drop, chokedDrop(inlet, vapour, critical, recovery))
    const passing = { flow, effectiveDrop, density, kinematicViscosity }
    worst.kv = Math.max(worst.kv, off(kvNeeded(passing, trim), kv))
    worst.flow = Math.max(
      worst.flow,
      off(flowOfKv(kv, effectiveDrop, density, kinematicViscosity, trim), flow),
    )
    worst.drop = Math.max(
      worst.drop,
      off(dropOfKv(kv, flow, density, kinematicViscosity, trim), effectiveDrop),
    )
  }
  expect(worst.kv).toBeLessThan(1e-3)
  expect(worst.flow).toBeLessThan(1e-3)
  expect(worst.drop).toBeLessThan(2e-3)
})

describe('worked examples of IEC 60534-2-1, as the tests of a public library give them', () => {
  const water = {
    inlet: 680e3,
    drop: 460e3,
    density: 965.4,
    vapour: 70.1e3,
    critical: 22.12e6,
    viscosity: 3.26e-7,
  }

  test('example 1: not choked, F_F 0.944, Re 2.97e6, Kv 165', () => {
    const trim = { size: 0.15, recovery: 0.9, style: 0.46 }
    expect(criticalPressureRatio(water.vapour, water.critical).toFixed(3)).toBe('0.944')
    expect(chokedDrop(water.inlet, water.vapour, water.critical, 0.9)).toBeGreaterThan(water.drop)
    const kv = turbulentKv(0.1, water.drop, water.density)
    expect(kv.toFixed(0)).toBe('165')
    expect(off(valveReynolds(0.1, water.viscosity, 165, trim), 2.97e6)).toBeLessThan(0.002)
  })

  test('example 2: choked, Re 6.60e6, Kv 238', () => {
    const trim = { size: 0.1, recovery: 0.6, style: 0.98 }
    const choked = chokedDrop(water.inlet, water.vapour, water.critical, 0.6)
    expect(choked).toBeLessThan(water.drop)
    const passing = {
      flow: 0.1,
      effectiveDrop: choked,
      density: water.density,
      kinematicViscosity: water.viscosity,
    }
    expect(kvNeeded(passing, trim).toFixed(0)).toBe('238')
    expect(off(valveReynolds(0.1, water.viscosity, 238, trim), 6.6e6)).toBeLessThan(0.002)
  })

  test('example 4: reduced trim, F_R 0.715 at Re 1202', () => {
    expect(viscosityFactor(1202, 0.015483, { size: 0.015, recovery: 0.98, style: 1 }).toFixed(3)).toBe(
      '0.715',
    )
  })
})

test('a Cv is 1.15610 Kv (arithmetic)', () => {
  expect(CV_PER_KV.toFixed(5)).toBe('1.15610')
})

test('the formulas of full-size and reduced trim meet within 5 % where one takes over from the other', () => {
  for (const reynolds of [20, 100, 1000, 9000]) {
    const at = (share: number) =>
      viscosityFactor(reynolds, FULL_SIZE_FROM * 400 * share, { size: 0.02, recovery: 0.9, style: 1 })
    expect(off(at(1.000001), at(0.999999))).toBeLessThan(0.05)
  }
})
