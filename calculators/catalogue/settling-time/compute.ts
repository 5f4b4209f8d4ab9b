import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { refuse } from '../../calculator/refusal.ts'
import {
  CREEPING,
  reynoldsOfDrop,
  STOKES_TO,
  stokesDiameter,
  stokesVelocity,
} from '../../cleanliness/settling.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Slower than this, the stirring of a tank by warmth alone outdoes settling: common practice, no published source. [m/s] */
const STIRRED_BELOW = 1e-5
/** Under this difference small errors of density turn the answer. [kg/m³] */
const CLOSE_DENSITIES = 20

function noticesOf(input: Values, velocity: number, reynolds: number): Notice[] {
  const notices: Notice[] = []
  if (reynolds > STOKES_TO)
    notices.push({
      grade: 'action',
      text: `The Reynolds number of the drop is above ${STOKES_TO}: Stokes' law no longer holds and the drop is slower than said. It is also so large that it settles within minutes.`,
    })
  else if (reynolds > CREEPING)
    notices.push({
      grade: 'caution',
      text: `The Reynolds number of the drop is above ${CREEPING}: the drop is up to about 15 % slower than said.`,
    })
  if (velocity < STIRRED_BELOW)
    notices.push({
      grade: 'caution',
      text: 'So small a drop settles more slowly than the fuel in a tank stirs itself when its walls warm or cool. It may never reach the bottom: it takes a filter or a coalescer.',
    })
  if (input.dropDensity - input.fuelDensity < CLOSE_DENSITIES)
    notices.push({
      grade: 'caution',
      text: 'Drop and fuel are nearly as heavy as each other: a small error in either density changes the time by a large share.',
    })
  return notices
}

/** How fast the drop sinks, how long it takes, and what has reached the bottom after the time at rest. */
export function compute(input: Values) {
  if (!(input.dropDensity > input.fuelDensity))
    return refuse(
      'dropDensity',
      `${inputs.dropDensity.label} is ${inWords(input.dropDensity, 'density')}, not above that of the fuel, ${inWords(input.fuelDensity, 'density')}: the drop floats`,
      'a density above that of the fuel',
    )
  const dynamicViscosity = input.kinematicViscosity * input.fuelDensity
  const velocity = stokesVelocity(input.diameter, input.dropDensity, input.fuelDensity, dynamicViscosity)
  const reynolds = reynoldsOfDrop(velocity, input.diameter, input.kinematicViscosity)
  const time = input.height / velocity
  const smallest = stokesDiameter(
    input.height / input.rest,
    input.dropDensity,
    input.fuelDensity,
    dynamicViscosity,
  )
  return {
    outputs: {
      time,
      velocity,
      smallestSettled: smallest,
      reynolds,
      verdict: time <= input.rest ? ('settled' as const) : ('afloat' as const),
    },
    steps: [
      step('Dynamic viscosity of the fuel', 'μ', 'ν ρ', dynamicViscosity, 'dynamicViscosity'),
      step('Water heavier than fuel by', 'Δρ', 'ρ_w − ρ', input.dropDensity - input.fuelDensity, 'density'),
      { ...step('Settling velocity', 'v', 'g Δρ d² / (18 μ)', velocity, 'velocity'), unit: 'mm/s' },
      step('Reynolds number of the drop', 'Re', 'v d / ν', reynolds, 'ratio'),
      { ...step('Time to settle', 't', 'h / v', time, 'time'), unit: 'h' },
      {
        ...step(
          'Smallest drop settled in the time at rest',
          'd_r',
          '√[18 μ h / (t_r g Δρ)]',
          smallest,
          'length',
        ),
        unit: 'um',
      },
    ],
    notices: noticesOf(input, velocity, reynolds),
  }
}
