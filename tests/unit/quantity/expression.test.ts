import { describe, expect, it, vi } from 'vitest'
import { readExpression } from '../../../calculators/quantity/expression.ts'
import { kinds } from '../../../calculators/quantity/kinds.ts'
import { readQuantity } from '../../../calculators/quantity/read.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'

describe('arithmetic with units', () => {
  it.each<[string, KindId, string, number]>([
    ['5/8 in', 'length', 'mm', 0.015875],
    ['3 1/2 in', 'length', 'mm', 0.0889],
    ['3½"', 'length', 'mm', 0.0889],
    ['½ in', 'length', 'mm', 0.0127],
    ['5/8', 'length', 'in', 0.015875],
    ['1 1/2', 'length', 'in', 0.0381],
    [`5' + 3"`, 'length', 'm', 1.6002],
    ['5 ft + 3 in', 'length', 'm', 1.6002],
    ['10 in * 2', 'length', 'm', 0.508],
    ['2 bar + 30 kPa', 'gaugePressure', 'kPa', 230_000],
    ['2 barg + 30 kPa', 'gaugePressure', 'kPa', 230_000],
    ['2 × 3 kPa', 'gaugePressure', 'kPa', 6000],
    ['6 ÷ 2 kPa', 'gaugePressure', 'kPa', 3000],
    ['-(2 - 3) kPa', 'gaugePressure', 'kPa', 1000],
    ['(2+3) kPa', 'gaugePressure', 'kPa', 5000],
    ['2+3', 'gaugePressure', 'kPa', 5000],
    ['2^3 kPa', 'gaugePressure', 'kPa', 8000],
    ['0,5 bar + 0,25 bar', 'gaugePressure', 'kPa', 75_000],
    ['1 000 kPa + 1 kPa', 'gaugePressure', 'kPa', 1_001_000],
    ['10 in Hg + 2 inHg', 'pressureDifference', 'kPa', 12 * 3386.388640341],
    ['3 kgf/cm2 + 1 bar', 'gaugePressure', 'kPa', 394_199.5],
    ['845 kg/m3 * 9.80665 m/s^2 * 0.6 m', 'pressureDifference', 'kPa', 4971.97155],
    ['5 % * 30 kPa', 'pressureDifference', 'kPa', 1500],
    ['20 L / 4 min', 'volumeFlow', 'L/min', 5 / 60_000],
    ['5 m³·h⁻¹', 'volumeFlow', 'L/min', 5 / 3600],
    ['3 ft3/min', 'volumeFlow', 'L/min', (3 * 0.3048 ** 3) / 60],
    ['10 L/min + 1 gpm', 'volumeFlow', 'L/min', 13.785411784 / 60_000],
    ['2 h + 30 min', 'time', 'h', 9000],
    ['5 rev/min * 2', 'rotationalSpeed', 'rpm', Math.PI / 3],
    ['6 lbf·ft + 2 N·m', 'torque', 'N.m', 10.134907689988],
    ['5 N*m', 'torque', 'N.m', 5],
    ['50 % + 0.1', 'ratio', '1', 0.6],
    ['1/2', 'ratio', '%', 0.005],
    ['3 kPa / 2 kPa', 'ratio', '1', 1.5],
    ['5 degC + 2 K', 'temperatureDifference', 'K', 7],
    ['2 * 9 °F', 'temperatureDifference', 'K', 10],
    ['300 K + 5 K', 'temperature', 'degC', 305],
    ['2*0.0005/°F', 'volumeExpansion', '1/K', 0.0018],
  ])('%s as %s', async (text, kind, unit, si) => {
    const reading = await readQuantity(text, kind, unit)
    expect(reading).toMatchObject({ ok: true })
    expect(reading.ok && Math.abs(reading.si / si - 1)).toBeLessThan(1e-12)
  })

  it('says what it understood, in the unit of the field', async () => {
    expect(await readQuantity('2 bar + 30 kPa', 'gaugePressure', 'kPa')).toMatchObject({
      understood: '2 bar + 30 kPa = 230\u00a0kPa',
      unit: 'kPa',
    })
    expect(await readQuantity('5/8 in', 'length', 'mm')).toMatchObject({ unit: 'in' })
  })
})

