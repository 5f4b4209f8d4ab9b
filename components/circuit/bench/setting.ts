import type { Conditions } from '../../../calculators/circuit/types.ts'
import { standardAtmosphere } from '../../../calculators/hydraulics/vapour.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import type { BenchData, BenchState, Setting } from './types.ts'

/** How bad a fault is when it is first switched on: in the middle, so that there is room to either side. */
export const FIRST_SEVERITY = 0.5

/** How bad a fault is where a page links to the bench to show it. */
export const SHOWN_SEVERITY = 0.7

/** Where no other height is given. */
export const SEA_LEVEL = 0

/** [m] */
const HEIGHT_STEP = 50

/** Highest place, in steps, at which the air has at least a pressure. [Pa → m] */
function highestPlace(least: number): number {
  let height = SEA_LEVEL
  while (standardAtmosphere(height + HEIGHT_STEP) >= least) height += HEIGHT_STEP
  return height
}

/** Value of a figure of the data. [SI] */
export function figureOf(text: string, kind: KindId): number {
  const reading = readFigure(text, kind)
  if (!reading.ok) throw new Error(`«${text}»: ${reading.reason}; allowed: ${reading.accepted}`)
  return reading.si
}

/** Value of a figure of a circuit's data, which may be the id of a set point of its plant. [SI] */
export function figureIn({ setPoints }: BenchData, text: string, kind: KindId): number {
  return figureOf(setPoints[text]?.value ?? text, kind)
}

export type Slider = 'tankTemperature' | 'ambientTemperature' | 'tankLevel' | 'height'

export interface SliderSpec {
  readonly label: string
  readonly kind: 'temperature' | 'ratio' | 'length'
  /** [SI] */
  readonly least: number
  readonly most: number
  /** [unit shown] */
  readonly step: number
}

/** What can be slid, and how far. */
export function slidersOf(data: BenchData): Readonly<Record<Slider, SliderSpec>> {
  const { ranges } = data.circuit
  const slider = (
    id: Exclude<Slider, 'height'>,
    label: string,
    kind: SliderSpec['kind'],
    step: number,
  ): SliderSpec => {
    const [least, most] = ranges[id]
    return { label, kind, least: figureIn(data, least, kind), most: figureIn(data, most, kind), step }
  }
  return {
    tankTemperature: slider('tankTemperature', 'Fuel in the tank', 'temperature', 1),
    ambientTemperature: slider('ambientTemperature', 'Air outside', 'temperature', 1),
    tankLevel: slider('tankLevel', 'Level in the tank', 'ratio', 1),
    height: {
      label: 'Altitude',
      kind: 'length',
      least: SEA_LEVEL,
      most: highestPlace(figureIn(data, ranges.airPressure[0], 'absolutePressure')),
      step: HEIGHT_STEP,
    },
  }
}

/** The bench as it stands when nobody has set anything: in health, at part load. */
export function usualSetting(data: BenchData): Setting {
  const { usual } = data.circuit
  return {
    state: 'part',
    fuel: usual.fuel,
    tankTemperature: figureIn(data, usual.tankTemperature, 'temperature'),
    ambientTemperature: figureIn(data, usual.ambientTemperature, 'temperature'),
    tankLevel: figureIn(data, usual.tankLevel, 'ratio'),
    height: SEA_LEVEL,
    faults: {},
  }
}

/** What surrounds the circuit, as the solver takes it. */
export function conditionsOf(setting: Setting): Conditions {
  const { state, fuel, tankTemperature, ambientTemperature, tankLevel, height } = setting
  return {
    state,
    fuel,
    tankTemperature,
    ambientTemperature,
    tankLevel,
    airPressure: standardAtmosphere(height),
  }
}

export type Action =
  | { readonly type: 'set'; readonly setting: Partial<Omit<Setting, 'faults'>> }
  | { readonly type: 'fault'; readonly id: string; readonly severity: number | undefined }
  | { readonly type: 'colour'; readonly colouring: BenchState['colouring'] }
  | { readonly type: 'part'; readonly part: string | undefined }
  | { readonly type: 'restore'; readonly state: BenchState }

export function apply(before: BenchState, action: Action): BenchState {
  switch (action.type) {
    case 'set':
      return { ...before, setting: { ...before.setting, ...action.setting } }
    case 'fault': {
      const faults = Object.entries({ ...before.setting.faults, [action.id]: action.severity })
      const kept = Object.fromEntries(
        faults.flatMap(([id, severity]) => (severity === undefined ? [] : [[id, severity] as const])),
      )
      return { ...before, setting: { ...before.setting, faults: kept } }
    }
    case 'colour':
      return { ...before, colouring: action.colouring }
    case 'part':
      return { ...before, part: action.part }
    case 'restore':
      return action.state
  }
}
