import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { FuelRecord } from '../../calculator/types.ts'
import { lineThroughPoints, viscosityOnLine } from '../../fuel/viscosity-walther.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const FIFTEEN_CELSIUS = 288.15

/** Density and viscosity at 15 °C. */
function fromFuel(fuel: FuelRecord) {
  const first = fuel.viscosities[0]
  const last = fuel.viscosities.at(-1)
  if (!first || !last) return { fuelDensity: fuel.densityAt15 }
  const kinematicViscosity = viscosityOnLine(lineThroughPoints(first, last), FIFTEEN_CELSIUS)
  return { fuelDensity: fuel.densityAt15, kinematicViscosity }
}

export default defineCalculator({
  id: 'settling-time',
  title: 'Settling time of water',
  purpose: 'How long must the tank stand before the water is at the bottom?',
  alsoCalled: ['how long a tank must settle', 'Stokes settling', 'water settling', 'tank settling'],
  equation: {
    tex: String.raw`v = \frac{g\,(\rho_w - \rho)\,d^2}{18\,\mu} \qquad t = \frac{h}{v}`,
    words:
      'A small drop sinks with a velocity that goes with the square of its diameter and with how much heavier than the fuel it is, and against the viscosity. The time is the height over that velocity.',
  },
  sources: ['stokes-1851'],
  validity:
    "Single round drops in fuel at rest, Reynolds number of the drop below 1. Drops that meet and join settle faster; a tank that is stirred, warmed or rocked keeps small drops afloat. Water with additives in the fuel keeps round and stiff, so Stokes' law for a solid sphere fits it.",
  inputs,
  outputs: {
    time: {
      type: 'quantity',
      label: 'Time to settle',
      symbol: 't',
      kind: 'time',
      units: ['h', 'min', 'd', 's'],
    },
    verdict: {
      type: 'verdict',
      label: 'After the time at rest',
      options: {
        settled: { label: 'A drop of this size is at the bottom', grade: 'good' },
        afloat: { label: 'Drops of this size are still in the fuel', grade: 'caution' },
      },
    },
    smallestSettled: {
      type: 'quantity',
      label: 'Smallest drop that has settled in the time at rest',
      symbol: 'd_r',
      kind: 'length',
      units: ['um', 'mm', 'in'],
    },
    velocity: {
      type: 'quantity',
      label: 'Settling velocity',
      symbol: 'v',
      kind: 'velocity',
      units: ['mm/s', 'm/s', 'ft/s'],
    },
    reynolds: { type: 'quantity', label: 'Reynolds number of the drop', symbol: 'Re', kind: 'ratio' },
  },
  compute,
  chart: {
    x: 'diameter',
    y: 'time',
    yScale: 'log',
    range: (input) => ({ minimum: input.diameter / 4, maximum: input.diameter * 4 }),
    limits: (input) => [{ label: 'Time at rest', y: input.rest }],
  },
  fromFuel,
  cases,
})
