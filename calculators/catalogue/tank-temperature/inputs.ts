import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { density15, flowOf, temperatureOf } from '../common-inputs.ts'

const side = (label: string, symbol: string, help: string, value: number) =>
  ({
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'length',
    physical: { minimum: 0.01, maximum: 100 },
    default: value,
    accuracy: { relative: 0.02 },
  }) as const satisfies QuantityInput

export const inputs = {
  startVolume: {
    type: 'quantity',
    label: 'Fuel in the tank at the start',
    symbol: 'V₀',
    help: 'Usable volume if it was filled.',
    kind: 'volume',
    physical: { minimum: 1e-3, maximum: 1e4 },
    default: 4,
    accuracy: { relative: 0.02 },
  },
  start: temperatureOf('Temperature at the start', 'T₀', 'Of the fuel in the tank.', 293.15),
  length: side('Length of the tank', 'a', 'Inside, of an upright box.', 2.5),
  width: side('Width of the tank', 'b', 'Inside.', 1.5),
  heat: {
    type: 'quantity',
    label: 'Heat from the return',
    symbol: 'P',
    help: 'Over the fuel in the tank; the calculator of the return flow gives it.',
    kind: 'power',
    physical: { minimum: 0, maximum: 1e6 },
    default: 7300,
    accuracy: { relative: 0.3 },
  },
  burnt: {
    ...flowOf('Burnt', 'Q_b', 'Average over the time: load goes up and down.', 5e-5, 0),
    physical: { minimum: 0, maximum: 0.01 },
  },
  ambient: {
    ...temperatureOf('Air round the tank', 'T_a', 'In its shade, average over the time.', 298.15),
    accuracy: { absolute: 3 },
  },
  heatTransfer: {
    type: 'quantity',
    label: 'Heat transfer of the tank',
    symbol: 'U',
    help: 'Bare: about 7 to 8 sheltered, 8 to 9 W/(m²·K) in the open; insulated about 2. More in the wind of a moving vehicle.',
    kind: 'heatTransferCoefficient',
    physical: { minimum: 0.001, maximum: 1000 },
    valid: { minimum: 0.3, maximum: 30 },
    default: 8.5,
    accuracy: { relative: 0.3 },
  },
  time: {
    type: 'quantity',
    label: 'Time',
    symbol: 't',
    help: 'Length of the shift.',
    kind: 'time',
    units: ['h', 'min', 's', 'd'],
    physical: { minimum: 0, maximum: 2_592_000 },
    default: 28_800,
  },
  limit: {
    type: 'quantity',
    label: 'Highest temperature wanted',
    symbol: 'T_max',
    help: 'At the suction, so that the fuel at the injectors stays in its window.',
    kind: 'temperature',
    physical: { minimum: 150, maximum: 800 },
    default: 328.15,
  },
  density15,
} as const satisfies Inputs
