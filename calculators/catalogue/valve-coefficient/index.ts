import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'valve-coefficient',
  title: 'Valve coefficient Kv and Cv',
  purpose: 'How large a valve does this flow need, or what does this valve pass, also with cold fuel?',
  alsoCalled: ['Kv', 'Cv', 'flow coefficient', 'valve size', 'IEC 60534', 'valve big enough'],
  equation: {
    tex: String.raw`Q = N_1\,F_R\,C\,\sqrt{\frac{\min\left(\Delta p,\;F_L^2 (p_1 - F_F\,p_v)\right)}{\rho/\rho_0}}`,
    words:
      'Flow is the coefficient times the viscosity correction times the root of the drop over relative density. The drop counts only up to the one at which the liquid boils in the seat.',
  },
  sources: ['iec-60534-2-1'],
  validity:
    'Liquids, valve and line of one size without reducers, coefficient stated for the lift at which the valve stands. The viscosity correction is stated up to C/d² of 0.04 (Kv and mm). Water at 15 °C, 999.1 kg/m³, is the reference. Accuracies are common practice, no published source.',
  inputs,
  outputs: {
    kv: { type: 'quantity', label: 'Metric coefficient', symbol: 'Kv', kind: 'ratio', units: ['1'] },
    cv: { type: 'quantity', label: 'US coefficient', symbol: 'Cv', kind: 'ratio', units: ['1'] },
    flow: { type: 'quantity', label: 'Flow', symbol: 'Q', kind: 'volumeFlow' },
    drop: { type: 'quantity', label: 'Pressure drop', symbol: 'Δp', kind: 'pressureDifference' },
    regime: {
      type: 'verdict',
      label: 'Flow in the seat',
      options: {
        turbulent: { label: 'Turbulent: viscosity does not count', grade: 'good' },
        viscous: { label: 'Held back by viscosity', grade: 'information' },
        choked: { label: 'Choked: fuel boils in the seat', grade: 'action' },
      },
    },
    factor: {
      type: 'quantity',
      label: 'Viscosity correction',
      symbol: 'F_R',
      kind: 'ratio',
      units: ['1', '%'],
    },
    reynolds: {
      type: 'quantity',
      label: 'Valve Reynolds number',
      symbol: 'Re_v',
      kind: 'ratio',
      units: ['1'],
    },
    chokedDrop: {
      type: 'quantity',
      label: 'Drop at which it chokes',
      symbol: 'Δp_ch',
      kind: 'pressureDifference',
    },
  },
  compute,
  chart: {
    x: 'kinematicViscosity',
    y: 'factor',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(1e-6, input.kinematicViscosity),
      maximum: Math.min(1, Math.max(1e-4, 2 * input.kinematicViscosity)),
    }),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
