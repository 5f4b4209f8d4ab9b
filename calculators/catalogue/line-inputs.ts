import type { QuantityInput } from '../calculator/types.ts'

/** How many of one fitting. */
function count(label: string, symbol: string, help: string, standard = 0) {
  return {
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0, maximum: 1000 },
    default: standard,
  } as const satisfies QuantityInput
}

/** What every line needs. Accuracies: common practice, no published source. */
export const pipeInputs = {
  flow: {
    type: 'quantity',
    label: 'Flow',
    symbol: 'Q',
    help: 'Through the whole line. On the suction and supply side this is the pump delivery.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 10 },
    default: 4.5e-4,
    accuracy: { relative: 0.05 },
  },
  kinematicViscosity: {
    type: 'quantity',
    label: 'Viscosity of the fuel',
    symbol: 'ν',
    help: 'At the temperature of the fuel in the line; the coldest start is the hardest.',
    kind: 'kinematicViscosity',
    physical: { minimum: 1e-7, maximum: 0.1 },
    default: 4.8e-6,
    accuracy: { relative: 0.05 },
  },
  density: {
    type: 'quantity',
    label: 'Density of the fuel',
    symbol: 'ρ',
    help: 'At the same temperature. A few kg/m³ matter little.',
    kind: 'density',
    physical: { minimum: 300, maximum: 2000 },
    default: 842,
    accuracy: { relative: 0.005 },
  },
  length: {
    type: 'quantity',
    label: 'Length of straight pipe',
    symbol: 'L',
    help: 'All straight pieces together, fittings apart.',
    kind: 'length',
    physical: { minimum: 0, maximum: 1e5 },
    default: 4,
    accuracy: { relative: 0.05 },
  },
  bore: {
    type: 'quantity',
    label: 'Inside diameter',
    symbol: 'D',
    help: 'Measured or from the pipe table, not the nominal size: in laminar flow the drop goes with its fourth power.',
    kind: 'length',
    units: ['mm', 'm', 'in'],
    physical: { minimum: 5e-4, maximum: 3 },
    valid: { minimum: 0.004, maximum: 1 },
    default: 0.025,
    accuracy: { absolute: 2e-4 },
  },
  roughness: {
    type: 'quantity',
    label: 'Roughness of the wall',
    symbol: 'ε',
    help: 'Drawn tube 0.0015 mm, commercial steel 0.046 mm, galvanized 0.15 mm, cast iron 0.26 mm. It counts in turbulent flow only.',
    kind: 'length',
    units: ['mm', 'um', 'm', 'in'],
    physical: { minimum: 0, maximum: 0.01 },
    default: 4.6e-5,
  },
} as const

/** A bill of fittings, wide open and of the bore of the pipe. */
export const billInputs = {
  elbows90: count('Elbows of 90°, short', 'n₁', 'Screwed or standard elbows.', 4),
  bends90: count('Bends of 90°, long', 'n₂', 'Bent tube or long-radius elbows, radius one and a half bores.'),
  elbows45: count('Elbows of 45°', 'n₃', 'Screwed or welded.'),
  teesThrough: count('Tees, straight through', 'n₄', 'The branch shut or without flow.'),
  teesBranch: count('Tees, through the branch', 'n₅', 'The flow turns the corner.'),
  gateValves: count('Gate valves', 'n₆', 'Wide open. A half-shut one takes many times more.'),
  ballValves: count('Ball valves', 'n₇', 'Wide open and of full bore.', 1),
  globeValves: count(
    'Globe valves',
    'n₈',
    'Wide open. One takes more than the straight pipe of a usual suction line.',
  ),
  angleValves: count('Angle valves', 'n₉', 'Wide open.'),
  swingChecks: count(
    'Check valves, swing',
    'n₁₀',
    'Pushed fully open by the flow; at a trickle they take more.',
  ),
  liftChecks: count('Check valves, lift or spring', 'n₁₁', 'A foot valve is one of these.'),
} as const

export const fixedLossInput = {
  type: 'quantity',
  label: 'Other losses, sum of coefficients',
  symbol: 'ΣK₀',
  help: 'Sharp entrance from a tank 0.5, pipe that stands into the tank 0.78, exit into a tank 1; add what a maker states.',
  kind: 'ratio',
  units: ['1'],
  physical: { minimum: 0, maximum: 1e5 },
  default: 0.78,
} as const satisfies QuantityInput
