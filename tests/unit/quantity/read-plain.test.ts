import { describe, expect, it } from 'vitest'
import { readPlain } from '../../../calculators/quantity/read.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'

const length = (text: string) => readPlain(text, 'length', 'm')

function siOf(text: string, kind: KindId, unit: string): number {
  const reading = readPlain(text, kind, unit)
  if (reading.ok !== true) throw new Error(`«${text}» was not read: ${JSON.stringify(reading)}`)
  return reading.si
}

describe('what is refused, and in which words', () => {
  it.each([
    ['', 'nothing was typed'],
    ['   ', 'nothing was typed'],
    ['text', '«text» does not begin with a number'],
    ['NaN', '«NaN» does not begin with a number'],
    ['Infinity', '«Infinity» does not begin with a number'],
    ['-∞', '«-∞» does not begin with a number'],
    ['.', '«.» does not begin with a number'],
    [',', '«,» does not begin with a number'],
    ['m', '«m» does not begin with a number'],
    ['constructor', '«constructor» does not begin with a number'],
    ['__proto__', '«__proto__» does not begin with a number'],
    ['import("x")', '«import("x")» does not begin with a number'],
    ['5 constructor', '«constructor» is not a unit known here'],
    ['5 toString', '«toString» is not a unit known here'],
    ['1e309', '«1e309» is too large to compute with'],
    ['-1e309', '«-1e309» is too large to compute with'],
    ['1e-400', '«1e-400» is too small to compute with'],
    ['1.234,5', '«1.234,5» has both a comma and a point'],
    ['1,234.5', '«1,234.5» has both a comma and a point'],
    ['1.234.567', '«1.234.567» has more than one point'],
    ['1,234,567', '«1,234,567» has more than one comma'],
    ['1234 567', '«1234 567» has a space in an odd place'],
    ["1'234", "«1'234» has a mark between its digits"],
    ['5 kg', '«5 kg» is a mass'],
    ['25 C', '«25 C» is a temperature'],
  ])('%j', (text, reason) => {
    expect(length(text)).toMatchObject({ ok: false, reason })
  })

  it.each(['', 'text', '5 kg', '5 thumbs'])('asks a plain number of a field for one: %j', (text) => {
    const reading = readPlain(text, 'ratio', '1')
    expect(reading).toMatchObject({ ok: false })
    const { accepted } = reading as { readonly accepted: string }
    expect(accepted).toMatch(/a plain number|plain or in %/)
    expect(accepted).not.toMatch(/ratio|turn/)
  })

  it('asks about 1,234 instead of guessing', () => {
    expect(length('1,234')).toEqual({
      ok: false,
      reason: '«1,234» can be read two ways, as 1234 and as 1.234',
      accepted: '1234 or 1.234',
    })
  })

  it.each([
    ['1.234,5', '1234.5'],
    ['1,234.5', '1234.5'],
    ['12.345.678,9', '12345678.9'],
  ])('says what to write instead of %s', (text, meant) => {
    expect(length(text)).toMatchObject({ ok: false, accepted: expect.stringContaining(meant) })
  })

  it('looks at no more than 100 characters and shows 40', () => {
    const reading = length('9'.repeat(10_000))
    expect(reading).toMatchObject({ ok: false, accepted: 'at most 100 characters' })
    expect(JSON.stringify(reading).length).toBeLessThan(200)
  })

  it('names the kind and its units', () => {
    expect(length('5 kg')).toMatchObject({ accepted: 'a length in m, mm, cm, µm, in, ft' })
    expect(readPlain('5 kg', 'area', 'm2')).toMatchObject({ accepted: 'an area in m², cm², mm², in², ft²' })
  })
})

