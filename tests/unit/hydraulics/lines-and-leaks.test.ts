import { describe, expect, test } from 'vitest'
import { dyeLeft, fillsUntil } from '../../../calculators/fuel/dye.ts'
import { lineFlow } from '../../../calculators/hydraulics/line.ts'
import { narrowGap, openingFlow, roundHole } from '../../../calculators/hydraulics/orifice-small.ts'
import { pipeFlow } from '../../../calculators/hydraulics/pipe.ts'
import { clearanceGrowth, displacedFlow, slipAt, slipConstant } from '../../../calculators/hydraulics/slip.ts'
import {
  headAboveBoiling,
  largestLift,
  smallestBore,
  suctionState,
} from '../../../calculators/hydraulics/suction.ts'

const bare = {
  length: 4,
  bore: 0.025,
  roughness: 4.6e-5,
  fittings: {},
  method: 'two-k',
  fixedLoss: 0,
} as const
const side = { line: bare, lift: 0.3, strainerDrop: 2e3, surfacePressure: 101_325 }

describe('a line', () => {
  test('without fittings is its pipe', () => {
    const alone = pipeFlow({ ...bare, minorLosses: 0 }, 4.5e-4, 3e-6, 840)
    expect(lineFlow(bare, 4.5e-4, 3e-6, 840)).toMatchObject({ drop: alone.drop, pipeDrop: alone.drop })
  })

  test('without flow takes nothing, with fittings too', () => {
    expect(lineFlow({ ...bare, fittings: { elbows90: 4 } }, 0, 3e-6, 840).drop).toBe(0)
  })

  test('a count of two is twice a count of one', () => {
    const part = (elbows90: number) => {
      const flow = lineFlow({ ...bare, fittings: { elbows90 } }, 4.5e-4, 3e-6, 840)
      return flow.drop - flow.pipeDrop
    }
    expect(part(2)).toBeCloseTo(2 * part(1), 9)
  })
})

describe('the suction side', () => {
  test('at rest shows the lift and the strainer alone', () => {
    const { inletPressure } = suctionState(side, 0, 3e-6, 840)
    expect(101_325 - inletPressure).toBeCloseTo(840 * 9.80665 * 0.3 + 2e3, 6)
  })

  test('the largest lift, built, just meets the limit', () => {
    const lift = largestLift(side, 4.5e-4, 5e-6, 840, 70e3)
    expect(suctionState({ ...side, lift }, 4.5e-4, 5e-6, 840).inletPressure).toBeCloseTo(70e3, 6)
  })

  test.each([1e-6, 5e-6, 3e-5, 1e-3])(
    'the smallest bore at %f m²/s, built, just meets the limit',
    (viscosity) => {
      const bore = smallestBore(side, 4.5e-4, viscosity, 840, 70e3) ?? NaN
      const state = suctionState({ ...side, line: { ...bare, bore } }, 4.5e-4, viscosity, 840)
      expect(state.inletPressure).toBeCloseTo(70e3, 3)
    },
  )

  test('no bore helps where the lift alone is too much', () => {
    expect(smallestBore({ ...side, lift: 5 }, 4.5e-4, 5e-6, 840, 70e3)).toBeUndefined()
  })

  test('the head above boiling counts the velocity back in', () => {
    const state = suctionState(side, 4.5e-4, 3e-6, 840)
    const total = state.inletPressure + state.velocityPressure
    expect(headAboveBoiling(state, 50, 840)).toBeCloseTo((total - 50) / (840 * 9.80665), 9)
  })
})

describe('a small opening', () => {
  const hole = roundHole(5e-4, 1.5e-3)

  test('in thin liquid is an orifice: C A √(2p/ρ)', () => {
    const { flow, viscousShare } = openingFlow(hole, 0.62, 2e5, 1e-9, 840)
    expect(flow / (0.62 * hole.area * Math.sqrt((2 * 2e5) / 840))).toBeCloseTo(1, 5)
    expect(viscousShare).toBeLessThan(1e-5)
  })

  test('long and in thick liquid it is a pipe of Hagen and Poiseuille', () => {
    const [diameter, wall] = [5e-4, 0.5]
    const { flow, viscousShare } = openingFlow(roundHole(diameter, wall), 0.62, 2e5, 10, 840)
    expect(flow / ((Math.PI * diameter ** 4 * 2e5) / (128 * 10 * wall))).toBeCloseTo(1, 2)
    expect(viscousShare).toBeCloseTo(1, 6)
  })

  test('by hand: 50 µm × 20 mm gap, 10 mm long, 3.5 mPa·s and 400 kPa give 0.143 L/min if it creeps', () => {
    const { resistance } = narrowGap(50e-6, 20e-3, 10e-3)
    expect((400e3 / (resistance * 3.5e-3)) * 60_000).toBeCloseTo(0.1429, 3)
  })

  test('without pressure nothing leaks', () => {
    expect(openingFlow(hole, 0.62, 0, 3e-3, 840).flow).toBe(0)
  })
})

test('slip there and back', () => {
  const constant = slipConstant(3e-5, 260e3, 2.5e-3)
  expect(slipAt(constant, 260e3, 2.5e-3)).toBeCloseTo(3e-5, 15)
  expect(displacedFlow(20e-6, (1450 * 2 * Math.PI) / 60) * 60_000).toBeCloseTo(29, 9)
  expect(clearanceGrowth(8)).toBe(2)
})

test('dye: none burnt, none lost; a half each time is a sixteenth after four', () => {
  expect(dyeLeft(500, 1000, 4)).toBe(0.0625)
  expect(dyeLeft(500, 1000, 0)).toBe(1)
  expect(fillsUntil(500, 1000, 0.0625)).toBe(4)
  expect(fillsUntil(500, 1000, 0.06)).toBe(5)
})
