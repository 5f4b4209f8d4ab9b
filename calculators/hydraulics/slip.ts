/**
 * Flow that a positive displacement pump would deliver without slip. [m³/s]
 * @param displacement volume a turn [m³]
 * @param speed [rad/s]
 * @returns displacement × turns a second
 * @source iso-4391 (the term derived delivery)
 */
export function displacedFlow(displacement: number, speed: number): number {
  return (displacement * speed) / (2 * Math.PI)
}

/**
 * What the clearances let back for each unit of pressure and fluidity, Q_s·μ/Δp. It grows with wear and, as long as the
 * flow in the clearances is laminar, with nothing else. [m³]
 * @param slip flow back through the clearances [m³/s]
 * @param pressure rise across the pump [Pa], above 0
 * @param dynamicViscosity [Pa·s]
 * @returns the slip constant of this pump
 * @source gear-pump-slip-model
 */
export function slipConstant(slip: number, pressure: number, dynamicViscosity: number): number {
  return (slip * dynamicViscosity) / pressure
}

/**
 * Slip at another pressure and viscosity. [m³/s]
 * @param constant slip constant [m³], from slipConstant
 * @param pressure rise across the pump [Pa]
 * @param dynamicViscosity [Pa·s], above 0
 * @returns constant × pressure/viscosity, whatever the speed
 * @source gear-pump-slip-model
 */
export function slipAt(constant: number, pressure: number, dynamicViscosity: number): number {
  return (constant * pressure) / dynamicViscosity
}

/**
 * How many times wider the clearances are, if all grew alike: the cube root of the ratio of slips. [-]
 * @param slipRatio slip now over slip when new, at one pressure and viscosity [-], 0 or more
 * @returns clearance now over clearance when new
 * @source hagen-poiseuille (flow between near walls goes with the third power of their distance)
 */
export function clearanceGrowth(slipRatio: number): number {
  return Math.cbrt(slipRatio)
}
