import { expect, test } from 'vitest'
import { effectiveness } from '../../../calculators/heat/exchanger.ts'
import { heatContent, specificHeat, temperatureOfContent } from '../../../calculators/heat/petroleum-heat.ts'
import { tankTemperature, wettedArea } from '../../../calculators/heat/tank.ts'

test.each([
  [0.5, 0.5, '0.36227', '0.35176'],
  [1, 0.5, '0.56473', '0.51791'],
  [1, 1, '0.50000', '0.43233'],
  [2, 0.25, '0.82277', '0.73433'],
  [3, 0.75, '0.81712', '0.56843'],
])(
  'effectiveness at N %f and ratio %f, as the library ht gives it',
  (units, ratio, counterflow, parallel) => {
    expect(effectiveness(units, ratio, 'counterflow').toFixed(5)).toBe(counterflow)
    expect(effectiveness(units, ratio, 'parallel').toFixed(5)).toBe(parallel)
  },
)

test('counterflow of nearly equal capacity rates joins the formula for equal ones', () => {
  expect(effectiveness(2, 1 - 1.01e-6, 'counterflow')).toBeCloseTo(effectiveness(2, 1, 'counterflow'), 6)
})

test.each([
  [0.845, 15, '1890.9'],
  [0.845, 40, '1983.1'],
  [0.845, 60, '2056.9'],
  [0.96, 100, '2068.2'],
])('specific heat at relative density %f, %f °C (arithmetic)', (relative, celsius, printed) => {
  expect(specificHeat(relative * 999.016, celsius + 273.15).toFixed(1)).toBe(printed)
})

test('the same equation in US units: (0.388 + 0.00045 t)/√d Btu/(lb·°F), within its rounding', () => {
  for (const fahrenheit of [40, 100, 200, 300]) {
    const printed = (4186.8 * (0.388 + 0.00045 * fahrenheit)) / Math.sqrt(0.85)
    const ours = specificHeat(0.85 * 999.016, (fahrenheit + 459.67) / 1.8)
    expect(Math.abs(ours / printed - 1)).toBeLessThan(0.002)
  }
})

test('heat content there and back', () => {
  for (let kelvin = 230; kelvin < 500; kelvin += 7)
    expect(temperatureOfContent(845, heatContent(845, kelvin))).toBeCloseTo(kelvin, 9)
})

const tank = { length: 2, width: 1.5, heatTransfer: 8, ambient: 283.15, density15: 845 }
const load = { startVolume: 4, startTemperature: 293.15, burnt: 1e-4, heat: 8e3 }

test('without loss and without burning, heat goes into heat content and nowhere else', () => {
  const end = tankTemperature({ ...tank, heatTransfer: 0 }, { ...load, burnt: 0 }, 36_000)
  const mass = 4 * 845 * Math.exp(-0.00083 * 5)
  expect((mass * (heatContent(845, end) - heatContent(845, 293.15))) / (8e3 * 36_000)).toBeCloseTo(1, 2)
})

test('without heat it cools along an exponential; without end it comes to rest where heat and loss are equal', () => {
  const still = { ...load, burnt: 0 }
  const rest = tankTemperature(tank, still, 1e8)
  expect(8 * wettedArea(tank, 4) * (rest - tank.ambient)).toBeCloseTo(8e3, 0)
  const cooled = tankTemperature(tank, { ...still, heat: 0 }, 36_000) - tank.ambient
  const rate = (8 * wettedArea(tank, 4)) / (4 * 842 * specificHeat(845, 290))
  expect(cooled / (10 * Math.exp(-rate * 36_000))).toBeCloseTo(1, 2)
})

test('burning without loss: the rise is heat over burnt capacity times the logarithm of the volumes', () => {
  const time = 30_000
  const end = tankTemperature({ ...tank, heatTransfer: 0 }, load, time)
  const heat = specificHeat(845, (end + 293.15) / 2) * 842 * load.burnt
  expect((end - 293.15) / ((8e3 / heat) * Math.log(4 / (4 - load.burnt * time)))).toBeCloseTo(1, 2)
})
