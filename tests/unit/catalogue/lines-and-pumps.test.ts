import { describe, expect, test } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

async function resultOf(id: string, values: Record<string, InputValue>) {
  const calculator = await catalogue[id]?.()
  if (!calculator) throw new Error(id)
  return run(calculator, values)
}

async function refusalOf(id: string, values: Record<string, InputValue>) {
  const result = await resultOf(id, values)
  return 'refusal' in result ? result.refusal : undefined
}

async function outputOf(id: string, output: string, values: Record<string, InputValue>) {
  const result = await resultOf(id, values)
  return 'refusal' in result ? result.refusal.reason : result.outputs[output]?.value
}

describe('what cannot be is refused with the field, what was read and what is accepted', () => {
  test('a lift that no atmosphere holds up', async () => {
    const refusal = await refusalOf('suction-line', { lift: 14 })
    expect(refusal?.reason).toMatch(/more than the 101\.3\skPa/)
    expect(refusal?.accepted).toMatch(/less lift/)
  })

  test('a lift for which no bore is large enough', async () => {
    const refusal = await refusalOf('suction-limits', { lift: 5 })
    expect(refusal?.field).toBe('lift')
    expect(refusal?.reason).toMatch(/no bore keeps to the limit of 34\skPa/)
  })

  test('a known delivery above the displacement', async () => {
    const refusal = await refusalOf('pump-delivery', { knownFlow: 6e-4 })
    expect(refusal?.field).toBe('knownFlow')
    expect(refusal?.reason).toMatch(/36(\.00)?\sL\/min, more than the displacement makes/)
  })

  test('a speed at which everything slips back', async () => {
    expect((await refusalOf('pump-delivery', { speed: 5 }))?.field).toBe('speed')
  })

  test('a measured flow that no wear explains', async () => {
    expect((await refusalOf('pump-wear', { flow: 5e-4 }))?.field).toBe('flow')
    expect((await refusalOf('pump-wear', { newFlow: 5e-4 }))?.field).toBe('newFlow')
  })

  test('a vacuum deeper than the air outside', async () => {
    expect((await refusalOf('air-drawn-in', { vacuum: 110e3 }))?.field).toBe('vacuum')
    expect((await refusalOf('dissolved-air', { vacuum: 110e3 }))?.field).toBe('vacuum')
  })

  test('a fill that fills nothing', async () => {
    const refusal = await refusalOf('dye-dose', { left: 4, full: 4 })
    expect(refusal?.field).toBe('left')
    expect(refusal?.accepted).toMatch(/less than 4000\sL/)
  })

  test('a bore of nothing', async () => {
    expect((await refusalOf('line-pressure-drop', { bore: 0 }))?.field).toBe('bore')
  })
})

describe('words that follow from the numbers', () => {
  test.each([
    [{ kinematicViscosity: 1e-4 }, 'laminar'],
    [{ kinematicViscosity: 7e-6 }, 'between'],
    [{ kinematicViscosity: 2e-6 }, 'turbulent'],
  ])('line %o: %s', async (values, regime) => {
    expect(await outputOf('line-pressure-drop', 'regime', values)).toBe(regime)
  })

  test.each([
    [{ strainerDrop: 2e3 }, 'within'],
    [{ strainerDrop: 23e3 }, 'near'],
    [{ strainerDrop: 40e3 }, 'beyond'],
    [{ vapour: 'given', vapourPressure: 95e3 }, 'boils'],
  ])('suction line %o: %s', async (values, verdict) => {
    expect(await outputOf('suction-line', 'verdict', values)).toBe(verdict)
  })

  test.each([
    [{ diameter: 1e-5 }, 'wet'],
    [{ diameter: 7e-5 }, 'drops'],
    [{ diameter: 1e-3 }, 'stream'],
  ])('leak %o: %s', async (values, verdict) => {
    expect(await outputOf('leak-rate', 'verdict', values)).toBe(verdict)
  })

  test.each([
    [{ diameter: 8e-5 }, 'single'],
    [{ diameter: 2e-4 }, 'bubbles'],
    [{ diameter: 8e-4 }, 'foam'],
    [{ diameter: 4e-3 }, 'lost'],
  ])('air drawn in %o: %s', async (values, verdict) => {
    expect(await outputOf('air-drawn-in', 'verdict', values)).toBe(verdict)
  })

  test('a motor under the relief valve', async () => {
    expect(await outputOf('pump-motor-power', 'verdict', {})).toBe('enough')
    expect(await outputOf('pump-motor-power', 'verdict', { efficiency: 0.42 })).toBe('tight')
    expect(await outputOf('pump-motor-power', 'verdict', { rating: 550 })).toBe('over')
  })

  test('both ways of giving the known point agree', async () => {
    const byFlow = await outputOf('pump-delivery', 'delivery', { known: 'flow', knownFlow: 4.5e-4 })
    const knownEfficiency = 4.5e-4 / ((20e-6 * 151.84) / (2 * Math.PI))
    const byShare = await outputOf('pump-delivery', 'delivery', { known: 'efficiency', knownEfficiency })
    expect(Number(byFlow)).toBeCloseTo(Number(byShare), 12)
  })

  test('equivalent lengths in creeping flow carry a warning', async () => {
    const result = await resultOf('line-pressure-drop', {
      kinematicViscosity: 1e-3,
      method: 'equivalent-length',
    })
    const texts = 'notices' in result ? result.notices.map((notice) => notice.text).join() : ''
    expect(texts).toMatch(/Use the two-K method/)
  })
})
