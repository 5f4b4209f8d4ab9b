/** Working cycles a revolution. */
export type Strokes = 'four' | 'two'

/**
 * Injections a second of a whole engine. [1/s]
 * @param speed of the crankshaft [rad/s], 0 or more
 * @param cylinders [-], 1 or more
 * @param strokes 'four' injects every second revolution, 'two' every one [-]
 * @returns cylinders × revolutions a second, halved for the four-stroke
 * @source common practice: by the meaning of the words
 */
export function injectionRate(speed: number, cylinders: number, strokes: Strokes): number {
  return (cylinders * speed) / (2 * Math.PI) / (strokes === 'four' ? 2 : 1)
}

export interface RackSetting {
  /** [m] */
  readonly rack: number
  /** [m³] */
  readonly quantity: number
}

/**
 * Quantity a stroke on the straight line through two settings of the rack. [m³]
 * @param rack where it is asked [m]
 * @param low one setting: rack [m] and quantity [m³]
 * @param high another one, at a different rack [m], [m³]
 * @returns the quantity; negative beyond the shut-off end, which is for the caller to refuse
 * @source common practice, no published source
 */
export function quantityAtRack(rack: number, low: RackSetting, high: RackSetting): number {
  const slope = (high.quantity - low.quantity) / (high.rack - low.rack)
  return low.quantity + slope * (rack - low.rack)
}

/**
 * Mass of fuel burnt in a time. [kg/s]
 * @param power at the shaft [W], 0 or more
 * @param specificConsumption fuel for each unit of work [kg/J], above 0
 * @returns power × specific consumption
 * @source common practice: by the meaning of specific consumption
 */
export function fuelMassFlow(power: number, specificConsumption: number): number {
  return power * specificConsumption
}

export interface DutyState {
  /** Share of the time. [-] */
  readonly share: number
  /** [m³/s] */
  readonly burn: number
  /** [m/s] */
  readonly speed: number
}

/**
 * Mean burn and mean speed over a duty cycle, each state weighed by its share of the time. [m³/s], [m/s]
 * @param states shares [-] with a sum above 0, burn [m³/s], speed [m/s]
 * @returns the two means and the sum of the shares
 * @source common practice: a weighted mean
 */
export function dutyCycle(states: readonly DutyState[]): { burn: number; speed: number; shares: number } {
  const sum = (of: (state: DutyState) => number) => states.reduce((total, state) => total + of(state), 0)
  const shares = sum((state) => state.share)
  return {
    burn: sum((state) => state.share * state.burn) / shares,
    speed: sum((state) => state.share * state.speed) / shares,
    shares,
  }
}
