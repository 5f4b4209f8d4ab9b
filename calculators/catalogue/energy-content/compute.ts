import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { WATER_DENSITY_60F, SIXTY_FAHRENHEIT } from '../../fuel/density-2004.ts'
import { bureauEnergy, oilEnergy, specificEnergy } from '../../fuel/energy-content.ts'
import { refinedDensityAt } from '../../fuel/refined-density.ts'
import { noRefinedDensity } from '../fuel-density-refusal.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Past this the two rules no longer speak of the same fuel. */
const RULES_AGREE_WITHIN = 0.01
/** Water that is more than a trace has settled or been stirred in: a matter of its own. */
const WET = 0.005

function noticesOf(input: Values, departure: number): Notice[] {
  const notices: Notice[] = []
  if (Math.abs(departure) > RULES_AGREE_WITHIN)
    notices.push({
      grade: 'caution',
      text: 'The annex and the older rule of the Bureau of Standards differ by more than 1 % here: let a laboratory measure it.',
    })
  if (input.water > WET)
    notices.push({
      grade: 'caution',
      text: 'Each per cent of water costs more than a per cent of energy. Drain or clean the fuel before its energy is argued about.',
    })
  if (input.fuel === 'distillate' && input.density > 920)
    notices.push({
      grade: 'caution',
      text: 'So heavy a fuel is hardly a distillate: look at the first choice.',
    })
  return notices
}

/** Net and gross specific energy and the energy of a volume at the given temperature, with working. */
export function compute(input: Values) {
  const warm = refinedDensityAt(input.density, input.temperature)
  const at60F = refinedDensityAt(input.density, SIXTY_FAHRENHEIT)
  if (warm === undefined || at60F === undefined)
    return { refusal: noRefinedDensity('density', 'Density at 15 °C', input.density) }
  const net = specificEnergy('net', input.fuel, input.density, input)
  const gross = specificEnergy('gross', input.fuel, input.density, input)
  const oil = oilEnergy('net', input.fuel, input.density)
  const bureau = bureauEnergy('net', at60F / WATER_DENSITY_60F)
  const rule =
    input.fuel === 'distillate'
      ? '46.423 − 8.792×10⁻⁶ρ² + 3.170×10⁻³ρ'
      : '46.704 − 8.802×10⁻⁶ρ² + 3.167×10⁻³ρ'
  const steps: Step[] = [
    { label: 'Net energy of the oil alone', symbol: 'H_oil', rule, value: oil, kind: 'specificEnergy' },
    {
      label: 'Share of oil in the mass',
      symbol: 'x',
      rule: '1 − w − a − s',
      value: 1 - input.water - input.ash - input.sulfur,
      kind: 'ratio',
    },
    {
      label: 'Net specific energy',
      symbol: 'H_n',
      rule: 'H_oil x + 9.42 s − 2.449 w',
      value: net,
      kind: 'specificEnergy',
    },
    {
      label: 'Density at the temperature of the fuel',
      symbol: 'ρ_t',
      rule: 'from ρ by the procedure of 2004',
      value: warm,
      kind: 'density',
    },
    {
      label: 'Check: net energy of the oil by the rule of the Bureau of Standards',
      symbol: 'H′',
      rule: '12400 − 2100d² − 50.45 (26 − 15d) cal/g, d at 60 °F',
      value: bureau,
      kind: 'specificEnergy',
    },
  ]
  return {
    outputs: {
      net,
      netPerVolume: net * warm,
      gross,
      grossPerVolume: gross * warm,
      netPerVolume15: net * input.density,
      perKelvin:
        ((refinedDensityAt(input.density, input.temperature + 0.5) ?? warm) -
          (refinedDensityAt(input.density, input.temperature - 0.5) ?? warm)) /
        warm,
    },
    steps,
    notices: noticesOf(input, bureau / oil - 1),
  }
}
