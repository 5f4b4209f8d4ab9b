import { describe, expect, it } from 'vitest'
import { differenceKind, readingOf, wordingsOf } from '../../../components/article/figures.ts'

describe('a figure in each system of units', () => {
  it('reads in its own unit as it is written, final zeros included', () => {
    expect(wordingsOf('3.00 mm2/s', 'kinematicViscosity')[0]).toEqual({
      systems: 'si us mixed',
      text: '3.00\u00a0mm²/s',
    })
    expect(wordingsOf('-22 degC', 'temperature')[0]?.text).toBe('−22\u00a0°C')
  })

  it('is converted with at least three digits', () => {
    // 10 kPa / 6.894757 kPa per psi = 1.4504
    expect(wordingsOf('10 kPa', 'pressureDifference')).toEqual([
      { systems: 'si', text: '10\u00a0kPa' },
      { systems: 'us mixed', text: '1.45\u00a0psi' },
    ])
  })

  it('stands once where all systems read alike', () => {
    expect(wordingsOf('500 h', 'time')).toEqual([{ systems: 'si us mixed', text: '500\u00a0h' }])
  })

  it('carries its tolerance, with the offset of a temperature only in the value', () => {
    // 340 / 6.894757 = 49.31 and 20 / 6.894757 = 2.90
    expect(wordingsOf('340 kPa', 'gaugePressure', '20 kPa')).toEqual([
      { systems: 'si', text: '340 ± 20\u00a0kPa' },
      { systems: 'us mixed', text: '49.3 ± 2.9\u00a0psi' },
    ])
    // 55 °C is 131 °F; a difference of 5 K is one of 9 °F.
    expect(wordingsOf('55 degC', 'temperature', '5 K').map((wording) => wording.text)).toEqual([
      '55 ± 5\u00a0°C',
      '131 ± 9\u00a0°F',
    ])
  })

  it('is refused when it has no unit, with what is allowed', () => {
    expect(() => readingOf('340', 'gaugePressure')).toThrow(/340.*allowed.*kPa/s)
  })
})

describe('the kind of a difference', () => {
  it('is its own for temperatures and pressures', () => {
    expect(differenceKind('temperature')).toBe('temperatureDifference')
    expect(differenceKind('gaugePressure')).toBe('pressureDifference')
    expect(differenceKind('absolutePressure')).toBe('pressureDifference')
    expect(differenceKind('density')).toBe('density')
  })
})
