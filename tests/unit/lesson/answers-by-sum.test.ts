import { describe, expect, it, test } from 'vitest'
import { stokesVelocity } from '../../../calculators/cleanliness/settling.ts'
import { lineThroughPoints, viscosityOnLine } from '../../../calculators/fuel/viscosity-walther.ts'
import { gasGrown } from '../../../calculators/hydraulics/gas.ts'
import { columnPressure } from '../../../calculators/hydraulics/hydrostatics.ts'
import { mannKendall } from '../../../calculators/statistics/mann-kendall.ts'
import { fuel, setPoint } from '../../content/prose/plant-and-fuels.ts'
import { startOf } from '../../content/prose/start-of.ts'
import { circuits } from '../circuit/circuits.ts'
import { allQuestions, askedFigure, question } from './questions.ts'

// Each answer of a lesson that is said to come from a calculator or from the plant's data, against these; of the
// figures to be entered also what a slip leads to.

const celsius = (degrees: number) => degrees + 273.15

/** The answer and the slips of a question, each to the digits with which it is written. */
function figures(key: string, answer: number, slips: readonly number[], share = 0.005) {
  const asked = askedFigure(key)
  const close = (value: number, wanted: number) =>
    expect(Math.abs(value / wanted - 1), `${value} for ${wanted}`).toBeLessThan(share)
  close(asked.answer, answer)
  expect(asked.slips).toHaveLength(slips.length)
  asked.slips.forEach((slip, place) => close(slip, slips[place] ?? Number.NaN))
}

/** The one choice of a question that is right. */
const right = (key: string) =>
  question(key)
    .choices?.filter((choice) => choice.right)
    .map(({ says }) => says)