describe('numbers as people type them', () => {
  it.each([
    ['12.5', 12.5],
    ['12,75', 12.75],
    ['0,5', 0.5],
    ['0,123', 0.123],
    ['1234,567', 1234.567],
    ['1,2345', 1.2345],
    [',5', 0.5],
    ['.5', 0.5],
    ['5.', 5],
    ['+3', 3],
    ['-3', -3],
    ['- 3', -3],
    ['\u22123', -3],
    ['\u20133', -3],
    ['1e3', 1000],
    ['1E-3', 0.001],
    ['1e308', 1e308],
    ['6.3×10⁻⁵', 6.3e-5],
    ['6.3x10^-5', 6.3e-5],
    ['1 234', 1234],
    ['1\u00a0234\u202f567', 1234567],
    ['12\u2009345,6', 12345.6],
    ['1 234,567', 1234.567],
    ['５', 5],
    ['-0', 0],
    ['0', 0],
  ])('%j is %d', (text, value) => {
    expect(siOf(text, 'length', 'm')).toBeCloseTo(value, 12)
  })

  it('shows how grouped digits were read', () => {
    expect(length('1 234')).toMatchObject({ understood: '1 234 = 1234' })
  })
})

describe('units as people spell them', () => {
  it.each<[string, KindId, string, number]>([
    ['5 mm²/s', 'kinematicViscosity', 'm2/s', 5e-6],
    ['5 mm2/s', 'kinematicViscosity', 'm2/s', 5e-6],
    ['5 mm^2/s', 'kinematicViscosity', 'm2/s', 5e-6],
    ['5 mm² / s', 'kinematicViscosity', 'm2/s', 5e-6],
    ['5 cst', 'kinematicViscosity', 'm2/s', 5e-6],
    ['5cSt', 'kinematicViscosity', 'm2/s', 5e-6],
    ['25 °C', 'temperature', 'K', 298.15],
    ['25 ℃', 'temperature', 'K', 298.15],
    ['25 ºC', 'temperature', 'K', 298.15],
    ['25 degrees C', 'temperature', 'K', 298.15],
    ['25 C', 'temperature', 'K', 298.15],
    ['25', 'temperature', 'degC', 298.15],
    ['68 °F', 'temperature', 'K', 293.15],
    ['-459.67 °F', 'temperature', 'K', 0],
    ['10 gpm', 'volumeFlow', 'm3/s', 10 * 6.30901964e-5],
    ['10 US gal/min', 'volumeFlow', 'm3/s', 10 * 6.30901964e-5],
    ['10 lpm', 'volumeFlow', 'm3/s', 10 / 60_000],
    ['10 L/min', 'volumeFlow', 'm3/s', 10 / 60_000],
    ['10 l/min', 'volumeFlow', 'm3/s', 10 / 60_000],
    ['10 inH₂O', 'pressureDifference', 'Pa', 2490.8891],
    ['10 "Hg', 'pressureDifference', 'Pa', 33863.88640341],
    ['10″Hg', 'pressureDifference', 'Pa', 33863.88640341],
    ['10 in Hg', 'pressureDifference', 'Pa', 33863.88640341],
    ['10 in. Hg', 'pressureDifference', 'Pa', 33863.88640341],
    ['10 in WC', 'pressureDifference', 'Pa', 2490.8891],
    ['30 ft-lbs', 'torque', 'N.m', 40.674538449942],
    ['5 UK gallons', 'volume', 'm3', 0.02273045],
    ['3 PSI', 'pressureDifference', 'Pa', 3 * 6894.757293168361],
    ['3 KPA', 'pressureDifference', 'Pa', 3000],
    ['3 mpa', 'pressureDifference', 'Pa', 3e6],
    ['3 MPa', 'pressureDifference', 'Pa', 3e6],
    ['3 kgf/cm²', 'pressureDifference', 'Pa', 294199.5],
    ['5/8"'.slice(2), 'length', 'm', 8 * 0.0254],
    ['3 ft', 'length', 'm', 0.9144],
    ['5 µm', 'length', 'm', 5e-6],
    ['5 μm', 'length', 'm', 5e-6],
    ['12 %', 'ratio', '1', 0.12],
    ['0.75 turn', 'ratio', '1', 0.75],
    ['25 N·m', 'torque', 'N.m', 25],
    ['25 Nm', 'torque', 'N.m', 25],
    ['25 N m', 'torque', 'N.m', 25],
    ['2 mPa·s', 'dynamicViscosity', 'Pa.s', 0.002],
    ['2 cP', 'dynamicViscosity', 'Pa.s', 0.002],
    ['0.0008 1/K', 'volumeExpansion', '1/K', 0.0008],
    ['900 rev/min', 'rotationalSpeed', 'rad/s', 30 * Math.PI],
    ['500 h', 'time', 's', 1.8e6],
  ])('%s as %s', (text, kind, unit, si) => {
    expect(siOf(text, kind, unit)).toBeCloseTo(si, 9)
  })

  it('does not take a millipascal for a megapascal, nor two metres in a row for a millimetre', () => {
    expect(readPlain('3 mPa', 'gaugePressure', 'kPa')).toMatchObject({
      reason: '«mPa» is not a unit known here',
    })
    expect(readPlain('5 Mm', 'length', 'm').ok).toBe(false)
    expect(readPlain('5 m m', 'length', 'm').ok).toBe(false)
    expect(readPlain('5 m·m', 'length', 'm').ok).not.toBe(true)
    expect(readPlain('5 m 2', 'area', 'm2').ok).not.toBe(true)
    expect(readPlain('5 m-2', 'area', 'm2').ok).not.toBe(true)
  })

  it('says what it understood when the unit is not the field’s own', () => {
    expect(readPlain('45 psi', 'gaugePressure', 'kPa')).toMatchObject({
      unit: 'psi',
      understood: '45 psi = 310.3\u00a0kPa',
    })
    expect(readPlain('45 kPa', 'gaugePressure', 'kPa')).toMatchObject({ unit: 'kPa', understood: '' })
    expect(readPlain('45', 'gaugePressure', 'kPa')).toMatchObject({ unit: 'kPa', understood: '', si: 45_000 })
  })
})

