import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { blendByWalther } from '../../../calculators/fuel/viscosity-blend.ts'
import { carbonAromaticityIndex } from '../../../calculators/fuel/ignition-residual.ts'
import { oilEnergy } from '../../../calculators/fuel/energy-content.ts'
import { refinedDensityAt } from '../../../calculators/fuel/refined-density.ts'
import { temperatureOnLine, viscosityOnLine } from '../../../calculators/fuel/viscosity-walther.ts'
import { distillateVapourPressure } from '../../../calculators/hydraulics/vapour.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { inHealth, shown } from '../model/bench.ts'
import { fuel, fuelRecord, setPoint } from './plant-and-fuels.ts'
import { plainStartOf, startOf } from './start-of.ts'

// What the articles on standards, microbes, hot fuel, blends, residual fuel, fire and waste say in figures.

const summer = fuel('summer-gas-oil')
const winter = fuel('winter-gas-oil')
const celsius = (degrees: number) => degrees + 273.15
const densityAt = (density: number, degrees: number) => refinedDensityAt(density, celsius(degrees)) ?? NaN
const litre = (density: number) => density * oilEnergy('net', 'distillate', density)

describe('fuel standards', () => {
  test('«a fuel on both limits of RMG 380 passes with room to spare; half its viscosity ignites worse»', async () => {
    const { ccai, inHand } = await plainStartOf('fuel-standards', 'carbon-aromaticity-index')
    expect(inHand).toBeGreaterThan(10)
    expect(carbonAromaticityIndex(991, 190e-6, celsius(50))).toBeGreaterThan(Number(ccai))
  })

  test('the two laboratories cannot be told apart, three degrees from each other', async () => {
    const { verdict, smallest } = await plainStartOf('fuel-standards', 'real-difference')
    expect(smallest).toBeCloseTo(4, 1)
    expect(verdict).not.toBe('real')
  })
})

describe('microbes and dirt', () => {
  test('«a grain of rust sinks as fast as a drop of water five times its size»', () => {
    expect(Math.sqrt((5200 - summer.density) / (998 - summer.density))).toBeCloseTo(5.3, 1)
  })

  test('«it is past the suction mouth within the night»', async () => {
    const { time } = await plainStartOf('microbes-and-dirt', 'settling-time')
    expect(time).toBeLessThan(setPoint('tank-rest'))
  })
})

describe('hot fuel', () => {
  test('«under a hundredth of the air’s pressure» at 60 °C', () => {
    expect(distillateVapourPressure(celsius(60))).toBeLessThan(1013)
  })

  test('from the set point to 65 °C: two per cent of the power by expansion', async () => {
    const { relativePower } = await plainStartOf('hot-fuel', 'power-at-fixed-rack')
    expect(1 - Number(relativePower)).toBeCloseTo(0.022, 3)
  })

  test('the table of limits: viscosity at its lowest, summer and winter', () => {
    const lowest = setPoint('fuel-viscosity-lowest')
    expect(temperatureOnLine(summer.line, lowest)).toBeCloseTo(celsius(62), 0)
    expect(Math.round(temperatureOnLine(winter.line, lowest) - 273.15)).toBe(43)
  })
})

describe('bio-blends', () => {
  test('the bars: winter fuel and a tank too hot by 25 K, in per cent of the energy of a litre', () => {
    expect(100 * (1 - litre(winter.density) / litre(summer.density))).toBeCloseTo(1.4, 1)
    const hot = densityAt(summer.density, 65) / densityAt(summer.density, 40)
    expect(100 * (1 - hot)).toBeCloseTo(2.2, 1)
  })

  test('«eight per cent thicker: less than four degrees make up for it»', () => {
    const blend = blendByWalther([
      { share: 0.8, kinematicViscosity: 3e-6 },
      { share: 0.2, kinematicViscosity: 4.5e-6 },
    ])
    expect(blend / 3e-6 - 1).toBeCloseTo(0.08, 2)
    const warmer = viscosityOnLine(summer.line, celsius(44)) / viscosityOnLine(summer.line, celsius(40))
    expect(warmer * (blend / 3e-6)).toBeLessThan(1)
  })

  test('«the blend takes nearly all that was in hand»', async () => {
    const { strainerTemperature } = await plainStartOf('bio-blends', 'cold-margin')
    const cloud = fuelRecord('summer-gas-oil').cloudPoint
    const before = Number(strainerTemperature) - cloud
    const after = Number(strainerTemperature) - celsius(4.5)
    expect(before).toBeGreaterThan(2)
    expect(after).toBeLessThan(0.25 * before)
    expect(after).toBeGreaterThan(0)
  })
})