const proofs: Readonly<Record<string, () => void | Promise<void>>> = {
  'the-way-round/what-comes-back': () => {
    const [delivery, burnt] = [setPoint('pump-delivery'), setPoint('fuel-burnt-at-full-load')]
    figures('the-way-round/what-comes-back', delivery - burnt, [delivery, burnt, delivery + burnt])
    expect(setPoint('return-flow-at-full-load')).toBeCloseTo(delivery - burnt, 9)
  },
  'the-way-round/once-through-the-tank': () => {
    const tank = setPoint('tank-volume')
    const burnt = tank / setPoint('fuel-burnt-at-full-load')
    const returned = tank / setPoint('return-flow-at-full-load')
    figures('the-way-round/once-through-the-tank', tank / setPoint('pump-delivery'), [burnt, returned])
    expect((8 * 3600) / (tank / setPoint('pump-delivery'))).toBeCloseTo(3.2, 1)
  },
  'the-way-round/before-the-pump': () => {
    const order = circuits['pq-12'].elements.map(({ id }) => id)
    const place = (id: string) => order.indexOf(id)
    expect(place('suction-strainer')).toBeLessThan(place('supply-pump'))
    for (const id of ['primary-filter', 'fuel-heater', 'bypass-valve'])
      expect(place(id)).toBeGreaterThan(place('supply-pump'))
    expect(place('fuel-heater')).toBeLessThan(place('primary-filter'))
  },
  'suction-and-priming/vacuum-of-a-lift': () => {
    figures('suction-and-priming/vacuum-of-a-lift', columnPressure(840, 1), [
      columnPressure(1000, 1),
      840 * 1,
    ])
  },
  'pump-and-pressure/order-of-pressures': () => {
    const pressures = [
      'pump-relief-cracking',
      'bypass-valve-cracking',
      'header-pressure',
      'return-valve-cracking',
    ]
    const values = pressures.map(setPoint)
    expect(values).toEqual([...values].sort((a, b) => b - a))
    expect(right('pump-and-pressure/order-of-pressures')).toEqual([
      'Relief valve, bypass valve, header, back-pressure valve.',
    ])
  },
  'pump-and-pressure/set-pressure-from-a-gauge': async () => {
    const [reading, back] = [150e3, setPoint('return-line-pressure')]
    const column = columnPressure(840, setPoint('gauge-above-valve'))
    figures('pump-and-pressure/set-pressure-from-a-gauge', reading + column - back, [
      reading - column - back,
      reading + column,
      reading + column + back,
      reading - back,
    ])
    const { setting } = await startOf('the-two-valves', 'valve-set-point-check', { reading, density: 840 })
    expect(Number(setting?.value) / (reading + column - back)).toBeCloseTo(1, 3)
    // «It is worth half of what the gauge may be wrong»
    expect(column / setPoint('header-gauge-accuracy')).toBeCloseTo(0.5, 1)
  },
  'pump-and-pressure/gauge-as-wide-as-the-tolerance': async () => {
    const wanted = setPoint('return-valve-cracking')
    const { verdict } = await startOf('the-two-valves', 'valve-set-point-check', { tolerance: 10e3 })
    expect(verdict?.value).toBe('cannotBeTold')
    expect(wanted).toBe(140e3)
    expect(right('pump-and-pressure/gauge-as-wide-as-the-tolerance')).toEqual([
      'It cannot be told with this gauge.',
    ])
  },
  'filters-and-the-bypass-glass/where-the-bypass-leads': () => {
    const { connections } = circuits['pq-12']
    const from = (id: string) => JSON.stringify(connections.filter((one) => JSON.stringify(one).includes(id)))
    expect(from('bypass-valve')).toContain('bypass-glass')
    expect(from('bypass-glass')).toContain('return-tee')
    expect(from('bypass-valve')).not.toContain('header')
  },
  'filters-and-the-bypass-glass/margin-below-the-bypass': () => {
    const [valve, header, drop] = ['bypass-valve-cracking', 'header-pressure', 'secondary-drop-change'].map(
      setPoint,
    )
    if (valve === undefined || header === undefined || drop === undefined)
      throw new Error('a set point is missing')
    figures('filters-and-the-bypass-glass/margin-below-the-bypass', valve - header - drop, [
      valve - header,
      valve - drop,
    ])
  },
  'filters-and-the-bypass-glass/cold-drop': async () => {
    const cold = { drop: 60e3, kinematicViscosity: 6.4e-6 }
    const outputs = await startOf('filtration-and-pressure-drop', 'filter-pressure-drop', cold)
    const corrected = Number(outputs['dropAtReference']?.value)
    expect(corrected / setPoint('secondary-drop-change')).toBeLessThan(1 / 3)
    // «New elements would show nearly as much»: the clean drop in such fuel, by the same sum the other way round.
    expect((setPoint('secondary-drop-clean') * 60e3) / corrected).toBeGreaterThan(0.75 * 60e3)
  },
  'injectors-return-and-heat/growth-at-the-valve': () => {
    const air = 101.3e3
    const [before, behind] = [setPoint('return-valve-cracking'), setPoint('return-line-pressure')]
    const share = 0.01
    const grown = gasGrown(share, air + before, air + behind) / (share / (1 - share))
    figures('injectors-return-and-heat/growth-at-the-valve', grown, [before / behind, 1 / grown])
  },
  'injectors-return-and-heat/rise-at-half-flow': () => {
    const rise = setPoint('return-header-temperature') - setPoint('heater-set-point')
    figures('injectors-return-and-heat/rise-at-half-flow', 2 * rise, [rise, rise / 2])
    expect(setPoint('heater-set-point') + 2 * rise).toBeGreaterThan(setPoint('return-temperature-high'))
  },
  'fuel-cold-and-water/viscosity-between': () => {
    const [cold, hot] = [4.8e-6, 2.07e-6]
    const line = lineThroughPoints(
      { temperature: celsius(20), kinematicViscosity: cold },
      { temperature: celsius(60), kinematicViscosity: hot },
    )
    figures('fuel-cold-and-water/viscosity-between', viscosityOnLine(line, celsius(30)), [
      cold + (hot - cold) / 4,
      (cold + hot) / 2,
    ])
  },
  'fuel-cold-and-water/half-the-drop': () => {
    const speed = (diameter: number) => stokesVelocity(diameter, 998, 840, 3e-3)
    figures('fuel-cold-and-water/half-the-drop', speed(50e-6) / speed(25e-6), [2, 0.5, 8])
    expect(speed(50e-6) / speed(5e-6)).toBeCloseTo(100, 9)
  },
  'fuel-cold-and-water/winter-fuel-summer-set-point': () => {
    const top = setPoint('heater-set-point') + setPoint('heater-swing')
    const winter = viscosityOnLine(fuel('winter-gas-oil').line, top)
    expect(winter).toBeLessThan(setPoint('fuel-viscosity-lowest'))
    expect(winter / setPoint('fuel-viscosity-lowest')).toBeGreaterThan(0.98)
    expect(top).toBeCloseTo(celsius(43), 6)
    for (const degrees of [0, 20, 40, 55])
      expect(viscosityOnLine(fuel('winter-gas-oil').line, celsius(degrees))).toBeLessThan(
        viscosityOnLine(fuel('summer-gas-oil').line, celsius(degrees)),
      )
  },
  'gauges-witnesses-and-doubt/smallest-real-difference': async () => {
    const [gauge, test] = [setPoint('header-gauge-accuracy'), 2.5e3]
    figures('gauges-witnesses-and-doubt/smallest-real-difference', Math.hypot(gauge, test), [
      gauge + test,
      gauge - test,
      gauge,
    ])
    const accuracies = { firstAccuracy: gauge, secondAccuracy: test, unrest: 0 }
    const { smallest } = await startOf('trends-and-doubt', 'real-difference', accuracies)
    expect(Number(smallest?.value)).toBeCloseTo(Math.hypot(gauge, test), 6)
  },
  'gauges-witnesses-and-doubt/four-in-a-row': () => {
    const falling = [4, 3, 2, 1].map((y, x) => ({ x, y }))
    expect(mannKendall(falling).probability).toBeCloseTo(1 / 12, 9)
    expect(mannKendall([5, 4, 3, 2, 1, 0].map((y, x) => ({ x, y }))).probability).toBeLessThan(0.01)
  },
}

describe('what the lessons say by sum and by data', () => {
  it.each(Object.keys(proofs))('%s', async (key) => {
    expect.hasAssertions()
    await proofs[key]?.()
  })

  test('every question that names a sum or the data as its basis is proved here, and no other', () => {
    const named = allQuestions
      .filter(({ question: { basis } }) => basis === 'sum' || basis === 'data')
      .map(({ key }) => key)
    expect(Object.keys(proofs).sort()).toEqual(named.sort())
  })

  test('no slip counts as right', () => {
    for (const { key, question: asked } of allQuestions.filter((one) => one.question.figure)) {
      const { answer, slips, within } = askedFigure(key)
      expect(asked.figure).toBeDefined()
      for (const slip of slips) expect(Math.abs(slip - answer), key).toBeGreaterThan(2 * within)
    }
  })
})
