import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'mass-from-metered-volume',
  title: 'Mass from a metered volume',
  purpose: 'So many litres ran through the meter at this temperature: how many kilograms were delivered?',
  alsoCalled: [
    'bunker quantity',
    'delivery note',
    'litres to kilograms',
    'tonnes delivered',
    'weight of fuel delivered',
  ],
  equation: {
    tex: String.raw`m = V\,F\,C_{15}\,\rho_{15}`,
    words:
      'The metered volume, times the factor of the meter and the correction of volume to 15 °C, is the volume at 15 °C; times the density at 15 °C it is the mass.',
  },
  sources: ['astm-d1250', 'bunker-survey-example'],
  validity:
    'Crude oil, refined products and lubricating oils, −50 to 150 °C by the 2004 edition; 653 to 1075 kg/m³ for refined products by the 1980 tables. The pressure at the meter is left out: it changes the volume of diesel fuel by less than 1 part in 1000 up to 10 bar. Air or water that ran through the meter is counted as fuel. Mass in air is the usual shortening of Table 56 by 1.1 kg/m³.',
  inputs,
  outputs: {
    mass: { type: 'quantity', label: 'Mass', symbol: 'm', kind: 'mass' },
    inAir: {
      type: 'quantity',
      label: "Mass in air, the 'weight' of delivery papers",
      symbol: 'm_a',
      kind: 'mass',
    },
    volume15: { type: 'quantity', label: 'Volume at 15 °C', symbol: 'V₁₅', kind: 'volume' },
    factor: {
      type: 'quantity',
      label: 'Volume correction factor to 15 °C',
      symbol: 'C₁₅',
      kind: 'ratio',
    },
    densityAtMeter: { type: 'quantity', label: 'Density at the meter', symbol: 'ρ', kind: 'density' },
  },
  compute,
  chart: {
    x: 'volumeTemperature',
    y: 'mass',
    yScale: 'linear',
    // A meter that has corrected leaves no curve over the temperature: an empty range shows none.
    range: (input) =>
      input.meter === 'compensated'
        ? { minimum: 0, maximum: 0 }
        : {
            minimum: Math.min(273.15, input.volumeTemperature - 10),
            maximum: Math.max(323.15, input.volumeTemperature + 10),
          },
  },
  fromFuel: (fuel) => ({ knownDensity: fuel.densityAt15, knownTemperature: 288.15 }),
  cases,
})
