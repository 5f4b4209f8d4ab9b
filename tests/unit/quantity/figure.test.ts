import { describe, expect, it } from 'vitest'
import { readFigure } from '../../../calculators/quantity/figure.ts'

describe('a figure of the data', () => {
  it.each([
    ['450', 'gaugePressure', '«450» has no unit'],
    ['', 'gaugePressure', 'nothing was typed'],
    ['2 bar + 30 kPa', 'gaugePressure', '«2 bar + 30 kPa» is not a number and a unit'],
    ['5 in', 'gaugePressure', '«5 in» is a length'],
    ['450 mm', 'gaugePressure', '«450 mm» is a length'],
    ['1,234 kPa', 'gaugePressure', '«1,234» can be read two ways, as 1234 and as 1.234'],
    ['undefined', 'time', '«undefined» does not begin with a number'],
  ] as const)('%j as %s is refused', (text, kind, reason) => {
    expect(readFigure(text, kind)).toMatchObject({ ok: false, reason })
  })

  it.each([
    ['450 kPa', 'gaugePressure', 450_000],
    ['0.08 %', 'ratio', 0.0008],
    ['1.8', 'ratio', 1.8],
    ['0.75 turn', 'ratio', 0.75],
    ['3 mm2/s', 'kinematicViscosity', 3e-6],
  ] as const)('%s is a %s of %d', (text, kind, si) => {
    const reading = readFigure(text, kind)
    expect(reading.ok && reading.si).toBeCloseTo(si, 12)
  })
})
