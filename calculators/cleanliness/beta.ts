/**
 * Filtration ratio β: particles of a size and larger before the filter over those after it. [-]
 * @param upstream count before [1/m³], 0 or more
 * @param downstream count after [1/m³], above 0
 * @returns the ratio; below 1 where the filter gives off more than it takes
 * @source iso-16889
 */
export function betaRatio(upstream: number, downstream: number): number {
  return upstream / downstream
}

/**
 * Share of the particles of a size and larger that is stopped: 1 − 1/β. [-]
 * @param beta filtration ratio [-], above 0
 * @returns the share; negative below β 1
 * @source iso-16889
 */
export function efficiencyOf(beta: number): number {
  return 1 - 1 / beta
}

/**
 * β that brings a count down in one pass. [-]
 * @param before count before the filter [1/m³]
 * @param after count wanted behind it [1/m³], above 0
 * @returns the ratio, 1 where nothing need be stopped
 * @source iso-16889
 */
export function betaForOnePass(before: number, after: number): number {
  return Math.max(1, before / after)
}

/**
 * β that brings a well-mixed tank down in so many turns, no dirt coming in: the count falls as exp[−n(1 − 1/β)]. [-]
 * @param before count in the tank now [1/m³]
 * @param after count wanted in the tank [1/m³], above 0
 * @param turns volume passed through the filter over the tank's volume [-], more than turnsNeeded
 * @returns the ratio, 1 where nothing need be stopped; negative or infinite with too few turns
 * @source well-mixed-balance
 */
export function betaForTurns(before: number, after: number, turns: number): number {
  const fall = turnsNeeded(before, after, 1)
  return fall === 0 ? 1 : 1 / (1 - fall / turns)
}

/**
 * Turns of a well-mixed tank that bring a count down, no dirt coming in: ln(N₀/N)/(1 − 1/β). [-]
 * @param before count in the tank now [1/m³]
 * @param after count wanted in the tank [1/m³], above 0
 * @param efficiency share that the filter stops [-], above 0 to 1
 * @returns turns of the tank's volume through the filter
 * @source well-mixed-balance
 */
export function turnsNeeded(before: number, after: number, efficiency: number): number {
  return Math.max(0, Math.log(before / after)) / efficiency
}

/**
 * Dirt that a filter takes up in a time. [kg/s]
 * @param flow [m³/s]
 * @param concentration of dirt before the filter [kg/m³]
 * @param share of the dirt, by mass, that is stopped [-], 0 to 1
 * @returns the mass each second
 * @source well-mixed-balance
 */
export function dirtRate(flow: number, concentration: number, share: number): number {
  return flow * concentration * share
}
