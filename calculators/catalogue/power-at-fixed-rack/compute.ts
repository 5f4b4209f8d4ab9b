import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { fixedRackRatio } from '../../engine/fixed-rack.ts'
import { FIFTEEN_CELSIUS } from '../../fuel/density-1980.ts'
import { specificEnergy } from '../../fuel/energy-content.ts'
import { refinedDensityAt } from '../../fuel/refined-density.ts'
import { noRefinedDensity } from '../fuel-density-refusal.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

const CLEAN = { water: 0, ash: 0, sulfur: 0 }
/** Common practice: less than this no driver notices and few test beds can show. */
const NOT_FELT = 0.01
const WARM = 333.15

const estimated = (density15: number) => specificEnergy('net', 'distillate', density15, CLEAN)

function noticesOf(input: Values, ratio: number): Notice[] {
  const notices: Notice[] = []
  if (ratio > 1 + NOT_FELT)
    notices.push({
      grade: 'caution',
      text: 'More power than on the reference fuel at the same rack: see that the engine is not run beyond its rating.',
    })
  if (ratio < 1 - NOT_FELT)
    notices.push({
      grade: 'information',
      text: 'The loss is the fuel’s, not a fault. Moving the rack stop to get it back overloads the engine on the next heavy or cool fuel.',
    })
  if (input.temperature > WARM)
    notices.push({
      grade: 'information',
      text: 'So warm a fuel is thin and leaks more past the plungers. That loss comes on top and is not in this figure.',
    })
  return notices
}

function stepsOf(fuel: { density: number; netEnergy: number }, reference: typeof fuel): Step[] {
  const energy = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'energyDensity',
  })
  return [
    {
      label: 'Density of the reference fuel where it is metered',
      symbol: 'ρ₀(t₀)',
      rule: 'from ρ₀ by the procedure of 2004',
      value: reference.density,
      kind: 'density',
    },
    {
      label: 'Density of the fuel burnt where it is metered',
      symbol: 'ρ(t)',
      rule: 'from ρ by the procedure of 2004',
      value: fuel.density,
      kind: 'density',
    },
    energy(
      'Energy of a volume of the reference fuel',
      'E₀',
      'ρ₀(t₀) H₀',
      reference.density * reference.netEnergy,
    ),
    energy('Energy of a volume of the fuel burnt', 'E', 'ρ(t) H', fuel.density * fuel.netEnergy),
  ]
}

/** Power at the same rack on another or a warmer fuel, and what of the change is whose. */
export function compute(input: Values) {
  const known = input.energyFrom === 'known'
  const at = (density15: number, temperature: number) => refinedDensityAt(density15, temperature)
  const warm = at(input.density, input.temperature)
  const sameTemperature = at(input.density, input.referenceTemperature)
  const referenceWarm = at(input.referenceDensity, input.referenceTemperature)
  if (at(input.referenceDensity, FIFTEEN_CELSIUS) === undefined || referenceWarm === undefined) {
    const { label } = inputs.referenceDensity
    return { refusal: noRefinedDensity('referenceDensity', label, input.referenceDensity) }
  }
  if (warm === undefined || sameTemperature === undefined)
    return { refusal: noRefinedDensity('density', inputs.density.label, input.density) }
  const netEnergy = known ? input.netEnergy : estimated(input.density)
  const referenceNetEnergy = known ? input.referenceEnergy : estimated(input.referenceDensity)
  const reference = { density: referenceWarm, netEnergy: referenceNetEnergy }
  const fuel = { density: warm, netEnergy }
  const relativePower = fixedRackRatio(fuel, reference)
  const byFuel = fixedRackRatio({ density: sameTemperature, netEnergy }, reference)
  const power = input.referencePower * relativePower
  return {
    outputs: {
      power,
      relativePower,
      change: power - input.referencePower,
      byFuel: byFuel - 1,
      byTemperature: relativePower / byFuel - 1,
    },
    steps: stepsOf(fuel, reference),
    notices: noticesOf(input, relativePower),
  }
}