describe('what is refused, and in which words', () => {
  it.each<[string, KindId, string]>([
    ['40 degC + 5 K', 'temperature', 'its zero is not absolute zero'],
    ['2 * 20 °C', 'temperature', 'its zero is not absolute zero'],
    ['2 bara + 30 kPa', 'gaugePressure', 'bara is read only alone'],
    ['30 psig - 5 psig', 'pressureDifference', '«30 psig - 5 psig» is a gauge pressure'],
    ['2*5 kg', 'length', '«2*5 kg» is a mass'],
    ['2 m * 3 m', 'length', 'is an area'],
    ['2 m^5', 'length', 'is no kind of quantity known here'],
    ['3 kPa / 2 kPa', 'gaugePressure', 'is a number without a unit'],
    ['5 kPa + 3', 'gaugePressure', 'a pressure and a number without a unit cannot be added'],
    ['3-1/2 in', 'length', 'a number without a unit and a length cannot be subtracted'],
    ['5 kPa - 3 m', 'gaugePressure', 'a pressure and a length cannot be subtracted'],
    ['5 ft 3 in', 'length', 'a sign (+ - * /) is missing'],
    ['2 (3 m)', 'length', 'a sign (+ - * /) is missing'],
    ['2^(3 m)', 'length', 'a power must be a number without a unit'],
    ['(-8)^(1/3)', 'length', 'it has no real result'],
    ['1/0', 'length', 'it has no finite result'],
    ['0/0', 'length', 'it has no finite result'],
    ['1e308*1e308', 'length', 'it has no finite result'],
    ['10^400 m', 'length', 'it has no finite result'],
    ['-400*1 K', 'temperature', 'below absolute zero'],
    ['5 *', 'length', 'cannot be read as arithmetic with units'],
    [`5'3"`, 'length', 'a sign (+ - * /) is missing'],
    ['(5 m', 'length', 'cannot be read as arithmetic with units'],
    ['5 m)', 'length', 'cannot be read as arithmetic with units'],
    ['1,234 m + 1 m', 'length', 'can be read two ways'],
    ['1 m + 1,234 m', 'length', 'can be read two ways'],
    ['5*sqrt(4)', 'length', '«sqrt» is neither a number'],
    ['5*x', 'length', '«x» is neither a number'],
    ['x=5', 'length', 'does not begin with a number'],
    ['(x=5)', 'length', '«x» is neither a number'],
    ['2*import("fs")', 'length', '«import» is neither a number'],
    ['1+constructor', 'length', '«constructor» is neither a number'],
    ['1+__proto__', 'length', '«__proto__» is neither a number'],
    ['1+toString', 'length', '«toString» is neither a number'],
    ['2*[1,2]', 'length', '«[» is neither a number'],
    ['2+{a:1}', 'length', '«{» is neither a number'],
    ['2;3', 'length', '«;» is neither a number'],
    ['2 to 3', 'length', '«to» is neither a number'],
    ['2:3', 'length', '«:» is neither a number'],
    ['5! + 1', 'length', '«!» is neither a number'],
    ["5' + 1\\", 'length', '«\\» is neither a number'],
  ])('%s as %s', async (text, kind, reason) => {
    expect(await readQuantity(text, kind, kinds[kind].siUnit)).toMatchObject({
      ok: false,
      reason: expect.stringContaining(reason),
    })
  })

  it('lets no name of mathjs through, whatever reaches the reader', () => {
    for (const text of ['pi', 'e', 'i', 'cos(0)', 'evaluate("1")', 'createUnit("a")', 'parse', 'unit1'])
      expect(readExpression(text, 'length', 'm').ok).toBe(false)
  })

  it('makes no code of what was typed', async () => {
    const caught = (name: string) => () => {
      throw new Error(`${name} was called`)
    }
    vi.stubGlobal('eval', caught('eval'))
    vi.stubGlobal('Function', caught('Function'))
    try {
      expect(await readQuantity('2 bar + 31 kPa', 'gaugePressure', 'kPa')).toMatchObject({ ok: true })
    } finally {
      vi.unstubAllGlobals()
    }
  })
})
