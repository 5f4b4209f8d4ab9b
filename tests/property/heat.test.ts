import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { temperatureAfter, temperatureAlongLine, timeToReach } from '../../calculators/heat/cooling.ts'
import { insulatedCoefficient, nusseltInWind, surfaceCoefficient } from '../../calculators/heat/cylinder.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine; many more, with other seeds, were run when this was written. */
drawWith({ seed: 341, numRuns: 500 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

test('after the time to a temperature the temperature is reached, cooling and warming', () => {
  fc.assert(
    fc.property(
      between(230, 330),
      between(230, 330),
      between(0.01, 0.99),
      decades(1, 1e6),
      (start, ambient, part, constant) => {
        fc.pre(Math.abs(start - ambient) > 0.1)
        const wanted = start + part * (ambient - start)
        const time = timeToReach(start, ambient, wanted, constant)
        expect(time).toBeGreaterThan(0)
        expect(temperatureAfter(start, ambient, time, constant)).toBeCloseTo(wanted, 8)
      },
    ),
  )
})

test('fuel in a line never passes the temperature outside', () => {
  fc.assert(
    fc.property(
      between(230, 330),
      between(230, 330),
      decades(1e-3, 1e5),
      decades(1e-2, 1e5),
      (start, ambient, loss, flow) => {
        const end = temperatureAlongLine(start, ambient, loss, flow)
        expect(end).toBeGreaterThanOrEqual(Math.min(start, ambient) - 1e-9)
        expect(end).toBeLessThanOrEqual(Math.max(start, ambient) + 1e-9)
      },
    ),
  )
})

test('more wind takes more heat; a thick layer of insulation takes less', () => {
  fc.assert(
    fc.property(
      decades(0.01, 3),
      between(250, 330),
      decades(0.1, 30),
      between(1.01, 3),
      (diameter, temperature, wind, more) => {
        const surface = { diameter, temperature, emissivity: 0.9 }
        const { convection, radiation } = surfaceCoefficient(surface, 263.15, wind)
        expect(surfaceCoefficient(surface, 263.15, wind * more).convection).toBeGreaterThan(convection)
        expect(nusseltInWind(1e3 * more, 0.71)).toBeGreaterThan(nusseltInWind(1e3, 0.71))
        const bare = insulatedCoefficient(convection + radiation, diameter, 0, 0.04)
        expect(bare / (convection + radiation)).toBeCloseTo(1, 9)
        expect(insulatedCoefficient(convection + radiation, diameter, 0.05, 0.04)).toBeLessThan(bare)
      },
    ),
  )
})