describe('three kinds of pressure and two of temperature', () => {
  it.each(['psi', 'kPa', 'bar', 'inHg'])('a plain %s takes the kind of its field', (unit) => {
    const si = siOf(`2 ${unit}`, 'gaugePressure', 'kPa')
    expect(siOf(`2 ${unit}`, 'absolutePressure', 'kPa')).toBe(si)
    expect(siOf(`2 ${unit}`, 'pressureDifference', 'kPa')).toBe(si)
  })

  it('brings an absolute pressure to gauge with the standard atmosphere, and says so', () => {
    const reading = readPlain('3 bara', 'gaugePressure', 'kPa')
    expect(reading).toMatchObject({ ok: true, si: 300_000 - 101_325 })
    expect(reading).toMatchObject({
      understood: expect.stringContaining('standard atmosphere of 101.325 kPa'),
    })
    expect(readPlain('2 barg', 'absolutePressure', 'kPa')).toMatchObject({ si: 301_325 })
    expect(readPlain('2 barg', 'gaugePressure', 'kPa')).toMatchObject({ si: 200_000 })
  })

  it.each(['psig', 'psia', 'barg', 'bara', 'kPag', 'kPaa'])('refuses %s as a pressure difference', (unit) => {
    expect(readPlain(`5 ${unit}`, 'pressureDifference', 'kPa')).toMatchObject({
      ok: false,
      reason: `«5 ${unit}» is ${unit.endsWith('a') ? 'an absolute' : 'a gauge'} pressure`,
    })
  })

  it.each([
    ['-273.16 °C', 'temperature', 'absolute zero'],
    ['-1 K', 'temperature', 'absolute zero'],
    ['-0.1 bara', 'gaugePressure', 'a perfect vacuum'],
    ['-1.1 bar', 'gaugePressure', 'a perfect vacuum'],
    ['-1 Pa', 'absolutePressure', 'a perfect vacuum'],
  ] as const)('%s as %s is below %s', (text, kind, limit) => {
    expect(readPlain(text, kind, 'K')).toMatchObject({
      ok: false,
      reason: expect.stringContaining(`below ${limit}`),
    })
  })

  it('reads a temperature difference without the offset of the scale', () => {
    expect(siOf('5 °C', 'temperatureDifference', 'K')).toBe(5)
    expect(siOf('9 °F', 'temperatureDifference', 'K')).toBe(5)
    expect(siOf('-5 °C', 'temperatureDifference', 'K')).toBe(-5)
  })
})

describe('what is left to the expression reader', () => {
  it.each(['5/8 in', '2 bar + 30 kPa', '3 1/2 in', '½ in', '(2+3) m', '5 m³·h⁻¹', '2*3'])('%s', (text) => {
    expect(readPlain(text, 'length', 'm')).toEqual({ ok: 'expression' })
  })
})
