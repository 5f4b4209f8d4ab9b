import { expect, test } from 'vitest'
import { setPoint, tolerance } from './plant-and-fuels.ts'
import { plainStartOf } from './start-of.ts'

// What the procedures say in words about their calculators and about the plant. The test's name quotes the words.

const minute = 60

test('suction leak: «a pinhole of half a millimetre» «makes foam»', async () => {
  expect((await plainStartOf('procedures/isolating-a-suction-leak', 'air-drawn-in'))['verdict']).toBe('foam')
})

test('bypass valve on the bench: «the example is a valve that has weakened»', async () => {
  const start = await plainStartOf('procedures/bypass-valve-out-and-bench-check', 'valve-set-point-check')
  expect(start['verdict']).toBe('outside')
  expect(Number(start['setting'])).toBeLessThan(setPoint('bypass-valve-cracking'))
})

test('the seat’s limit «is about ten drops a minute», at the twentieth of a millilitre of a usual drop', () => {
  expect((setPoint('valve-seat-leakage') * minute) / 0.05e-6).toBeCloseTo(10, 6)
})

test('a valve that reseats in order is shut where its seat is watched', () => {
  expect(setPoint('valve-reseating')).toBeGreaterThan(setPoint('valve-seat-test'))
})

test('back-pressure valve: «about a third more», «the very figure of the plant data, and the valve is weak»', async () => {
  const more = setPoint('pump-delivery') / setPoint('return-flow-at-full-load')
  expect(more - 1).toBeCloseTo(1 / 3, 1)
  expect(setPoint('return-valve-override') * more).toBeCloseTo(26e3, -3)
  const start = await plainStartOf('procedures/back-pressure-valve-check', 'valve-set-point-check')
  expect(Number(start['inletPressure'])).toBeCloseTo(setPoint('return-valve-full-flow'), 6)
  expect(start['verdict']).toBe('outside')
  expect(Number(start['setting'])).toBeLessThan(setPoint('return-valve-cracking'))
})

test('its shim is found for the setting that the check gave', async () => {
  const check = await plainStartOf('procedures/back-pressure-valve-check', 'valve-set-point-check')
  const shim = await plainStartOf('procedures/back-pressure-valve-check', 'spring-shim')
  expect(Number(check['setting'])).toBeCloseTo(124e3, -2)
  expect(shim['verdict']).toBe('addShim')
})

test('gauges: two readings «both within what they may be wrong» prove nothing', async () => {
  const start = await plainStartOf('procedures/gauge-check-against-a-reference', 'real-difference')
  expect(start['verdict']).toBe('cannotBeTold')
})

test('sample: the reading in a warm shop agrees with the certificate of the summer gas oil', async () => {
  const start = await plainStartOf('procedures/fuel-sample-and-field-tests', 'density-and-volume')
  expect(Math.abs(Number(start['densityAt15']) - 845)).toBeLessThan(setPoint('density-departure'))
})

test('draining: drops that an eye can just see «are hardly down in the morning»', async () => {
  const { time, verdict } = await plainStartOf('procedures/draining-water', 'settling-time')
  expect(verdict).toBe('afloat')
  expect(Number(time) / setPoint('tank-rest')).toBeLessThan(1.1)
})

test('the mouth’s clearance is what the full level leaves under it', () => {
  const level = setPoint('tank-volume') / (setPoint('tank-length') * setPoint('tank-width'))
  const clearance = level - setPoint('suction-mouth-depth')
  expect(Math.abs(clearance - setPoint('suction-mouth-clearance'))).toBeLessThan(
    tolerance('suction-mouth-clearance'),
  )
})

test('pump: «slips more than twice as much as a new one»; heat’s part is the smaller one', async () => {
  const { ratio, slip, verdict } = await plainStartOf('procedures/pump-delivery-test', 'pump-wear')
  expect(verdict).toBe('worn')
  expect(Number(ratio)).toBeGreaterThan(2)
  expect(Number(ratio)).toBeLessThan(2.5)
  const newSlip =
    (setPoint('pump-displacement') * setPoint('pump-speed')) / (2 * Math.PI) - setPoint('pump-delivery')
  const heat = Number(slip) / Number(ratio) - newSlip
  expect(heat).toBeGreaterThan(0)
  expect(heat).toBeLessThan((Number(slip) - newSlip) / 2)
})

test('pump: the can fills in «a little over a minute»', () => {
  const seconds = setPoint('delivery-test-can') / setPoint('pump-delivery')
  expect(seconds).toBeGreaterThan(minute)
  expect(seconds).toBeLessThan(1.25 * minute)
})

test('cold start: «the tank is clear, with a margin»; what stood in the line is «below the cloud point»', async () => {
  const start = await plainStartOf('procedures/cold-start-preparation', 'cold-margin')
  expect(start['verdict']).toBe('clear')
  expect(start['standing']).toBe('wax')
})

test('heater: «more than twenty kilowatts»', async () => {
  const { duty } = await plainStartOf('procedures/heater-check', 'heater-duty')
  expect(Number(duty)).toBeGreaterThan(20e3)
})

test('exhaust survey: two rounds may differ by twice what a probe repeats to', () => {
  expect(setPoint('survey-rounds')).toBeCloseTo(2 * setPoint('exhaust-probe-repeatability'), 9)
})
