import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { FIFTEEN_CELSIUS } from '../../fuel/density-1980.ts'
import { baseDensity, densityAt } from '../../fuel/density-correction.ts'
import { massInAir } from '../../fuel/mass-in-air.ts'
import { whyNoBase } from '../known-density.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** A smaller error than this is within what the meter itself may be wrong by. */
const WORTH_SAYING = 0.001

function noticesOf(input: Values, mass: number, density15: number): Notice[] {
  const uncorrected = input.volume * input.meterFactor * density15
  const share = mass > 0 ? uncorrected / mass - 1 : 0
  if (Math.abs(share) < WORTH_SAYING) return []
  return [
    {
      grade: 'information',
      text: `Metered volume times the density at 15 °C, with no correction, would give ${inWords(uncorrected, 'mass')}: ${Math.abs(share * 100).toFixed(2)} % too ${share > 0 ? 'much' : 'little'}.`,
    },
  ]
}

/** Mass of a metered delivery, by way of the volume at 15 °C, or why there is no density. */
export function compute(input: Values) {
  const result = baseDensity(input.knownDensity, input.knownTemperature, input.product, input.edition)
  if (!('found' in result)) return { refusal: whyNoBase(input, result) }
  const density15 = densityAt(result.found, FIFTEEN_CELSIUS, input.edition)
  const temperature = input.meter === 'as-run' ? input.volumeTemperature : FIFTEEN_CELSIUS
  const densityAtMeter = densityAt(result.found, temperature, input.edition)
  const factor = densityAtMeter / density15
  const volume15 = input.volume * input.meterFactor * factor
  const mass = volume15 * density15
  const inAir = massInAir(volume15, density15)
  const steps: readonly Step[] = [
    {
      label: 'Density at 15 °C',
      symbol: 'ρ₁₅',
      rule: 'ρ₁ brought from t₁ to the base and from there to 15 °C',
      value: density15,
      kind: 'density',
    },
    {
      label: 'Volume correction factor',
      symbol: 'C',
      rule: input.meter === 'as-run' ? 'ρ(t_V) / ρ₁₅' : '1, since the meter has corrected',
      value: factor,
      kind: 'ratio',
    },
    { label: 'Volume at 15 °C', symbol: 'V₁₅', rule: 'V F C', value: volume15, kind: 'volume' },
    { label: 'Mass', symbol: 'm', rule: 'V₁₅ ρ₁₅', value: mass, kind: 'mass' },
    { label: 'Mass in air', symbol: 'm_a', rule: 'V₁₅ (ρ₁₅ − 1.1 kg/m³)', value: inAir, kind: 'mass' },
  ]
  return {
    outputs: { mass, inAir, volume15, factor, densityAtMeter },
    steps,
    notices: noticesOf(input, mass, density15),
  }
}
