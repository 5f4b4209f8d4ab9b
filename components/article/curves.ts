import { scaleLinear, scaleLog } from 'd3-scale'
import { line } from 'd3-shape'
import { runPlain } from '../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../calculators/calculator/types.ts'
import { unitForSystem } from '../../calculators/quantity/kinds.ts'
import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { logTicks, padded, round, tickText } from '../calculator/chart-geometry.ts'
import { evaluate, sentenceOf } from '../calculator/evaluate.ts'
import { fieldsOf } from '../calculator/fields.ts'
import { startingTexts } from '../calculator/starting.ts'
import { startState } from '../calculator/state.ts'

/** As wide as every sketch, so that its letters stay legible on a phone. */
export const plot = { left: 50, right: 378, top: 30, bottom: 214, height: 258 }

const POINTS = 81
const TICKS = 5
const systems: readonly UnitSystem[] = ['si', 'us', 'mixed']

interface Place {
  readonly x: number
  readonly y: number
}

/** A quantity along an axis: what it is called, and the unit in which the article writes it. */
export interface AxisOf {
  readonly name: string
  readonly kind: KindId
  readonly written?: string | undefined
  readonly log?: boolean | undefined
}

interface Tick {
  readonly at: number
  readonly text: string
}

export interface Drawing {
  /** Unit systems for which it is drawn: 'si mixed'. */
  readonly systems: string
  readonly x: { readonly name: string; readonly ticks: readonly Tick[] }
  readonly y: { readonly name: string; readonly ticks: readonly Tick[] }
  readonly paths: readonly string[]
  readonly limit: number | undefined
}

/**
 * The result of a calculator along one of its inputs.
 * @param texts what the article gives: input → text with unit
 * @param from, to ends along that input, SI
 * @throws when the calculator refuses any of it: a figure that ends short would say something else
 */
export function traced(
  calculator: Calculator,
  texts: Readonly<Record<string, string>>,
  { across, of, from, to }: { across: string; of: string; from: number; to: number },
): Place[] {
  const state = startState(calculator, startingTexts(calculator, texts), 'si')
  const { values, problems } = evaluate(calculator, fieldsOf(calculator), state)
  const [problem] = Object.values(problems)
  if (problem !== undefined) throw new Error(`<Curves>: ${calculator.id}: ${sentenceOf(problem)}`)
  const at = (x: number): Place => {
    const given: Record<string, InputValue> = { ...values, [across]: x }
    const result = runPlain(calculator, given)
    const y = 'refusal' in result ? undefined : result.outputs[of]
    if (typeof y !== 'number')
      throw new Error(
        `<Curves>: ${calculator.id} gives no «${of}» at ${across} = ${x} (SI); allowed: ${Object.keys(calculator.outputs).join(', ')}`,
      )
    return { x, y }
  }
  return Array.from({ length: POINTS }, (_, index) => at(from + ((to - from) * index) / (POINTS - 1)))
}

/** One drawing for each pair of units that the unit systems ask for, SI first. */
export function drawingsOf(
  curves: readonly (readonly Place[])[],
  x: AxisOf,
  y: AxisOf,
  limit: number | undefined,
): Drawing[] {
  const served = new Map<string, { units: readonly [string, string]; systems: UnitSystem[] }>()
  for (const system of systems) {
    const units = [
      unitForSystem(x.kind, system, x.written),
      unitForSystem(y.kind, system, y.written),
    ] as const
    const key = units.join(' ')
    const entry = served.get(key) ?? { units, systems: [] }
    entry.systems.push(system)
    served.set(key, entry)
  }
  return [...served.values()].map((entry) => ({
    systems: entry.systems.join(' '),
    ...drawing(curves, { ...x, unit: entry.units[0] }, { ...y, unit: entry.units[1] }, limit),
  }))
}

type DrawnAxis = AxisOf & { readonly unit: string }

function drawing(
  curves: readonly (readonly Place[])[],
  x: DrawnAxis,
  y: DrawnAxis,
  limit: number | undefined,
): Omit<Drawing, 'systems'> {
  const shown = (axis: DrawnAxis, si: number): number => fromSI(si, axis.unit, axis.kind)
  const across = curves.flat().map((place) => shown(x, place.x))
  const up = curves.flat().map((place) => shown(y, place.y))
  if (limit !== undefined) up.push(shown(y, limit))
  const ends = padded({ low: Math.min(...up), high: Math.max(...up) }, y.log ?? false)
  const xScale = scaleLinear([Math.min(...across), Math.max(...across)], [plot.left, plot.right])
  const yScale = (y.log ? scaleLog : scaleLinear)([ends.low, ends.high], [plot.bottom, plot.top])
  const yTicks = y.log ? logTicks(ends.low, ends.high) : yScale.ticks(TICKS)
  const path = line<Place>(
    (place) => round(xScale(shown(x, place.x))),
    (place) => round(yScale(shown(y, place.y))),
  )
  const named = (axis: DrawnAxis): string =>
    [axis.name, unitOf(axis.unit).symbol].filter((part) => part !== '').join(', ')
  return {
    x: {
      name: named(x),
      ticks: xScale.ticks(TICKS).map((tick) => ({ at: round(xScale(tick)), text: tickText(tick) })),
    },
    y: {
      name: named(y),
      ticks: yTicks.map((tick) => ({ at: round(yScale(tick)), text: tickText(tick) })),
    },
    paths: curves.map((curve) => path(curve) ?? ''),
    limit: limit === undefined ? undefined : round(yScale(shown(y, limit))),
  }
}
