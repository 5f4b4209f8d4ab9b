/** Relative molecular mass of water. [-] */
const WATER_MOLECULE = 18.015

/** Temperatures between which the equation is used here. [K] Its critical point lies at 352 °C. */
export const SOLUBILITY_RANGE = { minimum: 253.15, maximum: 353.15 }

/**
 * Water that a hydrocarbon dissolves, by moles: log x = −(4200·H/C + 1050)·(1/T − 0.0016). [-]
 * @param hydrogenToCarbon mass ratio of hydrogen to carbon in the fuel [-]; gas oil about 0.15
 * @param temperature [K]
 * @returns moles of water for each mole of solution, at saturation
 * @source hibbard-schalla-1952 (there with x in mole per cent)
 */
export function waterMoleFraction(hydrogenToCarbon: number, temperature: number): number {
  return 10 ** (-(4200 * hydrogenToCarbon + 1050) * (1 / temperature - 0.0016))
}

/**
 * The same by mass. [-]
 * @param moleFraction from waterMoleFraction [-], 0 to under 1
 * @param relativeMolecularMass mean of the fuel [-]; gas oil about 215
 * @returns mass of water over mass of solution
 * @source hibbard-schalla-1952
 */
export function waterMassFraction(moleFraction: number, relativeMolecularMass: number): number {
  const water = moleFraction * WATER_MOLECULE
  return water / (water + (1 - moleFraction) * relativeMolecularMass)
}
