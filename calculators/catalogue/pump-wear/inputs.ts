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
  flow: pumpFlowInput('Flow measured now', 'Q', 4.3e-4),
  speed: speedInput('Speed during the measurement', 'n'),
  rise: riseInput('Pressure rise during the measurement', 'Δp', 260e3),
  viscosity: pumpViscosityInput('Viscosity during the measurement', 'ν', 4e-6),
  newFlow: { ...pumpFlowInput('Flow when new', 'Q₀', 4.5e-4), accuracy: { relative: 0.005 } },
  newSpeed: speedInput('Speed when new', 'n₀'),
  newRise: riseInput('Pressure rise when new', 'Δp₀', 260e3),
  newViscosity: pumpViscosityInput('Viscosity when new', 'ν₀', 3e-6),
  least: {
    type: 'quantity',
    label: 'Least delivery at the conditions of the new pump',
    symbol: 'Q_min',
    help: 'What the circuit needs at that speed, pressure and viscosity.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 100 },
    default: 25e-3 / 60,
  },
} as const satisfies Inputs
