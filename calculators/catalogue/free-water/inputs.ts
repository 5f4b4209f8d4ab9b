import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { SOLUBILITY_RANGE } from '../../cleanliness/water.ts'

const temperature = {
  kind: 'temperature',
  physical: { minimum: 200, maximum: 500 },
  valid: SOLUBILITY_RANGE,
} as const satisfies Partial<QuantityInput>

export const inputs = {
  water: {
    type: 'quantity',
    label: 'Water found, in all',
    symbol: 'w',
    help: 'By Karl Fischer titration, which finds dissolved and free water together.',
    kind: 'massFraction',
    physical: { minimum: 0, maximum: 0.5 },
    default: 120e-6,
    // Common practice: about a tenth between two laboratories at this level.
    accuracy: { relative: 0.1 },
  },
  density: {
    type: 'quantity',
    label: 'Density of the fuel at 15 °C',
    symbol: 'ρ₁₅',
    help: 'From the certificate. It stands for how much hydrogen the fuel holds.',
    kind: 'density',
    physical: { minimum: 600, maximum: 1100 },
    valid: { minimum: 700, maximum: 1000 },
    default: 845,
  },
  temperature: {
    type: 'quantity',
    label: 'Temperature of the fuel',
    symbol: 'T',
    help: 'In the tank, when the sample was taken.',
    ...temperature,
    default: 293.15,
    accuracy: { absolute: 1 },
  },
  coldest: {
    type: 'quantity',
    label: 'Coldest that this fuel will be',
    symbol: 'T_c',
    help: 'In the tank or in a line at night, before it is burnt.',
    ...temperature,
    default: 273.15,
    accuracy: { absolute: 1 },
  },
  relativeMolecularMass: {
    type: 'quantity',
    label: 'Mean relative molecular mass of the fuel',
    symbol: 'M',
    help: 'Gas oil about 215, kerosine about 165 (from memory). A tenth more gives a tenth less water.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 50, maximum: 1000 },
    default: 215,
  },
  correction: {
    type: 'quantity',
    label: 'Measured solubility over that of the equation',
    symbol: 'f',
    help: 'Leave 1 unless a laboratory has measured your fuel. FAME and additives let it dissolve more. The equation by itself is taken as known to 40 %.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0.1, maximum: 20 },
    default: 1,
    // Our own comparison with the jet fuel of the cases: a third high when warm, nearly a half low when cold.
    accuracy: { relative: 0.4 },
  },
  limit: {
    type: 'choice',
    label: 'Limit to compare with',
    help: 'Where the standard has a volume, it is turned into mass with the density of the fuel.',
    options: [
      { value: 'en-590', label: 'EN 590: 200 mg/kg' },
      { value: 'd975', label: 'ASTM D975 grades 1-D and 2-D: water and sediment 0.05 % by volume' },
      { value: 'dma', label: 'ISO 8217 DMX, DMA, DMZ: clear and bright' },
      { value: 'dmb', label: 'ISO 8217 DMB: 0.30 % by volume' },
    ],
    default: 'en-590',
  },
  tankVolume: {
    type: 'quantity',
    label: 'Fuel in the tank',
    symbol: 'V',
    help: 'To tell how much water could collect at its bottom.',
    kind: 'volume',
    units: ['L', 'm3', 'gal', 'impgal'],
    physical: { minimum: 1e-6, maximum: 1e6 },
    default: 4,
  },
} as const satisfies Inputs
