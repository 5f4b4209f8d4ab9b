import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { baseDensity, densityAt } from '../../fuel/density-correction.ts'
import { whyNoBase } from '../known-density.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** The two editions differ in the fifth figure, which no viscosity feels; the newer one is taken. */
const EDITION = '2004'

/** From this share on the uncorrected density would be felt in the third figure of the viscosity. */
const FELT = 0.005

function densityOf(input: Values) {
  if (input.density === 'measured') return { density: input.knownDensity }
  const result = baseDensity(input.knownDensity, input.knownTemperature, input.product, EDITION)
  if (!('found' in result)) return { refusal: whyNoBase({ ...input, edition: EDITION }, result) }
  return { density: densityAt(result.found, input.temperature, EDITION) }
}

function noticesOf(input: Values, density: number): Notice[] {
  const share = Math.abs(density / input.knownDensity - 1)
  if (share < FELT) return []
  return [
    {
      grade: 'information',
      text: `At the temperature of the viscosity the density is ${inWords(density, 'density')}. With ${inWords(input.knownDensity, 'density')}, uncorrected, the result would be off by ${(share * 100).toFixed(1)} %.`,
    },
  ]
}

/** Both viscosities at one temperature, with the density there, or why there is no density. */
export function compute(input: Values) {
  const found = densityOf(input)
  if (found.refusal) return { refusal: found.refusal }
  const { density } = found
  const toDynamic = input.direction === 'dynamic'
  const kinematicViscosity = toDynamic ? input.kinematicViscosity : input.dynamicViscosity / density
  const dynamicViscosity = toDynamic ? input.kinematicViscosity * density : input.dynamicViscosity
  const result: Step = toDynamic
    ? {
        label: 'Dynamic viscosity',
        symbol: 'μ',
        rule: 'ν ρ',
        value: dynamicViscosity,
        kind: 'dynamicViscosity',
      }
    : {
        label: 'Kinematic viscosity',
        symbol: 'ν',
        rule: 'μ / ρ',
        value: kinematicViscosity,
        kind: 'kinematicViscosity',
      }
  const rule =
    input.density === 'measured'
      ? 'as given'
      : 'ρ₁ brought from t₁ to 60 °F and from there to t, API MPMS 11.1 of 2004'
  return {
    outputs: { dynamicViscosity, kinematicViscosity, densityAtTemperature: density },
    steps: [
      {
        label: 'Density at the temperature of the viscosity',
        symbol: 'ρ',
        rule,
        value: density,
        kind: 'density' as const,
      },
      result,
    ],
    notices: noticesOf(input, density),
  }
}
