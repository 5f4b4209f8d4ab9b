import { describe, expect, test } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

async function refusalOf(id: string, values: Record<string, InputValue>) {
  const calculator = await catalogue[id]?.()
  if (!calculator) throw new Error(id)
  const result = run(calculator, values)
  return 'refusal' in result ? result.refusal : undefined
}

describe('viscosity at a temperature', () => {
  const at = (values: Record<string, InputValue>) => refusalOf('viscosity-at-temperature', values)

  test('identical temperatures', async () => {
    const refusal = await at({ firstTemperature: 313.15, secondTemperature: 313.15 })
    expect(refusal?.field).toBe('secondTemperature')
    expect(refusal?.reason).toMatch(/^Second temperature is 40\s°C, the same as the first one$/)
  })

  test('viscosities that fall the wrong way', async () => {
    const refusal = await at({
      firstTemperature: 313.15,
      firstViscosity: 3e-6,
      secondTemperature: 373.15,
      secondViscosity: 4e-6,
    })
    expect(refusal?.field).toBe('secondViscosity')
    expect(refusal?.reason).toMatch(/3\smm²\/s at 40\s°C, but 4\smm²\/s at 100\s°C/)
    expect(refusal?.accepted).toMatch(/less than 3\smm²\/s/)
  })

  test('the same with the warmer point first', async () => {
    const refusal = await at({
      firstTemperature: 373.15,
      firstViscosity: 3e-6,
      secondTemperature: 313.15,
      secondViscosity: 2e-6,
    })
    expect(refusal?.accepted).toMatch(/more than 3\smm²\/s/)
  })

  test('equal viscosities', async () => {
    expect((await at({ firstViscosity: 3e-6, secondViscosity: 3e-6 }))?.field).toBe('secondViscosity')
  })

  test.each(['firstTemperature', 'secondTemperature', 'wantedTemperature'])(
    '%s below absolute zero',
    async (field) => {
      expect((await at({ [field]: -5 }))?.field).toBe(field)
    },
  )

  test('a viscosity at which the equation ends', async () => {
    expect((await at({ secondViscosity: 0.1e-6 }))?.field).toBe('secondViscosity')
  })

  test('so cold that no liquid is left', async () => {
    const refusal = await at({ form: 'point-and-slope', slope: 12, wantedTemperature: 160 })
    expect(refusal?.field).toBe('wantedTemperature')
  })

  test('with one point and a slope the second point does not matter', async () => {
    expect(await at({ form: 'point-and-slope', secondTemperature: -5 })).toBeUndefined()
  })
})

describe('filter pressure drop', () => {
  const at = (values: Record<string, InputValue>) => refusalOf('filter-pressure-drop', values)

  test('a reading below what the housing alone takes', async () => {
    const refusal = await at({ drop: 2e3 })
    expect(refusal?.field).toBe('drop')
    expect(refusal?.reason).toMatch(/less than the housing alone takes/)
  })

  test('a change-out drop that a new element already has', async () => {
    expect((await at({ cleanDrop: 25e3, changeOut: 25e3 }))?.field).toBe('changeOut')
  })

  test('no flow', async () => {
    expect((await at({ flow: 0 }))?.field).toBe('flow')
  })
})

describe('density and volume', () => {
  const at = (values: Record<string, InputValue>) => refusalOf('density-and-volume', values)

  test('a group that its density denies', async () => {
    const refusal = await at({ product: 'fuelOils', knownDensity: 820 })
    expect(refusal?.field).toBe('knownDensity')
    expect(refusal?.accepted).toMatch(/refined product/)
  })

  test('a density between two groups of the 1980 tables', async () => {
    const answers = await Promise.all(
      Array.from({ length: 200 }, (_, index) =>
        at({ edition: '1980', knownDensity: 814 + index * 0.01, knownTemperature: 253.15 }),
      ),
    )
    expect(answers.some((refusal) => refusal?.reason.includes('falls into the step'))).toBe(true)
  })
})

describe('valve set point check', () => {
  async function outputsOf(values: Record<string, InputValue>) {
    const calculator = await catalogue['valve-set-point-check']?.()
    if (!calculator) throw new Error('missing')
    const result = run(calculator, values)
    if ('refusal' in result) throw new Error(result.refusal.reason)
    return result
  }
  const exact = { wanted: 140e3, tolerance: 10e3, height: 0, backPressure: 0, backPressureAccuracy: 0 }

  test('the ± of the accuracies that it asks for stands with setting and deviation, as in every other calculator', async () => {
    const { outputs } = await outputsOf({
      ...exact,
      gaugeAccuracy: 3e3,
      backPressureAccuracy: 4e3,
      line: 'air',
    })
    for (const id of ['setting', 'deviation'])
      expect(outputs[id]).toMatchObject({ uncertainty: 5e3, uncertaintyMethod: 'first order' })
    expect(outputs['inletPressure']).toMatchObject({ uncertainty: 3e3 })
    expect(outputs['lineLoss']).not.toHaveProperty('uncertainty')
  })

  test.each([
    [140e3, 10e3, 'within'],
    [140e3, 10001, 'cannotBeTold'],
    [145e3, 5e3, 'within'],
    [145e3, 5001, 'cannotBeTold'],
    [155e3, 4999, 'outside'],
    [155e3, 5e3, 'cannotBeTold'],
    [125e3, 4999, 'outside'],
  ])(
    'reading %f Pa with a gauge of ±%f Pa against 140 ± 10 kPa: %s',
    async (reading, gaugeAccuracy, verdict) => {
      // 0.05 m of height counts too; with air in the line it does not.
      const result = await outputsOf({ ...exact, line: 'air', reading, gaugeAccuracy })
      expect(result.outputs['verdict']?.value).toBe(verdict)
    },
  )

  test('back pressure, override and column each move the setting by themselves', async () => {
    const setting = async (values: Record<string, InputValue>) =>
      Number((await outputsOf({ ...exact, reading: 150e3, ...values })).outputs['setting']?.value)
    const plain = await setting({})
    expect(plain).toBe(150e3)
    expect(await setting({ backPressure: 8e3 })).toBe(142e3)
    expect(await setting({ state: 'full-flow', override: 20e3 })).toBe(130e3)
    expect(await setting({ height: 1, density: 845 })).toBeCloseTo(150e3 + 845 * 9.80665, 6)
    expect(await setting({ height: 1, line: 'air' })).toBe(150e3)
    expect(await setting({ state: 'full-flow', override: 0, tapping: 'along-the-line' })).toBeLessThan(150e3)
    expect(await setting({ state: 'first-flow', tapping: 'along-the-line' })).toBe(150e3)
  })

  test('it names the gauge that would settle it', async () => {
    const result = await outputsOf({ ...exact, line: 'air', reading: 146e3, gaugeAccuracy: 8e3 })
    expect(result.notices.map((notice) => notice.text).join()).toMatch(/±4\skPa would settle it/)
  })
})
