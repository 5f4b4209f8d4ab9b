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

async function outputsOf(id: string, values: Record<string, InputValue>) {
  const result = await resultOf(id, values)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  const outputs = Object.fromEntries(Object.entries(result.outputs).map(([key, { value }]) => [key, value]))
  return { outputs, notices: result.notices.map((notice) => notice.text).join(' ') }
}

const celsius = (value: number) => value + 273.15

describe('what is refused', () => {
  test.each<[string, Record<string, InputValue>, string, RegExp]>([
    ['settling-time', { dropDensity: 845, fuelDensity: 845 }, 'dropDensity', /the drop floats/],
    ['settling-time', { diameter: 0 }, 'diameter', /below/],
    ['filters-in-parallel', { firstPlugged: 1, secondPlugged: 1 }, 'secondPlugged', /no flow passes/],
    ['filters-in-parallel', { firstPlugged: 1.01 }, 'firstPlugged', /above/],
    ['beta-ratio', { upstream: 0 }, 'upstream', /No particle/],
    ['beta-ratio', { downstream: 0 }, 'downstream', /below/],
    ['cleanliness-code', { count6: 2000e6 }, 'count6', /above count of 4 µm/],
    ['cleanliness-code', { count14: 501e6 }, 'count14', /above count of 6 µm/],
    ['cleanliness-code', { count4: 2_500_001e6 }, 'count4', /above/],
    ['cleanliness-code', { direction: 'from-code', code4: 17.5 }, 'code4', /not a whole number/],
    ['cleanliness-code', { direction: 'from-code', code14: 17 }, 'code14', /above second number/],
    ['cleanliness-code', { direction: 'from-code', code4: 29 }, 'code4', /above/],
    ['filter-target', { passes: 'again', turns: 2.7 }, 'turns', /too few even for a filter/],
    ['filter-target', { now4: '29' }, 'now4', /«29»/],
    ['time-to-cool', { wanted: celsius(-15), ambient: celsius(-15) }, 'wanted', /never reached/],
    ['time-to-cool', { wanted: celsius(25) }, 'wanted', /not between/],
    ['time-to-cool', { body: 'line', outside: 0.02 }, 'outside', /less than the bore/],
    ['cold-margin', { flow: 0 }, 'flow', /below/],
    ['free-water', { water: -1e-6 }, 'water', /below/],
  ])('%s %j', async (id, values, field, reason) => {
    const refusal = await refusalOf(id, values)
    expect(refusal?.field).toBe(field)
    expect(refusal?.reason).toMatch(reason)
  })
})

describe('cleanliness code', () => {
  test('the sign ≥ stands at the numbers with fewer than 20 particles, and only there', async () => {
    const { notices, outputs } = await outputsOf('cleanliness-code', { count14: 0.79e6, sample: 25e-6 })
    expect(notices).toContain('18/16/≥7')
    expect(outputs['verdict']).toBe('few')
    expect((await outputsOf('cleanliness-code', { count14: 0.8e6, sample: 25e-6 })).notices).toContain(
      '18/16/7',
    )
  })
})

describe('filter target', () => {
  test('a fuel that is clean enough needs nothing', async () => {
    const { outputs } = await outputsOf('filter-target', { now4: '15', now6: '13', now14: '10' })
    expect(outputs).toMatchObject({ beta4: 1, beta6: 1, beta14: 1, leastTurns: 0, verdict: 'none' })
  })

  test('a code that rises from left to right is named', async () => {
    expect((await outputsOf('filter-target', { wanted6: '19' })).notices).toContain('never rises')
  })

  test('more than makers state', async () => {
    const { outputs } = await outputsOf('filter-target', { now4: '28', wanted4: '12' })
    expect(outputs['verdict']).toBe('beyond')
  })
})

describe('cold margin', () => {
  const at = async (values: Record<string, InputValue>) =>
    (
      await outputsOf('cold-margin', {
        length: 0,
        cloudPoint: celsius(0),
        filterPoint: celsius(-8),
        pourPoint: celsius(-15),
        ...values,
      })
    ).outputs['verdict']

  test.each([
    [3, 'clear'],
    [2.9, 'near'],
    [0.1, 'near'],
    [0, 'wax'],
    [-5, 'wax'],
    [-5.1, 'plugs'],
    [-14.9, 'plugs'],
    [-15, 'gels'],
  ])('coarse strainer, fuel at %d °C: %s', async (degrees, verdict) => {
    expect(await at({ tank: celsius(degrees) })).toBe(verdict)
  })

  test('a fine strainer is stopped by the first wax', async () => {
    expect(await at({ tank: celsius(-1), mesh: 40e-6 })).toBe('plugs')
  })

  test('a CFPP far below the cloud point is not trusted', async () => {
    expect((await outputsOf('cold-margin', { filterPoint: celsius(-11) })).notices).toContain(
      'trust the cloud point',
    )
  })
})

describe('free water', () => {
  test('dissolved, free when cold, free: one fuel with more and more water', async () => {
    const state = async (water: number) => (await outputsOf('free-water', { water })).outputs['state']
    expect(await state(10e-6)).toBe('dissolved')
    expect(await state(40e-6)).toBe('whenCold')
    expect(await state(200e-6)).toBe('free')
  })

  test('near saturation it does not claim to know', async () => {
    expect((await outputsOf('free-water', { water: 70e-6 })).outputs['state']).toBe('near')
    expect((await outputsOf('free-water', { water: 25e-6 })).notices).toContain(
      'cannot tell dissolved from free',
    )
  })

  test('clear and bright allows what is dissolved', async () => {
    const { outputs } = await outputsOf('free-water', { limit: 'dma', water: 60e-6 })
    expect(outputs).toMatchObject({ verdict: 'within' })
    expect(outputs['limitAsMass']).toBe(outputs['solubility'])
  })
})

describe('time to cool', () => {
  test('insulation and still air each keep it warm longer', async () => {
    const time = async (values: Record<string, InputValue>) =>
      Number((await outputsOf('time-to-cool', values)).outputs['time'])
    const bare = await time({})
    expect(await time({ insulation: 0.05 })).toBeGreaterThan(3 * bare)
    expect(await time({ wind: 0 })).toBeGreaterThan(bare)
    expect(await time({ body: 'line' })).toBeLessThan(bare / 10)
  })

  test('no time to a temperature that it already has', async () => {
    expect((await outputsOf('time-to-cool', { wanted: 293.15 })).outputs['time']).toBe(0)
  })
})

describe('two filters', () => {
  test('equal ones share equally, whatever their state', async () => {
    const { outputs } = await outputsOf('filters-in-parallel', { firstPlugged: 0.6, secondPlugged: 0.6 })
    expect(Number(outputs['secondShare'])).toBeCloseTo(0.5, 9)
  })

  test('both new at reference show the clean drop', async () => {
    const { outputs } = await outputsOf('filters-in-parallel', { firstPlugged: 0, secondPlugged: 0 })
    expect(Number(outputs['drop'])).toBeCloseTo(25e3, 4)
    expect(Number(outputs['ratioToClean'])).toBeCloseTo(1, 9)
  })
})
