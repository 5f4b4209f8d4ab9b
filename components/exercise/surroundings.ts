import type { FaultAt } from '../../calculators/exercise/types.ts'
import { figureOf, SEA_LEVEL } from '../circuit/bench/setting.ts'
import type { Setting } from '../circuit/bench/types.ts'

/** Conditions of an exercise as its data gives them. */
export interface ConditionsData {
  readonly fuel: string
  readonly tankTemperature: string
  readonly ambientTemperature: string
  readonly tankLevel: string
}

/** The conditions of an exercise as the bench sets them. */
export function surroundingsOf(conditions: ConditionsData): Omit<Setting, 'state' | 'faults'> {
  return {
    fuel: conditions.fuel,
    tankTemperature: figureOf(conditions.tankTemperature, 'temperature'),
    ambientTemperature: figureOf(conditions.ambientTemperature, 'temperature'),
    tankLevel: figureOf(conditions.tankLevel, 'ratio'),
    height: SEA_LEVEL,
  }
}

/** Faults as the bench sets them: severity by id. */
export const severities = (faults: readonly FaultAt[]): Setting['faults'] =>
  Object.fromEntries(faults.map(({ fault, severity }) => [fault, severity]))
