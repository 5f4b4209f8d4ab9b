import { describe, expect, it } from 'vitest'
import type { CheckResult, SeenGlass } from '../../../calculators/checks/types.ts'
import { fits } from '../../../calculators/exercise/fits.ts'

const nothing: CheckResult = { readings: [], glasses: [], felt: [], says: [] }
const reads = (value: number, accuracy = 2): CheckResult => ({
  ...nothing,
  readings: [{ id: 'gauge', label: 'Gauge', kind: 'gaugePressure', value, accuracy }],
})
const shows = (glass: Partial<SeenGlass>): CheckResult => ({
  ...nothing,
  glasses: [
    {
      part: 'glass',
      label: 'Glass',
      look: 'full and clear',
      words: '',
      fill: 1,
      gas: 0,
      from: 'through',
      dirt: 0,
      milky: false,
      dirty: false,
      ...glass,
    },
  ],
})
const says = (text: string): CheckResult => ({ ...nothing, says: [text] })

describe('what was seen fits a cause', () => {
  it('whose readings lie about it, by no more than seen and expected may be off together', () => {
    const corners = [reads(100), reads(120)]
    expect([95, 96, 110, 124, 125].map((value) => fits(reads(value), corners))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ])
  })

  it('whatever the order of the corners', () => {
    expect(fits(reads(110), [reads(120), reads(100)])).toBe(true)
  })

  it('whose glass has a look between theirs', () => {
    const corners = [shows({ look: 'full and clear' }), shows({ look: 'part full' })]
    expect(fits(shows({ look: 'full with bubbles' }), corners)).toBe(true)
    expect(fits(shows({ look: 'empty' }), corners)).toBe(false)
  })

  it('whose glass is fed from the same side, and is as milky and as dirty', () => {
    const corners = [shows({ from: 'drain' })]
    expect(fits(shows({ from: 'drain' }), corners)).toBe(true)
    expect(fits(shows({ from: 'valve' }), corners)).toBe(false)
    expect(fits(shows({ from: 'drain', milky: true }), corners)).toBe(false)
    expect(fits(shows({ from: 'drain', dirty: true }), corners)).toBe(false)
  })

  it('of which an inspection says the same', () => {
    expect(fits(says('The seal is cut.'), [says('The seal is cut.')])).toBe(true)
    expect(fits(says('The seal is cut.'), [says('All is well.')])).toBe(false)
  })

  it('of which a line that is felt passes fuel at one end of the range at least', () => {
    const felt = (passes: boolean): CheckResult => ({
      ...nothing,
      felt: [{ part: 'line', label: 'Line', passes }],
    })
    expect(fits(felt(true), [felt(false), felt(true)])).toBe(true)
    expect(fits(felt(true), [felt(false)])).toBe(false)
  })
})
