import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { FuelRecord } from '../../calculator/types.ts'
import { viscosityAt40 } from '../measured-line.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

/** Density at 15 °C, and the viscosity at 40 °C, where certificates give it. */
function fromFuel(fuel: FuelRecord) {
  const density = { knownDensity: fuel.densityAt15, knownTemperature: 288.15 }
  const kinematicViscosity = viscosityAt40(fuel)
  return kinematicViscosity === undefined ? density : { ...density, temperature: 313.15, kinematicViscosity }
}

export default defineCalculator({
  id: 'kinematic-and-dynamic-viscosity',
  title: 'Kinematic and dynamic viscosity',
  purpose: 'The certificate gives mm²/s: how many mPa·s does the pump feel, or the other way round?',
  alsoCalled: ['centipoise', 'cP to cSt', 'cSt to cP', 'mPa·s'],
  equation: {
    tex: String.raw`\mu = \nu\,\rho`,
    words:
      'Dynamic viscosity is kinematic viscosity times density, all three at the same temperature. A density known at another temperature is first brought there.',
  },
  sources: ['iso-3104', 'astm-d1250'],
  validity:
    'A definition: exact for any liquid. The correction of the density holds for crude oil, refined products and lubricating oils from −50 to 150 °C at the pressure of the air. Not below the cloud point, where the viscosity depends on the rate of shear.',
  inputs,
  outputs: {
    dynamicViscosity: { type: 'quantity', label: 'Dynamic viscosity', symbol: 'μ', kind: 'dynamicViscosity' },
    kinematicViscosity: {
      type: 'quantity',
      label: 'Kinematic viscosity',
      symbol: 'ν',
      kind: 'kinematicViscosity',
    },
    densityAtTemperature: {
      type: 'quantity',
      label: 'Density at the temperature of the viscosity',
      symbol: 'ρ',
      kind: 'density',
    },
  },
  compute,
  fromFuel,
  cases,
})
