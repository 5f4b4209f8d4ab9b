import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { chartOf, plot } from '../../../components/calculator/chart-geometry.ts'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts, textsFromExample } from '../../../components/calculator/starting.ts'
import { startState } from '../../../components/calculator/state.ts'

const cases = Object.keys(catalogue).flatMap((id) =>
  (['si', 'us', 'mixed'] as const).map((system) => ({ id, system })),
)

describe('the chart of each calculator', () => {
  it.each(cases)('$id in $system: curve, points and ticks lie within the frame', async ({ id, system }) => {
    const calculator = await catalogue[id]?.()
    if (calculator === undefined) throw new Error(`no calculator ${id}`)
    const specs = fieldsOf(calculator)
    const state = startState(calculator, startingTexts(calculator, textsFromExample(calculator)), system)
    const chart = chartOf(calculator, state, evaluate(calculator, specs, state))
    expect(chart === undefined).toBe(calculator.chart === undefined)
    if (chart === undefined) return
    const numbers = [...chart.path.matchAll(/(-?[\d.]+|NaN),(-?[\d.]+|NaN)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ])
    const points = [...chart.marks, ...(chart.working ? [chart.working] : [])].map((point) => point.at)
    for (const [x = Number.NaN, y = Number.NaN] of [...numbers, ...points]) {
      expect(x).toBeGreaterThanOrEqual(plot.left - 1)
      expect(x).toBeLessThanOrEqual(plot.right + 1)
      expect(y).toBeGreaterThanOrEqual(plot.top - 1)
      expect(y).toBeLessThanOrEqual(plot.bottom + 1)
    }
    for (const { ticks } of [chart.x, chart.y]) {
      expect(ticks.length).toBeGreaterThanOrEqual(3)
      expect(new Set(ticks.map((tick) => tick.text)).size).toBe(ticks.length)
    }
    expect(chart.working).toBeDefined()
  })
})
