import { STANDARD_ATMOSPHERE } from '../quantity/convert.ts'
import { lineThroughPoints } from '../fuel/viscosity-walther.ts'
import { engineFigures, type CircuitData, type EngineFigure } from './types.ts'
import type { CircuitModel, ModelFuel } from './model.ts'
import { partProblems } from './check-parts.ts'
import { readRanges } from './condition-ranges.ts'
import { figureReader, type FigureReader, type SetPoint } from './read-figures.ts'
import { readParts } from './read-parts.ts'
import { layOut } from './lay-out.ts'
import type { CircuitProblem } from './validate.ts'

/** A fuel as its data gives it. */
export interface FuelData {
  readonly title: string
  readonly densityAt15: string
  readonly viscosities: readonly { readonly temperature: string; readonly kinematicViscosity: string }[]
  readonly cloudPoint: string
}

export interface CircuitSource {
  readonly circuit: CircuitData
  /** Set points of the plant, by id. */
  readonly setPoints: Readonly<Record<string, SetPoint>>
  /** By id; those that the circuit names must be among them. */
  readonly fuels: Readonly<Record<string, FuelData>>
}

export type ModelReading =
  | { readonly ok: true; readonly model: CircuitModel }
  | { readonly ok: false; readonly problems: readonly CircuitProblem[] }

const fuelLimits = {
  density: { minimum: 700, maximum: 1050 },
  viscosity: { minimum: 2e-7, maximum: 1 },
  temperature: { minimum: 233, maximum: 473 },
}

function readFuel(id: string, data: FuelData, reader: FigureReader): ModelFuel {
  const path = ['fuels', id]
  const points = data.viscosities.map((point, index) => ({
    temperature: reader.figure(
      [...path, 'viscosities', index, 'temperature'],
      point.temperature,
      'temperature',
      fuelLimits.temperature,
    ),
    kinematicViscosity: reader.figure(
      [...path, 'viscosities', index, 'kinematicViscosity'],
      point.kinematicViscosity,
      'kinematicViscosity',
      fuelLimits.viscosity,
    ),
  }))
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last || first.temperature === last.temperature)
    reader.refuse(
      [...path, 'viscosities'],
      `${points.length} viscosities; accepted: two or more, at different temperatures`,
    )
  return {
    id,
    title: data.title,
    density15: reader.figure([...path, 'densityAt15'], data.densityAt15, 'density', fuelLimits.density),
    line: first && last ? lineThroughPoints(first, last) : { intercept: Number.NaN, slope: Number.NaN },
    cloudPoint: reader.figure([...path, 'cloudPoint'], data.cloudPoint, 'temperature'),
  }
}

function readFuels(source: CircuitSource, reader: FigureReader): Record<string, ModelFuel> {
  const known = Object.keys(source.fuels).join(', ')
  const named = source.circuit.fuels.flatMap((id, index): [string, ModelFuel][] => {
    const data = Object.hasOwn(source.fuels, id) ? source.fuels[id] : undefined
    if (!data) reader.refuse(['fuels', index], `«${id}» is no fuel known here; accepted: ${known}`)
    return data ? [[id, readFuel(id, data, reader)]] : []
  })
  const { fuel } = source.circuit.usual
  if (!source.circuit.fuels.includes(fuel))
    reader.refuse(
      ['usual', 'fuel'],
      `«${fuel}» is not among the fuels of this circuit; accepted: ${source.circuit.fuels.join(', ')}`,
    )
  return Object.fromEntries(named)
}

function readEngine(circuit: CircuitData, reader: FigureReader): Record<EngineFigure, number> {
  const figures = Object.entries(engineFigures).map(([id, kind]) => [
    id,
    reader.figure(['engine', id], circuit.engine[id as EngineFigure], kind, {
      minimum: kind === 'temperature' ? 273.15 : 0,
      maximum: 1e9,
    }),
  ])
  const engine = Object.fromEntries(figures) as Record<EngineFigure, number>
  const rising = (low: EngineFigure, high: EngineFigure): void => {
    if (engine[low] >= engine[high])
      reader.refuse(
        ['engine', low],
        `«${circuit.engine[low]}» is not below ${high}, «${circuit.engine[high]}»`,
      )
  }
  rising('burntAtIdle', 'burntAtFull')
  rising('exhaustAtIdle', 'exhaustAtFull')
  return engine
}

/**
 * The model of a circuit, all figures in SI and every way of the fuel found.
 * @param source the circuit's data, set points of its plant, and fuels
 * @returns the model, or every problem with its path, the value and what is accepted
 * @source common practice: figures are the data's
 */
export function readCircuit(source: CircuitSource): ModelReading {
  const { circuit } = source
  const reader = figureReader(source.setPoints)
  const fuels = readFuels(source, reader)
  const engine = readEngine(circuit, reader)
  const ranges = readRanges(circuit.ranges, reader)
  const temperature = (id: 'tankTemperature' | 'ambientTemperature'): number =>
    reader.figure(['usual', id], circuit.usual[id], 'temperature', ranges[id])
  const usual = {
    fuel: circuit.usual.fuel,
    tankTemperature: temperature('tankTemperature'),
    ambientTemperature: temperature('ambientTemperature'),
    tankLevel: reader.figure(['usual', 'tankLevel'], circuit.usual.tankLevel, 'ratio', ranges.tankLevel),
    airPressure: STANDARD_ATMOSPHERE,
  }
  const parts = readParts(circuit, reader)
  if (reader.problems.length > 0) return { ok: false, problems: reader.problems }
  const laid = layOut(circuit, parts, reader)
  if (!laid || reader.problems.length > 0) return { ok: false, problems: reader.problems }
  const model: CircuitModel = { title: circuit.title, engine, usual, ranges, fuels, ...laid }
  const problems = partProblems(model, circuit)
  return problems.length > 0 ? { ok: false, problems } : { ok: true, model }
}
