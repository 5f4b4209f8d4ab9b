import { describe, expect, test } from 'vitest'
import { volumeFactor1980 } from '../../../calculators/fuel/density-1980.ts'
import { GROUPS_1980, groupsOf } from '../../../calculators/fuel/density-groups.ts'
import { redwoodSeconds } from '../../../calculators/fuel/engler-redwood.ts'
import { massInAir } from '../../../calculators/fuel/mass-in-air.ts'
import { HUNDRED_FAHRENHEIT, sayboltUniversal } from '../../../calculators/fuel/saybolt.ts'
import {
  blendByRefutas,
  blendByWalther,
  shareByLogarithm,
  shareByWalther,
} from '../../../calculators/fuel/viscosity-blend.ts'
import { temperatureOnLine, viscosityOnLine } from '../../../calculators/fuel/viscosity-walther.ts'
import { fuel, setPoint } from './plant-and-fuels.ts'

// What the articles on heating, scales, blending, buying and fuel in oil say in figures, so that a changed set
// point or fuel cannot leave one behind. The test's name quotes the words.

const summer = fuel('summer-gas-oil')
const winter = fuel('winter-gas-oil')
const heavy = fuel('heavy-distillate')
const mm2 = (value: number) => value * 1e-6
const mix = (first: number, second: number, share: number) => [
  { share: 1 - share, kinematicViscosity: first },
  { share, kinematicViscosity: second },
]
const at = (one: typeof summer, celsius: number) => viscosityOnLine(one.line, celsius + 273.15)
const [fuelOils] = groupsOf('fuelOils', GROUPS_1980)
if (!fuelOils) throw new Error('the tables of 1980 have no row for fuel oils')
const factor = (celsius: number) => volumeFactor1980(summer.density, celsius + 273.15, fuelOils)

describe('heating and the viscosity window', () => {
  test.each([
    ['winter gas oil', winter, 2.0, 22.0, 42.7],
    ['summer gas oil', summer, 18.5, 39.9, 62.1],
    ['heavy distillate', heavy, 65.8, 91.4, 118.0],
  ])('the table: %s', (_, { line }, thick, reference, thin) => {
    const celsius = (id: string) => temperatureOnLine(line, setPoint(id)) - 273.15
    expect(celsius('fuel-viscosity-highest')).toBeCloseTo(thick, 1)
    expect(celsius('reference-viscosity')).toBeCloseTo(reference, 1)
    expect(celsius('fuel-viscosity-lowest')).toBeCloseTo(thin, 1)
  })

  test('the set point is the temperature of the reference viscosity, and the swing fits', () => {
    const temperature = temperatureOnLine(summer.line, setPoint('reference-viscosity'))
    expect(temperature).toBeCloseTo(setPoint('heater-set-point'), 0)
  })

  test('«with winter gas oil the summer set point leaves less than the swing of the control»', () => {
    const left =
      temperatureOnLine(winter.line, setPoint('fuel-viscosity-lowest')) - setPoint('heater-set-point')
    expect(left).toBeGreaterThan(0)
    expect(left).toBeLessThan(setPoint('heater-swing'))
  })

  test('«one degree: two per cent, the heavy distillate three»', () => {
    const perDegree = (one: typeof summer) => 1 - at(one, 40.5) / at(one, 39.5)
    expect(perDegree(summer)).toBeCloseTo(0.02, 2)
    expect(perDegree(heavy)).toBeCloseTo(0.03, 2)
  })
})

test('scales: «Redwood and Saybolt Universal seconds differ by about an eighth»', () => {
  for (const viscosity of [20, 100, 1000]) {
    const share = redwoodSeconds(mm2(viscosity)) / sayboltUniversal(mm2(viscosity), HUNDRED_FAHRENHEIT)
    expect(1 - share).toBeCloseTo(1 / 8, 1)
  }
})

test('scales: «density at 15 °C with viscosity at 40 °C: about two per cent»', () => {
  expect(1 - factor(40)).toBeCloseTo(0.02, 2)
})

describe('blending', () => {
  test('«one part in ten takes almost a fifth off; one part in ten adds only an eighth»', () => {
    const off = 1 - blendByWalther(mix(at(heavy, 40), at(winter, 40), 0.1)) / at(heavy, 40)
    expect(off).toBeGreaterThan(0.18)
    expect(off).toBeLessThan(0.2)
    const added = blendByWalther(mix(at(winter, 40), at(heavy, 40), 0.1)) / at(winter, 40) - 1
    expect(added).toBeCloseTo(1 / 8, 2)
  })

  test('«it has 6.5 mm²/s and may have 5; 1.64 is the winter gas oil; fifteen per cent would do»', () => {
    const hot = setPoint('fuel-temperature-high') - 273.15
    expect(at(heavy, hot) * 1e6).toBeCloseTo(6.5, 2)
    expect(at(winter, hot) * 1e6).toBeCloseTo(1.64, 2)
    const share = shareByWalther(at(heavy, hot), at(winter, hot), setPoint('fuel-viscosity-highest'))
    expect(share).toBeCloseTo(0.15, 2)
  })

  test('«for ordinary blends the two agree within a per cent or so»', () => {
    for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const parts = mix(at(winter, 40), at(heavy, 40), share)
      expect(Math.abs(blendByRefutas(parts) / blendByWalther(parts) - 1)).toBeLessThan(0.015)
    }
  })
})

describe('buying and measuring', () => {
  test('«twelve degrees are worth one per cent»; «1.3 per cent more»', () => {
    expect(1 - factor(27)).toBeCloseTo(0.01, 3)
    expect(1 / factor(30) - 1).toBeCloseTo(0.013, 3)
  })

  test('«about an eighth of a per cent less than the mass»', () => {
    expect(1 - massInAir(1, summer.density) / summer.density).toBeCloseTo(0.0013, 4)
  })

  test('«a density taken at 15 °C and used as one at 60 °F: a part in two thousand»', () => {
    expect(1 - factor((60 - 32) / 1.8)).toBeCloseTo(1 / 2000, 4)
  })
})

describe('fuel in the lubricating oil', () => {
  const oil = mm2(140)
  const gasOil = mm2(3)
  const fall = (share: number) => 1 - blendByWalther(mix(oil, gasOil, share)) / oil
  const fallByLogarithm = (share: number) => 1 - (gasOil / oil) ** share

  test('«two per cent an eighth, five per cent more than a quarter; by the other rule a fourteenth and a sixth»', () => {
    expect(fall(0.02)).toBeCloseTo(1 / 8, 2)
    expect(fall(0.05)).toBeGreaterThan(0.25)
    expect(fallByLogarithm(0.02)).toBeCloseTo(1 / 14, 2)
    expect(fallByLogarithm(0.05)).toBeCloseTo(1 / 6, 1)
  })

  test('«thickened by a tenth hides one and a half to two and a half per cent»', () => {
    expect(shareByWalther(1.1 * oil, gasOil, oil)).toBeCloseTo(0.015, 2)
    expect(shareByLogarithm(1.1 * oil, gasOil, oil)).toBeCloseTo(0.025, 2)
  })
})
