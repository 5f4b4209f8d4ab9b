import { expect, test } from 'vitest'
import { LOWEST_FLASH } from '../../../calculators/heat/flash.ts'
import { setPoint } from './plant-and-fuels.ts'
import { startOf } from './start-of.ts'

// An article says what its calculator starts with and what comes out. Here it is run with what the article gives.

test('the middle pair of the summer gas oil: «agrees with the table to the digits written there»', async () => {
  const { kinematicViscosity } = await startOf('viscosity-and-temperature', 'viscosity-at-temperature')
  expect((Number(kinematicViscosity?.value) * 1e6).toFixed(2)).toBe('3.00')
})

test('the tank: «two per cent more volume»', async () => {
  const { volumeAtTarget } = await startOf('viscosity-and-temperature', 'density-and-volume')
  expect(Number(volumeAtTarget?.value) / 4).toBeCloseTo(1.02, 2)
})

test('a cold morning: «well over half of what is permitted; at the reference state less than a third»', async () => {
  const { shareUsed, verdict } = await startOf('filtration-and-pressure-drop', 'filter-pressure-drop')
  expect(Number(shareUsed?.value)).toBeLessThan(1 / 3)
  expect(verdict?.value).toBe('inOrder')
})

test("the PQ-12's own gauge with a reading in the very middle: «cannot be told»", async () => {
  const outputs = await startOf('the-two-valves', 'valve-set-point-check')
  expect(outputs['verdict']?.value).toBe('cannotBeTold')
  expect(Number(outputs['setting']?.value)).toBeCloseTo(140e3, -3)
})

const startOfSpring = () => startOf('springs-seats-and-coefficients', 'spring-valve')

test('the PQ-12 at full return: «a little more than the plant data; the height takes half of the back pressure away»', async () => {
  const { readingAtFlow } = await startOfSpring()
  const more = Number(readingAtFlow?.value) - 160e3
  expect(more).toBeGreaterThan(4e3)
  expect(more).toBeLessThan(6e3)
})

test('an injector’s heat: «the flow into the header is over a third more than cooling needs»', async () => {
  const { flowNeeded, inHand } = await startOf('injector-cooling-and-the-return-side', 'injector-cooling')
  const needed = Number(flowNeeded?.value)
  expect(Number(inHand?.value) / needed).toBeGreaterThan(1 / 3)
  expect(Number(inHand?.value) / needed).toBeLessThan(0.4)
})

test('the return: «more than three quarters», «two and a half hours», and pumping gives a fiftieth', async () => {
  const outputs = await startOf('injector-cooling-and-the-return-side', 'return-and-recirculation')
  expect(Number(outputs['shareReturned']?.value)).toBeGreaterThan(0.75)
  expect(Number(outputs['turnoverTime']?.value) / 3600).toBeCloseTo(2.5, 1)
  expect(Number(outputs['heatToTank']?.value) / 7400 - 1).toBeCloseTo(1 / 50, 2)
})

test('«the upper end of that window is not for full load»: the return’s limit is met from a header of 47 °C', () => {
  const rise = setPoint('return-header-temperature') - setPoint('heater-set-point')
  const [upper, limit] = [setPoint('fuel-temperature-high'), setPoint('return-temperature-high')]
  expect(upper + rise).toBeGreaterThan(limit)
  expect(limit - rise - 273.15).toBeCloseTo(47, 6)
  expect(setPoint('heater-set-point') + setPoint('heater-swing')).toBeLessThan(limit - rise)
})

test('«the upper end is for light load»: at idle the injectors add too little to pass the return’s limit', async () => {
  const { outletAtIdle } = await startOf('injector-cooling-and-the-return-side', 'injector-cooling')
  const rise = Number(outletAtIdle?.value) - setPoint('heater-set-point')
  expect(setPoint('fuel-temperature-high') + rise).toBeLessThan(setPoint('return-temperature-high'))
})

test('the tank: «ends the shift well above the air, and not far below the highest temperature wanted»', async () => {
  const { final, verdict } = await startOf('heat-in-the-circuit', 'tank-temperature')
  expect(verdict?.value).toBe('inOrder')
  expect(Number(final?.value) - 273.15).toBeGreaterThan(50)
})

test('the tank filled half: «far past that, above the lowest flash point at which gas oil may be sold»', async () => {
  const { final } = await startOf('heat-in-the-circuit', 'tank-temperature', { startVolume: 2 })
  expect(Number(final?.value)).toBeGreaterThan(LOWEST_FLASH + 20)
})
