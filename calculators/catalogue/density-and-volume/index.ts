import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'density-and-volume',
  title: 'Density and volume at a temperature',
  purpose: 'What does this fuel weigh, and how much room does it take at another temperature?',
  alsoCalled: [
    'VCF',
    'volume correction factor',
    'ASTM D1250',
    'API MPMS 11.1',
    'API gravity',
    'specific gravity',
    'litres to kilograms of fuel',
    'gallons to pounds of fuel',
  ],
  equation: {
    tex: String.raw`\frac{\rho(t)}{\rho_b} = e^{-\alpha\,\Delta t\,(1 + 0.8\,\alpha\,\Delta t)},\qquad \alpha = \frac{K_0}{\rho_b^2} + \frac{K_1}{\rho_b} + K_2`,
    words:
      'Density falls with temperature by a factor that depends on the density at the base temperature and on the group of the product. The 2004 edition adds a shift between the old and the new temperature scale of a few thousandths of a degree.',
  },
  sources: ['astm-d1250'],
  validity:
    'Crude oil, refined products and lubricating oils, −50 to 150 °C and up to 10.3 MPa by the 2004 edition; 653 to 1075 kg/m³ for refined products by the 1980 tables. Not for liquefied gas. A density read from a glass hydrometer needs its own correction first. Weight in air is about 0.1 % less than mass.',
  inputs,
  outputs: {
    densityAtTarget: {
      type: 'quantity',
      label: 'Density at the wanted temperature',
      symbol: 'ρ',
      kind: 'density',
    },
    volumeAtTarget: {
      type: 'quantity',
      label: 'Volume at the wanted temperature',
      symbol: 'V_t',
      kind: 'volume',
    },
    mass: { type: 'quantity', label: 'Mass', symbol: 'm', kind: 'mass' },
    volumeAt15: { type: 'quantity', label: 'Volume at 15 °C', symbol: 'V₁₅', kind: 'volume' },
    volumeAt60F: { type: 'quantity', label: 'Volume at 60 °F', symbol: 'V₆₀', kind: 'volume' },
    factorTo15: {
      type: 'quantity',
      label: 'Volume correction factor to 15 °C',
      symbol: 'C₁₅',
      kind: 'ratio',
    },
    factorTo60F: {
      type: 'quantity',
      label: 'Volume correction factor to 60 °F',
      symbol: 'C₆₀',
      kind: 'ratio',
    },
    densityAt15: { type: 'quantity', label: 'Density at 15 °C', symbol: 'ρ₁₅', kind: 'density' },
    densityAt60F: { type: 'quantity', label: 'Density at 60 °F', symbol: 'ρ₆₀', kind: 'density' },
  },
  compute,
  chart: {
    x: 'targetTemperature',
    y: 'densityAtTarget',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(263.15, input.targetTemperature - 10),
      maximum: Math.max(343.15, input.targetTemperature + 10),
    }),
    marks: (input) => [{ label: 'Known density', x: input.knownTemperature, y: input.knownDensity }],
  },
  fromFuel: (fuel) => ({ knownDensity: fuel.densityAt15, knownTemperature: 288.15 }),
  cases,
})
