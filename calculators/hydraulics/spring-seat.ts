/**
 * Area of the seat on which the pressure pushes against the spring. [m²]
 * @param diameter at which the seat seals [m], above 0; for a bevelled seat between its two edges
 * @returns π d²/4
 * @source common practice (the sealing diameter stands for the pushed area)
 */
export function seatArea(diameter: number): number {
  return (Math.PI / 4) * diameter ** 2
}

/** Shear modulus of spring wire. [Pa] From memory of EN 13906-1. */
export const SHEAR_MODULUS = { steel: 81.5e9, stainless: 70e9 } as const

/**
 * Rate of a helical compression spring of round wire, G·d⁴/(8·D³·n). [N/m]
 * @param shearModulus of the wire [Pa]
 * @param wire diameter of the wire [m]
 * @param coil mean diameter of the coil, outside diameter less one wire [m]; 4 to 20 wires
 * @param activeCoils coils that are free to move [-], at least 2; a ground end counts for none
 * @returns force for each metre of compression
 * @source common practice (the rate of the textbooks, here from memory)
 */
export function springRateFromWire(
  shearModulus: number,
  wire: number,
  coil: number,
  activeCoils: number,
): number {
  return (shearModulus * wire ** 4) / (8 * coil ** 3 * activeCoils)
}

/**
 * Thickness of shim that moves a setting: more compression gives more force, and force over seat area is pressure. [m]
 * @param change of the setting [Pa], positive for a higher one
 * @param area of the seat [m²]
 * @param rate of the spring [N/m], above 0
 * @returns the shim to add; negative for one to take out
 * @source common practice (Hooke's law over the seat area)
 */
export function shimFor(change: number, area: number, rate: number): number {
  return (change * area) / rate
}
