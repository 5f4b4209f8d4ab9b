import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { lineThroughPoints } from '../../../calculators/fuel/viscosity-walther.ts'
import type { FuelRecord } from '../../../calculators/calculator/types.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'

interface PlantFile {
  setPoints: Record<string, { kind: KindId; value: string; tolerance?: string }>
}

interface FuelFile {
  title: string
  densityAt15: string
  viscosities: { temperature: string; kinematicViscosity: string }[]
  cloudPoint: string
}

function si(figure: string, kind: KindId): number {
  const reading = readFigure(figure, kind)
  if (!reading.ok) throw new Error(`${figure}: ${reading.reason}`)
  return reading.si
}

const { setPoints } = parse(readFileSync('content/plants/pq-12.yaml', 'utf8')) as PlantFile

/** SI value of a set point of the PQ-12. */
export function setPoint(id: string): number {
  const point = setPoints[id]
  if (!point) throw new Error(`no set point ${id}`)
  return si(point.value, point.kind)
}

/** SI half-width about a set point of the PQ-12. */
export function tolerance(id: string): number {
  const { kind, tolerance: written } = setPoints[id] ?? {}
  if (!written || !kind) throw new Error(`no tolerance at ${id}`)
  return si(written, kind === 'gaugePressure' ? 'pressureDifference' : kind)
}

/** A fuel of the handbook as calculators see it. */
export function fuelRecord(id: string): FuelRecord {
  const file = parse(readFileSync(`content/fuels/${id}.yaml`, 'utf8')) as FuelFile
  return {
    id,
    title: file.title,
    densityAt15: si(file.densityAt15, 'density'),
    viscosities: file.viscosities.map((pair) => ({
      temperature: si(pair.temperature, 'temperature'),
      kinematicViscosity: si(pair.kinematicViscosity, 'kinematicViscosity'),
    })),
    cloudPoint: si(file.cloudPoint, 'temperature'),
  }
}

/** A fuel's three pairs, its density at 15 °C and the line through its outer pairs. */
export function fuel(id: string) {
  const { viscosities, densityAt15 } = fuelRecord(id)
  const [first, middle, last] = viscosities
  if (!first || !middle || !last) throw new Error(`${id} has fewer than three pairs`)
  return { first, middle, last, line: lineThroughPoints(first, last), density: densityAt15 }
}
