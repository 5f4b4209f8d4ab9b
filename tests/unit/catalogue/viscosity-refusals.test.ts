import { describe, expect, test } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

type Values = Record<string, InputValue>

async function resultOf(id: string, values: Values) {
  const calculator = await catalogue[id]?.()
  if (!calculator) throw new Error(id)
  return run(calculator, values)
}

async function refusalOf(id: string, values: Values) {
  const result = await resultOf(id, values)
  return 'refusal' in result ? result.refusal : undefined
}

async function verdictOf(id: string, values: Values) {
  const result = await resultOf(id, values)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return result.outputs['verdict']?.value
}

describe('temperature for a viscosity', () => {
  const id = 'temperature-for-viscosity'

  test('a window turned over', async () => {
    const refusal = await refusalOf(id, { lowestViscosity: 6e-6 })
    expect(refusal?.field).toBe('lowestViscosity')
    expect(refusal?.accepted).toMatch(/less than 5\smm²\/s/)
  })

  test('points that give no line', async () => {
    expect((await refusalOf(id, { firstTemperature: 333.15 }))?.field).toBe('secondTemperature')
  })

  test('a viscosity that the fuel never has', async () => {
    expect((await refusalOf(id, { lowestViscosity: 0.15e-6 }))?.field).toBe('lowestViscosity')
  })

  test.each([
    [{}, 'fits'],
    [{ controlBand: 30 }, 'tooTight'],
    [{ wantedViscosity: 6e-6 }, 'outside'],
    [{ highestTemperature: 310 }, 'aboveLimit'],
  ])('%o: %s', async (values, verdict) => {
    expect(await verdictOf(id, values)).toBe(verdict)
  })
})

describe('viscosity of a blend', () => {
  const id = 'viscosity-of-blend'

  test('shares that come to more than the whole', async () => {
    const refusal = await refusalOf(id, { wanted: 'blend-of-three', secondShare: 0.7, thirdShare: 0.4 })
    expect(refusal?.field).toBe('thirdShare')
    expect(refusal?.reason).toMatch(/come to 110\.0 %/)
  })

  test('a viscosity that no blend has', async () => {
    const refusal = await refusalOf(id, { wanted: 'share', wantedViscosity: 11e-6 })
    expect(refusal?.field).toBe('wantedViscosity')
    expect(refusal?.accepted).toMatch(/3\smm²\/s to 10\smm²\/s/)
  })

  test('two liquids alike', async () => {
    expect((await refusalOf(id, { wanted: 'share', secondViscosity: 3e-6 }))?.field).toBe('secondViscosity')
  })
})

test.each(['kinematic-and-dynamic-viscosity', 'mass-from-metered-volume'])(
  '%s: a group that its density denies',
  async (id) => {
    const refusal = await refusalOf(id, { product: 'fuelOils', knownDensity: 820 })
    expect(refusal?.field).toBe('knownDensity')
  },
)

test('a meter that has corrected is not corrected again', async () => {
  const result = await resultOf('mass-from-metered-volume', { meter: 'compensated', volume: 3 })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  expect(result.outputs['factor']?.value).toBe(1)
  expect(result.outputs['mass']?.value).toBeCloseTo(3 * 845, 2)
  expect(result.notices).toEqual([])
})

describe('fuel in oil by viscosity', () => {
  const id = 'fuel-in-oil-by-viscosity'

  test('a fuel as thick as the oil', async () => {
    expect((await refusalOf(id, { fuelViscosity: 100e-6 }))?.field).toBe('fuelViscosity')
  })

  test('used oil thinner than fuel', async () => {
    expect((await refusalOf(id, { usedViscosity: 2e-6 }))?.field).toBe('usedViscosity')
  })

  test.each([
    [{ newViscosity: 140e-6, usedViscosity: 150e-6 }, 'cannotBeTold'],
    [{ newViscosity: 140e-6, usedViscosity: 140e-6 }, 'cannotBeTold'],
    [{ usedViscosity: 139e-6 }, 'usual'],
    [{ usedViscosity: 118e-6 }, 'faulty'],
    [{ usedViscosity: 90e-6 }, 'serious'],
  ])('%o: %s', async (values, verdict) => {
    expect(await verdictOf(id, values)).toBe(verdict)
  })

  test('thickened oil: no fuel, and a warning that it may hide', async () => {
    const result = await resultOf(id, { usedViscosity: 150e-6 })
    if ('refusal' in result) throw new Error(result.refusal.reason)
    expect(result.outputs['share']?.value).toBe(0)
    expect(result.notices[0]?.text).toMatch(/does not prove the absence of fuel/)
  })
})

describe('fuel in oil by flash point', () => {
  const id = 'fuel-in-oil-by-flash-point'

  test('new oil that flashes like fuel', async () => {
    expect((await refusalOf(id, { newFlash: 370 }))?.field).toBe('newFlash')
  })

  test.each([
    [{ usedFlash: 490 }, 'cannotBeTold'],
    [{ usedFlash: 470 }, 'watch'],
    [{ usedFlash: 448.15 }, 'alarm'],
    [{ usedFlash: 423.14 }, 'rejected'],
  ])('%o: %s', async (values, verdict) => {
    expect(await verdictOf(id, values)).toBe(verdict)
  })
})

test('viscosity scales: too thin for a scale is said, not hidden', async () => {
  const result = await resultOf('viscosity-scales', { scale: 'kinematic', kinematicViscosity: 1e-6 })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  expect(result.notices[0]?.text).toMatch(/Saybolt Universal, Saybolt Furol, Engler, Redwood/)
})
