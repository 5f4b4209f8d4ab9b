import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { ratioFromStraightened, straightened } from '../../../calculators/hydraulics/filter-loading.ts'
import { mannKendall } from '../../../calculators/statistics/mann-kendall.ts'
import { theilSen } from '../../../calculators/statistics/theil-sen.ts'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts, textsFromFuel } from '../../../components/calculator/starting.ts'
import { startState } from '../../../components/calculator/state.ts'
import { pairsOf, tagsOf } from '../../../components/content/mdx-pages.ts'
import { fuelRecord, setPoint } from './plant-and-fuels.ts'

// What the articles on readings say of their calculators, run as the page starts them.

const plant = parse(readFileSync('content/plants/pq-12.yaml', 'utf8')) as {
  setPoints: Record<string, { value: string }>
}

async function startOf(article: string, id: string, changed: Record<string, string> = {}) {
  const tags = tagsOf(readFileSync(`content/circuit/${article}.mdx`, 'utf8'))
  const given = tags.find(
    ({ name, attributes }) => name === 'Calculator' && attributes['id'] === id,
  )?.attributes
  const calculator = await catalogue[id]?.()
  if (!given || !calculator) throw new Error(`${article} has no ${id}`)
  const texts = {
    ...(given['fuel'] === undefined ? {} : textsFromFuel(calculator, fuelRecord(given['fuel']))),
    ...Object.fromEntries(
      Object.entries(pairsOf(given['setPoints'])).map(([input, point]) => [
        input,
        plant.setPoints[point]?.value ?? '',
      ]),
    ),
    ...pairsOf(given['preset']),
    ...changed,
  }
  const state = startState(calculator, startingTexts(calculator, texts), 'si')
  const { result, problems } = evaluate(calculator, fieldsOf(calculator), state)
  if (result === undefined) throw new Error(JSON.stringify(problems))
  const values = Object.fromEntries(Object.entries(result.outputs).map(([name, { value }]) => [name, value]))
  return { values, notices: result.notices.map((notice) => notice.text) }
}

describe('exhaust temperature as a witness', () => {
  test('«cylinders 6 and 10: both are found», within what the PQ-12 permits', async () => {
    const { values, notices } = await startOf('exhaust-temperature', 'exhaust-spread')
    expect(notices.filter((text) => / stands out /.test(text)).map((text) => text.slice(0, 11))).toEqual([
      'Cylinder 6 ',
      'Cylinder 10',
    ])
    expect(values['verdict']).toBe('standsOut')
  })

  test('«if both depart equally far, neither can ever lie beyond three standard deviations»', () => {
    const values = [-1, 1, ...Array.from({ length: 10 }, () => 0)]
    const sigma = Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / 11)
    expect(1 / sigma).toBeLessThan(3)
  })

  test('«all twelve fell, only two by more than the rest»', async () => {
    const { values } = await startOf('exhaust-temperature', 'exhaust-before-and-after')
    expect(values['real']).toBe(2)
    expect(Number(values['common'])).toBeLessThan(0)
  })
})

describe('injector tests on the bench', () => {
  test('«half as thick again in a cool shop»; «a time that looks ample», and is not', async () => {
    const { values } = await startOf('injectors-on-the-bench', 'injector-bench-test')
    const thicker = Number(values['viscosity']) / setPoint('injector-test-viscosity')
    expect(thicker).toBeGreaterThan(1.45)
    expect(thicker).toBeLessThan(1.6)
    expect(Number(values['correctedTime'])).toBeLessThan(setPoint('injector-leak-off'))
    expect(values['verdict']).toBe('reject')
  })

  test('«an opening pressure a hair under its limit»: warm, the same injector is only set again', async () => {
    const warm = { oilTemperature: '40 degC' }
    const { values } = await startOf('injectors-on-the-bench', 'injector-bench-test', warm)
    expect(values['verdict']).toBe('reset')
  })
})

