import { describe, expect, test } from 'vitest'
import { distillateVapourPressure, standardAtmosphere } from '../../../calculators/hydraulics/vapour.ts'
import { openingFlow, roundHole } from '../../../calculators/hydraulics/orifice-small.ts'
import { airThroughHole, airVolume } from '../../../calculators/hydraulics/air-flow.ts'
import { viscosityOnLine } from '../../../calculators/fuel/viscosity-walther.ts'
import { fuel, setPoint } from './plant-and-fuels.ts'
import { startOf } from './start-of.ts'

// What the articles on lines, air, pump and leaks say in words, against their calculators as the page opens them.

const ATMOSPHERE = 101_325
const number = async (article: string, id: string, changed: Record<string, number>, output: string) =>
  Number((await startOf(article, id, changed))[output]?.value)

describe('lines, lift and vacuum', () => {
  const article = 'lines-lift-and-vacuum'
  const bare = { elbows90: 0, ballValves: 0, fixedLoss: 0, length: 10 }
  const line = (changed: Record<string, number>, output: string) =>
    number(article, 'line-pressure-drop', changed, output)

  test('«half the bore takes sixteen times in slow thick flow, about thirty times in fast thin flow»', async () => {
    const ratio = async (kinematicViscosity: number) =>
      (await line({ ...bare, kinematicViscosity, bore: 0.0125 }, 'drop')) /
      (await line({ ...bare, kinematicViscosity, bore: 0.025 }, 'drop'))
    expect(await ratio(50e-6)).toBeCloseTo(16, 6)
    expect(Math.abs((await ratio(2e-6)) / 30 - 1)).toBeLessThan(0.1)
  })

  test("«the PQ-12's suction line with warm gas oil runs turbulent»", async () => {
    expect(await line({}, 'reynolds')).toBeGreaterThan(4000)
  })

  test('«one globe valve takes more than all the straight pipe does»', async () => {
    const pipe = (await line({}, 'drop')) - (await line({}, 'fittingsDrop'))
    expect((await line({ globeValves: 1 }, 'drop')) - (await line({}, 'drop'))).toBeGreaterThan(pipe)
  })

  test('«stays under its limit for a clean suction side»', async () => {
    const { vacuum } = await startOf(article, 'suction-line')
    expect(Number(vacuum?.value)).toBeLessThan(setPoint('suction-vacuum-clean'))
  })

  test('«the strainer then takes more than all the rest together»', async () => {
    const rest = (await number(article, 'suction-line', {}, 'vacuum')) - setPoint('suction-strainer-clean')
    expect(setPoint('suction-vacuum-limit') - rest).toBeGreaterThan(rest)
  })

  test('«near the limit a metre of height is worth a quarter of the reading»', () => {
    expect((845 * 9.80665) / setPoint('suction-vacuum-limit')).toBeCloseTo(0.27, 1)
  })

  test('«at 2000 m about a fifth of the push is gone»; «about a thousandth of the atmosphere»', () => {
    expect(1 - standardAtmosphere(2000) / ATMOSPHERE).toBeCloseTo(0.2, 1)
    expect(distillateVapourPressure(303.15) / ATMOSPHERE).toBeCloseTo(0.001, 3)
  })

  test('the cold line of winter gas oil: its viscosity belongs to hard frost, and it keeps to the limit', async () => {
    const winter = fuel('winter-gas-oil')
    expect(viscosityOnLine(winter.line, 258.15) * 1e6).toBeGreaterThan(7)
    expect(viscosityOnLine(winter.line, 251.15) * 1e6).toBeLessThan(12)
    const { verdict } = await startOf(article, 'suction-limits')
    expect(verdict?.value).toBe('enough')
  })

  test('«with a clean strainer and warm fuel a smaller pipe would pass the sum»', async () => {
    const bore = (changed: Record<string, number>) =>
      number(article, 'suction-limits', changed, 'smallestBore')
    expect(await bore({ strainerDrop: 2e3, kinematicViscosity: 3e-6 })).toBeLessThan(await bore({}))
  })
})

describe('air and gas in fuel', () => {
  const article = 'air-and-gas-in-fuel'

  test('«a little under a twentieth», «at two thirds of an atmosphere nearly a fifth»', async () => {
    const lost = await number(article, 'dissolved-air', {}, 'lost')
    expect(lost).toBeGreaterThan(0.04)
    expect(lost).toBeLessThan(0.05)
    const far = await number(article, 'dissolved-air', { vacuum: (2 / 3) * ATMOSPHERE }, 'lost')
    expect(far).toBeGreaterThan(0.17)
    expect(far).toBeLessThan(0.2)
  })

  test('«light fuel holds more than heavy fuel, warm fuel a little more than cold»', async () => {
    const holds = (changed: Record<string, number>) => number(article, 'dissolved-air', changed, 'solubility')
    expect(await holds({ densityAt15: 800 })).toBeGreaterThan(await holds({ densityAt15: 880 }))
    expect(await holds({ temperature: 313.15 })).toBeGreaterThan(await holds({ temperature: 273.15 }))
  })

  test('«half a millimetre gives about three parts of air in a hundred», foam', async () => {
    const { glassShare, verdict } = await startOf(article, 'air-drawn-in')
    expect(Number(glassShare?.value)).toBeCloseTo(0.03, 2)
    expect(verdict?.value).toBe('foam')
  })

  test('«lost only with a hole of about two millimetres»', async () => {
    const at = async (diameter: number) =>
      (await startOf(article, 'air-drawn-in', { diameter }))['verdict']?.value
    expect(await at(1.5e-3)).toBe('foam')
    expect(await at(2e-3)).toBe('lost')
  })

  test('«through the same hole and with the same pressure, far more air passes than fuel»', () => {
    const hole = roundHole(5e-4, 1.5e-3)
    const air = airVolume(airThroughHole(hole.area, 0.62, ATMOSPHERE, ATMOSPHERE - 1e4, 293), ATMOSPHERE, 293)
    expect(air / openingFlow(hole, 0.62, 1e4, 2.5e-3, 828).flow).toBeGreaterThan(20)
  })

  test('«under the pressure of the header it is less than half as large»', () => {
    const glass = ATMOSPHERE + setPoint('return-line-pressure')
    expect(glass / (ATMOSPHERE + setPoint('header-pressure'))).toBeLessThan(0.5)
  })
})

