import type { SetPoint } from '../circuit/read-figures.ts'
import { readFigure } from '../quantity/figure.ts'
import type { Observable } from './types.ts'

/**
 * Readings that must not be exceeded on a plant.
 * @param circuit its id
 * @param observables some of which name a set point
 * @param setPoints of the plant
 * @returns the highest value of each that names a set point which the plant has, by the id of the reading [SI]
 * @throws where the figure of a set point cannot be read
 */
export function highestOf(
  circuit: string,
  observables: Readonly<Record<string, Observable>>,
  setPoints: Readonly<Record<string, SetPoint>>,
): Record<string, number> {
  return Object.fromEntries(
    Object.entries(observables).flatMap(([id, observable]) => {
      const point =
        observable.from === 'reading' &&
        observable.circuits.includes(circuit) &&
        observable.highest !== undefined
          ? setPoints[observable.highest]
          : undefined
      if (point === undefined) return []
      const reading = readFigure(point.value, point.kind)
      if (!reading.ok) throw new Error(`The set point of ${id} cannot be read: ${reading.reason}`)
      return [[id, reading.si]]
    }),
  )
}
