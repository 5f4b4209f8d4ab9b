import { describe, expect, it } from 'vitest'
import type { Calculator } from '../../../calculators/calculator/types.ts'
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

/** Share of its own height by which a curve must rise or fall to be worth drawing. */
const FLAT = 1e-6

/** The example, and the example with each other option of each choice. */
function choices(calculator: Calculator): Record<string, string>[] {
  const example = startingTexts(calculator, textsFromExample(calculator))
  const others = Object.entries(calculator.inputs).flatMap(([id, input]) =>
    input.type === 'choice' ? input.options.map(({ value }) => ({ ...example, [id]: value })) : [],
  )
  return [example, ...others]
}

describe('a curve', () => {
  it.each(Object.keys(catalogue))('says something with every choice: %s', async (id) => {
    const calculator = await catalogue[id]?.()
    if (calculator === undefined) throw new Error(`no calculator ${id}`)
    const specs = fieldsOf(calculator)
    for (const texts of choices(calculator)) {
      const state = startState(calculator, texts, 'si')
      const heights = chartOf(calculator, state, evaluate(calculator, specs, state))?.curve.map(({ y }) => y)
      // That a sharp edge does not mind the viscosity is what its chart is there to say.
      const meantFlat = id === 'orifice-flow' && state.choices['form'] === 'sharp'
      if (heights === undefined || meantFlat) continue
      const highest = Math.max(...heights)
      expect(highest - Math.min(...heights), JSON.stringify(texts)).toBeGreaterThan(FLAT * Math.abs(highest))
    }
  })
})
