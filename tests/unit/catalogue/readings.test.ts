import { describe, expect, test } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

const HOUR = 3600

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
  const outputs = Object.fromEntries(Object.entries(result.outputs).map(([name, { value }]) => [name, value]))
  return { ...outputs, said: result.notices.map((notice) => notice.text).join('\n') } as Record<
    string,
    number | string
  >
}

const temperatures = (...celsius: number[]) => celsius.map((value) => ({ temperature: value + 273.15 }))

describe('times at the end of the look-ahead', () => {
  const readings = [0, 1, 2, 3, 4, 5, 6].map((at) => ({ hours: at * 500 * HOUR, reading: 100 + at }))
  const trend = { readings, side: 'maximum', lookAhead: 1000 * HOUR }

  test('are said to be no date', async () => {
    const found = await outputsOf('reading-trend', { ...trend, limit: 200 })
    expect([found['earliest'], found['likely'], found['latest']]).toEqual(
      [1, 1, 1].map((n) => n * 1000 * HOUR),
    )
    expect(found['said']).toMatch(/No further than 1000 h was looked. The earliest, likely and latest time/)
  })

  test('are not spoken of where the limit is met before', async () => {
    const found = await outputsOf('reading-trend', { ...trend, limit: 107 })
    expect(found['likely']).toBeCloseTo(500 * HOUR, 3)
    expect(found['said']).not.toMatch(/No further than/)
  })

  test('a filter says it as well, and that no finite drop stands behind a line past its law', async () => {
    const rows = [25, 26, 25, 26].map((drop, at) => ({
      hours: at * 100 * HOUR,
      drop: drop * 1e3,
      flow: 4.5e-4,
      viscosity: 3e-6,
    }))
    expect((await outputsOf('filter-life', { readings: rows }))['said']).toMatch(/No further than 1000 h/)
    // Bent by the law of complete blocking: the line lies above the last reading, and above 1.
    const steep = [0, 0.6, 0.9, 0.95].map((straight, at) => ({
      hours: at * 100 * HOUR,
      drop: 5e3 + 20e3 / (1 - straight),
      flow: 4.5e-4,
      viscosity: 3e-6,
    }))
    const found = await outputsOf('filter-life', { readings: steep, law: 'complete', changeOut: 200e3 })
    expect(found['said']).toMatch(/past every drop that is finite/)
    expect(found['verdict']).toBe('passed')
    expect(found['now']).toBe(200e3)
  })
})

describe('exhaust temperatures', () => {
  test('equal readings: no deviation to divide by, and a step of the display is no alarm', async () => {
    const found = await outputsOf('exhaust-spread', {
      cylinders: temperatures(430, 430, 430, 430, 430, 430, 431),
    })
    expect(found['spread']).toBe(0)
    expect(found['verdict']).toBe('even')
    expect(found['said']).toMatch(/More than half of the readings are equal/)
  })

  test('all equal', async () => {
    const found = await outputsOf('exhaust-spread', { cylinders: temperatures(430, 430, 430, 430) })
    expect(found['departure']).toBe(0)
    expect(found['score']).toBe(0)
  })

  test('a really hot one among equal ones is found', async () => {
    const found = await outputsOf('exhaust-spread', { cylinders: temperatures(430, 430, 430, 430, 430, 480) })
    expect(found['verdict']).toBe('beyondLimit')
    expect(found['cylinder']).toBe(6)
    expect(found['said']).toMatch(/With 6 cylinders/)
  })

  test('a set that scatters as a whole has no culprit', async () => {
    const found = await outputsOf('exhaust-spread', {
      cylinders: temperatures(380, 400, 420, 440, 460, 480, 500),
    })
    expect(found['verdict']).toBe('allScatter')
  })

  test('two cylinders are too few', async () => {
    expect((await refusalOf('exhaust-spread', { cylinders: temperatures(430, 431) }))?.reason).toBe(
      'Exhaust temperatures has 2 rows',
    )
  })

  test('a cylinder is named in a refusal', async () => {
    expect((await refusalOf('exhaust-spread', { cylinders: temperatures(430, 431, 2000) }))?.reason).toMatch(
      /^Exhaust temperatures, cylinder 3: Temperature is 2000\s°C, above 1500\s°C$/,
    )
  })

  test('a load that fell alike for all is no change', async () => {
    const cylinders = [430, 431, 425, 433].map((value) => ({ before: value + 273.15, after: value + 253.15 }))
    const found = await outputsOf('exhaust-before-and-after', { cylinders })
    expect(found['verdict']).toBe('none')
    expect(found['common']).toBeCloseTo(-20, 9)
  })
})

