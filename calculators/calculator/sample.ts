import { checkValues } from './check-values.ts'
import type { Values } from './check-values.ts'
import { runPlain } from './run.ts'
import type { Calculator } from './types.ts'

export interface ChartPoint {
  readonly x: number
  readonly y: number
}

/** Id of the output along the vertical axis with these choices. */
export function chartedOutput({ y, instead }: NonNullable<Calculator['chart']>, values: Values): string {
  return instead?.when.oneOf.includes(String(values[instead.when.input])) ? instead.y : y
}

/**
 * Points of the calculator's chart, from one end of its range to the other, those left out where the method
 * refuses. Empty where there is no chart or the values themselves are refused.
 * @param values what was given [SI], by input
 * @param points how many [-], 2 or more
 * @returns pairs of the chart's input and output [SI]
 */
export function sampleChart(calculator: Calculator, values: Values, points: number): ChartPoint[] {
  const { chart } = calculator
  const checked = checkValues(calculator, values)
  if (!chart || 'refusal' in checked || !(points >= 2)) return []
  const { minimum, maximum } = chart.range(checked.values as Parameters<typeof chart.range>[0])
  if (!Number.isFinite(minimum) || !Number.isFinite(maximum) || minimum >= maximum) return []
  const output = chartedOutput(chart, checked.values)
  return Array.from(
    { length: points },
    (_, index) => minimum + ((maximum - minimum) * index) / (points - 1),
  ).flatMap((x) => {
    const result = runPlain(calculator, { ...checked.values, [chart.x]: x })
    const y = 'refusal' in result ? undefined : result.outputs[output]
    return typeof y === 'number' ? [{ x, y }] : []
  })
}
