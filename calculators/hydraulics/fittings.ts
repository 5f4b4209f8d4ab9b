/** One inch in metres: the two-K method was fitted to diameters in inches. */
const INCH = 0.0254

/** Roughness of clean commercial steel on which the handbook's full-turbulence factors rest, 0.0018 in. [m] */
const COMMERCIAL_STEEL = 4.572e-5

export interface Fitting {
  /** Resistance as a multiple of the factor at full turbulence: K = equivalentLength · f_T. [-] */
  readonly equivalentLength: number
  /** Part of the two-K method that counts in slow flow. [-] */
  readonly k1: number
  /** Part of the two-K method that counts in fast flow, for a very large pipe. [-] */
  readonly kInfinity: number
}

/**
 * Fittings of a fuel line, wide open and of the bore of the pipe. Equivalent lengths as the handbook tabulates them,
 * gate, globe and angle valve seen in its examples and the others from memory; the two constants as Hooper gives them,
 * screwed fittings where he tells them apart.
 */
export const FITTINGS = {
  elbows90: { equivalentLength: 30, k1: 800, kInfinity: 0.4 },
  bends90: { equivalentLength: 14, k1: 800, kInfinity: 0.2 },
  elbows45: { equivalentLength: 16, k1: 500, kInfinity: 0.2 },
  teesThrough: { equivalentLength: 20, k1: 200, kInfinity: 0.1 },
  teesBranch: { equivalentLength: 60, k1: 500, kInfinity: 0.7 },
  gateValves: { equivalentLength: 8, k1: 300, kInfinity: 0.1 },
  ballValves: { equivalentLength: 3, k1: 300, kInfinity: 0.1 },
  globeValves: { equivalentLength: 340, k1: 1500, kInfinity: 4 },
  angleValves: { equivalentLength: 150, k1: 1000, kInfinity: 2 },
  swingChecks: { equivalentLength: 100, k1: 1500, kInfinity: 1.5 },
  liftChecks: { equivalentLength: 600, k1: 2000, kInfinity: 10 },
} as const satisfies Record<string, Fitting>

export type FittingId = keyof typeof FITTINGS

const LIST = Object.entries(FITTINGS) as readonly (readonly [FittingId, Fitting])[]

/** How many of each. What is left out is none. */
export type Bill = Readonly<Partial<Record<FittingId, number>>>

/** 'two-k': Hooper, for slow and fast flow alike. 'equivalent-length': K = L/D · f_T, for turbulent flow. */
export type FittingMethod = 'two-k' | 'equivalent-length'

/**
 * Friction factor of a clean steel pipe at full turbulence, f_T = 0.25/[log₁₀(ε/(3.7D))]². [-]
 * @param bore inside diameter [m], 0.01 to 1; smaller, the wall is no longer rough beside the bore
 * @returns the factor that belongs to the handbook's equivalent lengths
 * @source crane-tp410 (equation seen in a public library's text; roughness 0.0018 in)
 */
export function fullyRoughFactor(bore: number): number {
  return 0.25 / Math.log10(COMMERCIAL_STEEL / (3.7 * bore)) ** 2
}

/**
 * Loss coefficient of one fitting by the two-K method: K₁/Re + K∞(1 + 1/D), D in inches. [-]
 * @param fitting its two constants [-]
 * @param reynolds Reynolds number in the pipe [-], above 0
 * @param bore inside diameter of the pipe [m], above 0
 * @returns K on the velocity in the pipe
 * @source hooper-1981
 */
export function twoKLoss(fitting: Pick<Fitting, 'k1' | 'kInfinity'>, reynolds: number, bore: number): number {
  return fitting.k1 / reynolds + fitting.kInfinity * (1 + INCH / bore)
}

/**
 * Sum of the loss coefficients of all fittings of a line. [-]
 * @param bill how many of each [-]
 * @param method 'two-k' or 'equivalent-length' [-]
 * @param reynolds Reynolds number in the pipe [-], above 0
 * @param bore inside diameter of the pipe [m], above 0
 * @returns ΣK on the velocity in the pipe; entrance and exit are not part of it
 * @source hooper-1981, crane-tp410
 */
export function lossOfFittings(bill: Bill, method: FittingMethod, reynolds: number, bore: number): number {
  const twoK = method === 'two-k'
  const turbulent = twoK ? 0 : fullyRoughFactor(bore)
  let sum = 0
  for (const [id, fitting] of LIST) {
    const count = bill[id] ?? 0
    if (count > 0)
      sum += count * (twoK ? twoKLoss(fitting, reynolds, bore) : fitting.equivalentLength * turbulent)
  }
  return sum
}
