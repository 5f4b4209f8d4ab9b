import { describe, expect, test } from 'vitest'
import { checkValveLaw } from '../../../calculators/hydraulics/elements/check-valve.ts'
import { bypassedFilterLaw, filterLaw } from '../../../calculators/hydraulics/elements/filter.ts'
import { leakLaw, openingLaw } from '../../../calculators/hydraulics/elements/leak.ts'
import { liftedLaw } from '../../../calculators/hydraulics/elements/lift.ts'
import { partlyShutValveLaw } from '../../../calculators/hydraulics/elements/partly-shut-valve.ts'
import { pipeLaw } from '../../../calculators/hydraulics/elements/pipe.ts'
import { pumpLaw } from '../../../calculators/hydraulics/elements/pump.ts'
import { springValveLaw } from '../../../calculators/hydraulics/elements/spring-valve.ts'
import { filterDrop } from '../../../calculators/hydraulics/filter.ts'
import { filterFlow } from '../../../calculators/hydraulics/filter-parallel.ts'
import { columnPressure } from '../../../calculators/hydraulics/hydrostatics.ts'
import { lineFlow } from '../../../calculators/hydraulics/line.ts'
import { FITTINGS } from '../../../calculators/hydraulics/fittings.ts'
import type { Law } from '../../../calculators/hydraulics/network/index.ts'
import { openingFlow, roundHole } from '../../../calculators/hydraulics/orifice-small.ts'
import { pipeFlow } from '../../../calculators/hydraulics/pipe.ts'
import { inletPressure, valveFlow } from '../../../calculators/hydraulics/spring-valve.ts'

const FUEL = { density: 840, kinematicViscosity: 3e-6 }
const MU = FUEL.density * FUEL.kinematicViscosity
const THICK = { density: 980, kinematicViscosity: 4e-4 }

const lossAt = (law: Law, flow: number) => {
  const into = { drop: Number.NaN, slope: Number.NaN }
  law(flow, into)
  return into
}
const dropAt = (law: Law, flow: number) => lossAt(law, flow).drop

const PIPE = { length: 2.5, bore: 0.02, roughness: 4.5e-5, minorLosses: 3 }
const VALVE = {
  cracking: 2.4e5,
  override: 4e4,
  fullFlow: 5e-4,
  leakage: 1e-13,
  stuckOpen: 0,
  stuckShut: false,
}
const CHECK = { cracking: 3e3, linear: 4e6, quadratic: 6e10, leakage: 2e-14 }
const PUMP = { displacement: 2e-5, speed: 150, slip: 4e-15, liquidShare: 1 }
const CLOGGED = { element: 2e10, housing: 4e7 }
const HOLE = roundHole(0.004, 0.002)

const LAWS: Readonly<Record<string, Law>> = {
  pipe: pipeLaw(PIPE, FUEL),
  'rising pipe with slow losses': pipeLaw({ ...PIPE, slowLosses: 1600, rise: 2 }, FUEL),
  'smooth pipe of thick fuel': pipeLaw({ ...PIPE, roughness: 0 }, THICK),
  'rough pipe': pipeLaw({ ...PIPE, roughness: 1e-3 }, FUEL),
  filter: filterLaw(CLOGGED, 3, FUEL),
  'bypassed filter': bypassedFilterLaw(CLOGGED, 30, HOLE, 0.6, FUEL),
  pump: pumpLaw(PUMP, FUEL),
  'standing pump': pumpLaw({ ...PUMP, speed: 0 }, FUEL),
  'spring valve': springValveLaw(VALVE, FUEL),
  'spring valve a little open': springValveLaw({ ...VALVE, stuckOpen: 0.05 }, FUEL),
  'spring valve stuck half open, thick fuel': springValveLaw({ ...VALVE, stuckOpen: 0.5 }, THICK),
  'spring valve stuck wide open': springValveLaw({ ...VALVE, stuckOpen: 1 }, FUEL),
  'spring valve stuck shut': springValveLaw({ ...VALVE, stuckShut: true }, FUEL),
  'check valve': checkValveLaw(CHECK),
  'check valve without a spring': checkValveLaw({ ...CHECK, cracking: 0 }),
  'partly shut valve': partlyShutValveLaw(0.02, 0.1, 0.2, FUEL),
  'open valve': partlyShutValveLaw(0.02, 1, 0.2, FUEL),
  leak: leakLaw(1e-12),
  'small hole': openingLaw(HOLE, 0.6, FUEL),
  'lifted filter': liftedLaw(filterLaw(CLOGGED, 1, FUEL), 1.2, columnPressure(840, 1.5)),
}

/** Both ways, from a drop in a month to a flood, and none at all. */
const FLOWS = Array.from({ length: 241 }, (_, i) => 10 ** (-14 + i / 20)).flatMap((q) => [-q, q])
FLOWS.push(0)
FLOWS.sort((a, b) => a - b)

