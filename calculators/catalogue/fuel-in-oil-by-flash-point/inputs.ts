import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const flashPoint = {
  type: 'quantity',
  kind: 'temperature',
  physical: { minimum: 150, maximum: 1000 },
  valid: { minimum: 313.15, maximum: 633.15 },
} as const satisfies Partial<QuantityInput>

/** One laboratory repeats within about 5 °C on used oil by ASTM D93, from memory: 3.5 °C for each, rounded up. */
const tested = { absolute: 4 } as const

export const inputs = {
  newFlash: {
    ...flashPoint,
    label: 'Flash point of the new oil',
    symbol: 'F_new',
    help: 'Of the batch in the sump, by the closed cup as the used oil. Data sheets often give the open cup, which reads higher.',
    default: 498.15,
    accuracy: tested,
  },
  usedFlash: {
    ...flashPoint,
    label: 'Flash point of the used oil',
    symbol: 'F_used',
    help: 'By the closed cup of Pensky and Martens. From a sample that was kept shut: fuel leaves an open one.',
    default: 468.15,
    accuracy: tested,
  },
  freshFlash: {
    ...flashPoint,
    label: 'Flash point of the fuel, fresh',
    symbol: 'F_fresh',
    help: "From the fuel's certificate.",
    default: 338.15,
    accuracy: { absolute: 3 },
  },
  ageing: {
    type: 'quantity',
    label: "Rise of the fuel's flash point in hot oil",
    symbol: 'ΔF_aged',
    help: 'By how much the fuel flashes higher once the crankcase has driven off its lightest part. Nobody measures it: 35 °C is an assumption.',
    kind: 'temperatureDifference',
    physical: { minimum: 0, maximum: 200 },
    // No accuracy: the two results, for fresh and for aged fuel, show the whole of this doubt.
    default: 35,
  },
  testSpread: {
    type: 'quantity',
    label: 'Fall that the test can tell',
    symbol: 'R',
    help: 'By how much two laboratories may differ on the same oil. Less with one apparatus and one operator.',
    kind: 'temperatureDifference',
    physical: { minimum: 0, maximum: 100 },
    default: 10,
  },
} as const satisfies Inputs