describe('trends and doubt', () => {
  test('«looks large and is not enough»', async () => {
    const { values } = await startOf('trends-and-doubt', 'real-difference')
    expect(values['verdict']).toBe('cannotBeTold')
  })

  test('«four in a row, once in twelve»', () => {
    const rising = [1, 2, 3, 4].map((value) => ({ x: value, y: value }))
    expect(mannKendall(rising).probability).toBeCloseTo(1 / 12, 12)
  })

  test('«more than a quarter of the readings may be wrong before it is carried away»', () => {
    const line = (wrong: number) =>
      Array.from({ length: 40 }, (_, at) => ({ x: at, y: at >= 40 - wrong ? 1e6 * at : 2 * at + 5 }))
    expect(theilSen(line(11), 0.95)?.slope).toBe(2)
    expect(theilSen(line(13), 0.95)?.slope).toBeGreaterThan(100)
  })

  test('«at half of the permitted drop: half by the logarithm, seven tenths by complete blocking, none four fifths»', async () => {
    const housing = 0.2 * setPoint('secondary-drop-clean')
    const ratio = (drop: number) => (drop - housing) / (setPoint('secondary-drop-clean') - housing)
    const limit = setPoint('secondary-drop-change')
    const used = (law: Parameters<typeof straightened>[0]) =>
      straightened(law, ratio(limit / 2)) / straightened(law, ratio(limit))
    expect(used('intermediate')).toBeCloseTo(0.5, 1)
    expect(used('complete')).toBeCloseTo(0.7, 1)
    for (const law of ['cake', 'intermediate', 'standard', 'complete'] as const)
      expect(used(law)).toBeLessThan(0.75)
  })

  test('«rises evenly; doubles, and doubles again; runs away; runs away soonest», from one start', () => {
    // Steepness of each straight line at a new element, so that all begin alike.
    const begin = { cake: 1, intermediate: 1, standard: 0.5, complete: 1 } as const
    const after = (law: keyof typeof begin, passed: number) => ratioFromStraightened(law, begin[law] * passed)
    for (const law of ['cake', 'intermediate', 'standard', 'complete'] as const)
      expect(after(law, 1e-6)).toBeCloseTo(1 + 1e-6, 10)
    expect(after('cake', 6)).toBeCloseTo(7, 12)
    const [two, four, six] = [2, 4, 6].map((times) => after('intermediate', times * Math.LN2))
    expect([two, four, six].map((ratio) => Math.round(ratio ?? 0))).toEqual([4, 16, 64])
    expect(after('standard', 1.9)).toBeGreaterThan(100)
    expect(after('standard', 2)).toBeUndefined()
    expect(after('complete', 0.99)).toBeGreaterThan(99)
    expect(after('complete', 1)).toBeUndefined()
  })

  test('«a header pressure that falls slowly»', async () => {
    const { values } = await startOf('trends-and-doubt', 'reading-trend')
    expect(Number(values['slope'])).toBeLessThan(0)
    expect(Number(values['chance'])).toBeLessThan(0.01)
    expect(['maybe', 'later', 'within']).toContain(values['verdict'])
  })

  test('«readings that go up and down as they were read; brought to reference they climb»', async () => {
    const { values, notices } = await startOf('trends-and-doubt', 'filter-life')
    expect(Number(values['chance'])).toBeLessThan(0.01)
    expect(notices.some((text) => /fell between/.test(text))).toBe(false)
    expect(values['verdict']).toBe('within')
  })
})

describe('fuel burnt', () => {
  test('«a little under a quarter of what the pump delivers»', async () => {
    const { values } = await startOf('fuel-burnt', 'fuel-rate')
    const share = Number(values['volumeFlow']) / setPoint('pump-delivery')
    expect(share).toBeGreaterThan(0.22)
    expect(share).toBeLessThan(0.25)
  })

  test('«would not fill a thimble»: between one and two millilitres', async () => {
    const { values } = await startOf('fuel-burnt', 'injection-quantity')
    expect(Number(values['quantity'])).toBeGreaterThan(1e-6)
    expect(Number(values['quantity'])).toBeLessThan(2e-6)
  })

  test('«both meters good to one part in a hundred: the difference to one in eighteen»', () => {
    const [supply, burnt] = [setPoint('pump-delivery'), setPoint('fuel-burnt-at-full-load')]
    expect(burnt / (0.01 * Math.hypot(supply, supply - burnt))).toBeCloseTo(18, -0.5)
  })

  test('«look which state burns most»: full load, not idle', async () => {
    const { values, notices } = await startOf('fuel-burnt', 'range-and-hours')
    expect(Number(values['hours'])).toBeGreaterThan(0)
    expect(notices.join()).not.toMatch(/State 1 burns/)
  })
})
