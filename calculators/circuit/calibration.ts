import type { Fields } from './fields.ts'
import { fluidOf } from './fluid.ts'
import type { CircuitModel } from './model.ts'

/** What full load in health with the usual fuel shows once and for all. */
export interface Calibration {
  /** Density of the fuel at the injectors, on which the full rack is set. [kg/m³] */
  readonly density: number
  /** Links of spring valves that pass fuel. */
  readonly openValves: ReadonlySet<number>
  /** The fields at rest, from which a state without a better start begins. */
  readonly fields?: Fields
}

/** Fuel before a state at full load has been found. [K] */
const AT_FIRST = 313.15

const calibrations = new WeakMap<CircuitModel, Calibration>()

/**
 * What full load in health showed.
 * @param model of the circuit
 * @returns it; until it is known the density at 40 °C and no valve
 */
export function calibrationOf(model: CircuitModel): Calibration {
  const known = calibrations.get(model)
  if (known) return known
  const usual = model.fuels[model.usual.fuel]
  return { density: usual ? fluidOf(usual, {}).density(AT_FIRST) : Number.NaN, openValves: new Set() }
}

export const isCalibrated = (model: CircuitModel): boolean => calibrations.has(model)

export const setCalibration = (model: CircuitModel, calibration: Calibration): void =>
  void calibrations.set(model, calibration)
