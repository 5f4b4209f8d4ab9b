import { scaleLinear, scaleLog } from 'd3-scale'
import { line } from 'd3-shape'
import type { Calculator, ChartDefinition, Range } from '../../calculators/calculator/types.ts'
import { isQuantityResult } from '../../calculators/calculator/run.ts'
import { chartedOutput, sampleChart } from '../../calculators/calculator/sample.ts'
import { kindOf } from '../../calculators/quantity/kinds.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import type { Evaluation } from './evaluate.ts'
import { outputUnit } from './outputs.ts'
import type { FormState } from './state.ts'

/** Drawn at this size and scaled to the width there is; small enough that its letters stay legible on a phone. */
export const size = { width: 400, height: 270 }
export const plot = { left: 54, right: 388, top: 10, bottom: 246 }

/** Room above and below the curve, as a share of its height. */
const HEADROOM = 0.08
const TICKS = { x: 6, y: 6 }
const CURVE_POINTS = 81

export interface Tick {
  readonly at: number
  readonly text: string
}

export interface Point {
  readonly label: string
  readonly x: number
  readonly y: number
  /** Place in the drawing. */
  readonly at: readonly [number, number]
}

export interface Axis {
  readonly label: string
  readonly unit: string
  readonly kind: KindId
  /** Unit id. */
  readonly unitId: string
  readonly ticks: readonly Tick[]
}

export interface ChartGeometry {
  readonly x: Axis
  readonly y: Axis
  readonly path: string
  readonly working: (Point & { readonly uncertainty: number | undefined }) | undefined
  readonly marks: readonly Point[]
  readonly limits: readonly { readonly label: string; readonly y: number; readonly at: number }[]
  /** SI. */
  readonly curve: readonly { readonly x: number; readonly y: number }[]
}

interface Ends {
  low: number
  high: number
}

export function padded({ low, high }: Ends, log: boolean): Ends {
  if (log) {
    const factor = (high / low) ** HEADROOM || 1
    return low === high ? { low: low / 2, high: high * 2 } : { low: low / factor, high: high * factor }
  }
  const room = (high - low) * HEADROOM || Math.abs(high) || 1
  // A quantity that starts at nothing is drawn from nothing.
  return { low: low >= 0 && low - room < 0 ? 0 : low - room, high: high + room }
}

/** Labels of a logarithmic axis: powers of ten, or 1-2-5 where there are few of those. */
export function logTicks(low: number, high: number): number[] {
  const decades = Math.log10(high / low)
  const digits =
    decades > 4 ? [1] : decades > 1.5 ? [1, 2, 5] : decades > 0.6 ? [1, 1.5, 2, 3, 4, 5, 7] : undefined
  if (digits === undefined) return scaleLinear([low, high], [0, 1]).ticks(TICKS.y)
  const ticks: number[] = []
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power += 1) {
    for (const digit of digits) {
      const tick = Number((digit * 10 ** power).toPrecision(2))
      if (tick >= low && tick <= high) ticks.push(tick)
    }
  }
  return ticks
}

export const tickText = (value: number): string => String(Number(value.toPrecision(4))).replace('-', '−')

/** Everything the chart shows, in places of the drawing; nothing when there is no curve to draw. */
export function chartOf(
  calculator: Calculator,
  state: FormState,
  evaluation: Evaluation,
): ChartGeometry | undefined {
  const definition: ChartDefinition<Calculator['inputs'], Calculator['outputs']> | undefined =
    calculator.chart
  if (definition === undefined || evaluation.result === undefined) return undefined
  const input = calculator.inputs[definition.x]
  const outputId = chartedOutput(definition, evaluation.values)
  const output = calculator.outputs[outputId]
  if (input?.type !== 'quantity' || output?.type !== 'quantity') return undefined
  const values = evaluation.values as Parameters<typeof definition.range>[0]
  const curve = sampleChart(calculator, evaluation.values, CURVE_POINTS)
  if (curve.length < 2) return undefined

  const xUnit = state.fields[definition.x]?.unit ?? kindOf(input.kind).preferred.si
  const yUnit = outputUnit(outputId, output, state)
  const x = (si: number): number => fromSI(si, xUnit, input.kind)
  const y = (si: number): number => fromSI(si, yUnit, output.kind)
  const marks = definition.marks?.(values) ?? []
  const limits = definition.limits?.(values) ?? []
  const range: Range = definition.range(values)
  const log = definition.yScale === 'log'

  const hereX = evaluation.values[definition.x]
  const hereY = evaluation.result.outputs[outputId]
  const working =
    typeof hereX === 'number' && isQuantityResult(hereY)
      ? { label: 'This calculation', x: hereX, y: hereY.value, uncertainty: hereY.uncertainty }
      : undefined
  const shown = [...curve, ...marks, ...limits, ...(working ? [working] : [])].map((point) => y(point.y))
  const drawable = log ? shown.filter((value) => value > 0) : shown
  const ends = padded({ low: Math.min(...drawable), high: Math.max(...drawable) }, log)

  const xScale = scaleLinear([x(range.minimum), x(range.maximum)], [plot.left, plot.right])
  const yScale = log
    ? scaleLog([ends.low, ends.high], [plot.bottom, plot.top])
    : scaleLinear([ends.low, ends.high], [plot.bottom, plot.top])
  const place = (point: { readonly x: number; readonly y: number }): readonly [number, number] => [
    round(xScale(x(point.x))),
    round(yScale(y(point.y))),
  ]
  const inPlot = ([across, down]: readonly [number, number]): boolean =>
    across >= plot.left - 1 && across <= plot.right + 1 && down >= plot.top - 1 && down <= plot.bottom + 1
  const points = marks
    .map((mark): Point => ({ label: mark.label, x: mark.x, y: mark.y, at: place(mark) }))
    .filter((mark) => inPlot(mark.at))
  const yTicks = log ? logTicks(ends.low, ends.high) : yScale.ticks(TICKS.y)
  return {
    x: {
      label: `${input.label} ${input.symbol}`,
      unit: unitOf(xUnit).symbol,
      kind: input.kind,
      unitId: xUnit,
      ticks: xScale.ticks(TICKS.x).map((value) => ({ at: round(xScale(value)), text: tickText(value) })),
    },
    y: {
      label: `${output.label} ${output.symbol}`,
      unit: unitOf(yUnit).symbol,
      kind: output.kind,
      unitId: yUnit,
      ticks: yTicks.map((value) => ({ at: round(yScale(value)), text: tickText(value) })),
    },
    path: line()(curve.map((point): [number, number] => [...place(point)] as [number, number])) ?? '',
    working: working && { ...working, at: place(working) },
    marks: points,
    limits: limits
      .map(({ label, y: si }) => ({ label, y: si, at: round(yScale(y(si))) }))
      // A limit at zero has no place on a logarithmic axis.
      .filter((limit) => Number.isFinite(limit.at)),
    curve,
  }
}

export const round = (value: number): number => Math.round(value * 10) / 10
