import type { Inputs } from '../../calculator/types.ts'
import {
  displacementInput,
  pumpDensityInput,
  pumpFlowInput,
  pumpViscosityInput,
  riseInput,
  speedInput,
} from '../pump-inputs.ts'

export const inputs = {
  displacement: displacementInput,
  density: pumpDensityInput,
  known: {
    type: 'choice',
    label: 'Known point, given as',
    help: 'One point of the pump at a stated speed, pressure and viscosity.',
    options: [
      { value: 'flow', label: 'Delivery' },
      { value: 'efficiency', label: 'Volumetric efficiency' },
    ],
    default: 'flow',
  },
  knownFlow: {
    ...pumpFlowInput('Delivery at the known point', 'Q₁', 4.5e-4),
    when: { input: 'known', oneOf: ['flow'] },
  },
  knownEfficiency: {
    type: 'quantity',
    label: 'Volumetric efficiency at the known point',
    symbol: 'η₁',
    help: 'Delivery over derived flow.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0.01, maximum: 1 },
    default: 0.93,
    accuracy: { absolute: 0.01 },
    when: { input: 'known', oneOf: ['efficiency'] },
  },
  knownSpeed: speedInput('Speed at the known point', 'n₁'),
  knownRise: riseInput('Pressure rise at the known point', 'Δp₁', 260e3),
  knownViscosity: pumpViscosityInput('Viscosity at the known point', 'ν₁', 3e-6),
  speed: speedInput('Speed', 'n'),
  rise: riseInput('Pressure rise', 'Δp', 260e3),
  viscosity: pumpViscosityInput('Viscosity', 'ν', 2.07e-6),
} as const satisfies Inputs
