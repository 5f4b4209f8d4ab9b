/** Air about an engine. */
export interface Ambient {
  /** [Pa] */
  readonly pressure: number
  /** [K] */
  readonly airTemperature: number
  /** Of the coolant into the charge air cooler. [K] */
  readonly coolantTemperature: number
}

export type Aspiration = 'charge-cooled' | 'turbocharged' | 'natural'

/** 100 kPa, 298 K, coolant of the charge air at 298 K (from memory). @source iso-3046-1 */
export const REFERENCE_AMBIENT: Ambient = { pressure: 1e5, airTemperature: 298, coolantTemperature: 298 }

/** Mechanical efficiency where the maker states none (from memory). @source iso-3046-1 */
export const USUAL_MECHANICAL_EFFICIENCY = 0.8

interface Exponents {
  readonly pressure: number
  readonly air: number
  readonly coolant: number
}

/** Low and medium speed four-stroke engines whose power is limited by heat (from memory). @source iso-3046-1 */
const EXPONENTS: Readonly<Record<Aspiration, Exponents>> = {
  'charge-cooled': { pressure: 0.7, air: 1.2, coolant: 1 },
  turbocharged: { pressure: 0.7, air: 2, coolant: 0 },
  natural: { pressure: 1, air: 1, coolant: 0 },
}

/**
 * Ratio of indicated power, k = (p/p_r)^m (T_r/T)^n (T_cr/T_c)^s. [-]
 * @param ambient pressure [Pa], air and coolant temperature [K] of the test
 * @param aspiration kind of engine [-]
 * @returns k; 1 at reference conditions
 * @source iso-3046-1 (from memory)
 */
export function indicatedPowerRatio(ambient: Ambient, aspiration: Aspiration): number {
  const { pressure, air, coolant } = EXPONENTS[aspiration]
  return (
    (ambient.pressure / REFERENCE_AMBIENT.pressure) ** pressure *
    (REFERENCE_AMBIENT.airTemperature / ambient.airTemperature) ** air *
    (REFERENCE_AMBIENT.coolantTemperature / ambient.coolantTemperature) ** coolant
  )
}

/**
 * Specific consumption at the test's conditions over that at reference conditions, β = k/α with
 * α = k − 0.7(1 − k)(1/η − 1). [-]
 * @param ratio k of indicatedPowerRatio [-], from 0.15 with the usual η
 * @param mechanicalEfficiency η [-], above 0 up to 1
 * @returns β, above 1 where the air is hotter or thinner than reference; not above 0 where the rule ends
 * @source iso-3046-1 (from memory)
 */
export function consumptionRatio(ratio: number, mechanicalEfficiency: number): number {
  return ratio / (ratio - 0.7 * (1 - ratio) * (1 / mechanicalEfficiency - 1))
}

/**
 * Specific consumption as it would be on a fuel of reference energy: b H/H_ref, the energy per unit of work held. [kg/J]
 * @param consumption measured [kg/J]
 * @param netEnergy of the fuel burnt [J/kg], above 0
 * @param referenceEnergy of the reference fuel [J/kg], above 0
 * @returns the specific consumption on the reference fuel
 * @source iso-3046-1 (from memory)
 */
export function onReferenceFuel(consumption: number, netEnergy: number, referenceEnergy: number): number {
  return (consumption * netEnergy) / referenceEnergy
}
