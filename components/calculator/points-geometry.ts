import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import type { Calculator, PointsAxis } from '../../calculators/calculator/types.ts'
import { kindOf, unitForSystem } from '../../calculators/quantity/kinds.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { padded, plot, round, tickText } from './chart-geometry.ts'
import type { Axis, Point } from './chart-geometry.ts'
import type { Evaluation } from './evaluate.ts'
import type { FormState } from './state.ts'

const TICKS = { x: 6, y: 6 }

export interface DrawnLine {
  readonly label: string
  readonly edge: boolean
  readonly path: string
}

export interface PointsGeometry {
  readonly x: Axis
  readonly y: Axis
  readonly points: readonly (Point & { readonly standsOut: boolean })[]
  readonly lines: readonly DrawnLine[]
  readonly limits: readonly { readonly label: string; readonly y: number; readonly at: number }[]
}

/** The unit of the column or input that the axis follows, or that of the person's system. */
function unitOfAxis(axis: PointsAxis, state: FormState): string {
  const [input = '', column] = axis.follows?.split('.') ?? []
  const followed = column === undefined ? state.fields[input]?.unit : state.tables[input]?.units[column]?.unit
  return followed ?? unitForSystem(axis.kind, state.system)
}

/** Everything that a chart of readings shows, in places of the drawing; nothing without a result. */
export function pointsOf(
  calculator: Calculator,
  state: FormState,
  evaluation: Evaluation,
): PointsGeometry | undefined {
  const definition = calculator.points
  if (definition === undefined || evaluation.result === undefined) return undefined
  const values = evaluation.values as Parameters<typeof definition.points>[0]
  const points = definition.points(values)
  const lines = definition.lines?.(values) ?? []
  const limits = definition.limits?.(values) ?? []
  if (points.length === 0) return undefined

  const xUnit = unitOfAxis(definition.x, state)
  const yUnit = unitOfAxis(definition.y, state)
  const x = (si: number): number => fromSI(si, xUnit, definition.x.kind)
  const y = (si: number): number => fromSI(si, yUnit, definition.y.kind)
  const all = [...points, ...lines.flatMap((one) => one.points)]
  const across = all.map((point) => x(point.x))
  // The edges of a band may run far off; they are cut, so that the readings stay apart.
  const middle = lines.filter((one) => !one.edge).flatMap((one) => one.points)
  const up = [...points, ...middle, ...limits].map((point) => y(point.y))
  const xEnds = padded({ low: Math.min(...across), high: Math.max(...across) }, false)
  const yEnds = padded({ low: Math.min(...up), high: Math.max(...up) }, false)
  const xScale = scaleLinear([xEnds.low, xEnds.high], [plot.left, plot.right])
  const yScale = scaleLinear([yEnds.low, yEnds.high], [plot.bottom, plot.top])
  const place = (point: { readonly x: number; readonly y: number }): [number, number] => [
    round(xScale(x(point.x))),
    round(yScale(y(point.y))),
  ]
  const axis = (declared: PointsAxis, unit: string, scale: typeof xScale, count: number): Axis => ({
    label: `${declared.label} ${declared.symbol}`.trim(),
    unit: unitOf(unit).symbol,
    kind: kindOf(declared.kind).id,
    unitId: unit,
    ticks: scale.ticks(count).map((value) => ({ at: round(scale(value)), text: tickText(value) })),
  })
  return {
    x: axis(definition.x, xUnit, xScale, TICKS.x),
    y: axis(definition.y, yUnit, yScale, TICKS.y),
    points: points.map((point) => ({
      label: point.label,
      x: point.x,
      y: point.y,
      at: place(point),
      standsOut: point.standsOut ?? false,
    })),
    lines: lines.map((one) => ({
      label: one.label,
      edge: one.edge ?? false,
      path: line()(one.points.map(place)) ?? '',
    })),
    limits: limits.map(({ label, y: si }) => ({ label, y: si, at: round(yScale(y(si))) })),
  }
}