describe('trends', () => {
  const series = (...readings: number[]) =>
    readings.map((reading, at) => ({ hours: at * 100 * HOUR, reading }))

  test('one time for all readings', async () => {
    const readings = [1, 2, 3, 4].map((reading) => ({ hours: 100 * HOUR, reading }))
    expect((await refusalOf('reading-trend', { readings }))?.reason).toMatch(/same running hours/)
  })

  test.each([
    ['passed', [10, 9, 8, 7, 6, 5], 5.5],
    ['away', [5, 6, 7, 8, 9, 10], 4],
    ['notShown', [8, 8, 9, 8, 8, 9], 5],
    ['within', [10, 9, 8, 7, 6, 5], 4],
    ['later', [100, 99, 98, 97, 96, 95], 0],
  ])('falling towards a minimum: %s', async (verdict, readings, limit) => {
    const found = await outputsOf('reading-trend', { readings: series(...readings), limit })
    expect(found['verdict']).toBe(verdict)
  })

  test('a drift below the repeatability of the gauge is said to be one', async () => {
    const found = await outputsOf('reading-trend', { readings: series(10, 9.9, 9.8, 9.7, 9.6), limit: 5 })
    expect(found['said']).toMatch(/less than the gauge repeats/)
  })

  test('one wild reading does not turn the line', async () => {
    const found = await outputsOf('reading-trend', { readings: series(10, 9, 8, 700, 6, 5, 4), limit: 0 })
    expect(found['slope']).toBeCloseTo(-10, 9)
  })
})

describe('life left of a filter', () => {
  const rows = (...kilopascals: number[]) =>
    kilopascals.map((drop, at) => ({
      hours: at * 100 * HOUR,
      drop: drop * 1e3,
      flow: 4.5e-4,
      viscosity: 3e-6,
    }))

  test('the laws stand in order: the straight one promises most', async () => {
    const lives = []
    for (const law of ['cake', 'intermediate', 'standard', 'complete'])
      lives.push(
        Number((await outputsOf('filter-life', { readings: rows(25, 30, 37, 46, 58), law }))['likely']),
      )
    expect(lives).toEqual(lives.toSorted((a, b) => b - a))
  })

  test('a reading below what the housing takes is named', async () => {
    const refusal = await refusalOf('filter-life', { readings: rows(25, 30, 3, 46) })
    expect(refusal?.reason).toMatch(/reading 3: the drop is no more than the housing alone takes/)
  })

  test('a limit under a new element', async () => {
    expect((await refusalOf('filter-life', { changeOut: 20e3 }))?.field).toBe('changeOut')
  })

  test('a drop that falls is a fault report', async () => {
    const found = await outputsOf('filter-life', { readings: rows(25, 40, 60, 30, 35) })
    expect(found['said']).toMatch(/fell between reading 3 and 4/)
  })
})

describe('injectors and fuel', () => {
  test.each([
    [{ openingPressure: 27.2e6, leakOffTime: 12 }, 'pass'],
    [{ openingPressure: 26.4e6, leakOffTime: 12 }, 'reset'],
    [{ openingPressure: 29e6, leakOffTime: 12 }, 'reset'],
    [{ openingPressure: 27.2e6, leakOffTime: 8 }, 'reject'],
    [{ openingPressure: 27.2e6, leakOffTime: 12, seat: 'drips' }, 'reject'],
    [{ openingPressure: 27.2e6, leakOffTime: 12, seat: 'damp' }, 'pass'],
    [{ openingPressure: 27.2e6, leakOffTime: 12, spray: 'uneven' }, 'reject'],
    [{ openingPressure: 15e6, leakOffTime: 12 }, 'reject'],
  ])('%j: %s', async (values, verdict) => {
    expect((await outputsOf('injector-bench-test', values))['verdict']).toBe(verdict)
  })

  test('limits the wrong way round', async () => {
    expect((await refusalOf('injector-bench-test', { highestOpening: 20e6 }))?.field).toBe('highestOpening')
  })

  test('shares that miss the whole', async () => {
    const states = [{ share: 0.5, burn: 1e-5, speed: 0 }]
    expect((await refusalOf('range-and-hours', { states }))?.reason).toMatch(/add up to 50\.0 %$/)
  })

  test('a duty that burns nothing', async () => {
    const states = [{ share: 1, burn: 0, speed: 0 }]
    expect((await refusalOf('range-and-hours', { states }))?.reason).toMatch(/burn no fuel/)
  })

  test('a rack beyond shut-off, and two settings in one place', async () => {
    expect((await refusalOf('injection-quantity', { form: 'rack', rack: 0.001 }))?.field).toBe('rack')
    expect((await refusalOf('injection-quantity', { form: 'rack', secondRack: 0.008 }))?.field).toBe(
      'secondRack',
    )
  })

  test('one gauge read twice tells smaller differences apart than two', async () => {
    const two = await outputsOf('real-difference', { unrest: 0 })
    const one = await outputsOf('real-difference', { gauges: 'one', unrest: 0 })
    expect(Number(one['smallest'])).toBeLessThan(Number(two['smallest']))
    expect(one['verdict']).toBe('real')
  })
})