describe('residual fuel and boosters', () => {
  const { setPoints } = parse(readFileSync('content/plants/pb-8.yaml', 'utf8')) as {
    setPoints: Record<string, { kind: KindId; value: string }>
  }
  const ofBooster = (id: string) => {
    const point = setPoints[id]
    const reading = point && readFigure(point.value, point.kind)
    if (!reading?.ok) throw new Error(`no set point ${id}`)
    return reading.si
  }
  const thick = fuel('residual-380')
  const thin = fuel('residual-180')
  const at = (one: typeof thick, id: string) => temperatureOnLine(one.line, ofBooster(id)) - 273.15

  test('the figures of the plant that the page writes out', () => {
    const text = readFileSync('content/circuit/residual-fuel-and-boosters.mdx', 'utf8')
    for (const id of [
      'injection-viscosity',
      'injection-viscosity-highest',
      'injection-viscosity-lowest',
      'booster-pump-delivery',
      'fuel-burnt-at-full-load',
      'fuel-burnt-at-idle',
      'tank-temperature',
      'column-volume',
    ])
      expect(text, id).toContain(`<Quantity value="${setPoints[id]?.value}"`)
  })

  test('«138 °C; at 40 °C sixty times as thick; nine degrees less for the thinner one»', () => {
    expect(at(thick, 'injection-viscosity')).toBeCloseTo(138, 0)
    const share = viscosityOnLine(thick.line, celsius(40)) / ofBooster('injection-viscosity')
    expect(share / 60).toBeCloseTo(1, 0)
    expect(at(thick, 'injection-viscosity') - at(thin, 'injection-viscosity')).toBeCloseTo(9, 0)
  })

  test('«a little over two per cent a kelvin; the window less than eighteen degrees wide»', () => {
    const fall = 1 - viscosityOnLine(thick.line, celsius(138.5)) / viscosityOnLine(thick.line, celsius(137.5))
    expect(fall).toBeGreaterThan(0.02)
    expect(fall).toBeLessThan(0.025)
    const width = at(thick, 'injection-viscosity-lowest') - at(thick, 'injection-viscosity-highest')
    expect(width).toBeLessThan(18)
    expect(width).toBeGreaterThan(17)
  })

  test('«summer gas oil there would have 0.8 mm²/s»', () => {
    expect(viscosityOnLine(summer.line, celsius(137)) * 1e6).toBeCloseTo(0.8, 1)
  })

  test('the change-over: a third left and the first minute’s fall, at full load and at idle', () => {
    const volume = ofBooster('column-volume')
    const row = (id: string) => {
      const turns = ofBooster(id) / volume
      return [Math.log(3) / turns / 60, 97 * turns * 60] as const
    }
    const [fullTime, fullRate] = row('fuel-burnt-at-full-load')
    const [idleTime, idleRate] = row('fuel-burnt-at-idle')
    expect(fullTime).toBeCloseTo(5, 0)
    expect(fullRate).toBeCloseTo(21, 0)
    expect(idleTime).toBeCloseTo(55, 0)
    expect(idleRate).toBeCloseTo(1.9, 1)
  })
})

describe('heat and fire', () => {
  test('«fast enough to rise 25 m»', () => {
    const height = setPoint('header-pressure') / (densityAt(summer.density, 40) * 9.80665)
    expect(height).toBeGreaterThan(25)
    expect(height).toBeLessThan(26)
  })

  test('«little more than half a litre a minute, a tenth of what the engine burns; 390 kW, a quarter»', async () => {
    const { flow } = await startOf('heat-and-fire', 'leak-rate')
    const leak = Number(flow?.value)
    expect(leak * 6e4).toBeGreaterThan(0.5)
    expect(leak * 6e4).toBeLessThan(0.7)
    expect(leak / setPoint('fuel-burnt-at-full-load')).toBeCloseTo(0.1, 2)
    const heat = leak * densityAt(summer.density, 40) * oilEnergy('net', 'distillate', summer.density)
    expect(heat / 1e3 / 390).toBeCloseTo(1, 1)
    expect(heat / setPoint('rated-power')).toBeCloseTo(0.25, 2)
  })

  test('«the header gauge falls by no more than about its own accuracy»; the return flow tells the first', () => {
    const health = inHealth('pq-12', 'full').readings
    const fall = (leak: string, id: string) => {
      const before = health.find((reading) => reading.id === id)
      const after = shown('pq-12', 'full', { [leak]: 0.5 }).readings.find((reading) => reading.id === id)
      return ((before?.value ?? 0) - (after?.value ?? 0)) / (before?.accuracy ?? 0)
    }
    for (const leak of ['header-leaks', 'return-header-leaks'])
      expect(fall(leak, 'header-gauge')).toBeLessThan(1.1)
    expect(fall('header-leaks', 'return-flow')).toBeGreaterThan(2)
    expect(Math.abs(fall('return-header-leaks', 'return-flow'))).toBeLessThan(1)
  })

  test('the exhaust passes the limit with load', () => {
    expect(setPoint('exhaust-at-full-load')).toBeGreaterThan(celsius(220))
  })
})

test('waste: «nearly seven litres» from a cold yard to a drum in the sun', async () => {
  const { volumeAtTarget } = await plainStartOf('waste-spills-and-used-filters', 'density-and-volume')
  expect(Number(volumeAtTarget) * 1e3 - 200).toBeGreaterThan(6.3)
  expect(Number(volumeAtTarget) * 1e3 - 200).toBeLessThan(7)
})
