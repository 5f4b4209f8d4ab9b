import { describe, expect, test } from 'vitest'
import { fluidOf } from '../../../calculators/circuit/fluid.ts'
import { heatedContent } from '../../../calculators/circuit/heating.ts'
import { heatContent, specificHeat, temperatureOfContent } from '../../../calculators/heat/petroleum-heat.ts'
import { modelOf } from './shipped.ts'

const model = modelOf('pq-12')
const fuel = model.fuels['summer-gas-oil']
const heater = model.parts.find(({ id }) => id === 'fuel-heater')
if (!fuel || !heater) throw new Error('the PQ-12 has a heater and summer gas oil')
const usual = heater.values
const fluid = fluidOf(fuel, {})
const KELVIN = 273.15
const FLOW = 0.3

/** Temperature [°C] behind a thermostat's heater with its set point at 40 °C. */
function behind(fuelBefore: number, medium: number, others: Readonly<Record<string, number>> = {}): number {
  const values = {
    ...usual,
    conductance: 600,
    conductanceShare: 1,
    mediumTemperature: medium + KELVIN,
    setPoint: 40 + KELVIN,
    heldOn: 0,
    coolsToo: 0,
    ...others,
  }
  const content = heatContent(fluid.density15, fuelBefore + KELVIN)
  return (
    temperatureOfContent(fluid.density15, heatedContent('thermostat-heater', values, fluid, content, FLOW)) -
    KELVIN
  )
}

describe('a heater', () => {
  test('heats to its set point and no further', () => {
    expect(behind(35, 80)).toBeCloseTo(40, 6)
    expect(behind(45, 80)).toBeCloseTo(45, 6)
  })

  test('heats as far as its surface goes where that is less: an exponential approach to a medium that keeps its temperature', () => {
    const before = 5
    const reached = 1 - Math.exp(-600 / (FLOW * specificHeat(fluid.density15, before + KELVIN)))
    expect(reached).toBeGreaterThan(0.1)
    expect(behind(before, 50)).toBeCloseTo(before + reached * 45, 1)
  })

  test('with steam or a rod never cools, even held on', () => {
    expect(behind(70, 50, { heldOn: 1 })).toBeCloseTo(70, 9)
  })

  test('with water that flows on cools fuel that is hotter, but only where the control lets it by', () => {
    expect(behind(70, 50, { coolsToo: 1 })).toBeCloseTo(70, 9)
    const heldOn = behind(70, 50, { coolsToo: 1, heldOn: 1 })
    expect(heldOn).toBeLessThan(69)
    expect(heldOn).toBeGreaterThan(50)
  })
})
