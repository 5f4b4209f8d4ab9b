import { describe, expect, test } from 'vitest'
import {
  lineThroughPoint,
  lineThroughPoints,
  viscosityFromWaltherZ,
  viscosityOnLine,
  waltherZ,
} from '../../../calculators/fuel/viscosity-walther.ts'

/** The approximate inverse that the standard prints, in m²/s: a check on the exact root. */
function viscosityFromWaltherZPrinted(z: number): number {
  const excess = z - 0.7
  return (excess - Math.exp(-0.7487 - 3.295 * excess + 0.6119 * excess ** 2 - 0.3193 * excess ** 3)) * 1e-6
}

const kelvin = (celsius: number) => celsius + 273.15
const point = (mm2PerSecond: number, celsius: number) => ({
  temperature: kelvin(celsius),
  kinematicViscosity: mm2PerSecond * 1e-6,
})

describe('arithmetic, made with mpmath from the printed equation (a check of the sum, not of the method)', () => {
  test.each([
    [0.3, 1.126451],
    [0.5, 1.280661],
    [1, 1.721928],
    [1.3, 2.00888],
    [2, 2.700754],
    [2.5, 3.200095],
    [3, 3.700009],
    [5, 5.7],
  ])('Z of %f mm²/s', (viscosity, z) => {
    expect(waltherZ(viscosity * 1e-6)).toBeCloseTo(z, 6)
  })

  const lines = [
    {
      first: point(2.5, 40),
      second: point(1.05, 100),
      a: 9.848398,
      b: 4.064893,
      others: [
        [-10, 9.8814],
        [0, 6.893],
        [15, 4.4104],
        [20, 3.8772],
        [30, 3.0705],
        [60, 1.7686],
        [80, 1.3333],
      ],
    },
    {
      first: point(3.5, 40),
      second: point(1.35, 100),
      a: 9.584303,
      b: 3.922521,
      others: [
        [-10, 16.405],
        [0, 10.922],
        [20, 5.7181],
        [60, 2.3821],
        [80, 1.7468],
      ],
    },
    {
      first: point(80, 50),
      second: point(15, 100),
      a: 8.418594,
      b: 3.243109,
      others: [
        [30, 221.06],
        [70, 36.405],
        [90, 19.532],
        [130, 7.8239],
      ],
    },
    {
      first: point(500, 50),
      second: point(45, 100),
      a: 8.914273,
      b: 3.380475,
      others: [
        [70, 159.11],
        [90, 65.303],
        [110, 32.258],
        [130, 18.271],
      ],
    },
  ] as const

  test.each(lines)('line through $first.kinematicViscosity and $second.kinematicViscosity m²/s', (known) => {
    const line = lineThroughPoints(known.first, known.second)
    expect(line.intercept).toBeCloseTo(known.a, 5)
    expect(line.slope).toBeCloseTo(known.b, 5)
    for (const [celsius, viscosity] of known.others)
      expect(Math.abs((viscosityOnLine(line, kelvin(celsius)) * 1e6) / viscosity - 1)).toBeLessThan(5e-5)
  })

  test('the printed approximate inverse stays within 3e-4 of the exact root from 0.21 to 3 mm²/s', () => {
    for (let viscosity = 0.21; viscosity <= 3; viscosity += 0.001) {
      const z = waltherZ(viscosity * 1e-6)
      expect(Math.abs(viscosityFromWaltherZPrinted(z) / viscosityFromWaltherZ(z) - 1)).toBeLessThan(3e-4)
    }
  })
})

describe('published pairs', () => {
  // Maryland COMAR 03.03.05.02 gives each D975 limit at 40 °C and at 100 °F, to two figures (1.2 to 3.6 % each).
  test.each([
    ['1-D lower', 1.3, 1.4],
    ['1-D upper', 2.4, 2.5],
    ['2-D lower', 1.9, 2.0],
    ['2-D upper', 4.1, 4.3],
  ])('D975 %s limit: %f mm²/s at 40 °C is %f at 100 °F', (_, at40, at100F) => {
    const line = lineThroughPoint(point(at40, 40), 4)
    const found = viscosityOnLine(line, kelvin((100 - 32) / 1.8)) * 1e6
    expect(Math.abs(found / at100F - 1)).toBeLessThan(0.05)
  })

  // Seen on a shipping page: 180 mm²/s at 50 °C goes with 25 at 100 °C. The neighbours' slopes (80/15 and 500/45, from
  // memory of the grade lists) must enclose it.
  test('180 mm²/s at 50 °C comes to about 25 at 100 °C with the slopes of neighbouring residual grades', () => {
    const slopes = [
      lineThroughPoints(point(80, 50), point(15, 100)).slope,
      lineThroughPoints(point(500, 50), point(45, 100)).slope,
    ]
    const found = slopes.map(
      (slope) => viscosityOnLine(lineThroughPoint(point(180, 50), slope), kelvin(100)) * 1e6,
    )
    for (const viscosity of found) expect(Math.abs(viscosity / 25 - 1)).toBeLessThan(0.06)
  })

  // Nominal values of the viscosity oil standards at 20, 40 and 100 °C, two figures, from memory: 6 % is the sharpest claim.
  test.each([
    ['S3', 4.6, 2.9, 1.2],
    ['S6', 11, 5.7, 1.8],
    ['S20', 44, 18, 3.9],
    ['S60', 170, 54, 7.2],
  ])('viscosity standard %s: %f mm²/s at 20 °C from its values at 40 and 100 °C', (_, at20, at40, at100) => {
    const line = lineThroughPoints(point(at40, 40), point(at100, 100))
    expect(Math.abs((viscosityOnLine(line, kelvin(20)) * 1e6) / at20 - 1)).toBeLessThan(0.06)
  })

  // A spreadsheet of D341 with the classic form and 273 for 273.15: 32 and 5.4 mm²/s at 40 and 100 °C give 8.5 at 80 °C.
  test('spreadsheet example: 8.5 mm²/s at 80 °C', () => {
    const line = lineThroughPoints(point(32, 40), point(5.4, 100))
    expect(viscosityOnLine(line, kelvin(80)) * 1e6).toBeCloseTo(8.5, 1)
  })
})
