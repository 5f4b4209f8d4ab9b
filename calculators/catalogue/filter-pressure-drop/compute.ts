import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import {
  elementResistance,
  filterDrop,
  housingResistance,
  type FilterResistance,
} from '../../hydraulics/filter.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/**
 * Thresholds: common practice, no published source. The band in which the change is planned is wider than the ± that
 * usual gauges leave, so that a reading at the limit is not called in order.
 */
const PLAN_FROM = 0.8
const SUSPICIOUSLY_LOW = 0.7
/** Usual gauges and flows leave the share of the permitted drop known to about so much. */
const USUAL_DOUBT = 0.1
const LARGE_CORRECTION = 3

/** A reading that is the housing's alone leaves nothing for the element, but for rounding of this share. */
const ROUNDING = 1e-9

/** At half the permitted drop little of the element's life is left. */
const HALF_PERMITTED = 0.5

/** The filter's two resistances as the reading shows them; the element's is negative if the housing took it all. */
function resistanceOf(input: Values): FilterResistance {
  const housing = housingResistance(
    input.housingShare * input.cleanDrop,
    input.referenceFlow,
    input.referenceDensity,
  )
  const dynamicViscosity = input.kinematicViscosity * input.density
  const element = elementResistance(input.drop, input.flow, dynamicViscosity, input.density, housing)
  return {
    element: Math.abs(element * dynamicViscosity * input.flow) < ROUNDING * input.drop ? 0 : element,
    housing,
  }
}

function noticesOf(input: Values, dropAtReference: number): Notice[] {
  const notices: Notice[] = []
  if (dropAtReference < SUSPICIOUSLY_LOW * input.cleanDrop)
    notices.push({
      grade: 'caution',
      text: 'That is well below what a new element takes. Look for an element that is torn, missing or not seated, a bypass that is open, or less flow than was thought.',
    })
  const corrections = [input.kinematicViscosity / input.referenceViscosity, input.flow / input.referenceFlow]
  if (corrections.some((ratio) => ratio > LARGE_CORRECTION || ratio < 1 / LARGE_CORRECTION))
    notices.push({
      grade: 'caution',
      text: 'Flow or viscosity differ from reference by more than a factor of three. Read again with warmer fuel or at the usual speed if you can.',
    })
  const share = dropAtReference / input.changeOut
  if (share >= HALF_PERMITTED && share < 1)
    notices.push({
      grade: 'information',
      text: 'The drop climbs ever faster as an element loads: at half the permitted drop about 80 % of its life is gone, says one hydraulics lexicon.',
    })
  if (Math.abs(share - 1) < USUAL_DOUBT)
    notices.push({
      grade: 'caution',
      text: 'The reading lies so near the limit that usual gauges cannot tell the two sides apart: look at the ± of the share, and take the element as due.',
    })
  return notices
}

function stepsOf(input: Values, resistance: FilterResistance, element: number, housing: number): Step[] {
  const drop = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'pressureDifference',
  })
  const dynamicViscosity = input.kinematicViscosity * input.density
  const housingNow = filterDrop({ element: 0, housing: resistance.housing }, input.flow, 0, input.density)
  return [
    {
      label: 'Dynamic viscosity during the reading',
      symbol: 'μ',
      rule: 'ν ρ',
      value: dynamicViscosity,
      kind: 'dynamicViscosity',
    },
    drop('Housing during the reading', 'Δp_h', 's Δp_new (ρ/ρ₀) (Q/Q₀)²', housingNow),
    drop('Element during the reading', 'Δp_e', 'Δp − Δp_h', input.drop - housingNow),
    drop('Element at reference', 'Δp_e0', 'Δp_e (ν₀ρ₀ / νρ) (Q₀/Q)', element),
    drop('Housing at reference', 'Δp_h0', 's Δp_new', housing),
  ]
}

/** The reading brought to reference, judged against the change-out drop, and the drop at another flow. */
export function compute(input: Values) {
  if (input.changeOut <= input.cleanDrop) {
    return {
      refusal: {
        field: 'changeOut',
        reason: `${inputs.changeOut.label} is ${inWords(input.changeOut, 'pressureDifference')}, not above the drop of a new element, ${inWords(input.cleanDrop, 'pressureDifference')}`,
        accepted: 'a drop above that of a new element, at the same reference',
      },
    }
  }
  const resistance = resistanceOf(input)
  if (resistance.element < 0) {
    const alone = filterDrop({ element: 0, housing: resistance.housing }, input.flow, 0, input.density)
    return {
      refusal: {
        field: 'drop',
        reason: `${inputs.drop.label} is ${inWords(input.drop, 'pressureDifference')}, less than the housing alone takes at this flow, ${inWords(alone, 'pressureDifference')}`,
        accepted: 'a larger reading, or a smaller flow or share of the housing',
      },
    }
  }
  const referenceDynamicViscosity = input.referenceViscosity * input.referenceDensity
  const element = resistance.element * referenceDynamicViscosity * input.referenceFlow
  const housing = input.housingShare * input.cleanDrop
  const dropAtReference = element + housing
  const shareUsed = dropAtReference / input.changeOut
  return {
    outputs: {
      dropAtReference,
      ratioToClean: dropAtReference / input.cleanDrop,
      shareUsed,
      dropAtOtherFlow: filterDrop(
        resistance,
        input.otherFlow,
        input.kinematicViscosity * input.density,
        input.density,
      ),
      verdict:
        shareUsed >= 1
          ? ('change' as const)
          : shareUsed >= PLAN_FROM
            ? ('plan' as const)
            : ('inOrder' as const),
    },
    steps: stepsOf(input, resistance, element, housing),
    notices: noticesOf(input, dropAtReference),
  }
}
