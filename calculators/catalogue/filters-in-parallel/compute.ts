import { refuse } from '../../calculator/refusal.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { filterFlow, parallelDrop } from '../../hydraulics/filter-parallel.ts'
import { elementResistance, housingResistance, type FilterResistance } from '../../hydraulics/filter.ts'
import { step } from '../step.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Of the flow; beyond, one filter does the work of both. Common practice, no published source. */
const UNEQUAL = 0.75

/** One new filter of the two, from the drop that both take together: each then carries half the flow. */
function newFilter(input: Values): FilterResistance {
  const half = input.referenceFlow / 2
  const housing = housingResistance(input.housingShare * input.cleanDrop, half, input.referenceDensity)
  const dynamicViscosity = input.referenceViscosity * input.referenceDensity
  const element = elementResistance(
    input.cleanDrop * (1 - input.housingShare),
    half,
    dynamicViscosity,
    input.referenceDensity,
    0,
  )
  return { element, housing }
}

/** A plugged share leaves the rest of the area to carry the flow. */
function pluggedFilter({ element, housing }: FilterResistance, share: number): FilterResistance {
  return { element: share === 1 ? Infinity : element / (1 - share), housing }
}

function noticesOf(input: Values, share: number, drop: number): Notice[] {
  const notices: Notice[] = []
  const largest = Math.max(share, 1 - share)
  if (largest > UNEQUAL)
    notices.push({
      grade: 'caution',
      text: 'One filter carries nearly all the flow. It loads at twice the pace and stops less at the higher velocity. Change both together.',
    })
  if (largest > UNEQUAL && drop < input.changeOut)
    notices.push({
      grade: 'caution',
      text: 'The gauge across both stays below the change-out drop all the same: one gauge for two filters does not show a plugged one. Feel the housings: the one without flow lags in temperature (common practice).',
    })
  return notices
}

/** How the flow divides and what the gauge across both shows. */
export function compute(input: Values) {
  if (input.firstPlugged === 1 && input.secondPlugged === 1)
    return refuse(
      'secondPlugged',
      'Both filters are wholly plugged, so no flow passes',
      'less than 100 % for one',
    )
  const clean = newFilter(input)
  const first = pluggedFilter(clean, input.firstPlugged)
  const second = pluggedFilter(clean, input.secondPlugged)
  const dynamicViscosity = input.kinematicViscosity * input.density
  const dropOf = (one: FilterResistance, other: FilterResistance) =>
    parallelDrop(one, other, input.flow, dynamicViscosity, input.density)
  const drop = dropOf(first, second)
  const cleanNow = dropOf(clean, clean)
  const firstFlow = filterFlow(first, drop, dynamicViscosity, input.density)
  const secondFlow = filterFlow(second, drop, dynamicViscosity, input.density)
  const share = firstFlow / (firstFlow + secondFlow)
  return {
    outputs: {
      drop,
      ratioToClean: drop / cleanNow,
      firstFlow,
      secondFlow,
      secondShare: 1 - share,
      verdict: drop < input.changeOut ? ('below' as const) : ('above' as const),
    },
    steps: [
      step(
        'New element at half the reference flow',
        'Δp_e',
        '(1 − s) Δp_new',
        (1 - input.housingShare) * input.cleanDrop,
        'pressureDifference',
      ),
      step('Its housing', 'Δp_h', 's Δp_new', input.housingShare * input.cleanDrop, 'pressureDifference'),
      step('Dynamic viscosity', 'μ', 'ν ρ', dynamicViscosity, 'dynamicViscosity'),
      step(
        'Drop of both new, this fuel and flow',
        'Δp_c',
        'each carries Q/2',
        cleanNow,
        'pressureDifference',
      ),
      step('Drop at which the flows add up', 'Δp', 'Q₁(Δp) + Q₂(Δp) = Q', drop, 'pressureDifference'),
    ],
    notices: noticesOf(input, share, drop),
  }
}
