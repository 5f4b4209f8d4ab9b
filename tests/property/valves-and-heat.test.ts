import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { effectiveness, type Arrangement } from '../../calculators/heat/exchanger.ts'
import { heatContent, temperatureOfContent } from '../../calculators/heat/petroleum-heat.ts'
import { tankTemperature } from '../../calculators/heat/tank.ts'
import { orificeFlow } from '../../calculators/hydraulics/orifice-flow.ts'
import {
  restrictorCoefficient,
  restrictorDrop,
  RESTRICTORS,
} from '../../calculators/hydraulics/restrictor.ts'
import { valveReynolds } from '../../calculators/hydraulics/valve-coefficient.ts'
import { flowOfKv, kvNeeded } from '../../calculators/hydraulics/valve-sizing.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine. */
drawWith({ seed: 341, numRuns: 500 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

const trims = fc.record({ size: decades(0.005, 0.1), recovery: between(0.5, 1), style: between(0.1, 1) })

// Under about Re 30 the standard's own formulas step: no law can be asked of them there.
test('from Re 100 on a valve never passes more with thicker fuel, and its Kv is never under the turbulent one', () => {
  fc.assert(
    fc.property(
      trims,
      decades(0.01, 30),
      decades(1e3, 1e6),
      decades(5e-7, 1e-4),
      (trim, kv, drop, viscosity) => {
        const thin = flowOfKv(kv, drop, 845, viscosity, trim)
        const thick = flowOfKv(kv, drop, 845, viscosity * 1.5, trim)
        fc.pre(valveReynolds(thick, viscosity * 1.5, kv, trim) > 100)
        expect(thick).toBeLessThanOrEqual(thin * (1 + 1e-9))
        const needed = kvNeeded(
          { flow: thin, effectiveDrop: drop, density: 845, kinematicViscosity: viscosity },
          trim,
        )
        const turbulent = kvNeeded(
          { flow: thin, effectiveDrop: drop, density: 845, kinematicViscosity: 1e-12 },
          trim,
        )
        expect(needed).toBeGreaterThanOrEqual(turbulent * (1 - 1e-9))
      },
    ),
  )
})

test('a restrictor passes more at more drop and with thinner fuel, and comes back from its flow', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('sharp' as const, 'thick' as const),
      decades(2e-4, 5e-3),
      decades(1, 1e6),
      decades(5e-7, 1e-3),
      (edge, bore, drop, viscosity) => {
        const { low, middle, high } = RESTRICTORS[edge]
        const flow = (one: typeof low, p: number, nu: number) =>
          orificeFlow(restrictorCoefficient(one, bore, p, 845, nu), bore, 0.016, p, 845)
        const plain = flow(middle, drop, viscosity)
        expect(flow(middle, drop * 1.1, viscosity)).toBeGreaterThan(plain)
        expect(flow(middle, drop, viscosity * 1.1)).toBeLessThanOrEqual(plain)
        expect(flow(low, drop, viscosity)).toBeLessThan(plain)
        expect(flow(high, drop, viscosity)).toBeGreaterThan(plain)
        expect(restrictorDrop(middle, bore, 0.016, plain, 845, viscosity) / drop).toBeCloseTo(1, 8)
      },
    ),
  )
})

test('effectiveness lies between 0 and 1 and grows with the transfer units; counterflow is never the worse', () => {
  const arrangements = fc.constantFrom<Arrangement>('counterflow', 'parallel', 'constant')
  fc.assert(
    fc.property(arrangements, decades(1e-3, 20), between(0, 1), (arrangement, units, ratio) => {
      const plain = effectiveness(units, ratio, arrangement)
      expect(plain).toBeGreaterThan(0)
      expect(plain).toBeLessThanOrEqual(1)
      expect(effectiveness(units * 1.2, ratio, arrangement)).toBeGreaterThanOrEqual(plain - 1e-12)
      expect(effectiveness(units, ratio, 'counterflow')).toBeGreaterThanOrEqual(
        effectiveness(units, ratio, 'parallel') - 1e-9,
      )
    }),
  )
})

test('heat content grows with temperature and leads back to it', () => {
  fc.assert(
    fc.property(between(650, 1050), between(220, 500), between(0.01, 50), (density, kelvin, more) => {
      const content = heatContent(density, kelvin)
      expect(heatContent(density, kelvin + more)).toBeGreaterThan(content)
      expect(temperatureOfContent(density, content)).toBeCloseTo(kelvin, 8)
    }),
  )
})

test('a tank ends between where it began, the air, and what its heat alone would bring', () => {
  fc.assert(
    fc.property(
      between(250, 330),
      between(250, 330),
      decades(0.1, 50),
      between(0, 0.9),
      (start, ambient, u, share) => {
        const tank = { length: 2, width: 1.5, heatTransfer: u, ambient, density15: 845 }
        const load = { startVolume: 3, startTemperature: start, burnt: (share * 3) / 36_000, heat: 0 }
        const end = tankTemperature(tank, load, 36_000)
        expect(end).toBeGreaterThanOrEqual(Math.min(start, ambient) - 1e-9)
        expect(end).toBeLessThanOrEqual(Math.max(start, ambient) + 1e-9)
        expect(tankTemperature(tank, { ...load, heat: 5e3 }, 36_000)).toBeGreaterThan(end)
      },
    ),
  )
})
