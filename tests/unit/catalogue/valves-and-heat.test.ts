import { describe, expect, test } from 'vitest'
import { isQuantityResult, run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { LOWEST_FLASH } from '../../../calculators/heat/flash.ts'

async function resultOf(id: string, values: Record<string, InputValue>) {
  const calculator = await catalogue[id]?.()
  if (!calculator) throw new Error(id)
  return run(calculator, values)
}

async function refusalOf(id: string, values: Record<string, InputValue>) {
  const result = await resultOf(id, values)
  return 'refusal' in result ? result.refusal : undefined
}

async function numbersOf(
  id: string,
  values: Record<string, InputValue>,
): Promise<(output: string) => number> {
  const result = await resultOf(id, values)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return (output) => {
    const found = result.outputs[output]
    return isQuantityResult(found) ? found.value : Number.NaN
  }
}

describe('refusals name the field and say what would do', () => {
  test.each<[string, Record<string, InputValue>, string, RegExp]>([
    ['spring-shim', { rateFrom: 'wire', wire: 0.01, outsideDiameter: 0.02 }, 'outsideDiameter', /two wires/],
    ['valve-coefficient', { drop: 500e3 }, 'drop', /perfect vacuum/],
    ['valve-coefficient', { solve: 'drop', coefficient: 0.01 }, 'flow', /less than .*L\/min/],
    [
      'valve-coefficient',
      { vapourPressure: 390e3, criticalPressure: 391e3, inletPressure: 200e3 },
      'vapourPressure',
      /inlet/,
    ],
    ['orifice-flow', { form: 'plate' }, 'bore', /12\.5\smm/],
    ['orifice-flow', { form: 'plate', bore: 0.02, pipe: 0.04 }, 'pipe', /50\smm to 1,?000\smm/],
    ['orifice-flow', { form: 'plate', bore: 0.08, pipe: 0.1 }, 'bore', /0\.1 to 0\.75/],
    ['orifice-flow', { form: 'plate', bore: 0.05, pipe: 0.1, kinematicViscosity: 1e-2 }, 'drop', /more flow/],
    ['orifice-flow', { bore: 0.0155 }, 'bore', /0\.9/],
    ['injector-cooling', { burntAtFullLoad: 4.5e-4 }, 'burntAtFullLoad', /less than 27\sL\/min/],
    ['injector-cooling', { limit: 300 }, 'limit', /more than 35\s°C/],
    ['return-and-recirculation', { burnt: 1e-3 }, 'burnt', /less than 27\sL\/min/],
    ['tank-temperature', { time: 1e6 }, 'time', /up to 21\.1\sh/],
    ['heater-duty', { form: 'electric', power: 1e6, flow: 1e-5 }, 'power', /more flow/],
  ])('%s %j', async (id, values, field, accepted) => {
    const refusal = await refusalOf(id, values)
    expect(refusal?.field).toBe(field)
    expect(refusal?.accepted).toMatch(accepted)
  })
})

test('back pressure moves the gauge one to one, height by its column, air in the line by nothing', async () => {
  const reading = async (values: Record<string, InputValue>) =>
    (await numbersOf('spring-valve', { height: 0, backPressure: 0, ...values }))('readingAtFlow')
  const plain = await reading({})
  expect((await reading({ backPressure: 8e3 })) - plain).toBeCloseTo(8e3, 6)
  expect((await reading({ height: 1, density: 845 })) - plain).toBeCloseTo(-845 * 9.80665, 6)
  expect(await reading({ height: 1, filling: 'air' })).toBe(plain)
})

test('a shut valve passes nothing, and says so', async () => {
  const result = await resultOf('spring-valve', { reading: 100e3 })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  expect(result.outputs['flowAtReading']?.value).toBe(0)
  expect(result.notices.map((notice) => notice.text).join()).toMatch(/has not opened/)
})

test('a shim without room asks for another spring; a setting in order for nothing', async () => {
  const verdict = async (values: Record<string, InputValue>) => {
    const result = await resultOf('spring-shim', values)
    return 'refusal' in result ? undefined : result.outputs['verdict']?.value
  }
  expect(await verdict({ travelLeft: 0.003 })).toBe('changeSpring')
  expect(await verdict({ present: 140e3 })).toBe('leave')
  expect(await verdict({ present: 150e3 })).toBe('takeOut')
  expect(await verdict({ present: 10e3, wanted: 0 })).toBe('takeOut')
})

test('coefficient, flow and drop of a valve lead back to each other, thin and thick', async () => {
  for (const kinematicViscosity of [1e-6, 3e-5, 3e-4]) {
    const given = { kinematicViscosity, flow: 4.5e-4, drop: 50e3 }
    const coefficient = (await numbersOf('valve-coefficient', { ...given, solve: 'coefficient' }))('kv')
    const flow = (await numbersOf('valve-coefficient', { ...given, solve: 'flow', coefficient }))('flow')
    const drop = (await numbersOf('valve-coefficient', { ...given, solve: 'drop', coefficient }))('drop')
    expect(flow / 4.5e-4).toBeCloseTo(1, 6)
    expect(drop / 50e3).toBeCloseTo(1, 6)
  }
})

test('beyond choking more drop brings no more flow', async () => {
  const flow = async (drop: number) => (await numbersOf('valve-coefficient', { solve: 'flow', drop }))('flow')
  expect(await flow(399e3)).toBe(await flow(350e3))
  expect(await flow(350e3)).toBeGreaterThan(await flow(300e3))
})

test('hot water gives its heat in counterflow better than in parallel, and never passes its own temperature', async () => {
  const outlet = async (form: string, conductance = 400) =>
    (await numbersOf('heater-duty', { form, conductance }))('outlet')
  expect(await outlet('counterflow')).toBeGreaterThan(await outlet('parallel'))
  expect(await outlet('constant')).toBeGreaterThan(await outlet('counterflow'))
  expect(await outlet('counterflow', 1e7)).toBeLessThanOrEqual(353.15 + 1e-9)
})

test('more burnt is a hotter return, and a fuller tank stays cooler', async () => {
  const returned = async (burnt: number) =>
    (await numbersOf('return-and-recirculation', { burnt }))('returned')
  expect(await returned(2e-4)).toBeGreaterThan(await returned(1e-4))
  const final = async (startVolume: number) => (await numbersOf('tank-temperature', { startVolume }))('final')
  expect(await final(2)).toBeGreaterThan(await final(4))
  expect((await numbersOf('tank-temperature', { time: 0 }))('rise')).toBe(0)
})

test('a heater at the lowest flash point warns of it and of the return, and one below it does not', async () => {
  const warned = async (wanted: number) => {
    const result = await resultOf('heater-duty', { form: 'wanted', wanted })
    if ('refusal' in result) throw new Error(result.refusal.reason)
    return result.notices.some((notice) => notice.grade === 'caution' && /return header/.test(notice.text))
  }
  expect(await warned(LOWEST_FLASH)).toBe(true)
  expect(await warned(LOWEST_FLASH - 0.01)).toBe(false)
})

test('the verdict of cooling agrees with the time, also where the two just meet', async () => {
  for (let start = 280; start < 330; start += 0.37)
    for (const wanted of [start - 3.3, start - 1.7]) {
      const values = { start, wanted, ambient: 270 }
      const time = (await numbersOf('time-to-cool', values))('time')
      const verdict = async (elapsed: number) => {
        const result = await resultOf('time-to-cool', { ...values, elapsed })
        return 'refusal' in result ? undefined : result.outputs['verdict']?.value
      }
      expect(await verdict(time)).toBe('reached')
      expect(await verdict(time * (1 - 1e-9))).toBe('notReached')
    }
})

test('a tank at the lowest flash point asks to stop, and one below it does not', async () => {
  const warned = async (start: number) => {
    const values = { start, ambient: start, heat: 0, time: 0, limit: 400 }
    const result = await resultOf('tank-temperature', values)
    if ('refusal' in result) throw new Error(result.refusal.reason)
    return result.notices.some((notice) => notice.grade === 'action' && /flash point/.test(notice.text))
  }
  expect(await warned(LOWEST_FLASH)).toBe(true)
  expect(await warned(LOWEST_FLASH - 1)).toBe(false)
})