describe('the supply pump', () => {
  const article = 'the-supply-pump'
  const delivery = (changed: Record<string, number>, output: string) =>
    number(article, 'pump-delivery', changed, output)

  test('«a third more», «a quarter slips back», «its share of the flow doubles»', async () => {
    const known = await delivery({ viscosity: setPoint('reference-viscosity') }, 'slip')
    const hot = await delivery({}, 'slip')
    expect(hot / known).toBeCloseTo(4 / 3, 2)
    const relief = { rise: setPoint('pump-relief-full-flow') }
    expect(1 - (await delivery(relief, 'efficiency'))).toBeGreaterThan(0.24)
    expect(1 - (await delivery(relief, 'efficiency'))).toBeLessThan(0.26)
    const half = 1 - (await delivery({ speed: setPoint('pump-speed') / 2 }, 'efficiency'))
    expect(half / (1 - (await delivery({}, 'efficiency')))).toBeCloseTo(2, 9)
  })

  test('«summer gas oil as hot as the circuit allows»', () => {
    const hottest = viscosityOnLine(fuel('summer-gas-oil').line, setPoint('fuel-temperature-high'))
    expect(hottest * 1e6).toBeCloseTo(2.25, 2)
  })

  test('the point from which the delivery is known is the set point itself', async () => {
    const same = await delivery({ viscosity: setPoint('reference-viscosity') }, 'delivery')
    expect(same).toBeCloseTo(setPoint('pump-delivery'), 9)
  })

  test('«a clearance grown by a quarter lets twice the slip pass»', () => {
    expect(1.25 ** 3).toBeCloseTo(2, 1)
  })

  test('«a litre a minute above that», «half of what is missing»; at the reference viscosity «twice the slip»', async () => {
    const litre = 1e-3 / 60
    const there = await number(article, 'pump-wear', {}, 'delivery')
    expect((there - 25 * litre) / litre).toBeCloseTo(1, 2)
    expect((there - 25 * litre) / (setPoint('pump-delivery') - 25 * litre)).toBeCloseTo(0.5, 2)
    const viscosity = setPoint('reference-viscosity')
    expect(await number(article, 'pump-wear', { viscosity }, 'ratio')).toBeCloseTo(2, 6)
  })

  test('«in health the motor carries less than half of this»', async () => {
    const relief = await number(article, 'pump-motor-power', {}, 'shaft')
    const health = await number(article, 'pump-motor-power', { rise: setPoint('pump-pressure') }, 'shaft')
    expect(health).toBeLessThan(relief / 2)
    const { verdict } = await startOf(article, 'pump-motor-power')
    expect(verdict?.value).toBe('enough')
  })
})

describe('leaks and what they cost', () => {
  const article = 'leaks-and-what-they-cost'

  test('«more than two hundred litres in a day», a stream', async () => {
    const { perDay, verdict } = await startOf(article, 'leak-rate')
    expect(Number(perDay?.value)).toBeGreaterThan(0.2)
    expect(Number(perDay?.value)).toBeLessThan(0.25)
    expect(verdict?.value).toBe('stream')
  })

  test('«a drop a second is about four litres a day, at twenty drops to the millilitre»', () => {
    expect((86_400 / 20) * 1e-3).toBeCloseTo(4.3, 1)
  })

  test('«twice the gap is eight times the leak», «the viscosity may fall to a third», and it leaks three times', async () => {
    const crack = { shape: 'gap', gap: 1e-5, crackLength: 5e-3, wall: 3e-3 }
    const leak = async (changed: object) =>
      Number((await startOf(article, 'leak-rate', { ...crack, ...changed }))['flow']?.value)
    expect((await leak({ gap: 2e-5 })) / (await leak({}))).toBeCloseTo(8, 0)
    expect(
      (await leak({ kinematicViscosity: 1e-6 })) / (await leak({ kinematicViscosity: 3e-6 })),
    ).toBeCloseTo(3, 1)
    const { line } = fuel('summer-gas-oil')
    expect(viscosityOnLine(line, 278.15) / viscosityOnLine(line, 328.15)).toBeGreaterThan(3)
  })

  test('«the third fill brings the dye under a twentieth of the dose»', async () => {
    const { fillsNeeded, leftShare } = await startOf(article, 'dye-dose')
    expect(fillsNeeded?.value).toBe(3)
    expect(Number(leftShare?.value)).toBeLessThan(0.05)
  })
})
