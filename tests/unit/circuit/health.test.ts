import { describe, expect, it } from 'vitest'
import { readCircuit } from '../../../calculators/circuit/read-model.ts'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import { fuelsOf, setPointsOf } from '../../../components/content/ids.ts'
import { circuitIds, circuits } from './circuits.ts'

type Band = readonly [reading: string, setPoint: string]

/** Which set point holds which reading in health. */
const bands: Readonly<Record<string, readonly Band[]>> = {
  'pq-12': [
    ['header-gauge', 'header-pressure'],
    ['suction-vacuum-gauge', 'suction-vacuum-clean'],
    ['primary-drop-gauge', 'primary-drop-change'],
    ['secondary-drop-gauge', 'secondary-drop-change'],
    ['header-temperature', 'fuel-temperature-high'],
  ],
  'ps-6': [
    ['gallery-gauge', 'gallery-pressure'],
    ['suction-vacuum-gauge', 'suction-vacuum-clean'],
    ['filter-drop-gauge', 'filter-drop-change'],
    ['gallery-temperature', 'fuel-temperature-high'],
  ],
  'pb-8': [
    ['header-gauge', 'header-pressure'],
    ['feed-gauge', 'feed-pressure'],
    ['suction-vacuum-gauge', 'suction-vacuum-clean'],
    ['fine-filter-drop-gauge', 'fine-filter-drop-change'],
    ['viscosity-gauge', 'injection-viscosity-highest'],
    ['header-temperature', 'fuel-temperature-high'],
  ],
}

// Bands of the data against the model of it: neither is a source for the other, but they have to agree.
describe.each(circuitIds)('%s in health', (id) => {
  const setPoints = setPointsOf(circuits[id].plant) as ReturnType<typeof setPointsOf> &
    Record<string, { tolerance?: string; limit?: string }>
  const reading = readCircuit({ circuit: circuits[id], setPoints, fuels: fuelsOf() })
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  const { model } = reading

  it.each(operatingStates)('shows what its plant says, %s', (state) => {
    const solved = solveCircuit(model, {
      ...model.usual,
      state,
      tankLevel: 0.6,
      airPressure: 101_325,
    })
    if (!solved.ok) throw new Error(solved.reason)
    const outside = (bands[id] ?? []).flatMap(([gauge, point]) => {
      const { kind, value, tolerance, limit } = setPoints[point] ?? { kind: 'ratio', value: '' }
      const middle = readFigure(value, kind)
      const half = tolerance === undefined ? undefined : readFigure(tolerance, 'pressureDifference')
      const shown = solved.readings.find((one) => one.id === gauge)?.value ?? Number.NaN
      if (!middle.ok) return [`${point} of ${id}`]
      const within =
        limit === 'maximum' ? shown <= middle.si : half?.ok === true && Math.abs(shown - middle.si) <= half.si
      return within ? [] : [`${gauge} ${shown}, ${point} ${value}`]
    })
    expect(outside).toEqual([])
    expect(solved.glasses.find(({ part }) => part === 'return-glass')?.words).toBe('full and clear')
    expect(solved.remarks).toEqual([])
  })
})
