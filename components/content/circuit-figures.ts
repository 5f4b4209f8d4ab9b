import { partKinds, type Parameter, type PartKindId } from '../../calculators/circuit/part-kinds.ts'
import { figureReader, type FigureReader, type Path } from '../../calculators/circuit/read-figures.ts'
import { engineFigures, type CircuitData, type EngineFigure } from '../../calculators/circuit/types.ts'
import type { CircuitProblem } from '../../calculators/circuit/validate.ts'
import type { SetPoints } from './ids.ts'

/**
 * What is wrong with the figures of a circuit: a figure of the wrong kind, outside what is possible, left out, or given
 * to a part that has none such.
 * @param data the circuit
 * @param setPoints of its plant, by id
 */
export function figureProblems(data: CircuitData, setPoints: SetPoints): CircuitProblem[] {
  const reader = figureReader(setPoints)
  for (const id of Object.keys(engineFigures) as EngineFigure[]) {
    reader.figure(['engine', id], data.engine[id], engineFigures[id])
  }
  for (const condition of ['tankTemperature', 'ambientTemperature'] as const) {
    const [least, largest] = data.ranges[condition].map((text, index) =>
      reader.figure(['ranges', condition, index], text, 'temperature'),
    )
    const limits = { minimum: least ?? 0, maximum: largest ?? 0 }
    reader.figure(['usual', condition], data.usual[condition], 'temperature', limits)
  }
  if (!data.fuels.includes(data.usual.fuel)) {
    reader.refuse(
      ['usual', 'fuel'],
      `«${data.usual.fuel}» is none of the fuels; accepted: ${data.fuels.join(', ')}`,
    )
  }
  data.elements.forEach(({ height, model: { kind, ...figures } }, index) => {
    if (height !== undefined || kind !== 'motor')
      reader.figure(['elements', index, 'height'], height, 'length')
    parameters(reader, ['elements', index, 'model'], kind, figures)
  })
  data.junctions.forEach(({ height }, index) =>
    reader.figure(['junctions', index, 'height'], height, 'length'),
  )
  data.connections.forEach(({ pipe }, index) => {
    if (!pipe) return
    const { id: _, label: __, ...figures } = pipe
    parameters(reader, ['connections', index, 'pipe'], 'line', figures)
  })
  return reader.problems
}

function parameters(
  reader: FigureReader,
  path: Path,
  kind: PartKindId,
  figures: Readonly<Record<string, string>>,
): void {
  const known: Readonly<Record<string, Parameter>> = partKinds[kind].parameters
  for (const name of Object.keys(figures)) {
    if (Object.hasOwn(known, name)) continue
    const accepted = Object.keys(known).join(', ') || 'none'
    reader.refuse(
      [...path, name],
      `«${name}» is no figure of a ${partKinds[kind].title.toLowerCase()}; accepted: ${accepted}`,
    )
  }
  for (const [name, parameter] of Object.entries(known)) {
    if (figures[name] === undefined && parameter.otherwise !== undefined) continue
    reader.figure([...path, name], figures[name], parameter.kind, parameter)
  }
}
