import { scaleLinear, scaleLog } from 'd3-scale'
import { line } from 'd3-shape'
import type { QuantityOutput } from '../../calculators/calculator/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { logTicks, padded, plot, round, tickText } from './chart-geometry.ts'
import type { Axis } from './chart-geometry.ts'
import type { ColumnRow } from './column-data.ts'
import type { FieldSpec } from './fields.ts'

export interface ColumnGeometry {
  readonly x: Axis
  readonly y: Axis
  readonly path: string
  readonly points: readonly { readonly line: number; readonly at: readonly [number, number] }[]
}

interface Given {
  readonly rows: readonly ColumnRow[]
  readonly input: Pick<FieldSpec, 'label' | 'symbol' | 'kind'>
  readonly inputUnit: string
  readonly outputId: string
  readonly output: QuantityOutput
  readonly outputUnit: string
  readonly log: boolean
}

const TICKS = 6

/** Output against input in places of the drawing; nothing where all values stand in one place. */
export function columnChart(given: Given): ColumnGeometry | undefined {
  const { rows, input, inputUnit, outputId, output, outputUnit } = given
  const points = rows
    .map((row) => ({
      line: row.line,
      x: fromSI(row.si, inputUnit, input.kind),
      y: fromSI(Number(row.outputs[outputId]), outputUnit, output.kind),
    }))
    .sort((a, b) => a.x - b.x)
  const left = points[0]?.x
  const right = points.at(-1)?.x
  if (left === undefined || right === undefined || left === right) return undefined
  const log = given.log && points.every((point) => point.y > 0)
  const heights = points.map((point) => point.y)
  const { low, high } = padded({ low: Math.min(...heights), high: Math.max(...heights) }, log)
  const xScale = scaleLinear([left, right], [plot.left, plot.right])
  const yScale = (log ? scaleLog : scaleLinear)([low, high], [plot.bottom, plot.top])
  const places = points.map((point) => ({
    line: point.line,
    at: [round(xScale(point.x)), round(yScale(point.y))] as const,
  }))
  return {
    x: {
      label: `${input.label} ${input.symbol}`,
      unit: unitOf(inputUnit).symbol,
      kind: input.kind,
      unitId: inputUnit,
      ticks: xScale.ticks(TICKS).map((value) => ({ at: round(xScale(value)), text: tickText(value) })),
    },
    y: {
      label: `${output.label} ${output.symbol}`,
      unit: unitOf(outputUnit).symbol,
      kind: output.kind,
      unitId: outputUnit,
      ticks: (log ? logTicks(low, high) : yScale.ticks(TICKS)).map((value) => ({
        at: round(yScale(value)),
        text: tickText(value),
      })),
    },
    path: line()(places.map(({ at }): [number, number] => [at[0], at[1]])) ?? '',
    points: places,
  }
}