describe.each(Object.entries(LAWS))('%s', (_, law) => {
  test('is finite and strictly rising, without a jump', () => {
    let before = Number.NEGATIVE_INFINITY
    for (const flow of FLOWS) {
      const { drop, slope } = lossAt(law, flow)
      expect(Number.isFinite(drop)).toBe(true)
      expect(Number.isFinite(slope)).toBe(true)
      expect(slope).toBeGreaterThan(0)
      // Lift hides what the smallest flows add.
      expect(drop).toBeGreaterThanOrEqual(before)
      const [low, high] = [lossAt(law, flow * (1 - 1e-12)), lossAt(law, flow * (1 + 1e-12))]
      const most = Math.max(low.slope, slope, high.slope) * Math.abs(flow) * 1e-11 + Math.abs(drop) * 1e-11
      expect(Math.abs(high.drop - low.drop)).toBeLessThanOrEqual(most + 1e-18)
      before = drop
    }
    expect(dropAt(law, 1e-6)).toBeGreaterThan(dropAt(law, 1e-7))
    expect(dropAt(law, -1e-7)).toBeGreaterThan(dropAt(law, -1e-6))
  })

  test('has the slope that its own differences show, at no flow and reversed too', () => {
    let compared = 0
    for (const flow of FLOWS) {
      const step = flow === 0 ? 1e-15 : Math.abs(flow) * 1e-5
      const [below, at, above] = [flow - step, flow, flow + step].map((q) => lossAt(law, q))
      if (!below || !at || !above) throw new Error('three points')
      // A kink lies between, or the differences drown in lift or in a cracking pressure.
      if (Math.abs(above.slope / below.slope - 1) > 1e-3) continue
      if (Math.abs(above.drop - below.drop) < 1e-8 * Math.abs(at.drop)) continue
      const difference = (above.drop - below.drop) / (2 * step)
      expect(Math.abs(at.slope / difference - 1), `at ${flow} m³/s`).toBeLessThan(1e-6)
      compared++
    }
    expect(compared).toBeGreaterThan(100)
  })
})

describe('pipe', () => {
  test.each([1e-7, 1e-6, 2e-5, -2e-5])('laminar, %f m³/s: the drop of pipeFlow to rounding', (flow) => {
    const published = pipeFlow(PIPE, flow, FUEL.kinematicViscosity, FUEL.density)
    expect(published.reynolds).toBeLessThan(2000)
    expect(dropAt(pipeLaw(PIPE, FUEL), flow) / published.drop).toBeCloseTo(1, 12)
  })

  test('the explicit factor stays within 3.5 % of Colebrook and White from Re 4000 to 1e8', () => {
    let worst = 0
    for (const relative of [0, 1e-6, 1e-5, 1e-4, 1e-3, 2e-3, 5e-3, 1e-2])
      for (let exponent = Math.log10(4000); exponent <= 8; exponent += 0.05) {
        const bare = { length: 1, bore: 0.02, roughness: relative * 0.02, minorLosses: 0 }
        const flow = (10 ** exponent * Math.PI * bare.bore * FUEL.kinematicViscosity) / 4
        const exact = pipeFlow(bare, flow, FUEL.kinematicViscosity, FUEL.density)
        worst = Math.max(worst, Math.abs(dropAt(pipeLaw(bare, FUEL), flow) / exact.drop - 1))
      }
    expect(worst).toBeLessThan(0.035)
  })

  test('slow losses are those of the two-K method of a line', () => {
    const { k1, kInfinity } = FITTINGS.elbows90
    const line = { length: 1, bore: 0.015, roughness: 0, method: 'two-k', fixedLoss: 0 } as const
    for (const flow of [1e-6, 1e-5]) {
      const exact = lineFlow({ ...line, fittings: { elbows90: 4 } }, flow, 3e-6, 840)
      const minorLosses = 4 * kInfinity * (1 + 0.0254 / line.bore)
      const law = pipeLaw({ ...line, minorLosses, slowLosses: 4 * k1 }, FUEL)
      expect(dropAt(law, flow) / exact.drop).toBeCloseTo(1, 12)
    }
  })

  test('at rest it holds the column of its rise', () => {
    expect(dropAt(pipeLaw({ ...PIPE, rise: 2 }, FUEL), 0)).toBeCloseTo(840 * 9.80665 * 2, 9)
    expect(dropAt(liftedLaw(leakLaw(1e-9), 1, columnPressure(840, -1)), 0)).toBeCloseTo(-840 * 9.80665, 9)
  })
})

