export type Arrangement = 'counterflow' | 'parallel' | 'constant'

/** Capacity rates so nearly alike that the counterflow formula would lose its digits. */
const NEARLY_ALIKE = 1e-6

/**
 * Effectiveness of a heat exchanger: heat passed over the most that any exchanger could pass. [-]
 * @param transferUnits N, conductance over the lesser capacity rate [-], 0 or more
 * @param capacityRatio lesser over greater capacity rate [-], 0 to 1
 * @param arrangement counterflow, parallel flow, or one side of constant temperature, in which the ratio counts as 0 [-]
 * @returns the effectiveness, 0 to 1
 * @source ht-library
 */
export function effectiveness(
  transferUnits: number,
  capacityRatio: number,
  arrangement: Arrangement,
): number {
  if (arrangement === 'constant') return -Math.expm1(-transferUnits)
  if (arrangement === 'parallel')
    return -Math.expm1(-transferUnits * (1 + capacityRatio)) / (1 + capacityRatio)
  const difference = 1 - capacityRatio
  if (difference < NEARLY_ALIKE) return transferUnits / (1 + transferUnits)
  const part = Math.expm1(-transferUnits * difference)
  return -part / (difference - capacityRatio * part)
}
