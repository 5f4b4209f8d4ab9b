/** Coefficients of net and gross specific energy in MJ/kg against density in kg/m³. */
interface EnergyLine {
  readonly net: number
  readonly gross: number
  readonly square: number
  readonly linear: number
}

export type EnergyFuel = 'distillate' | 'residual'

/** What the fuel carries beside its oil, as shares of its mass. [-] */
export interface Impurities {
  readonly water: number
  readonly ash: number
  readonly sulfur: number
}

/** Distillate from memory; residual as a public page of notes prints it. @source iso-8217 */
const LINES: Readonly<Record<EnergyFuel, EnergyLine>> = {
  distillate: { net: 46.423, gross: 51.916, square: 8.792e-6, linear: 3.17e-3 },
  residual: { net: 46.704, gross: 52.19, square: 8.802e-6, linear: 3.167e-3 },
}

/** Energy that sulfur gives when it burns, and that water takes to boil away. [MJ/kg] @source iso-8217 */
const SULFUR_ENERGY = 9.42
const WATER_ENERGY = 2.449
const MEGA = 1e6

/**
 * Specific energy of the oil alone, free of water, ash and sulfur, 'net' with the water of combustion left as steam:
 * a − bρ² + cρ, with c only in the net value. [J/kg]
 * @param kind 'net' or 'gross' [-]
 * @param fuel 'distillate' or 'residual' [-]
 * @param density15 density at 15 °C [kg/m³], 750 to 1010; outside it is an extrapolation
 * @returns the specific energy of the oil
 * @source iso-8217
 */
export function oilEnergy(kind: 'net' | 'gross', fuel: EnergyFuel, density15: number): number {
  const { net, gross, square, linear } = LINES[fuel]
  const constant = kind === 'net' ? net + linear * density15 : gross
  return MEGA * (constant - square * density15 ** 2)
}

/**
 * Specific energy of the fuel as it is: the oil's, for its share of the mass, with sulfur's own heat added and, in
 * the net value, the heat that its water takes to boil away taken off. [J/kg]
 * @param kind 'net' or 'gross' [-]
 * @param fuel 'distillate' or 'residual' [-]
 * @param density15 density at 15 °C [kg/m³], 750 to 1010; outside it is an extrapolation
 * @param impurities shares of water, ash and sulfur in the mass [-], together under 1
 * @returns the specific energy
 * @source iso-8217
 */
export function specificEnergy(
  kind: 'net' | 'gross',
  fuel: EnergyFuel,
  density15: number,
  impurities: Impurities,
): number {
  const { water, ash, sulfur } = impurities
  const boiling = kind === 'net' ? WATER_ENERGY * water : 0
  const oil = oilEnergy(kind, fuel, density15) * (1 - water - ash - sulfur)
  return oil + MEGA * (SULFUR_ENERGY * sulfur - boiling)
}

/** 1 cal/g of the International Table in J/kg. @source nist-sp811 */
const CALORIE_PER_GRAM = 4186.8

/**
 * Specific energy of a clean petroleum oil by the Bureau's older rule, as a check on the annex: gross 12400 − 2100d²
 * cal/g; net less 50.45 cal/g for each per cent of hydrogen, of which there is 26 − 15d. [J/kg]
 * @param kind 'net' or 'gross' [-]
 * @param relativeDensity density at 60 °F over that of water at 60 °F [-], 0.75 to 1.0
 * @returns the specific energy
 * @source nbs-mp97 (equations from memory)
 */
export function bureauEnergy(kind: 'net' | 'gross', relativeDensity: number): number {
  const gross = 12400 - 2100 * relativeDensity ** 2
  const hydrogenPercent = 26 - 15 * relativeDensity
  return CALORIE_PER_GRAM * (kind === 'net' ? gross - 50.45 * hydrogenPercent : gross)
}