describe('filters and holes', () => {
  test('loading multiplies the part of the element', () => {
    const loaded = { ...CLOGGED, element: 3 * CLOGGED.element }
    expect(dropAt(filterLaw(CLOGGED, 3, FUEL), 4e-4)).toBeCloseTo(filterDrop(loaded, 4e-4, MU, 840), 6)
  })

  test('two ways past each other share the flow at one drop', () => {
    const law = bypassedFilterLaw(CLOGGED, 30, HOLE, 0.6, FUEL)
    for (const flow of [1e-7, 1e-5, 1e-3]) {
      const drop = dropAt(law, flow)
      const filter = filterFlow({ element: 30 * CLOGGED.element, housing: CLOGGED.housing }, drop, MU, 840)
      const past = openingFlow(HOLE, 0.6, drop, MU, 840).flow
      expect((filter + past) / flow).toBeCloseTo(1, 9)
    }
  })

  test('a small hole is the inverse of openingFlow', () => {
    const law = openingLaw(HOLE, 0.6, FUEL)
    for (const drop of [1, 1e3, 1e6])
      expect(dropAt(law, openingFlow(HOLE, 0.6, drop, MU, 840).flow) / drop).toBeCloseTo(1, 12)
  })

  test('a valve that shuts holds back more and more; wide open only what is stated', () => {
    const drops = [1, 0.5, 0.2, 0.05, 0.01].map((open) =>
      dropAt(partlyShutValveLaw(0.02, open, 0.2, FUEL), 4e-4),
    )
    expect(drops).toEqual(drops.toSorted((a, b) => a - b))
    const velocity = 1 / ((Math.PI / 4) * 0.02 ** 2)
    expect(drops[0]).toBeCloseTo((0.2 * 840 * (4e-4 * velocity) ** 2) / 2 + (24 / 0.02 ** 3) * MU * 4e-4, 6)
  })
})

describe('pump', () => {
  test('delivers displacement by speed against no rise, and less by the slip against a rise', () => {
    const law = pumpLaw(PUMP, FUEL)
    const derived = (2e-5 * 150) / (2 * Math.PI)
    expect(dropAt(law, derived)).toBeCloseTo(0, 6)
    expect(dropAt(law, derived - (4e-15 * 3e5) / MU)).toBeCloseTo(-3e5, 3)
  })

  test('gas takes the place of liquid', () => {
    const derived = (2e-5 * 150) / (2 * Math.PI)
    expect(dropAt(pumpLaw({ ...PUMP, liquidShare: 0.8 }, FUEL), 0.8 * derived)).toBeCloseTo(0, 6)
  })
})

describe('spring valve', () => {
  const law = springValveLaw({ ...VALVE, leakage: 1e-18 }, FUEL)

  test.each([0.05, 0.4, 0.7, 0.999])(
    'passes what valveFlow says between shut and wide open, share %f',
    (share) => {
      const flow = share * VALVE.fullFlow
      expect(dropAt(law, flow)).toBeCloseTo(inletPressure(VALVE, flow, 0), 2)
      expect(valveFlow(VALVE, dropAt(law, flow), 0) / flow).toBeCloseTo(1, 6)
    },
  )

  test('wide open it is an orifice: four times the drop for twice the flow', () => {
    expect(dropAt(law, 2 * VALVE.fullFlow) / dropAt(law, VALVE.fullFlow)).toBeCloseTo(4, 6)
  })

  test('shut, reversed and stuck shut only the seat leaks', () => {
    const leaking = springValveLaw(VALVE, FUEL)
    expect(dropAt(leaking, 1e-13 * 2e5)).toBeCloseTo(2e5, 4)
    expect(dropAt(leaking, -1e-13 * 7e5)).toBeCloseTo(-7e5, 4)
    expect(dropAt(springValveLaw({ ...VALVE, stuckShut: true }, FUEL), 1e-13 * 9e5)).toBeCloseTo(9e5, 4)
  })

  test('a share stuck open passes that share of the wide open flow, both ways', () => {
    const stuck = springValveLaw(
      { ...VALVE, leakage: 1e-18, stuckOpen: 0.25 },
      { ...FUEL, kinematicViscosity: 1e-12 },
    )
    const wide = VALVE.cracking + VALVE.override
    const through = 0.25 * VALVE.fullFlow * Math.sqrt(1e5 / wide)
    expect(dropAt(stuck, through) / 1e5).toBeCloseTo(1, 5)
    expect(dropAt(stuck, -through) / -1e5).toBeCloseTo(1, 5)
    expect(dropAt(stuck, VALVE.fullFlow) / wide).toBeCloseTo(1, 5)
  })
})

describe('check valve', () => {
  test('opens at its cracking pressure and holds back all but the leakage', () => {
    const law = checkValveLaw(CHECK)
    expect(dropAt(law, CHECK.cracking * CHECK.leakage)).toBeCloseTo(3e3, 6)
    expect(dropAt(law, 1e-4)).toBeCloseTo(3e3 + 4e6 * 1e-4 + 6e10 * 1e-8, 2)
    expect(dropAt(law, -CHECK.leakage * 2e5)).toBeCloseTo(-2e5, 4)
  })
})
