import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'energy-content',
  title: 'Energy in a fuel',
  purpose: 'How much energy is in a kilogram and in a litre of this fuel?',
  alsoCalled: ['calorific value', 'heating value', 'MJ per kg', 'lower heating value'],
  equation: {
    tex: String.raw`H_n = (46.423 - 8.792\!\times\!10^{-6}\rho^2 + 3.170\!\times\!10^{-3}\rho)(1 - w - a - s) + 9.42\,s - 2.449\,w`,
    words:
      'The net energy in MJ/kg of a distillate follows from its density at 15 °C, for the share that is neither water, ash nor sulfur; sulfur adds a little of its own, and water costs the heat that boils it away. Residual fuel has slightly other constants, 46.704, 8.802 and 3.167.',
  },
  sources: ['iso-8217', 'residual-energy-notes', 'nbs-mp97', 'astm-d1250'],
  validity:
    'Fuels of mineral oil from 750 kg/m³ to 1010 kg/m³ without cetane improver or other chemicals in quantity. Not for more than about 10 % of fatty acid methyl ester. An estimate from density: within about 1 % of a bomb calorimeter for common fuels (from memory). The ± shown is only what the accuracy of the inputs makes of it.',
  inputs,
  outputs: {
    net: { type: 'quantity', label: 'Net specific energy', symbol: 'H_n', kind: 'specificEnergy' },
    netPerVolume: {
      type: 'quantity',
      label: 'Net energy of a volume at the temperature of the fuel',
      symbol: 'H_V',
      kind: 'energyDensity',
    },
    gross: { type: 'quantity', label: 'Gross specific energy', symbol: 'H_g', kind: 'specificEnergy' },
    grossPerVolume: {
      type: 'quantity',
      label: 'Gross energy of a volume at the temperature of the fuel',
      symbol: 'H_gV',
      kind: 'energyDensity',
    },
    netPerVolume15: {
      type: 'quantity',
      label: 'Net energy of a volume at 15 °C',
      symbol: 'H_V15',
      kind: 'energyDensity',
    },
    perKelvin: {
      type: 'quantity',
      label: 'Change of the energy of a volume for each kelvin',
      symbol: 'c',
      kind: 'volumeExpansion',
    },
  },
  compute,
  chart: {
    x: 'density',
    y: 'netPerVolume',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.max(620, Math.min(780, input.density - 20)),
      maximum: Math.min(1150, Math.max(input.fuel === 'residual' ? 1010 : 900, input.density + 20)),
    }),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
