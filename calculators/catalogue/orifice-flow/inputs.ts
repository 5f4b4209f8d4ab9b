import type { Inputs } from '../../calculator/types.ts'
import { flowingDensity, flowingViscosity, flowOf } from '../common-inputs.ts'

export const inputs = {
  form: {
    type: 'choice',
    label: 'Orifice',
    help: 'The standard covers measuring plates in pipes from 50 mm. The restrictors of a fuel circuit are far smaller.',
    options: [
      { value: 'sharp', label: 'Small restrictor, thin with a sharp edge' },
      { value: 'thick', label: 'Small restrictor, a drilled plug' },
      { value: 'plate', label: 'Measuring plate after ISO 5167-2' },
    ],
    default: 'sharp',
  },
  solve: {
    type: 'choice',
    label: 'What is asked',
    help: 'The other is then known.',
    options: [
      { value: 'flow', label: 'The flow, from the drop' },
      { value: 'drop', label: 'The drop, from the flow' },
    ],
    default: 'flow',
  },
  bore: {
    type: 'quantity',
    label: 'Bore of the orifice',
    symbol: 'd',
    help: 'Measured with a pin gauge. It counts with its square.',
    kind: 'length',
    units: ['mm', 'in', 'um'],
    physical: { minimum: 1e-5, maximum: 1 },
    default: 0.003,
    accuracy: { absolute: 2e-5 },
  },
  pipe: {
    type: 'quantity',
    label: 'Bore of the line before it',
    symbol: 'D',
    help: 'Inside diameter.',
    kind: 'length',
    units: ['mm', 'in', 'm'],
    physical: { minimum: 1e-4, maximum: 2 },
    default: 0.016,
    accuracy: { relative: 0.01 },
  },
  tappings: {
    type: 'choice',
    label: 'Pressure tappings',
    help: 'Where the drop of the plate is taken.',
    options: [
      { value: 'corner', label: 'In the corners' },
      { value: 'flange', label: 'In the flanges, 25.4 mm away' },
      { value: 'd-and-half-d', label: 'At D before and D/2 behind' },
    ],
    default: 'corner',
    when: { input: 'form', oneOf: ['plate'] },
  },
  drop: {
    type: 'quantity',
    label: 'Pressure drop',
    symbol: 'Δp',
    help: 'Between the tappings, or before less behind the restrictor.',
    kind: 'pressureDifference',
    physical: { minimum: 0.1, maximum: 1e8 },
    default: 70e3,
    accuracy: { absolute: 2e3 },
    when: { input: 'solve', oneOf: ['flow'] },
  },
  flow: {
    ...flowOf('Flow', 'Q', 'Through the orifice.', 5e-5),
    physical: { minimum: 1e-9, maximum: 10 },
    when: { input: 'solve', oneOf: ['drop'] },
  },
  density: flowingDensity,
  kinematicViscosity: flowingViscosity,
} as const satisfies Inputs
