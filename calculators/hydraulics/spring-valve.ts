/** A spring-loaded valve whose outlet pressure acts on the back of its seat, without bellows or balance piston. */
export interface SpringValve {
  /** Inlet less outlet pressure at which it starts to pass fuel. [Pa] */
  readonly cracking: number
  /** Rise above cracking at full flow. [Pa] */
  readonly override: number
  /** The flow at which the override was stated. [m³/s] */
  readonly fullFlow: number
}

/**
 * Inlet pressure of a spring valve: cracking pressure, plus override in proportion to flow, plus back pressure one to one. [Pa]
 * The straight override line stands for a spring with a short lift; a real line bends.
 * @param valve cracking [Pa], override at full flow [Pa], full flow [m³/s] above 0
 * @param flow [m³/s], 0 to about 1.2 of full flow; none or reversed flow gives the pressure at which it would crack
 * @param backPressure at the valve's outlet [Pa]
 * @returns the inlet pressure, against the same reference as the back pressure
 * @source iso-4126-1 (terms), common practice (the straight override line)
 */
export function inletPressure(valve: SpringValve, flow: number, backPressure: number): number {
  return valve.cracking + (valve.override * Math.max(0, flow)) / valve.fullFlow + backPressure
}

/**
 * Flow through a spring valve at an inlet pressure, the inverse of inletPressure. [m³/s]
 * @param valve cracking [Pa], override at full flow [Pa] above 0, full flow [m³/s]
 * @param inlet pressure before the valve [Pa]
 * @param backPressure behind it [Pa], same reference
 * @returns the flow; 0 while it is shut
 * @source iso-4126-1 (terms), common practice (the straight override line)
 */
export function valveFlow(valve: SpringValve, inlet: number, backPressure: number): number {
  return (Math.max(0, inlet - backPressure - valve.cracking) / valve.override) * valve.fullFlow
}

/**
 * What the spring is set to: inlet pressure less back pressure less the override at that moment. [Pa]
 * @param inlet pressure before the valve [Pa]
 * @param backPressure behind it [Pa], same reference
 * @param override above cracking at that moment [Pa]; 0 at first flow
 * @returns the cracking pressure that a bench with an open outlet would show
 * @source iso-4126-1 (cold differential test pressure less the constant superimposed back pressure)
 */
export function springSetting(inlet: number, backPressure: number, override: number): number {
  return inlet - backPressure - override
}

/**
 * Inlet pressure at which a spring valve is shut again. [Pa]
 * @param valve cracking [Pa]; override and full flow are not used
 * @param blowdown cracking less reseating, as a share of cracking [-], 0 to 1
 * @param backPressure at the valve's outlet [Pa]
 * @returns the inlet pressure, against the same reference as the back pressure
 * @source iso-4126-1 (terms)
 */
export function reseatingPressure(valve: SpringValve, blowdown: number, backPressure: number): number {
  return valve.cracking * (1 - blowdown) + backPressure
}
