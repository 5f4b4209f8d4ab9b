import { expect, test } from 'vitest'
import { elementResistance, filterDrop, housingResistance } from '../../../calculators/hydraulics/filter.ts'
import { darcyFactor } from '../../../calculators/hydraulics/friction.ts'
import { columnPressure, pressureAtTapping } from '../../../calculators/hydraulics/hydrostatics.ts'
import { pipeFlow } from '../../../calculators/hydraulics/pipe.ts'
import { inletPressure, springSetting, valveFlow } from '../../../calculators/hydraulics/spring-valve.ts'

const pipe = { length: 10, bore: 0.02, roughness: 4.6e-5, minorLosses: 2 }
const valve = { cracking: 140e3, override: 20e3, fullFlow: 4e-4 }

test('no flow, no drop', () => {
  expect(pipeFlow(pipe, 0, 3e-6, 845)).toEqual({ velocity: 0, reynolds: 0, factor: 0, drop: 0 })
  expect(filterDrop({ element: 1e9, housing: 1e9 }, 0, 3e-3, 845)).toBe(0)
})

test('turned flow turns the drop', () => {
  expect(pipeFlow(pipe, -4e-4, 3e-6, 845).drop).toBe(-pipeFlow(pipe, 4e-4, 3e-6, 845).drop)
  expect(filterDrop({ element: 1e9, housing: 1e9 }, -1e-4, 3e-3, 845)).toBeLessThan(0)
})

test('laminar flow in a straight pipe is Hagen–Poiseuille: 128 μ L Q / (π D⁴)', () => {
  const flow = 1e-5
  const exact = (128 * 3e-6 * 845 * 10 * flow) / (Math.PI * 0.02 ** 4)
  expect(pipeFlow({ ...pipe, minorLosses: 0 }, flow, 3e-6, 845).drop / exact).toBeCloseTo(1, 12)
})

test('at Re 0 the factor itself has no bound', () => {
  expect(darcyFactor(0, 0)).toBe(Infinity)
})

test('by hand: element of 40 kPa and housing of 5 kPa', () => {
  const housing = housingResistance(5e3, 4.5e-4, 830)
  const element = elementResistance(45e3, 4.5e-4, 2.49e-3, 830, housing)
  expect(filterDrop({ element, housing }, 4.5e-4, 2.49e-3, 830)).toBeCloseTo(45e3, 6)
  expect(filterDrop({ element, housing }, 2.25e-4, 2.49e-3, 830)).toBeCloseTo(21.25e3, 6)
  expect(elementResistance(4e3, 4.5e-4, 2.49e-3, 830, housing)).toBeLessThan(0)
})

test('a gauge below the tapping reads high', () => {
  expect(pressureAtTapping(100e3, -1, 845)).toBe(100e3 - columnPressure(845, 1))
  expect(pressureAtTapping(100e3, 5, 0)).toBe(100e3)
})

test('back pressure adds one to one', () => {
  expect(inletPressure(valve, 0, 0)).toBe(140e3)
  expect(inletPressure(valve, 4e-4, 10e3)).toBe(170e3)
  expect(inletPressure(valve, -1, 10e3)).toBe(150e3)
  expect(springSetting(170e3, 10e3, 20e3)).toBe(140e3)
})

test('a valve is shut below cracking and passes full flow at full override', () => {
  expect(valveFlow(valve, 139e3, 0)).toBe(0)
  expect(valveFlow(valve, 160e3, 0)).toBeCloseTo(4e-4, 12)
  expect(valveFlow(valve, 160e3, 20e3)).toBe(0)
})
