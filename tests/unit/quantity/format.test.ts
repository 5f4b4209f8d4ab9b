import { describe, expect, it } from 'vitest'
import {
  formatForSystem,
  formatIn,
  formatNumber,
  formatWithUncertainty,
  significantFor,
} from '../../../calculators/quantity/format.ts'

const NBSP = '\u00a0'

describe('formatNumber', () => {
  it.each([
    [Number.NaN, 4, '–'],
    [Number.POSITIVE_INFINITY, 4, '–'],
    [0, 4, '0'],
    [-0, 4, '0'],
    [-1e-320, 1, '−1×10⁻³²⁰'],
    [310.264, 4, '310.3'],
    [340, 4, '340.0'],
    [-340, 4, '−340.0'],
    [12345.6, 4, '12350'],
    [99.996, 4, '100.0'],
    [0.0025, 3, '0.00250'],
    [6.30902e-5, 4, '6.309×10⁻⁵'],
    [1.5e12, 3, '1.50×10¹²'],
    [1e308, 4, '1.000×10³⁰⁸'],
    [5, 1, '5'],
    [5, 0, '5'],
    [1 / 3, 99, '0.333333333333'],
  ])('%d with %d digits is %s', (value, digits, shown) => {
    expect(formatNumber(value, digits)).toBe(shown)
  })
})

describe('digits from the uncertainty', () => {
  it.each([
    [4.4104, 0.12, 3],
    [4.4104, 0.3, 2],
    [310.3, 1.4, 4],
    [310.3, 5, 3],
    [0.5, 50, 1],
    [0, 0.1, 1],
    [310.3, 0, 4],
    [310.3, Number.NaN, 4],
    [310.3, undefined, 4],
    [310.3, 1e-20, 12],
  ])('%d ± %d has %d', (value, uncertainty, digits) => {
    expect(significantFor(value, uncertainty)).toBe(digits)
  })

  it.each([
    [4.4104e-6, 1.2e-7, 'kinematicViscosity', 'mm2/s', `4.41 ± 0.12${NBSP}mm²/s`],
    [4.4104e-6, 3e-7, 'kinematicViscosity', 'mm2/s', `4.4 ± 0.3${NBSP}mm²/s`],
    [12_345e3, 321e3, 'gaugePressure', 'kPa', `12300 ± 300${NBSP}kPa`],
    [12_345e3, 1.5e6, 'gaugePressure', 'kPa', `12300 ± 1500${NBSP}kPa`],
    [-20e3, 2e3, 'gaugePressure', 'kPa', `−20.0 ± 2.0${NBSP}kPa`],
    [288.15, 0.5, 'temperature', 'degC', `15.0 ± 0.5${NBSP}°C`],
    [-1, 2000, 'gaugePressure', 'kPa', `0.0 ± 2.0${NBSP}kPa`],
    [340e3, 0, 'gaugePressure', 'kPa', `340${NBSP}kPa`],
    [340e3, undefined, 'gaugePressure', 'kPa', `340${NBSP}kPa`],
  ] as const)('%d ± %s', (si, uncertainty, kind, unit, shown) => {
    expect(formatWithUncertainty(si, uncertainty, kind, unit)).toBe(shown)
  })
})

describe('formatIn and formatForSystem', () => {
  it('puts a no-break space before the symbol and drops final zeros', () => {
    expect(formatIn(340e3, 'gaugePressure', 'kPa')).toBe(`340${NBSP}kPa`)
    expect(formatIn(0.8, 'ratio', '1')).toBe('0.8')
    expect(formatIn(0.0008, 'ratio', '%')).toBe(`0.08${NBSP}%`)
    expect(formatIn(340e3, 'gaugePressure', 'kPa', { digits: 5 })).toBe(`340.00${NBSP}kPa`)
    expect(formatIn(310_264, 'gaugePressure', 'kPa', { uncertainty: 5000 })).toBe(`310${NBSP}kPa`)
  })

  it('shows a temperature difference without the offset', () => {
    expect(formatIn(5, 'temperatureDifference', 'degF')).toBe(`9${NBSP}°F`)
    expect(formatIn(273.15, 'temperature', 'degF')).toBe(`32${NBSP}°F`)
  })

  it.each([
    [340e3, 'gaugePressure', 'si', 'kPa', `340${NBSP}kPa`],
    [340e3, 'gaugePressure', 'us', 'kPa', `49.31${NBSP}psi`],
    [340e3, 'gaugePressure', 'mixed', 'kPa', `49.31${NBSP}psi`],
    [293.15, 'temperature', 'us', 'degC', `68${NBSP}°F`],
    [293.15, 'temperature', 'mixed', 'degC', `20${NBSP}°C`],
    [0.006, 'length', 'si', 'mm', `6${NBSP}mm`],
    [0.0254, 'length', 'us', 'in', `1${NBSP}in`],
    [1.8e6, 'time', 'us', 'h', `500${NBSP}h`],
    [900, 'time', 'si', undefined, `15${NBSP}min`],
    [60, 'time', 'si', undefined, `60${NBSP}s`],
    [0.75, 'ratio', 'us', 'turn', `0.75${NBSP}turn`],
  ] as const)('%d %s for %s, written in %s', (si, kind, system, written, shown) => {
    expect(formatForSystem(si, kind, system, written)).toBe(shown)
  })
})
