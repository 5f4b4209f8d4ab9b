import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { waterMassFraction, waterMoleFraction } from '../../cleanliness/water.ts'
import { hydrogenToCarbon } from '../../heat/petroleum-heat.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Density of the water that settles. [kg/m³] */
const WATER_DENSITY = 998
/** EN 590. [-] @source en-590 */
const EN_590 = 200e-6
/** Water and sediment by volume. [-] @source astm-d975 */
const D975 = 0.0005
/** Water by volume. [-] @source iso-8217 */
const DMB = 0.003
/** Within this share of saturation no figure can be called dissolved or free with this equation. */
const EQUATION_DOUBT = 0.4

/** The largest mass fraction that the limit allows; clear and bright allows what is dissolved. */
function limitOf(input: Values, soluble: number): number {
  const byVolume = (share: number) => (share * WATER_DENSITY) / input.density
  const limits = { 'en-590': EN_590, d975: byVolume(D975), dmb: byVolume(DMB), dma: soluble }
  return limits[input.limit as keyof typeof limits]
}

type State = 'dissolved' | 'whenCold' | 'free' | 'near'

/** Called dissolved or free only where the doubt of the equation leaves no question. */
function stateOf(water: number, soluble: number, solubleCold: number): State {
  const surelyFree = (saturation: number) => water > saturation * (1 + EQUATION_DOUBT)
  const surelyDissolved = (saturation: number) => water <= saturation * (1 - EQUATION_DOUBT)
  if (surelyFree(soluble)) return 'free'
  if (surelyDissolved(Math.min(soluble, solubleCold))) return 'dissolved'
  return surelyDissolved(soluble) && surelyFree(solubleCold) ? 'whenCold' : 'near'
}

function noticesOf(input: Values, state: State, freed: number): Notice[] {
  const notices: Notice[] = []
  if (state === 'near')
    notices.push({
      grade: 'caution',
      text: 'The water found lies so near saturation, now or when cold, that the equation cannot tell dissolved from free. Look at the sample: clear and bright at that temperature means dissolved, a haze means free.',
    })
  if (input.coldest > input.temperature)
    notices.push({
      grade: 'information',
      text: 'The coldest temperature is above that of the sample, so nothing more will separate.',
    })
  if (input.coldest < 273.15 && freed > 0)
    notices.push({
      grade: 'caution',
      text: `Below ${inWords(273.15, 'temperature')} free water becomes ice, on strainer and filters first.`,
    })
  if (input.limit === 'd975')
    notices.push({
      grade: 'information',
      text: 'The limit of ASTM D975 is for water and sediment that a centrifuge throws down: dissolved water does not count there, so this comparison is on the strict side.',
    })
  return notices
}

/** Dissolved and free water now and when cold, and the limit. */
export function compute(input: Values) {
  const ratio = hydrogenToCarbon(input.density)
  const solubleAt = (temperature: number) =>
    input.correction * waterMassFraction(waterMoleFraction(ratio, temperature), input.relativeMolecularMass)
  const soluble = solubleAt(input.temperature)
  const solubleCold = solubleAt(input.coldest)
  const free = Math.max(0, input.water - soluble)
  const freeCold = Math.max(free, input.water - solubleCold)
  const limit = limitOf(input, soluble)
  const state = stateOf(input.water, soluble, solubleCold)
  const fuelMass = input.tankVolume * input.density
  return {
    outputs: {
      solubility: soluble,
      free,
      freeCold,
      freeVolume: (freeCold * fuelMass) / WATER_DENSITY,
      state,
      verdict: input.water <= limit ? ('within' as const) : ('outside' as const),
      limitAsMass: limit,
    },
    steps: [
      step('Hydrogen to carbon by mass', 'H/C', '(26 − 15d) / (74 + 15d), d = ρ₁₅/999', ratio, 'ratio'),
      step(
        'Water dissolved at saturation, by moles',
        'x',
        '10^[−(4200 H/C + 1050)(1/T − 0.0016)]',
        waterMoleFraction(ratio, input.temperature),
        'ratio',
      ),
      step('The same by mass', 's', 'f · 18.015 x / [18.015 x + M (1 − x)]', soluble, 'massFraction'),
      step('When coldest', 's_c', 'the same with T_c', solubleCold, 'massFraction'),
      step('Free when coldest', 'w_f', 'w − s_c, not below 0', freeCold, 'massFraction'),
      step('Limit as a mass fraction', 'w_max', 'by volume: share · 998 / ρ₁₅', limit, 'massFraction'),
    ],
    notices: noticesOf(input, state, freeCold),
  }
}
