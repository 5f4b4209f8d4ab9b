import type { Conditions } from '../../../calculators/circuit/types.ts'
import { standardAtmosphere } from '../../../calculators/hydraulics/vapour.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import type { BenchData, BenchState, Setting } from './types.ts'

/** How bad a fault is when it is first switched on: in the middle, so that there is room to either side. */
export const FIRST_SEVERITY = 0.5

/** How bad a fault is where a page links to the bench to show it. */
export const SHOWN_SEVERITY = 0.7

/** The tank of the bench when nobody chose its level: well above the mouth of the suction pipe. */
export const USUAL_LEVEL = 0.7

/** Where no other height is given. */
export const SEA_LEVEL = 0

/** Railways and quarries do not lie higher, and the model takes the pressure there. [m] */
const HIGHEST_PLACE = 4000

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
  const temperature = (label: string, [least, most]: readonly [string, string]): SliderSpec => ({
    label,
    kind: 'temperature',
    least: figureIn(data, least, 'temperature'),
    most: figureIn(data, most, 'temperature'),
    step: 1,
  })
  const { ranges } = data.circuit
  return {
    tankTemperature: temperature('Fuel in the tank', ranges.tankTemperature),
    ambientTemperature: temperature('Air outside', ranges.ambientTemperature),
    tankLevel: { label: 'Level in the tank', kind: 'ratio', least: 0, most: 1, step: 1 },
    height: { label: 'Altitude', kind: 'length', least: SEA_LEVEL, most: HIGHEST_PLACE, step: 50 },
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
    tankLevel: USUAL_LEVEL,
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
