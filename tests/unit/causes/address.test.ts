import { describe, expect, it } from 'vitest'
import { readAddress, writeAddress } from '../../../components/diagnosis/address.ts'
import {
  apply,
  observationsOf,
  startState,
  type FinderAction,
  type FinderState,
} from '../../../components/diagnosis/finder-state.ts'
import { offer, specs } from './offer.ts'

const read = (query: string, system: 'si' | 'us' = 'si') => readAddress(offer, specs, query, system)
const write = (state: FinderState, query = '') => writeAddress(offer, state, 'pq-12', query)
const after = (...actions: readonly FinderAction[]): FinderState =>
  actions.reduce((state, action) => apply(specs, state, action), startState(specs, 'si'))
const typed = (field: string, text: string): FinderAction => ({
  type: 'gauge',
  action: { type: 'type', field, text },
})

const whole = after(
  { type: 'say', key: 'return-glass.priming', value: 'bubbles' },
  { type: 'say', key: 'smoke', value: 'black' },
  { type: 'say', key: 'wet-the-joints', value: 'find-1' },
  typed('header-gauge.full', '45 psi'),
  typed('exhaust-3.full', '412'),
  typed('header-gauge.accuracy', '2 psi'),
  { type: 'sure', key: 'header-gauge.full' },
  { type: 'now', now: 'idle' },
  { type: 'skip', check: 'header-pressure' },
  { type: 'found', found: 'strainer-cover-draws-air' },
  { type: 'note', note: 'O-ring pinched; replaced & tested = dry.' },
)

describe('the address of the finder', () => {
  it('is empty for a form that nobody has touched', () => {
    expect(write(startState(specs, 'si'))).toBe('')
  })

  it('keeps all that was told, found and left out', () => {
    const { state, problems } = read(write(whole))
    expect(problems).toEqual([])
    expect(observationsOf(offer, state)).toEqual(observationsOf(offer, whole))
    expect(observationsOf(offer, state)).toHaveLength(5)
    expect({ ...state, gauges: whole.gauges }).toEqual(whole)
    expect(write(state)).toBe(write(whole))
  })

  it('means the same to a person with other units', () => {
    const { state } = read(write(whole), 'us')
    expect(observationsOf(offer, state)).toEqual(observationsOf(offer, whole))
  })

  it('keeps what other parts of the site put there', () => {
    expect(write(whole, 'q=bubbles&old=1')).toMatch(/^q=bubbles&v=1&/)
  })

  it.each([
    ['an id that is gone', 'v=1&header-gage.full=45+psi', /«header-gage\.full»/],
    ['a state in which it is not seen', 'v=1&power.priming=100+kW', /«power\.priming»/],
    ['a value that is gone', 'v=1&smoke=green', /Smoke.*«green»; accepted: none, black, white/],
    ['an unknown cause', 'v=1&found=gremlins', /«gremlins»/],
    ['an unknown circuit', 'v=1&circuit=zz-9', /«zz-9»/],
    ['an unknown symptom', 'v=1&from=hiccups', /«hiccups»/],
    ['an unknown state of the plant', 'v=1&now=flying', /«flying»; accepted: stopped/],
    ['a later form', 'v=9', /form «9»; this edition reads form 1/],
    ['what stands twice', 'v=1&smoke=black&smoke=white', /«smoke» stands in the address more than once/],
  ])('names %s and opens with the rest', (_, query, problem) => {
    const { state, problems } = read(`${query}&return-glass.priming=bubbles`)
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatch(problem)
    expect(state.said['return-glass.priming']).toBe('bubbles')
  })

  it('names five problems and counts the others', () => {
    const { problems } = read(Array.from({ length: 8 }, (_, place) => `gone-${place}=1`).join('&'))
    expect(problems).toHaveLength(6)
    expect(problems[5]).toBe('And 3 more that could not be used.')
  })

  it('uses nothing of an address that is far too long', () => {
    const { state, problems } = read(`smoke=black&note=${'x'.repeat(9000)}`)
    expect(state).toEqual(startState(specs, 'si'))
    expect(problems[0]).toMatch(/accepted: at most 8000/)
  })

  it('shows no mark that could disguise what it quotes', () => {
    const { problems } = read(`v=1&${encodeURIComponent('\u202egone\n')}=1`)
    expect(problems[0]).toContain('« gone »')
  })
})

describe('what was told', () => {
  it('leaves out what was not looked at, taken back, or not understood', () => {
    const state = after(
      { type: 'say', key: 'smoke', value: 'black' },
      { type: 'say', key: 'smoke', value: undefined },
      typed('header-gauge.full', 'about forty'),
      typed('header-gauge.idle', ''),
    )
    expect(observationsOf(offer, state)).toEqual([])
  })

  it('takes back that a reading is right as soon as another one is typed', () => {
    const sure = after(typed('header-gauge.full', '300'), { type: 'sure', key: 'header-gauge.full' })
    expect(observationsOf(offer, sure)[0]?.sure).toBe(true)
    const changed = apply(specs, sure, typed('header-gauge.full', '30'))
    expect(observationsOf(offer, changed)[0]?.sure).toBeUndefined()
  })

  it('gives readings in SI, whatever the unit that was picked', () => {
    const state = after(typed('header-gauge.full', '300'))
    const [first] = observationsOf(offer, state)
    expect(first).toEqual({ id: 'header-gauge', state: 'full', value: 300_000, unit: 'kPa' })
    const picked = apply(specs, state, {
      type: 'gauge',
      action: { type: 'pickUnit', field: 'header-gauge.full', unit: 'psi' },
    })
    expect(observationsOf(offer, picked)).toEqual([first])
  })
})
