import { describe, expect, it } from 'vitest'
import { describeResult } from '../../../calculators/checks/describe.ts'
import { perform } from '../../../calculators/checks/perform.ts'
import type { CheckData } from '../../../calculators/checks/types.ts'
import { stateWith } from './state.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ')
const bare: CheckData = {
  id: 'bare',
  label: 'Bare',
  kind: 'gauge',
  minutes: 1,
  states: ['idle'],
  circuits: ['pq-12'],
  glasses: [],
  readings: [],
  feels: [],
  finds: [],
}
const header = {
  id: 'header-gauge',
  label: 'Header gauge',
  kind: 'gaugePressure',
  value: 210_400,
  accuracy: 10e3,
} as const
const cylinder = (place: number, value: number) =>
  ({
    id: `exhaust-${place}`,
    label: `Exhaust temperature, cylinder ${place}`,
    kind: 'temperature',
    value,
    accuracy: 5,
  }) as const

describe('what a check tells', () => {
  it('takes only its own readings, as the instrument shows them', () => {
    const state = stateWith({ readings: [header, { ...header, id: 'other' }] })
    const result = perform({ ...bare, readings: ['header-gauge'] }, state, [])
    expect(result.readings).toEqual([header])
    expect(describeResult(result, 'si').map(({ text }) => plain(text))).toEqual(['210 kPa'])
    expect(describeResult(result, 'us').map(({ text }) => plain(text))).toEqual(['30.5 psi'])
  })

  it('says when the needle rests at a stop', () => {
    const state = stateWith({ readings: [{ ...header, value: 0, atStop: 'lowest' }] })
    const [line] = describeResult(perform({ ...bare, readings: ['header-gauge'] }, state, []), 'si')
    expect(plain(line?.text ?? '')).toBe('0 kPa, the needle rests at its lowest stop')
  })

  it('tells the lowest and the highest of many cylinders, and then each', () => {
    const state = stateWith({
      readings: [623, 583, 628, 625, 624].map((value, place) => cylinder(place + 1, value)),
    })
    const lines = describeResult(perform({ ...bare, readings: ['exhaust-*'] }, state, []), 'si')
    expect(lines.map(({ label }) => label)).toEqual([
      'Exhaust temperature, lowest and highest',
      'Exhaust temperature, each',
    ])
    expect(plain(lines[0]?.text ?? '')).toBe(
      '310 °C (Exhaust temperature, cylinder 2) to 355 °C (Exhaust temperature, cylinder 3)',
    )
    expect(lines[1]?.text.split(', ')).toHaveLength(5)
  })

  it('tells cylinders that are alike in one line', () => {
    const state = stateWith({
      readings: [583, 584, 583.5, 584].map((value, place) => cylinder(place + 1, value)),
    })
    const lines = describeResult(perform({ ...bare, readings: ['exhaust-*'] }, state, []), 'si')
    expect(lines.map(({ label, text }) => `${label}: ${plain(text)}`)).toEqual([
      'Exhaust temperature, all alike: 310 °C',
    ])
  })

  it('shows what is left over from rounding as nothing', () => {
    const state = stateWith({ readings: [{ ...header, value: 1e-9 }] })
    const [line] = describeResult(perform({ ...bare, readings: ['header-gauge'] }, state, []), 'si')
    expect(plain(line?.text ?? '')).toBe('0 kPa')
  })

  it('sees a glass by its words', () => {
    const state = stateWith({
      glasses: [
        {
          part: 'bypass-glass',
          look: 'part full',
          words: 'part full, running from above',
          fill: 0.4,
          gas: 0,
          from: 'valve',
          dirt: 0.5,
          milky: false,
        },
      ],
    })
    const result = perform({ ...bare, glasses: ['bypass-glass'] }, state, [])
    expect(result.glasses).toMatchObject([{ part: 'bypass-glass', from: 'valve', dirty: true }])
    expect(describeResult(result, 'si')).toEqual([
      { label: 'bypass-glass', text: 'part full, running from above' },
    ])
  })

  it('feels whether fuel passes, and not a trickle', () => {
    const feels = (flow: number) =>
      perform({ ...bare, feels: ['valve'] }, stateWith({ flows: { valve: flow } }), []).felt
    expect(feels(1e-3 / 60)).toMatchObject([{ part: 'valve', passes: true }])
    expect(feels(-1e-3 / 60)).toMatchObject([{ passes: true }])
    expect(feels(0.1e-3 / 60)).toMatchObject([{ passes: false }])
  })

  it('finds what an inspection can find, and says when it found nothing', () => {
    const check: CheckData = {
      ...bare,
      finds: [
        { faults: ['cut-seal', 'flat-seal'], says: 'The seal is bad.' },
        { faults: ['dirt'], says: 'There is dirt.' },
      ],
      otherwise: 'All is well.',
    }
    expect(perform(check, undefined, ['flat-seal']).says).toEqual(['The seal is bad.'])
    expect(perform(check, undefined, ['dirt', 'cut-seal']).says).toEqual([
      'The seal is bad.',
      'There is dirt.',
    ])
    expect(perform(check, undefined, ['something-else']).says).toEqual(['All is well.'])
  })

  it('reads no gauge while the plant is stopped', () => {
    const result = perform({ ...bare, readings: ['header-gauge'], glasses: ['return-glass'] }, undefined, [])
    expect(result).toEqual({ readings: [], glasses: [], felt: [], says: [] })
  })
})
