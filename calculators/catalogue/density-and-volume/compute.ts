import { apiGravity } from '../../fuel/api-gravity.ts'
import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { FIFTEEN_CELSIUS } from '../../fuel/density-1980.ts'
import { pressureFactor2004, SIXTY_FAHRENHEIT } from '../../fuel/density-2004.ts'
import { baseDensity, densityAt, type BaseDensity } from '../../fuel/density-correction.ts'
import { expansionCoefficient } from '../../fuel/density-groups.ts'
import { groupLabel, whyNoBase } from '../known-density.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** A fuel is called near a border when an ordinary error of its density could carry it over. [kg/m³] */
const NEAR_BORDER = 1

/** A liquid does not shrink by more than this under any pressure the input allows; the fit would run away before. */
const MOST_COMPRESSED = 1.2

function noticesOf(input: Values, base: BaseDensity): Notice[] {
  const { constants } = base
  const notices: Notice[] = []
  if (input.product === 'refined') {
    notices.push({
      grade: 'information',
      text: `By its density the fuel is in the group «${groupLabel(constants.group)}».`,
    })
    const distance = Math.min(base.density - constants.minimum, constants.maximum - base.density)
    if (distance < NEAR_BORDER)
      notices.push({
        grade: 'information',
        text: `Its density is within ${inWords(NEAR_BORDER, 'density')} of the border of that group. The two groups agree there to a few parts in a million in the 2004 edition, to 2 parts in 10 000 in the 1980 tables.`,
      })
  }
  const coldest = Math.min(input.knownTemperature, input.volumeTemperature, input.targetTemperature)
  if (input.edition === '1980' && coldest < 255.15)
    notices.push({
      grade: 'information',
      text: 'The printed tables of 1980 begin near −18 °C; below, their equation goes on.',
    })
  return notices
}

/** Density at the wanted temperature by the other edition, as a check; nothing where that one has no answer. */
function byOtherEdition(input: Values): number | undefined {
  const other = input.edition === '2004' ? '1980' : '2004'
  const result = baseDensity(input.knownDensity, input.knownTemperature, input.product, other)
  return 'found' in result ? densityAt(result.found, input.targetTemperature, other) : undefined
}

/** Densities and volumes at the wanted and the base temperatures, with working, or why there are none. */
export function compute(input: Values) {
  const result = baseDensity(input.knownDensity, input.knownTemperature, input.product, input.edition)
  if (!('found' in result)) return { refusal: whyNoBase(input, result) }
  const base = result.found
  const at = (temperature: number) => densityAt(base, temperature, input.edition)
  const pressed =
    input.edition === '2004'
      ? pressureFactor2004(base.density, input.targetTemperature, input.pressure, base.constants)
      : 1
  if (!(pressed >= 1 && pressed < MOST_COMPRESSED)) {
    return {
      refusal: {
        field: 'pressure',
        reason: `${inputs.pressure.label} is ${inWords(input.pressure, 'gaugePressure')} at ${inWords(input.targetTemperature, 'temperature')}, beyond what the standard's compressibility can say`,
        accepted: 'up to 10 342 kPa within the range of the temperature',
      },
    }
  }
  const densityOfVolume = at(input.volumeTemperature)
  const densityAt15 = at(FIFTEEN_CELSIUS)
  const densityAt60F = at(SIXTY_FAHRENHEIT)
  const densityAtTarget = at(input.targetTemperature) * pressed
  const mass = densityOfVolume * input.volume
  const factorTo15 = densityOfVolume / densityAt15
  const factorTo60F = densityOfVolume / densityAt60F
  const perDegree = input.edition === '2004' ? 1.8 : 1
  const baseName = input.edition === '2004' ? '60 °F' : '15 °C'
  const other = byOtherEdition(input)
  const steps: Step[] = [
    {
      label: `Density at ${baseName}`,
      symbol: 'ρ_b',
      rule: 'the ρ_b for which ρ_b × factor(ρ_b, t₁) = ρ₁, by halving',
      value: base.density,
      kind: 'density',
    },
    {
      label: `Thermal expansion at ${baseName}`,
      symbol: 'α',
      rule: 'K₀/ρ_b² + K₁/ρ_b + K₂',
      value: expansionCoefficient(base.density, base.constants) * perDegree,
      kind: 'volumeExpansion',
    },
    {
      label: 'API gravity at 60 °F, in degrees',
      symbol: '°API',
      rule: '141.5 × 999.016 / ρ₆₀ − 131.5',
      value: apiGravity(densityAt60F),
      kind: 'ratio',
    },
    {
      label: 'Density of the volume',
      symbol: 'ρ_V',
      rule: 'ρ_b × factor(ρ_b, t_V)',
      value: densityOfVolume,
      kind: 'density',
    },
    { label: 'Mass', symbol: 'm', rule: 'ρ_V × V', value: mass, kind: 'mass' },
    ...(pressed > 1
      ? [
          {
            label: 'Factor for pressure',
            symbol: 'C_PL',
            rule: '1 / (1 − 10⁻⁵ F p)',
            value: pressed,
            kind: 'ratio' as const,
          },
        ]
      : []),
    ...(other === undefined
      ? []
      : [
          {
            label: `Check: density at the wanted temperature by the ${input.edition === '2004' ? '1980' : '2004'} edition`,
            symbol: 'ρ′',
            rule: 'the same steps, without pressure',
            value: other,
            kind: 'density' as const,
          },
        ]),
  ]
  return {
    outputs: {
      densityAtTarget,
      factorTo15,
      factorTo60F,
      volumeAt15: input.volume * factorTo15,
      volumeAt60F: input.volume * factorTo60F,
      volumeAtTarget: mass / densityAtTarget,
      mass,
      densityAt15,
      densityAt60F,
    },
    steps,
    notices: noticesOf(input, base),
  }
}
