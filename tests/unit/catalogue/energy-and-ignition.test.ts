import { describe, expect, test } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

async function runOf(id: string, values: Record<string, InputValue>) {
  const calculator = await catalogue[id]?.()
  if (!calculator) throw new Error(id)
  return run(calculator, values)
}

async function refusalOf(id: string, values: Record<string, InputValue>) {
  const result = await runOf(id, values)
  return 'refusal' in result ? result.refusal : undefined
}

async function valuesOf(id: string, values: Record<string, InputValue>) {
  const result = await runOf(id, values)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  const outputs = Object.fromEntries(
    Object.entries(result.outputs).map(([name, { value }]) => [name, Number(value)]),
  )
  return { outputs, notices: result.notices }
}

describe('energy in a fuel', () => {
  test('more water than a fuel can hold', async () => {
    expect((await refusalOf('energy-content', { water: 0.5 }))?.field).toBe('water')
    expect((await refusalOf('energy-content', { sulfur: -0.01 }))?.field).toBe('sulfur')
  })

  test('a kilogram of the heavier fuel holds less, a litre of it more; warmth takes from the litre alone', async () => {
    const light = (await valuesOf('energy-content', { density: 820 })).outputs
    const heavy = (await valuesOf('energy-content', { density: 870 })).outputs
    const warm = (await valuesOf('energy-content', { density: 820, temperature: 333.15 })).outputs
    expect(heavy['net']).toBeLessThan(light['net'] ?? 0)
    expect(heavy['netPerVolume']).toBeGreaterThan(light['netPerVolume'] ?? 0)
    expect(warm['net']).toBe(light['net'])
    expect(warm['netPerVolume']).toBeLessThan(light['netPerVolume'] ?? 0)
    expect(light['perKelvin']).toBeLessThan(0)
  })

  test('wet fuel is told to be drained', async () => {
    const { notices } = await valuesOf('energy-content', { water: 0.02 })
    expect(notices.map(({ text }) => text).join(' ')).toMatch(/Drain or clean/)
  })
})

describe('power at a fixed rack', () => {
  test('a temperature below absolute zero, an energy that no fuel has', async () => {
    expect((await refusalOf('power-at-fixed-rack', { temperature: -5 }))?.field).toBe('temperature')
    expect((await refusalOf('power-at-fixed-rack', { energyFrom: 'known', netEnergy: 1e5 }))?.field).toBe(
      'netEnergy',
    )
  })

  test('a density that is no petroleum product', async () => {
    const refusal = await refusalOf('power-at-fixed-rack', { density: 1e3 + 400 })
    expect(refusal?.field).toBe('density')
  })

  test('the two parts make the whole', async () => {
    const { outputs } = await valuesOf('power-at-fixed-rack', {})
    const { byFuel = 0, byTemperature = 0, relativePower = 0 } = outputs
    expect((1 + byFuel) * (1 + byTemperature)).toBeCloseTo(relativePower, 12)
  })

  test('the same fuel at the same temperature gives the same power', async () => {
    const same = { density: 845, referenceDensity: 845, temperature: 313.15, referenceTemperature: 313.15 }
    const { outputs, notices } = await valuesOf('power-at-fixed-rack', same)
    expect(outputs['change']).toBe(0)
    expect(notices).toEqual([])
  })

  test('a heavier fuel warns of overload', async () => {
    const { notices } = await valuesOf('power-at-fixed-rack', { density: 890, temperature: 313.15 })
    expect(notices.map(({ text }) => text).join(' ')).toMatch(/beyond its rating/)
  })
})

describe('specific consumption', () => {
  test('no power, no time', async () => {
    expect((await refusalOf('specific-consumption', { power: 0 }))?.field).toBe('power')
    expect((await refusalOf('specific-consumption', { time: 0 }))?.field).toBe('time')
  })

  test('air too thin for the rule', async () => {
    const thin = {
      correction: 'turbocharged',
      pressure: 4e4,
      airTemperature: 343.15,
      mechanicalEfficiency: 0.4,
    }
    expect((await refusalOf('specific-consumption', thin))?.field).toBe('pressure')
  })

  test('an engine better than any is told to look for the error', async () => {
    const { notices } = await valuesOf('specific-consumption', { measured: 'mass', mass: 20 })
    expect(notices[0]).toMatchObject({ grade: 'action', text: expect.stringContaining('No piston engine') })
  })
})

describe('ignition quality', () => {
  test('points of the distillation in the wrong order', async () => {
    const refusal = await refusalOf('calculated-cetane-index', { t10: 550 })
    expect(refusal?.field).toBe('t50')
    expect(refusal?.reason).toMatch(/50 % recovered is 275\s°C, but 10 % recovered is 276\.9\s°C/)
    expect((await refusalOf('calculated-cetane-index', { t90: 548.15 }))?.field).toBe('t90')
  })

  test('the older method asks for neither end', async () => {
    expect(await refusalOf('calculated-cetane-index', { method: 'd976', t10: 550 })).toBeUndefined()
  })

  test('CCAI: over the limit, close to it, and a distillate', async () => {
    const graded = async (density: number) => {
      const { notices } = await valuesOf('carbon-aromaticity-index', { density })
      return notices.filter(({ text }) => !text.includes('outside the range')).map(({ grade }) => grade)
    }
    expect(await graded(1012)).toContain('action')
    expect(await graded(1004)).toEqual(['caution'])
    expect(await graded(960)).toEqual([])
    expect(await graded(860)).toEqual(['caution'])
  })

  test('a viscosity so low that the double logarithm ends', async () => {
    expect((await refusalOf('carbon-aromaticity-index', { viscosity: 0.5e-6 }))?.field).toBe('viscosity')
  })
})
