/** How dirt takes the flow from an element at constant flow. */
export type LoadingLaw = 'cake' | 'intermediate' | 'standard' | 'complete'

interface Law {
  readonly straight: (ratio: number) => number
  readonly back: (straight: number) => number | undefined
}

/** Each law makes one function of the drop's ratio a straight line against the volume that has passed. */
const laws: Readonly<Record<LoadingLaw, Law>> = {
  cake: { straight: (ratio) => ratio - 1, back: (straight) => (straight > -1 ? straight + 1 : undefined) },
  intermediate: { straight: Math.log, back: Math.exp },
  standard: {
    straight: (ratio) => 1 - 1 / Math.sqrt(ratio),
    back: (straight) => (straight < 1 ? (1 - straight) ** -2 : undefined),
  },
  complete: {
    straight: (ratio) => 1 - 1 / ratio,
    back: (straight) => (straight < 1 ? 1 / (1 - straight) : undefined),
  },
}

/**
 * What grows in a straight line with the volume filtered at constant flow, from the element's drop. [-]
 * @param law of the four of Hermia [-]
 * @param ratio drop of the element over that of a new one, at the same flow and viscosity [-], above 0
 * @returns r − 1 for a cake, ln r for intermediate, 1 − r^(−1/2) for standard, 1 − 1/r for complete blocking
 * @source hlavacek-bouchet-1993
 */
export function straightened(law: LoadingLaw, ratio: number): number {
  return laws[law].straight(ratio)
}

/**
 * The inverse of `straightened`. [-]
 * @param law of the four of Hermia [-]
 * @param straight value on the straight line [-]
 * @returns the ratio, or undefined where the law says that nothing passes any more, or less than nothing is held
 * @source hlavacek-bouchet-1993
 */
export function ratioFromStraightened(law: LoadingLaw, straight: number): number | undefined {
  return laws[law].back(straight)
}
