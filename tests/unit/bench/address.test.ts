import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { readAddress, startState, writeAddress } from '../../../components/circuit/bench/address.ts'
import { slidersOf } from '../../../components/circuit/bench/setting.ts'
import type { BenchState } from '../../../components/circuit/bench/types.ts'
import { pq12, set } from './bench.ts'

const start = startState(pq12)
const problemsOf = (query: string): readonly string[] => readAddress(pq12, query).problems
const sliders = slidersOf(pq12)
const whole = ({ least, most }: { least: number; most: number }, offset: number) =>
  fc
    .integer({ min: Math.ceil(least - offset), max: Math.floor(most - offset) })
    .map((value) => value + offset)
const faultIds = pq12.faults.map(({ id }) => id)

const states: fc.Arbitrary<BenchState> = fc
  .record({
    state: fc.constantFrom(...operatingStates),
    fuel: fc.constantFrom(...pq12.circuit.fuels),
    tankTemperature: whole(sliders.tankTemperature, 273.15),
    ambientTemperature: whole(sliders.ambientTemperature, 273.15),
    tankLevel: fc.integer({ min: 0, max: 100 }).map((share) => share * 0.01),
    height: fc.integer({ min: 0, max: 2000 }),
    faults: fc.dictionary(
      fc.constantFrom(...faultIds),
      fc.integer({ min: 0, max: 100 }).map((share) => share / 100),
      { noNullPrototype: true },
    ),
  })
  .chain((setting) =>
    fc.record({
      setting: fc.constant(setting),
      colouring: fc.constantFrom('pressure', 'temperature'),
      part: fc.option(fc.constantFrom(...pq12.circuit.elements.map(({ id }) => id)), { nil: undefined }),
    }),
  )

describe('the address of a bench', () => {
  it('says nothing for the bench as it starts', () => {
    expect(writeAddress(pq12, start)).toBe('')
    expect(readAddress(pq12, '')).toEqual({ state: start, problems: [] })
  })

  it('says only what differs, so that a person can read it', () => {
    const state = {
      ...start,
      setting: set({ state: 'priming', tankTemperature: 273.15, faults: { 'pump-worn': 0.4 } }),
    }
    expect(writeAddress(pq12, state)).toBe('v=1&state=priming&tank=0&fault.pump-worn=0.4')
  })

  it('gives back every state that it was written from', () => {
    fc.assert(
      fc.property(states, (state) => {
        const { state: read, problems } = readAddress(pq12, writeAddress(pq12, state))
        expect(problems).toEqual([])
        expect(read.colouring).toBe(state.colouring)
        expect(read.part).toBe(state.part)
        expect(read.setting.faults).toEqual(state.setting.faults)
        expect(read.setting.state).toBe(state.setting.state)
        expect(read.setting.fuel).toBe(state.setting.fuel)
        for (const slider of ['tankTemperature', 'ambientTemperature', 'tankLevel', 'height'] as const)
          expect(read.setting[slider]).toBeCloseTo(state.setting[slider], 9)
      }),
    )
  })

  it('keeps the keys of the search, and drops what it does not know', () => {
    const state = { ...start, setting: set({ state: 'full' }) }
    expect(writeAddress(pq12, state, 'q=bubbles&old=3&state=idle')).toBe('q=bubbles&v=1&state=full')
    expect(readAddress(pq12, 'q=bubbles')).toEqual({ state: start, problems: [] })
  })

  it('never throws, and never leaves what the model does not take', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (query) => {
        const { setting } = readAddress(pq12, query).state
        for (const severity of Object.values(setting.faults)) {
          expect(severity).toBeGreaterThanOrEqual(0)
          expect(severity).toBeLessThanOrEqual(1)
        }
        expect(setting.tankLevel).toBeGreaterThanOrEqual(0)
        expect(setting.tankLevel).toBeLessThanOrEqual(1)
      }),
    )
  })
})

describe('an address that cannot be used as it stands', () => {
  it.each([
    ['fault.pump-worn=7', /Fuel pump worn: read the severity «7»; accepted: 0 to 1/],
    ['fault.pump-worn=-0.1', /accepted: 0 to 1/],
    ['fault.pump-worn=1.0001', /accepted: 0 to 1/],
    ['fault.pump-worn=', /read the severity «»/],
    ['fault.pump-worn=half', /read the severity «half»/],
    ['fault.pump-worn=1e-1', /accepted: 0 to 1/],
    ['fault.no-such-fault=0.5', /Read the fault «no-such-fault», which this circuit does not have/],
    ['fault.__proto__=0.5', /Read the fault «__proto__»/],
    ['state=flying', /State of the engine: read «flying»; accepted: priming, idle, part, full/],
    ['fuel=petrol', /Fuel: read «petrol»; accepted: summer-gas-oil/],
    ['tank=200', /Fuel in the tank: read «200»; accepted: -\d+ to \d+, in °C/],
    ['air=NaN', /Air outside: read «NaN»/],
    ['level=101', /Level in the tank: read «101»; accepted: 0 to 100, in %/],
    ['colour=red', /Colour of the lines: read «red»/],
    ['part=wing', /Part: read «wing»/],
    ['v=0.5', /Form of the address: read «0.5»/],
    ['v=9', /made by a later edition/],
    ['toString=1', /Read «toString», which is nothing/],
    ['wing=1', /Read «wing», which is nothing that can be set here/],
  ])('%s is refused by a sentence, and the rest is used', (query, sentence) => {
    const { state, problems } = readAddress(
      pq12,
      `${query}&${query.startsWith('state') ? 'level=40' : 'state=idle'}`,
    )
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatch(sentence)
    expect(problems[0]).toMatch(/\.$/)
    const used = query.startsWith('state') ? { tankLevel: 0.4 } : { state: 'idle' }
    expect(state.setting).toMatchObject(used)
    expect(state.setting.faults).toEqual({})
  })

  it('takes the first of two values for one key and says so', () => {
    const { state, problems } = readAddress(pq12, 'state=idle&state=full')
    expect(state.setting.state).toBe('idle')
    expect(problems[0]).toMatch(/more than once; the first was taken/)
  })

  it('names five problems and counts the others', () => {
    const query = Array.from({ length: 8 }, (_, index) => `wing${index}=1`).join('&')
    expect(problemsOf(query)).toHaveLength(6)
    expect(problemsOf(query).at(-1)).toBe('And 3 more that could not be used.')
  })

  it('shows what was read without control characters, cut short', () => {
    expect(problemsOf(`state=${encodeURIComponent(`a\u202eb\n${'x'.repeat(200)}`)}`)[0]).toMatch(
      /«a b {1,2}x+…»/,
    )
  })

  it('reads nothing of an address that no bench can have written', () => {
    const { state, problems } = readAddress(pq12, `state=full&fuel=${'x'.repeat(5000)}`)
    expect(state).toEqual(start)
    expect(problems).toHaveLength(1)
  })
})
