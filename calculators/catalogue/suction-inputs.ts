import type { QuantityInput } from '../calculator/types.ts'
import type { Bill } from '../hydraulics/fittings.ts'
import type { SuctionSide } from '../hydraulics/suction.ts'
import { standardAtmosphere } from '../hydraulics/vapour.ts'
import { billInputs, fixedLossInput, pipeInputs } from './line-inputs.ts'

const flow = { ...pipeInputs.flow, physical: { minimum: 1e-9, maximum: 10 } } as const

/** What both suction calculators ask for. Accuracies: common practice, no published source. */
export const suctionInputs = {
  ...pipeInputs,
  flow,
  lift: {
    type: 'quantity',
    label: 'Pump inlet above the fuel in the tank',
    symbol: 'h',
    help: 'To the surface of the fuel at its lowest level; negative where the tank stands higher.',
    kind: 'length',
    physical: { minimum: -1000, maximum: 1000 },
    default: 0.3,
    accuracy: { absolute: 0.05 },
  },
  elbows90: billInputs.elbows90,
  bends90: billInputs.bends90,
  ballValves: { ...billInputs.ballValves, label: 'Ball or gate valves' },
  swingChecks: billInputs.swingChecks,
  liftChecks: { ...billInputs.liftChecks, label: 'Foot valves, or check valves with a spring' },
  fixedLoss: fixedLossInput,
  strainerDrop: {
    type: 'quantity',
    label: 'Drop of the suction strainer',
    symbol: 'Δp_s',
    help: 'At this flow and viscosity: clean, or as read across it. Other given losses may be added here.',
    kind: 'pressureDifference',
    physical: { minimum: 0, maximum: 1e6 },
    default: 2e3,
    accuracy: { relative: 0.2 },
  },
  tankPressure: {
    type: 'quantity',
    label: 'Pressure in the tank',
    symbol: 'p_t',
    help: 'Gauge pressure over the fuel: zero with a free vent, below zero with a blocked one.',
    kind: 'gaugePressure',
    physical: { minimum: -1e5, maximum: 1e7 },
    default: 0,
  },
  altitude: {
    type: 'quantity',
    label: 'Height over the sea',
    symbol: 'z',
    help: 'For the pressure of the standard atmosphere. The weather moves the real one by a few per cent.',
    kind: 'length',
    units: ['m', 'ft'],
    physical: { minimum: -500, maximum: 11_000 },
    default: 0,
  },
} as const satisfies Record<string, QuantityInput>

/** Common practice in the oil-burner trade, no published source: 10 inHg for light fuel. */
export const limitInput = {
  type: 'quantity',
  label: 'Vacuum limit at the pump inlet',
  symbol: 'V_max',
  help: 'From the pump maker. Without one, 10 inHg (34 kPa) is common practice for light fuel: beyond it air comes out of the fuel.',
  kind: 'pressureDifference',
  units: ['kPa', 'inHg', 'psi', 'bar', 'mbar'],
  physical: { minimum: 0, maximum: 101_325 },
  default: 34e3,
} as const satisfies QuantityInput

type Numbers = Readonly<Record<Exclude<keyof typeof suctionInputs, keyof Bill>, number>> & Bill

/** The suction side as the physics sees it, with the pressure of the atmosphere around it. */
export function suctionSideOf(input: Numbers): { side: SuctionSide; atmosphere: number } {
  const atmosphere = standardAtmosphere(input.altitude)
  return {
    atmosphere,
    side: {
      line: {
        length: input.length,
        bore: input.bore,
        roughness: input.roughness,
        fittings: input,
        method: 'two-k',
        fixedLoss: input.fixedLoss,
      },
      lift: input.lift,
      strainerDrop: input.strainerDrop,
      surfacePressure: atmosphere + input.tankPressure,
    },
  }
}
